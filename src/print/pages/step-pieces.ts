import { formatMinutes } from '../../measure/duration.js';
import type { Mm } from '../../measure/quantities.js';
import type { Step } from '../../plan/plan.js';
import { count } from '../../text/plural.js';
import { tallyOf } from '../../workbook/next-step.js';
import { showsWhole } from '../kept-drawings.js';
import { beside, bound, lower, type Piece } from '../sheet/piece.js';
import { factPieces } from '../sheet/set-blocks.js';
import { itemPieces, type Measure, wordPieces } from '../sheet/set-words.js';
import type { Pack } from './pack.js';
import { checkIsMade } from './so-far.js';
import { bigPieces, headPieces } from './step-head.js';
import { picturePieces, wherePiece } from './step-pictures.js';

/** Heights of pictures, the first that lets a step stay on one page. */
const HEIGHTS: readonly Mm[] = [66, 52, 40];

/** A step as it is built from, kept on one page where it can be. */
export function stepPieces(step: Step, number: number, pack: Pack): readonly Piece[] {
  const rest = restPieces(step, number, pack);
  const set = HEIGHTS.map(high => () => [
    ...headPieces(step, number, pack),
    ...picturePieces(step, number, pack, high),
    ...rest,
  ]);
  const whole = set.find(make => heightOf(make()) <= pack.frame.height);
  return whole === undefined ? (set.at(-1)?.() ?? []) : [bound(whole())];
}

function heightOf(pieces: readonly Piece[]): Mm {
  return pieces.reduce((sum, one) => sum + one.above + one.height, 0);
}

/** What to do, the number to hit, what to look at, what to mind. */
function restPieces(step: Step, number: number, pack: Pack): readonly Piece[] {
  const { measure } = pack;
  return [
    ...sayPieces(step, number, pack),
    ...spacedOut(factPieces(factsOf(step, pack), measure)),
    ...step.look.flatMap((text, at) =>
      itemPieces(text, checkIsMade(step, at, pack) ? 'ticked' : 'box', measure),
    ),
    ...carePieces(step, number, pack),
    ...(step.why === '' ? [] : wordPieces(`Why: ${step.why}`, measure, { size: 10, above: 1.5 })),
    ...notePieces(step, pack),
  ];
}

/** Where a step's boards stand nowhere yet, a small picture beside the words shows where they will be. */
function sayPieces(step: Step, number: number, pack: Pack): readonly Piece[] {
  const said = (measure: Measure) => [
    ...bigPieces(step, measure),
    ...step.say.flatMap(text => itemPieces(text, 'dash', measure)),
  ];
  if (!showsWhole(step)) return said(pack.measure);
  const { width, rule } = pack.measure;
  const left = width - WHERE.width - 4;
  const picture = wherePiece(number, pack, WHERE);
  return [{ ...beside(bound(said({ width: left, rule })), picture, left + 4), above: 2 }];
}

const WHERE = { width: 62, height: 40 };

function spacedOut(pieces: readonly Piece[]): readonly Piece[] {
  return pieces.map((one, at) => (at === 0 ? lower(one, 2) : one));
}

function factsOf(step: Step, { build }: Pack) {
  const tally = build === undefined ? undefined : tallyOf(step, build.progress);
  return [
    ...step.settings,
    ...(step.tally === undefined
      ? []
      : [
          {
            name: 'Count',
            text: `${count(step.tally.count, step.tally.of)}${tally === undefined ? '' : `, ${tally.done} done`}`,
          },
        ]),
    ...step.timers.map(({ name, minutes }) => ({
      name: 'Wait',
      text: `${formatMinutes(minutes)}: ${name.toLowerCase()}`,
    })),
  ];
}

/**
 * Each caution by its first line where the step before did not name it, else by its name. All of it
 * stands on the page of tools and cautions.
 */
function carePieces(step: Step, number: number, { plan, measure }: Pack): readonly Piece[] {
  const before = new Set(plan.steps[number - 2]?.care ?? []);
  const named = plan.cautions.filter(({ id }) => step.care.includes(id));
  const fresh = named.filter(({ id }) => !before.has(id));
  const known = named.filter(({ id }) => before.has(id)).map(({ title }) => title);
  const lines = [
    ...fresh.map(({ title, lines: [first = ''] }) => `${title}: ${first}`),
    ...(known.length > 0 ? [`As before: ${known.join('; ')}.`] : []),
  ];
  return lines.flatMap((text, at) =>
    itemPieces(at === 0 ? `Mind! ${text}` : text, 'dash', measure, {
      size: 10,
      above: at === 0 ? 2 : 0.6,
    }),
  );
}

function notePieces(step: Step, { build, measure }: Pack): readonly Piece[] {
  const notes = build?.progress.notes.filter(note => note.step === step.id) ?? [];
  return notes.flatMap(({ text }) =>
    wordPieces(`Note: ${text}`, measure, { bold: true, above: 1.5 }),
  );
}
