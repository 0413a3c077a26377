import { halfLap } from '../../materials/half-lap.js';
import { SIXTY_FOURTHS } from '../../measure/displays.js';
import { COMPUTED } from '../../measure/figure.js';
import { figure } from '../../measure/figure-text.js';
import { formatLengthExact } from '../../measure/format-length.js';
import type { Display, Mm } from '../../measure/quantities.js';
import { atMost, sameLength } from '../../measure/tolerance.js';
import { lengthOption } from './length-option.js';
import type { Given, WorkResult, WorkRule } from './rule.js';

/** `notchbook work lap`: how deep a half lap is cut so that both faces come out flush. */
export const LAP_RULE: WorkRule = {
  name: 'lap',
  say: 'a half lap: how deep to cut, and what two scraps tell of the saw',
  example: 'notchbook work lap --thickness 1-7/16in --depth 3/4in',
  options: [
    lengthOption('thickness', 'the board as measured, not as it is called', '1-7/16in'),
    lengthOption('depth', 'what the saw is set to', '3/4in'),
  ],
  work,
};

function work(given: Given): WorkResult {
  // Half of a sixteenth matters here: the sums are told to 1/64 in.
  const display = given.display.system === 'inch' ? SIXTY_FOURTHS : given.display;
  const thickness = given.number('thickness');
  const depth = given.number('depth');
  const say = (mm: Mm) => formatLengthExact(mm, display);
  if (atMost(thickness, depth))
    return {
      ok: false,
      problems: [`A cut of ${say(depth)} goes through a board of ${say(thickness)}.`],
    };
  const { aim, cheek, step } = halfLap(thickness, depth);
  return {
    ok: true,
    verdict: verdict(step, display),
    figures: [
      {
        name: 'aim',
        say: 'cut both this deep',
        figure: figure(aim, 'mm', `half of ${say(thickness)}`, COMPUTED),
      },
      {
        name: 'cheek',
        say: 'leaves now',
        figure: figure(cheek, 'mm', `${say(thickness)} - ${say(depth)}`, COMPUTED),
      },
      {
        name: 'step',
        say: 'the step that you see',
        figure: figure(
          Math.abs(step),
          'mm',
          `2 x ${say(cheek)} against ${say(thickness)}`,
          COMPUTED,
        ),
      },
    ],
    more: { hollow: step < 0 },
    notes: [
      'Start shallow and cut two scraps of the same board: the step is twice the error of the depth.',
      'Wood can be taken off again, but not put back. Unplug the saw before you change its depth; its manual comes first.',
    ],
  };
}

function verdict(step: Mm, display: Display): string {
  if (sameLength(step, 0)) return 'Flush.';
  const off = formatLengthExact(Math.abs(step) / 2, display);
  return step < 0
    ? `Too deep by ${off}: the faces lie hollow.`
    : `Too shallow by ${off}: the faces stand proud.`;
}
