import { formatLength } from '../measure/format-length.js';
import { inches } from '../measure/inch.js';
import type { Display, Mm } from '../measure/quantities.js';
import { snapDown } from '../measure/round.js';
import { atMost, sameLength } from '../measure/tolerance.js';
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

type Board = { readonly thickness: Mm; readonly width: Mm };

/** Sections of one family lie farther apart than a board falls short of its label: common practice. */
const SHORT_OF_LABEL: Mm = 6.35;

/**
 * What would hold instead, the least change first: the board on edge, a support closer by, the next
 * thicker or deeper section of the same family. Empty when the beam holds already.
 */
export function betterBeams(beam: BeamCase, wood: Species, display: Display): readonly Better[] {
  const first = checkBeam(beam, display);
  if (first.verdict === 'holds by this sum') return [];
  return [...onEdge(beam, display), ...closer(beam, display), ...stouter(beam, wood, display)];
}

/** The suggestions as one sentence; empty when there is nothing to better. */
export function betterWords(beam: BeamCase, wood: Species, display: Display): string {
  const [first, ...rest] = betterBeams(beam, wood, display).map(({ say }) => say);
  if (first === undefined) return '';
  const words = [first, ...rest].join(', or ');
  return `${words.charAt(0).toUpperCase()}${words.slice(1)}.`;
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
function stouter(beam: BeamCase, wood: Species, display: Display): readonly Better[] {
  const { board } = beam.use;
  const bigger = SECTIONS.filter(
    section => section.family === familyOf(board) && isStouter(section, board),
  ).sort((a, b) => a.width * a.thickness - b.width * b.thickness);
  for (const section of bigger) {
    const use = { ...beam.use, board: section };
    const check = checkBeam({ ...beam, use, wood: strengthOf(wood, section.width) }, display);
    if (check.verdict === 'holds by this sum') {
      return [{ say: `use a ${section.name}${ofFullSize(section, board, display)}`, check }];
    }
  }
  return [];
}

/** A board that came out less than its label says is bettered by one that is what its label says. */
function ofFullSize(section: Section, board: Board, display: Display): string {
  const isLabel =
    section.width - board.width < SHORT_OF_LABEL &&
    section.thickness - board.thickness < SHORT_OF_LABEL;
  return isLabel ? ` that really is ${formatLength(section.width, display)} wide` : '';
}

function isStouter(section: Section, board: Board): boolean {
  const same =
    sameLength(section.thickness, board.thickness) && sameLength(section.width, board.width);
  return !same && atMost(board.thickness, section.thickness) && atMost(board.width, section.width);
}

function familyOf(board: Board): Section['family'] {
  const same = SECTIONS.find(
    section =>
      sameLength(section.thickness, board.thickness) && sameLength(section.width, board.width),
  );
  return same === undefined ? 'us-dry' : same.family;
}
