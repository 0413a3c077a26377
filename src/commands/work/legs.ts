import { dropBetween, legTrims, slopeDegrees } from '../../materials/leg-trims.js';
import { COMPUTED } from '../../measure/figure.js';
import { figure } from '../../measure/figure-text.js';
import { formatLengthExact } from '../../measure/format-length.js';
import { formatNumber } from '../../measure/format-number.js';
import { lengthOption, usualLength } from './length-option.js';
import type { Answered, Given, WorkResult, WorkRule } from './rule.js';

/** Steeper than this nobody paves: 1 in 4. */
const STEEPEST = 0.25;

/** `notchbook work legs`: what each leg loses on ground that falls. */
export const LEGS_RULE: WorkRule = {
  name: 'legs',
  say: 'what to cut off each leg on ground that falls, so that the seat is level',
  example: 'notchbook work legs --fall 1in --over 8ft --apart 48in',
  options: [
    lengthOption('fall', 'how far the ground falls …', '1in'),
    lengthOption('over', '… over this distance', '8ft'),
    lengthOption('apart', 'legs apart, down the fall', '48in'),
    usualLength('fall-front', 'fall from back to front over the same distance', {
      example: '1in',
      usual: '0in',
    }),
    usualLength('depth', 'legs apart, back to front', { example: '14in', usual: '0in' }),
  ],
  work,
};

function work(given: Given): WorkResult {
  const over = given.number('over');
  const down = { drop: given.number('fall'), over };
  const front = { drop: given.number('fall-front'), over };
  if (Math.max(down.drop, front.drop) / over > STEEPEST)
    return {
      ok: false,
      problems: ['--fall: steeper than 1 in 4 is no ground for a bench. Check both lengths.'],
    };
  const trims = legTrims(
    dropBetween(down, given.number('apart')),
    dropBetween(front, given.number('depth')),
  );
  const { display } = given;
  const say = (mm: number) => formatLengthExact(mm, display);
  const along = `${say(down.drop)} of fall in ${say(over)}, legs ${say(given.number('apart'))} apart`;
  const across = `${say(front.drop)} in ${say(over)} to the front, legs ${say(given.number('depth'))} apart`;
  const leg = (name: string, words: string, [value, sum]: readonly [number, string]): Answered => ({
    name,
    say: words,
    figure: figure(value, 'mm', sum, COMPUTED),
  });
  const range = Math.max(...Object.values(trims));
  return {
    ok: true,
    figures: [
      leg('high_back', 'high end, back leg', [trims.highBack, `${along}; ${across}`]),
      leg('high_front', 'high end, front leg', [trims.highFront, along]),
      leg('low_back', 'low end, back leg', [trims.lowBack, across]),
      leg('low_front', 'low end, front leg', [trims.lowFront, 'the longest leg keeps its length']),
    ],
    more: { degrees: slopeDegrees(down), adjuster_mm: range },
    notes: [
      `The ground falls ${formatNumber(slopeDegrees(down), 1)} degrees. "Front" is the side it falls to.`,
      'Cut all legs long and alike, set it up in its place, wedge the seat level, and scribe each foot from the ground: paving is never even.',
      `If it will be moved about: equal legs with adjustable feet of ${say(range)} or more.`,
      'Not checked: whether the ground is firm.',
    ],
  };
}
