import type { ScrewChoice } from '../../materials/choose-screw.js';
import type { LoadTime } from '../../materials/design-factors-nds.js';
import {
  PULL_SOURCE,
  type Sideways,
  screwPull,
  screwSideways,
  screwsNeeded,
} from '../../materials/screw-strength.js';
import type { Species } from '../../materials/species.js';
import { YIELD_SOURCE } from '../../materials/yield-model.js';
import { figure } from '../../measure/figure-text.js';
import { formatNumber } from '../../measure/format-number.js';
import type { Display, Kilograms, Mm } from '../../measure/quantities.js';
import { formatWeight } from '../../measure/weight.js';
import type { Answered } from './rule.js';

/** A chosen screw, the wood round it and what hangs on it. */
export type HeldChoice = {
  readonly choice: ScrewChoice;
  readonly wood: Species;
  readonly through: Mm;
  readonly grain: 'side' | 'end';
  readonly wet: boolean;
  readonly time: LoadTime;
  readonly display: Display;
  readonly load?: Kilograms;
};

/** Two-thirds of a wood screw is thread (trade sheets); the rest of its bite is plain shank. */
const THREAD_SHARE = 2 / 3;

/** What it carries sideways and against pull, and how many the load needs. */
export function heldFigures(held: HeldChoice): readonly Answered[] {
  const sideways = sidewaysOf(held);
  const { choice, grain, wet, time, wood } = held;
  const thread = Math.min(choice.bite, choice.length * THREAD_SHARE);
  const pull = screwPull({
    gauge: choice.gauge,
    bite: thread,
    mainGravity: wood.gravity.value,
    grain,
    wet,
    time,
  });
  const where = `${grain} grain, ${wet ? 'wet' : 'dry'} wood`;
  const pullWords =
    grain === 'end'
      ? 'nothing is counted on in end grain'
      : `2850 x ${formatNumber(wood.gravity.value, 2)}^2 x the shank, for each inch of thread; ${where}`;
  return [
    ...(sideways === undefined ? [] : [sidewaysFigure(sideways, where)]),
    { name: 'pull', say: 'holds against pull', figure: figure(pull, 'kg', pullWords, PULL_SOURCE) },
    ...countFigure(sideways, held),
  ];
}

function sidewaysOf({ choice, wood, ...held }: HeldChoice): Sideways | undefined {
  const gravity = wood.gravity.value;
  const { through, grain, wet, time } = held;
  return screwSideways({
    gauge: choice.gauge,
    bite: choice.bite,
    through,
    grain,
    wet,
    time,
    sideGravity: gravity,
    mainGravity: gravity,
  });
}

function sidewaysFigure({ each, mode, biteFactor }: Sideways, where: string): Answered {
  const bite = biteFactor < 1 ? `, ${formatNumber(biteFactor * 100, 0)}% for its bite` : '';
  const because = `yield mode ${mode} of six, both boards of this wood${bite}; ${where}`;
  return {
    name: 'sideways',
    say: 'carries sideways',
    figure: figure(each, 'kg', because, YIELD_SOURCE),
  };
}

function countFigure(sideways: Sideways | undefined, held: HeldChoice): readonly Answered[] {
  if (held.load === undefined || sideways === undefined) return [];
  const count = screwsNeeded(held.load, sideways.each);
  if (count === undefined) return [];
  const because = `${formatWeight(held.load, held.display)} on screws of ${formatWeight(sideways.each, held.display)}, rounded up`;
  return [{ name: 'screws', say: 'screws', figure: figure(count, 'count', because, YIELD_SOURCE) }];
}

/** What the sums leave out. */
export function heldNotes({ grain, load }: HeldChoice): readonly string[] {
  return [
    ...(load === undefined || grain === 'side'
      ? []
      : ['Screws in end grain work loose: let a shoulder or a block carry the load.']),
    'Not checked: distance to ends and edges, splits, the metal of the screw, load that comes and goes for years. For guards, stairs and anything overhead ask the local code or a licensed engineer.',
  ];
}
