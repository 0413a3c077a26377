import type { Joint, Part } from '../../model/part.js';

/** What a step works on: boards being added, boards that stand there, joints that it makes. */
export type Scene = {
  readonly bright: readonly Part[];
  readonly standing: readonly Part[];
  readonly made: readonly Joint[];
};

/** One of several places where the same is done, and how many there are. */
export type Focus = {
  readonly bright: readonly Part[];
  readonly standing: readonly Part[];
  readonly places: number;
};

/**
 * Where a step does the same at several stands of an assembly (eight panels, two boxes), one of them is
 * enough to see and large enough to be seen. The smallest stands that no joint of the step leads out of
 * are taken; otherwise all of it is in sight.
 */
export function focusOn({ bright, standing, made }: Scene): Focus {
  const deepest = Math.max(0, ...bright.map(({ id }) => standsOf(id).length));
  for (let depth = deepest; depth > 0; depth -= 1) {
    const stands = new Set(bright.map(({ id }) => standsOf(id)[depth - 1]));
    const [first] = stands;
    if (first === undefined || stands.has(undefined) || stands.size < 2) continue;
    const isWithin = ({ from, into }: Joint) =>
      standsOf(from)[depth - 1] === standsOf(into)[depth - 1];
    if (!made.every(isWithin)) continue;
    const inFirst = ({ id }: Part) => id.startsWith(`${first}.`);
    return {
      bright: bright.filter(inFirst),
      standing: standing.filter(inFirst),
      places: stands.size,
    };
  }
  return { bright, standing, places: 1 };
}

/**
 * The stands that a part is in, the widest first: `planter/left.panel/front.post/1` stands in
 * `planter/left` and in `planter/left.panel/front`.
 */
function standsOf(id: string): readonly string[] {
  const names = id.split('.').slice(0, -1);
  return names.map((_, at) => names.slice(0, at + 1).join('.'));
}
