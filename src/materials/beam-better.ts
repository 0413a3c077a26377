import { capital } from '../measure/capital.js';
import { formatLength } from '../measure/format-length.js';
import { inches } from '../measure/inch.js';
import type { Display, Mm } from '../measure/quantities.js';
import { snapDown } from '../measure/round.js';
import { atMost, lessThan, sameLength } from '../measure/tolerance.js';
import { type BeamCase, type BeamCheck, checkBeam } from './beam-check.js';
import { strengthOf } from './design-values-species.js';
import { SECTIONS, type Section } from './section.js';
import type { Species } from './species.js';

/** What to change, and what the sum says then. */
export type Better = { readonly say: string; readonly check: BeamCheck };

const SHORTEST: Mm = inches(2);
const HALVINGS = 40;

/**
 * The longest span at which the same load holds with no second look, on the marking grid and never
 * rounded up; undefined when no span does.
 * @example 400 lb on two flat 2x6: 3 ft or so
 */
export function longestSpan(beam: BeamCase, display: Display, upTo: Mm): Mm | undefined {
  const holds = (span: Mm) => checkBeam({ ...beam, span }, display).verdict === 'holds by this sum';
  if (holds(upTo)) return upTo;
  if (!holds(SHORTEST)) return undefined;
  let good = SHORTEST;
  let bad = upTo;
  for (let i = 0; i < HALVINGS; i++) {
    const middle = (good + bad) / 2;
    if (holds(middle)) good = middle;
    else bad = middle;
  }
  return snapDown(good, display.grid);
}

/** The board as it is sold: a measured one may be thinner or narrower than its label. */
export type SoldAs = { readonly wood: Species; readonly section: Section };

/**
 * What would hold instead, the least change first: the board on edge, a support closer by, the next
 * thicker or deeper section of the same family. Empty when the beam holds already.
 */
export function betterBeams(beam: BeamCase, sold: SoldAs, display: Display): readonly Better[] {
  const first = checkBeam(beam, display);
  if (first.verdict === 'holds by this sum') return [];
  return [...onEdge(beam, display), ...closer(beam, display), ...stouter(beam, sold, display)];
}

/** The suggestions as one sentence; empty when there is nothing to better. */
export function betterWords(beam: BeamCase, sold: SoldAs, display: Display): string {
  const [first, ...rest] = betterBeams(beam, sold, display).map(({ say }) => say);
  if (first === undefined) return '';
  const words = [first, ...rest].join(', or ');
  return `${capital(words)}.`;
}

function onEdge(beam: BeamCase, display: Display): readonly Better[] {
  const { board, stands } = beam.use;
  if (stands === 'edge' || atMost(board.width, board.thickness)) return [];
  const check = checkBeam({ ...beam, use: { ...beam.use, stands: 'edge' } }, display);
  return check.verdict === 'does not hold by this sum' ? [] : [{ say: 'stand it on edge', check }];
}

function closer(beam: BeamCase, display: Display): readonly Better[] {
  const span = longestSpan(beam, display, beam.span);
  if (span === undefined || sameLength(span, beam.span)) return [];
  const check = checkBeam({ ...beam, span }, display);
  return [{ say: `bring the supports within ${formatLength(span, display)}`, check }];
}

/** The smallest section of the family that is no smaller either way and holds. */
function stouter(
  beam: BeamCase,
  { wood, section: own }: SoldAs,
  display: Display,
): readonly Better[] {
  const { board } = beam.use;
  const bigger = SECTIONS.filter(
    section => section.family === own.family && isStouter(section, board),
  ).sort((a, b) => a.width * a.thickness - b.width * b.thickness);
  for (const section of bigger) {
    const use = { ...beam.use, board: section };
    const check = checkBeam({ ...beam, use, wood: strengthOf(wood, section.width) }, display);
    if (check.verdict === 'holds by this sum') {
      const label = section.name === own.name ? fullSize(section, board, display) : '';
      return [{ say: `use a ${section.name}${label}`, check }];
    }
  }
  return [];
}

type Board = Pick<Section, 'thickness' | 'width'>;

/** A board that came out less than its label says is bettered by one that is what its label says. */
function fullSize(label: Section, board: Board, display: Display): string {
  const isNarrow = lessThan(board.width, label.width);
  const size = formatLength(isNarrow ? label.width : label.thickness, display);
  return ` that really is ${size} ${isNarrow ? 'wide' : 'thick'}`;
}

function isStouter(section: Section, board: Board): boolean {
  const same =
    sameLength(section.thickness, board.thickness) && sameLength(section.width, board.width);
  return !same && atMost(board.thickness, section.thickness) && atMost(board.width, section.width);
}
