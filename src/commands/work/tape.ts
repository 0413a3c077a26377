import {
  EU_TAPE,
  euTapeError,
  HB44_TAPE,
  HOOK_MAY_DIFFER,
  stepOff,
  type TapeClass,
  tapeCheck,
  usTapeError,
} from '../../materials/tape.js';
import { COMPUTED } from '../../measure/figure.js';
import { figure } from '../../measure/figure-text.js';
import { formatLength, formatLengthExact } from '../../measure/format-length.js';
import type { Mm } from '../../measure/quantities.js';
import { lengthOption } from './length-option.js';
import type { Answered, Given, WorkResult, WorkRule } from './rule.js';

/** `notchbook work tape`: whether a tape reads alike hooked and pushed. */
export const TAPE_RULE: WorkRule = {
  name: 'tape',
  say: 'the two-minute check of a tape, and what it may be wrong by',
  example: 'notchbook work tape --hooked 30in --pushed 30-1/16in --steps 12',
  options: [
    lengthOption('hooked', 'a board, measured with the hook over its end', '30in'),
    lengthOption('pushed', 'the same board, hook pushed against a stop', '30-1/16in'),
    {
      name: 'steps',
      kind: 'count',
      say: 'marks that are stepped off one from another',
      example: '12',
      usual: '1',
      least: 1,
      most: 500,
    },
    {
      name: 'class',
      kind: 'word',
      say: 'accuracy class printed on a European tape: I, II or III',
      example: 'II',
      usual: 'II',
      choices: Object.keys(EU_TAPE.value),
    },
  ],
  work,
};

function work(given: Given): WorkResult {
  const { display } = given;
  const hooked = given.number('hooked');
  const { differs, good } = tapeCheck(hooked, given.number('pushed'));
  const steps = given.number('steps');
  const off = stepOff(steps, differs);
  const say = (mm: number) => formatLengthExact(mm, display);
  return {
    ok: true,
    verdict: good
      ? 'The hook slides by its own thickness, as it should.'
      : 'Set this tape aside, or start at the 1 in (100 mm) mark and take it off again.',
    figures: [
      {
        name: 'differs',
        say: 'hooked and pushed differ',
        figure: figure(
          differs,
          'mm',
          `may differ by ${formatLengthExact(HOOK_MAY_DIFFER.value, display)}`,
          HOOK_MAY_DIFFER.source,
        ),
      },
      ...stepFigures(steps, off, say(differs)),
      ...classFigures(hooked, given.word('class') as TapeClass),
    ],
    more: { good },
    notes: [
      'One tape for the whole job, whatever it reads; all marks from one end.',
      `Measured on one board of ${formatLength(hooked, display)}. Not checked: the scale itself.`,
    ],
  };
}

function stepFigures(
  steps: number,
  { worst, likely }: { readonly worst: number; readonly likely: number },
  error: string,
): readonly Answered[] {
  if (steps === 1) return [];
  return [
    {
      name: 'worst',
      say: `after ${steps} steps, worst`,
      figure: figure(worst, 'mm', `${steps} x ${error}`, COMPUTED),
    },
    {
      name: 'likely',
      say: 'by chance',
      figure: figure(
        likely,
        'mm',
        `${error} x root of ${steps}; from one end it stays ${error}`,
        COMPUTED,
      ),
    },
  ];
}

function classFigures(length: Mm, tape: TapeClass): readonly Answered[] {
  const us = usTapeError(length);
  const { a, b } = EU_TAPE.value[tape];
  const european: Answered = {
    name: 'class_limit',
    say: `class ${tape} may be off`,
    figure: figure(
      euTapeError(tape, length),
      'mm',
      `${a} mm + ${b} mm for each meter begun`,
      EU_TAPE.source,
    ),
  };
  if (us === undefined) return [european];
  return [
    {
      name: 'us_limit',
      say: 'US tape may be off',
      figure: figure(us, 'mm', 'from zero to that length', HB44_TAPE.source),
    },
    european,
  ];
}
