import fc from 'fast-check';
import type { ScheduleProblem, Task } from '../../../src/solve/schedule/problem.js';

const NEEDS: readonly Task['needs'][] = [
  { all: [0] },
  { all: [1] },
  { all: [0, 1] },
  { anyOf: [0, 1] },
];

/** Up to five small tasks, waits from earlier to later ones, short sessions with gaps between. */
export const smallProblem: fc.Arbitrary<ScheduleProblem> = fc
  .record({
    tasks: fc.array(
      fc.record({
        minutes: fc.integer({ min: 1, max: 4 }),
        needs: fc.constantFrom(...NEEDS),
        loud: fc.boolean(),
        fair: fc.constantFrom(false, false, true),
        from: fc.constantFrom(0, 0, 0, 3),
      }),
      { minLength: 1, maxLength: 5 },
    ),
    links: fc.array(
      fc.record({ a: fc.nat(4), b: fc.nat(4), minutes: fc.constantFrom(0, 0, 1, 5) }),
      { maxLength: 4 },
    ),
    sessions: fc.array(
      fc.record({
        gap: fc.nat(4),
        length: fc.integer({ min: 2, max: 7 }),
        quiet: fc.nat(2),
        late: fc.nat(4),
      }),
      { minLength: 2, maxLength: 5 },
    ),
  })
  .map(({ tasks, links, sessions }) => {
    let at = 0;
    return {
      people: 2,
      tasks: tasks.map((task, number) => ({ ...task, id: `t${number}` })),
      waits: links
        .filter(({ a, b }) => a < b && b < tasks.length)
        .map(({ a, b, minutes }) => ({ first: `t${a}`, then: `t${b}`, minutes })),
      sessions: sessions.map(({ gap, length, quiet, late }) => {
        const from = at + gap;
        at = from + length;
        const quietFrom = Math.max(from, at - quiet);
        // Some sessions have no fair hours at all.
        const fair = { from: from + 1, to: at - late };
        return { from, to: at, quietFrom, ...(fair.to > fair.from && { fair }) };
      }),
    };
  });
