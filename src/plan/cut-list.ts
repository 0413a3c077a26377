import { COMPUTED, type Figure, MEASURED } from '../measure/figure.js';
import { figure } from '../measure/figure-text.js';
import { formatLength } from '../measure/format-length.js';
import type { Display, Mm } from '../measure/quantities.js';
import { snap } from '../measure/round.js';
import type { Model, Part } from '../model/part.js';
import { mirrorSignature, signature } from '../model/signature.js';
import type { Untimed } from './cut-stops.js';

/** A row of the cut list before its notches are described. */
export type Batch = {
  readonly mark: string;
  readonly signature: string;
  readonly parts: readonly Part[];
  /** They are cut already, at this length and not the one they would have now. */
  readonly asCut?: Mm;
};

/** What is written on pieces already, by the ids of the parts that they are. */
export type Kept = {
  /** Marks of the plan before anything was measured. */
  readonly marks: ReadonlyMap<string, string>;
  /** Pieces that are cut otherwise than they would be now. */
  readonly asCut: ReadonlyMap<string, { readonly mark: string; readonly length: Mm }>;
};

const NOTHING_KEPT: Kept = { marks: new Map(), asCut: new Map() };

/**
 * Equal pieces of the model under one mark each, longest first within a section, sections by how
 * much wood they need. Equal means: same section, length and notches, however the piece is turned; and
 * pieces that are cut stay together under the mark they bear.
 */
export function batches(model: Model, kept: Kept = NOTHING_KEPT): readonly Batch[] {
  const alike = new Map<string, Part[]>();
  for (const part of model.parts) {
    const own = kept.asCut.get(part.id);
    const key = own === undefined ? signature(part) : `${CUT} ${own.mark} ${own.length}`;
    const same = alike.get(key);
    if (same) same.push(part);
    else alike.set(key, [part]);
  }
  const wood = woodBySection(model.parts);
  const order = [...alike.entries()].sort(
    ([, [a]], [, [b]]) =>
      (wood.get(nameOf(b)) ?? 0) - (wood.get(nameOf(a)) ?? 0) ||
      nameOf(a).localeCompare(nameOf(b)) ||
      lengthOf(b) - lengthOf(a),
  );
  return marked(order, kept);
}

/** Begins the key of pieces that are cut; no signature of a section does. */
const CUT = 'cut:';

/** A mark that is written on pieces stays with them; the others get theirs, or the next free letter. */
function marked(
  order: readonly (readonly [string, readonly Part[]])[],
  { marks, asCut }: Kept,
): readonly Batch[] {
  const taken = new Set([...asCut.values()].map(({ mark }) => mark));
  const planned = new Set(marks.values());
  let next = 0;
  const fresh = (): string => {
    for (;;) {
      const mark = markAt(next);
      next += 1;
      if (!taken.has(mark) && !planned.has(mark)) return mark;
    }
  };
  return order.map(([key, parts]) => {
    const first = firstOf(parts);
    const own = asCut.get(first.id);
    if (own !== undefined) return { mark: own.mark, signature: key, parts, asCut: own.length };
    const before = marks.get(first.id);
    const mark = before === undefined || taken.has(before) ? fresh() : before;
    taken.add(mark);
    return { mark, signature: key, parts };
  });
}

/** `A`, `B` … `Z`, `AA`: letters that look like figures (I, O) are left out. */
export function markAt(at: number): string {
  const letters = 'ABCDEFGHJKLMNPQRSTUVWXYZ';
  const letter = letters[at % letters.length] ?? '';
  return at < letters.length ? letter : markAt(Math.floor(at / letters.length) - 1) + letter;
}

/** Rows of the cut list; lengths on the marking grid. */
export function cutList(all: readonly Batch[], display: Display): readonly Untimed[] {
  const markBySignature = new Map(all.map(batch => [batch.signature, batch.mark]));
  return all.map(({ mark, parts, signature: own, asCut }) => {
    const first = firstOf(parts);
    const mirrored = mirrorSignature(first);
    const otherHand = mirrored === own ? undefined : markBySignature.get(mirrored);
    return {
      mark,
      name: namesOf(parts),
      uses: [...new Set(parts.map(part => part.path))],
      pieces: parts.map(part => part.id),
      section: first.section.name,
      width: sectionFigure(first, 'width'),
      thickness: sectionFigure(first, 'thickness'),
      length: asCut === undefined ? cutLength(first, display) : cutAlready(asCut, display),
      count: parts.length,
      notches: [],
      ...(otherHand === undefined ? {} : { otherHand }),
    };
  });
}

function cutLength(part: Part, display: Display): Figure {
  const length = snap(part.length, display.grid);
  const off = Math.abs(length - part.length) > display.grid / 1000;
  const because = off
    ? `${part.name} runs ${part.length.toFixed(2)} mm in the piece; nearest mark on the tape ${formatLength(length, display)}`
    : `length of ${part.name.toLowerCase()} as it stands in the piece, ${formatLength(length, display)}`;
  return figure(length, 'mm', because, COMPUTED);
}

function cutAlready(length: Mm, display: Display): Figure {
  const because = `cut already at ${formatLength(length, display)}; it stays as it is`;
  return figure(length, 'mm', because, MEASURED);
}

function sectionFigure(part: Part, side: 'width' | 'thickness'): Figure {
  const { section } = part;
  const because =
    section.source === MEASURED
      ? `these boards of ${section.name}, as measured`
      : `a ${section.name} is sold ${section.sold}`;
  return figure(section[side], 'mm', because, section.source);
}

function woodBySection(parts: readonly Part[]): ReadonlyMap<string, number> {
  const wood = new Map<string, number>();
  for (const part of parts) {
    const volume = part.length * part.section.width * part.section.thickness;
    wood.set(part.section.name, (wood.get(part.section.name) ?? 0) + volume);
  }
  return wood;
}

function namesOf(parts: readonly Part[]): string {
  return [...new Set(parts.map(part => part.name))].join(', ');
}

function nameOf(part: Part | undefined): string {
  return part ? part.section.name : '';
}

function lengthOf(part: Part | undefined): number {
  return part ? part.length : 0;
}

/** A batch is never empty: it is made when its first part is met. */
export function firstOf(parts: readonly Part[]): Part {
  const [first] = parts;
  if (!first) throw new Error('a batch of equal pieces without a piece');
  return first;
}
