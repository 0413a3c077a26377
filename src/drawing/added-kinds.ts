import { lengthKey, lessThan, sameLength } from '../measure/tolerance.js';
import type { Part } from '../model/part.js';
import type { PaperBox, Sight, Span } from './sight.js';

/** A part as it lies on the paper. */
export type Lying = { readonly part: Part; readonly box: PaperBox };

/** A stretch of the drawing with a length worth writing. */
export type Stretch = { readonly along: 'u' | 'v'; readonly span: Span };

/** Equal boards that are being added, and what one wants to know about them in this view. */
export type AddedKind = {
  readonly name: string;
  readonly count: number;
  /** The one nearest the datum. */
  readonly first: PaperBox;
  /** Missing where one looks at the end of the board. */
  readonly length: Stretch | undefined;
  /** From the datum to the first; missing where the first lies flush with it. */
  readonly offset: Stretch | undefined;
  /** From the first to the next of the kind, where there is one with air between. */
  readonly gap: Stretch | undefined;
};

/**
 * Sorts boards into kinds of the same name, section and length, in the order of the list.
 * Two seat rails 48 in long, one behind the other, are one kind with a count of 2.
 */
export function addedKinds(lying: readonly Lying[], sight: Sight): readonly AddedKind[] {
  const groups: Lying[][] = [];
  for (const one of lying) {
    const group = groups.find(
      ([first]) => first !== undefined && partKind(first.part) === partKind(one.part),
    );
    if (group === undefined) groups.push([one]);
    else group.push(one);
  }
  return groups.flatMap(group => kindOf(group, sight));
}

/** The same for equal boards, wherever they are: name, section and length. */
export function partKind({ name, section, length }: Part): string {
  return `${name} ${section.name} ${lengthKey(length)}`;
}

function kindOf(group: readonly Lying[], sight: Sight): readonly AddedKind[] {
  // A kind may stand both ways, as the rails of a box do: those seen lengthwise tell more.
  const lengthwise = group.filter(one => one.part.runs !== sight.depth);
  const told = [...(lengthwise.length > 0 ? lengthwise : group)].sort(fromDatum);
  const [first] = told;
  if (first === undefined) return [];
  const runs = first.part.runs;
  const along = runs === sight.u ? 'u' : 'v';
  const length: Stretch | undefined =
    runs === sight.depth ? undefined : { along, span: first.box[along] };
  const across = length === undefined ? spreadAxis(told) : along === 'u' ? 'v' : 'u';
  const boxes = told.map(one => one.box);
  const offset: Span = { from: 0, to: first.box[across].from };
  return [
    {
      name: first.part.name,
      count: group.length,
      first: first.box,
      length,
      offset: lessThan(offset.from, offset.to) ? { along: across, span: offset } : undefined,
      gap:
        firstGap(first.box, boxes, across) ??
        firstGap(first.box, boxes, across === 'u' ? 'v' : 'u'),
    },
  ];
}

function fromDatum(a: Lying, b: Lying): number {
  if (!sameLength(a.box.u.from, b.box.u.from)) return a.box.u.from - b.box.u.from;
  return a.box.v.from - b.box.v.from;
}

/** Boards seen on end are spread along the paper's width unless all stand over each other. */
function spreadAxis(lying: readonly Lying[]): 'u' | 'v' {
  const [first] = lying;
  const stacked = lying.every(
    one => first !== undefined && sameLength(one.box.u.from, first.box.u.from),
  );
  return stacked && lying.length > 1 ? 'v' : 'u';
}

/** Air between the first board and the next one that lies level with it along the axis. */
function firstGap(
  first: PaperBox,
  boxes: readonly PaperBox[],
  along: 'u' | 'v',
): Stretch | undefined {
  const other = along === 'u' ? 'v' : 'u';
  const next = boxes
    .filter(box => lessThan(first[along].to, box[along].from))
    .filter(box => sameLength(box[other].from, first[other].from))
    .map(box => box[along].from);
  if (next.length === 0) return undefined;
  return { along, span: { from: first[along].to, to: Math.min(...next) } };
}
