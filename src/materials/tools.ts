import type { CautionId } from './cautions.js';
import { type Sourced, sourced } from './sourced.js';
import { seen } from './sources.js';

export type Tool = {
  readonly id: string;
  readonly name: string;
  /** What it is for in this work. */
  readonly use: string;
  /** For somebody who has never held one. */
  readonly plainly: string;
  readonly cautions: readonly CautionId[];
  /** A-weighted decibels near the operator, one meter's reading; undefined when quiet or not on record. */
  readonly noise: Sourced<number> | undefined;
  /** Who may use it: the person leading, or a briefed helper as well. */
  readonly who: 'lead' | 'both';
};

const hobby = (level: number, what: string) => sourced(level, seen('noise-hobby', what));
const survey = (level: number, what: string) => sourced(level, seen('noise-survey', what));

const POWER_SAW: readonly CautionId[] = ['dust', 'noise', 'electric'];

type Quiet = Omit<Tool, 'noise' | 'who' | 'cautions'> & { readonly cautions?: Tool['cautions'] };

function quiet(tool: Quiet): Tool {
  return { cautions: [], ...tool, noise: undefined, who: 'both' };
}

const POWERED: readonly Tool[] = [
  {
    id: 'miter-saw',
    name: 'miter saw',
    use: 'cutting boards square to length',
    plainly: 'A round saw on an arm that comes down across the board.',
    cautions: ['miter-saw', ...POWER_SAW],
    noise: hobby(105, 'miter saw, 10 in'),
    who: 'lead',
  },
  {
    id: 'circular-saw',
    name: 'circular saw',
    use: 'crosscuts without a miter saw; kerfing notches',
    plainly: 'A round saw held in both hands and pushed along a line.',
    cautions: ['circular-saw', ...POWER_SAW],
    noise: hobby(118, 'circular saw, 7-1/4 in'),
    who: 'lead',
  },
  {
    id: 'table-saw',
    name: 'table saw',
    use: 'ripping boards to width',
    plainly: 'A round saw that stands up through a table; the board is pushed past it.',
    cautions: ['table-saw', ...POWER_SAW],
    noise: survey(85, 'table saw, 10 in, at 3 ft'),
    who: 'lead',
  },
  {
    id: 'jigsaw',
    name: 'jigsaw',
    use: 'cutting out notches',
    plainly: 'A narrow blade that goes up and down through the board.',
    cautions: ['jigsaw', ...POWER_SAW],
    noise: hobby(101, 'jigsaw'),
    who: 'lead',
  },
  {
    id: 'brad-nailer',
    name: '18 gauge brad nailer',
    use: 'holding pieces while the glue cures',
    plainly: 'Shoots thin nails. It fires when its nose is pressed down and the trigger pulled.',
    cautions: ['nailer', 'noise'],
    noise: hobby(101, 'finish nailer'),
    who: 'lead',
  },
  {
    id: 'drill-driver',
    name: 'drill-driver',
    use: 'boring pilot and clearance holes, driving screws',
    plainly:
      'Turns a bit to make holes, or a screw to drive it. The ring at the front limits how hard.',
    cautions: ['drill'],
    noise: survey(85, 'cordless drill, at 3 ft'),
    who: 'both',
  },
  {
    id: 'sander',
    name: 'random-orbit sander',
    use: 'smoothing faces and easing edges',
    plainly: 'A shaking round pad with sandpaper. It is laid flat and moved slowly.',
    cautions: ['sander', 'dust', 'noise'],
    noise: hobby(102, 'random-orbit sander'),
    who: 'both',
  },
];

const BY_HAND: readonly Tool[] = [
  quiet({
    id: 'tape',
    name: 'tape measure',
    use: 'measuring; one tape for the whole job',
    plainly:
      'Hook it over the end and read where the mark falls. The loose hook is meant to slide.',
  }),
  quiet({
    id: 'square',
    name: 'square',
    use: 'marking across a board and checking corners',
    plainly:
      'A right angle of metal: hold its thick side against the edge and draw along the other.',
  }),
  quiet({
    id: 'stop-block',
    name: 'stop block and clamp',
    use: 'cutting equal pieces without measuring each',
    plainly:
      'A scrap clamped to the fence: push the board against it and every piece comes out alike.',
  }),
  quiet({
    id: 'spacers',
    name: 'spacers, cut from scrap',
    use: 'holding slats on their marks',
    plainly: 'Scraps as thick as the gap. The pencil mark decides, the spacer only helps to hold.',
  }),
  quiet({
    id: 'push-stick',
    name: 'push stick',
    use: 'feeding strips past the blade',
    plainly: 'A stick with a notch at its end: it goes near the blade so that no hand does.',
    cautions: ['ripping'],
  }),
  quiet({
    id: 'pencil',
    name: 'pencil',
    use: 'marking; a cross on the waste side',
    plainly: 'Sharp, and a thin line. The cross says which side is cut away.',
  }),
  quiet({
    id: 'hand-saw',
    name: 'hand saw or pull saw',
    use: 'crosscuts and the cheeks of notches by hand',
    plainly:
      'Start with slow strokes beside your thumb knuckle, then long ones. A pull saw cuts on the pull.',
  }),
  quiet({
    id: 'chisel',
    name: 'chisel, 1 to 1-1/2 in',
    use: 'cleaning notches to the line',
    plainly: 'A sharp flat blade that is pushed or tapped.',
    cautions: ['chisel'],
  }),
  quiet({
    id: 'mallet',
    name: 'mallet',
    use: 'tapping joints together and driving the chisel',
    plainly: 'A wooden or rubber hammer that does not dent.',
  }),
  quiet({
    id: 'clamps',
    name: 'bar clamps',
    use: 'holding joints while the glue sets and work while it is cut',
    plainly: 'Slide the jaw up, then turn the handle until it is snug: firm, not crushing.',
  }),
  quiet({
    id: 'countersink',
    name: 'countersink bit',
    use: 'making room for flat screw heads',
    plainly: 'A cone-shaped bit: stop when the hole is as wide as the screw head.',
    cautions: ['drill'],
  }),
  quiet({
    id: 'glue-brush',
    name: 'glue brush',
    use: 'spreading glue over both faces',
    plainly: 'A thin even coat that just hides the wood.',
    cautions: ['glue'],
  }),
  quiet({
    id: 'sanding-block',
    name: 'sanding block',
    use: 'easing edges by hand',
    plainly: 'Sandpaper round a block; rub along the grain, a few strokes on each edge.',
    cautions: ['dust'],
  }),
  quiet({
    id: 'brush',
    name: 'finish brush and rags',
    use: 'putting on sealer and wiping it back',
    plainly: 'Flood it on, wait, wipe off what is left. The rags are dangerous afterwards.',
    cautions: ['sealer', 'rags'],
  }),
  quiet({
    id: 'pump-sprayer',
    name: 'pump sprayer',
    use: 'putting sealer on slats quickly',
    plainly: 'Pump it up, spray from a hand away, brush the runs out at once.',
    cautions: ['spray', 'sealer', 'rags'],
  }),
  quiet({
    id: 'level',
    name: 'level',
    use: 'checking that the piece stands plumb and flat',
    plainly: 'The bubble sits between the lines when it is level.',
  }),
  quiet({
    id: 'moisture-meter',
    name: 'moisture meter',
    use: 'finding how wet the boards are',
    plainly: 'Push the pins into the wood along the grain and read the percent.',
  }),
];

export const TOOLS: readonly Tool[] = [...POWERED, ...BY_HAND];

/** The tool with this id, or undefined. */
export function toolNamed(id: string): Tool | undefined {
  return TOOLS.find(tool => tool.id === id);
}

/**
 * The cautions of some tools, each once, in the order in which the tools are first picked up. An id
 * that names no tool brings none.
 * @example cautionsFor(['drill-driver', 'sander']) // ['drill', 'sander', 'dust', 'noise']
 */
export function cautionsFor(toolIds: readonly string[]): readonly CautionId[] {
  return [...new Set(toolIds.flatMap(id => toolNamed(id)?.cautions ?? []))];
}
