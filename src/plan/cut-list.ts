import { COMPUTED, type Figure } from '../measure/figure.js';
import { figure } from '../measure/figure-text.js';
import { formatLength } from '../measure/format-length.js';
import type { Display } from '../measure/quantities.js';
import { snap } from '../measure/round.js';
import type { Model, Part } from '../model/part.js';
import { mirrorSignature, signature } from '../model/signature.js';
import type { CutRow } from './plan.js';

/** A row of the cut list before its notches are described. */
export type Batch = {
  readonly mark: string;
  readonly signature: string;
  readonly parts: readonly Part[];
};

/**
 * Equal pieces of the model under one mark each, longest first within a section, sections by how
 * much wood they need. Equal means: same section, length and notches, however the piece is turned.
 */
export function batches(model: Model): readonly Batch[] {
  const alike = new Map<string, Part[]>();
  for (const part of model.parts) {
    const key = signature(part);
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
  return order.map(([key, parts], at) => ({ mark: markAt(at), signature: key, parts }));
}

/** `A`, `B` … `Z`, `AA`: letters that look like figures (I, O) are left out. */
export function markAt(at: number): string {
  const letters = 'ABCDEFGHJKLMNPQRSTUVWXYZ';
  const letter = letters[at % letters.length] ?? '';
  return at < letters.length ? letter : markAt(Math.floor(at / letters.length) - 1) + letter;
}

/** Rows of the cut list; lengths on the marking grid. */
export function cutList(all: readonly Batch[], display: Display): readonly CutRow[] {
  const markBySignature = new Map(all.map(batch => [batch.signature, batch.mark]));
  return all.map(({ mark, parts, signature: own }) => {
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
      length: cutLength(first, display),
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

function sectionFigure(part: Part, side: 'width' | 'thickness'): Figure {
  const { section } = part;
  const because = `a ${section.name} is sold ${section.sold}`;
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
