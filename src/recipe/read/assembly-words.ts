import type {
  Axis,
  JointRule,
  LayoutRule,
  NamedSize,
  NotchRule,
  PartRule,
  Repeat,
  StackRule,
} from '../recipe.js';
import { named } from './ids.js';
import { grouped, listed, type Named, needed, optional, present, type Reader } from './reader.js';
import { flagOf, formulaOf, idOf, oneOf, selectorOf, textOf, tripleOf } from './scalars.js';

const MOST_SIZES = 200;
const MOST_PARTS = 150;
const MOST_RULES = 150;

const AXES: readonly Axis[] = ['x', 'y', 'z'];
export const axis = oneOf(AXES);
const length = formulaOf('length');
const number = formulaOf('number');

const explained = grouped('a named size', {
  is: needed(formulaOf('anything')),
  why: optional(textOf),
});
const bare = formulaOf('anything');

const size: Reader<{ is: NamedSize['formula']; why: string }> = (entry, log) => {
  if (entry.kind !== 'map') {
    const is = bare(entry, log);
    return is === undefined ? undefined : { is, why: '' };
  }
  const read = explained(entry, log);
  return read === undefined ? undefined : { is: read.is, why: read.why ?? '' };
};

/** Reads `let`: `name: formula`, or with a why. */
export const sizes: Reader<readonly NamedSize[]> = each(
  named({ what: 'named sizes', read: size, most: MOST_SIZES }),
  ({ id, at, value }) => ({ id, formula: value.is, why: value.why, at }),
);

const counted = grouped('a repeat', { count: needed(number), step: needed(tripleOf) });
const laidOut = grouped('a repeat', { layout: needed(idOf('name')) });

const repeatCount: Reader<Extract<Repeat, { kind: 'count' }>> = (entry, log) => {
  const read = counted(entry, log);
  return read === undefined ? undefined : { kind: 'count', ...read };
};

const repeat: Reader<Repeat> = (entry, log) => {
  const spread = entry.kind === 'map' && entry.pairs.some(({ key }) => key === 'layout');
  if (!spread) return repeatCount(entry, log);
  const read = laidOut(entry, log);
  return read === undefined ? undefined : { kind: 'layout', layout: read.layout };
};

const part = grouped('a part', {
  name: needed(textOf),
  board: needed(idOf('name')),
  length: needed(length),
  runs: needed(axis),
  face: needed(axis),
  at: needed(tripleOf),
  repeat: optional(repeat),
  when: optional(formulaOf('flag')),
  loose: optional(flagOf),
});

/** Reads `parts`; the word `at` is the corner. */
export const parts: Reader<readonly PartRule[]> = each(
  named({ what: 'parts', read: part, most: MOST_PARTS }),
  ({ id, at, value: { at: corner, loose, ...rest } }) => ({
    ...present(rest),
    id,
    corner,
    loose: loose ?? false,
    at,
  }),
);

const layout = grouped('a layout', {
  spread: needed(idOf('name')),
  along: needed(axis),
  from: needed(length),
  over: needed(length),
  gap: needed(grouped('a gap', { want: needed(length), from: needed(length), to: needed(length) })),
  ends: needed(oneOf(['flush', 'gap', 'half'])),
});

/** Reads `layouts`. */
export const layouts: Reader<readonly LayoutRule[]> = each(
  named({ what: 'layouts', read: layout, most: MOST_RULES }),
  ({ id, at, value: { gap, ...rest } }) => ({
    ...rest,
    id,
    want: gap.want,
    least: gap.from,
    most: gap.to,
    at,
  }),
);

const stack = grouped('a stack', {
  name: needed(textOf),
  boards: needed(listed(idOf('name'), 10)),
  length: needed(length),
  runs: needed(axis),
  each: needed(idOf('name')),
  height: needed(length),
  at: needed(tripleOf),
  repeat: optional(repeatCount),
});

/** Reads `stacks`. */
export const stacks: Reader<readonly StackRule[]> = each(
  named({ what: 'stacks', read: stack, most: MOST_RULES }),
  ({ id, at, value: { at: corner, ...rest } }) => ({ ...present(rest), id, corner, at }),
);

const notch = grouped('a notch', {
  name: needed(textOf),
  cut: needed(selectorOf),
  over: needed(selectorOf),
  share: needed(oneOf(['all', 'half'])),
  along: optional(axis),
});

/** Reads `notches`. */
export const notches: Reader<readonly NotchRule[]> = each(
  named({ what: 'notches', read: notch, most: MOST_RULES }),
  ({ id, at, value }) => ({ ...present(value), id, at }),
);

const joint = grouped('a joint', {
  name: needed(textOf),
  from: needed(selectorOf),
  into: needed(selectorOf),
  with: needed(oneOf(['screw', 'brad', 'glue'])),
  each: needed(number),
  glue: needed(flagOf),
  drive: optional(axis),
});

/** Reads `joints`. */
export const joints: Reader<readonly JointRule[]> = each(
  named({ what: 'joints', read: joint, most: MOST_RULES }),
  ({ id, at, value }) => ({ ...present(value), id, at }),
);

/** Makes one thing of each named entry. */
export function each<T, U>(
  read: Reader<readonly Named<T>[]>,
  make: (entry: Named<T>) => U,
): Reader<readonly U[]> {
  return (entry, log) => read(entry, log)?.map(make);
}
