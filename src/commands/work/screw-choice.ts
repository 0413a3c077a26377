import type { NoScrew, ScrewChoice } from '../../materials/choose-screw.js';
import type { Species } from '../../materials/species.js';
import { ANSWERED, COMMON_PRACTICE } from '../../measure/figure.js';
import { figure } from '../../measure/figure-text.js';
import { formatLengthExact } from '../../measure/format-length.js';
import { tidy } from '../../measure/round.js';
import type { Answered, Given, WorkResult } from './rule.js';

/** Length, gauge, holes and bite of a chosen screw. */
export function choiceFigures(
  choice: ScrewChoice,
  wood: Species,
  given: Given,
): readonly Answered[] {
  const { holes, gauge } = choice;
  const { display } = given;
  const say = (length: number) => formatLengthExact(length, display);
  return [
    {
      name: 'length',
      say: 'length',
      figure: figure(choice.length, 'mm', choice.because, choice.source),
    },
    {
      name: 'gauge',
      say: 'gauge',
      figure: figure(
        gauge,
        'count',
        given.has('gauge')
          ? 'the gauge you asked for'
          : 'the usual gauge for this thickness, or the next lighter one that bites',
        given.has('gauge') ? ANSWERED : COMMON_PRACTICE,
      ),
    },
    {
      name: 'pilot',
      say: 'pilot hole',
      figure: figure(
        tidy(holes.pilot.value),
        'mm',
        `the ${holes.pilot.drill} drill, for the thread in ${wood.name}`,
        holes.pilot.source,
      ),
    },
    {
      name: 'clearance',
      say: 'clearance hole',
      figure: figure(
        tidy(holes.clearance.value),
        'mm',
        `the ${holes.clearance.drill} drill, through the board under the head`,
        holes.clearance.source,
      ),
    },
    {
      name: 'bite',
      say: 'bite',
      figure: figure(
        choice.bite,
        'mm',
        `${say(choice.length)} less ${say(choice.length - choice.bite)} under the head; ${say(choice.cover)} of wood is left beyond the point`,
        choice.source,
      ),
    },
  ];
}

/** No length holds without coming out of the far side: that is an answer, with what to do instead. */
export function noScrewResult(none: NoScrew): WorkResult {
  return {
    ok: true,
    figures: [
      {
        name: 'needed',
        say: 'would have to be',
        figure: figure(none.needed, 'mm', none.because, none.source),
      },
      {
        name: 'cap',
        say: 'may not be over',
        figure: figure(none.cap, 'mm', '1/8 in short of the far face', none.source),
      },
    ],
    more: { fits: false, gauge: none.gauge },
    notes: [`No wood screw suits these boards: ${none.because}.`, none.suggestion],
  };
}
