import { formatBoardLength, formatLengthExact } from '../measure/format-length.js';
import { inches } from '../measure/inch.js';
import { count } from '../text/plural.js';
import { boughtCount } from './buy-lines.js';
import { onTheTape } from './on-tape.js';
import type { Plan, Purchase, Step } from './plan.js';
import type { Ripped } from './purchase.js';
import type { Setting } from './setting.js';
import { countedMinutes } from './step-minutes.js';
import { careOf } from './tool-rows.js';
import { cutStepsOf } from './work-so-far.js';

type Build = Pick<Plan, 'steps' | 'cutList'>;

/**
 * The build with a step that rips before the first crosscut of every section that is ripped out of wider boards.
 * Strips are ripped while they are long, so the crosscuts wait for it; it waits for what the first of all cuts
 * waits for.
 */
export function withRipping(
  build: Build,
  purchases: readonly Purchase[],
  setting: Setting,
): readonly Step[] {
  return purchases.reduce<readonly Step[]>((steps, purchase) => {
    const { ripped } = purchase;
    if (ripped === undefined) return steps;
    const cuts = cutStepsOf({ steps, cutList: build.cutList });
    const own = cuts.filter(({ section }) => section === purchase.section).map(({ step }) => step);
    const [first] = own;
    if (first === undefined) return steps;
    const needs = cuts[0]?.step.needs ?? [];
    const rip = ripStep({ ...purchase, ripped }, setting, { needs, standing: first.standing });
    return steps.flatMap(step => {
      const now = own.includes(step) ? { ...step, needs: [...step.needs, rip.id] } : step;
      return step === first ? [rip, now] : [now];
    });
  }, build.steps);
}

const TOOLS = ['table-saw', 'push-stick', 'tape', 'square', 'pencil'];

function ripStep(
  purchase: Purchase & { readonly ripped: Ripped },
  setting: Setting,
  place: Pick<Step, 'needs' | 'standing'>,
): Step {
  const { section, ripped } = purchase;
  const length = (value: number) => formatLengthExact(value, setting.display);
  const boards = boughtCount(purchase);
  const strips = boards * ripped.strips;
  // The edge cut of each board and one cut for each strip.
  const cuts = boards * (ripped.strips + 1);
  return {
    id: `rip/${section}`,
    phase: 'cut',
    title: `Rip ${count(boards, 'board')} of ${ripped.from} into ${count(strips, 'strip')} of ${section}`,
    who: 'lead',
    handsOff: TOOLS.slice(0, 2),
    tools: TOOLS,
    plain: [],
    say: sayOf(purchase, setting),
    why: 'A long strip runs true along the fence; a short one turns into the blade. So rip first, then cut to length.',
    look: [
      `The first strip is ${length(ripped.fence.value)} wide to ${onTheTape(inches(1 / 32), setting.display)}, at both ends.`,
      'No strip bows so far that it will not lie flat by hand.',
    ],
    firstCheck: true,
    after: [],
    care: careOf({ care: [], tools: TOOLS }),
    big: { text: length(ripped.fence.value), caption: `from fence to blade, for ${ripped.from}` },
    settings: settingsOf(purchase, setting),
    tally: { of: 'strip', count: strips },
    timers: [],
    joins: [],
    bright: [],
    minutes: countedMinutes(
      [
        ['set-fence', 2],
        ['rip-cut', cuts],
      ],
      `two settings of the fence and ${cuts} cuts along the board`,
    ),
    ...place,
  };
}

function sayOf(
  { section, ripped }: Purchase & { readonly ripped: Ripped },
  { display, people }: Setting,
): readonly string[] {
  const length = (value: number) => formatLengthExact(value, display);
  const { edge, edgeFence, fence, strips, from, turned } = ripped;
  return [
    `First edge: fence at ${length(edgeFence.value)}, ${length(edge.value)} off one edge. Straight, flat boards only.`,
    `Turn that edge to the fence and set it at ${length(fence.value)}: ${count(strips, 'strip')} from each board.`,
    'Feed with the push stick, all the way past the blade. Pick strips up when it stands still.',
    people === 2
      ? 'The helper stands at the side and holds the far end up. Nobody pulls.'
      : 'A stand behind the saw holds the far end up.',
    ...(turned ? [`Lay each strip on its side: its width is the thickness of ${from}.`] : []),
    `Write ${section} and the number of its board on each strip.`,
  ];
}

function settingsOf(
  { buy, ripped }: Purchase & { readonly ripped: Ripped },
  { display }: Setting,
): Step['settings'] {
  const boards = buy.map(it => `${it.count} of ${formatBoardLength(it.length.value, display)}`);
  return [
    { name: 'Board', text: `${ripped.from}: ${boards.join(', ')}` },
    {
      name: 'Blade',
      text: `for ripping, just above the board; it takes ${formatLengthExact(ripped.kerf.value, display)}`,
    },
  ];
}
