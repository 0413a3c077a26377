import { ROUND_OVERSIZE, slotFor } from '../../materials/slot.js';
import { figure } from '../../measure/figure-text.js';
import { formatLengthExact } from '../../measure/format-length.js';
import type { Answered, Given, WorkResult, WorkRule } from './rule.js';
import { swingWords } from './season-options.js';
import { oneWayWords, YEAR_OPTIONS, yearGiven } from './year-given.js';

/** `notchbook work slot`: the hole for a screw that holds a wide part across the grain. */
export const SLOT_RULE: WorkRule = {
  name: 'slot',
  say: 'the slot or oversize hole for a screw that holds a wide part across the grain',
  example:
    'notchbook work slot --width 34.5in --wood douglas-fir --grain flat --screw 1/4in --today 10 --place "wet coast"',
  options: [
    {
      name: 'width',
      kind: 'length',
      say: 'across the grain: the whole part held in its middle, or from the held edge to the screw',
      example: '34.5in',
      least: 1,
      most: 10_000,
    },
    {
      name: 'held',
      kind: 'word',
      say: 'where the part is held fast: middle or edge',
      example: 'middle',
      usual: 'middle',
      choices: ['middle', 'edge'],
    },
    {
      name: 'screw',
      kind: 'length',
      say: 'thickness of the screw shank',
      example: '1/4in',
      least: 1,
      most: 30,
    },
    ...YEAR_OPTIONS,
  ],
  work,
};

function work(given: Given): WorkResult {
  const width = given.number('width');
  const free = given.word('held') === 'middle' ? width / 2 : width;
  const read = yearGiven(given, free);
  if (!read.ok) return { ok: false, problems: [`${read.problem} ${read.hint}`] };
  const { year, swing } = read.value;
  const screw = given.number('screw');
  const slot = slotFor(year, screw);
  const length = (mm: number) => formatLengthExact(mm, given.display);
  const travel = (name: string, say: string, value: number, factor: string): Answered => ({
    name,
    say,
    figure: figure(value, 'mm', `${length(free)} x ${factor}; ${year.wet.why}`, year.source),
  });
  const sum = `${length(screw)} screw + 2 x ${length(slot.oversize / 2)}, the screw in the middle`;
  return {
    ok: true,
    figures: [
      travel('travel_out', 'grows by', slot.out, year.wet.factor),
      travel('travel_back', 'shrinks by', slot.back, year.dry.factor),
      {
        name: 'hole',
        say: 'length of the hole',
        figure: figure(slot.length, 'mm', sum, year.source),
      },
    ],
    more: { shape: slot.shape },
    notes: [
      slot.shape === 'round'
        ? `A round hole of that size does: no more than ${length(ROUND_OVERSIZE.value)} over the screw.`
        : `Make it a slot along the movement, as wide as a clearance hole: a round hole more than ${length(ROUND_OVERSIZE.value)} over the screw lets the head through.`,
      'A washer under the head, and no glue across the grain: glued fast, this much movement splits the part.',
      ...oneWayWords(year),
      swingWords(swing),
    ],
  };
}
