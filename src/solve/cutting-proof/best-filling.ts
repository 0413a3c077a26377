/** A piece for filling one board: what it takes of it, blade counted, what it is worth, how many there are. */
export type Filler = { readonly takes: number; readonly worth: number; readonly count: number };

/** How often each piece lies on the board, and what they are worth together. */
export type Filling = { readonly times: readonly number[]; readonly worth: number };

type State = {
  readonly used: number;
  readonly worth: number;
  readonly before: State | undefined;
  readonly piece: number;
};

/** Fillings that may still be looked at; a longer list is nothing that a person would check. */
export type Patience = { left: number };

/**
 * The most valuable pieces that one board holds, found by keeping, piece after piece, only those fillings that
 * no other beats in both room and worth. Whole numbers in, exact. Undefined when the patience ends first.
 * A board with room 3003 for pieces that take 1003 and are worth 250 holds two of them, worth 500.
 */
export function bestFilling(
  room: number,
  fillers: readonly Filler[],
  patience: Patience,
): Filling | undefined {
  let states: readonly State[] = [{ used: 0, worth: 0, before: undefined, piece: -1 }];
  for (const [piece, { takes, worth, count }] of fillers.entries()) {
    for (let nth = 0; nth < Math.min(count, Math.floor(room / takes)); nth++) {
      const more = states
        .filter(state => state.used + takes <= room)
        .map(state => ({
          used: state.used + takes,
          worth: state.worth + worth,
          before: state,
          piece,
        }));
      const merged = undominated(states, more);
      patience.left -= merged.length;
      if (patience.left < 0) return undefined;
      if (merged.length === states.length && merged.every((state, at) => state === states[at]))
        break;
      states = merged;
    }
  }
  const best = states.at(-1);
  if (best === undefined) throw new Error('a board without even an empty filling');
  const times = fillers.map(() => 0);
  for (let at: State | undefined = best; at?.before !== undefined; at = at.before)
    times[at.piece] = (times[at.piece] ?? 0) + 1;
  return { times, worth: best.worth };
}

/** Both lists rise in room and worth; so does what is left of them together. */
function undominated(a: readonly State[], b: readonly State[]): readonly State[] {
  const all = [...a, ...b].sort((x, y) => x.used - y.used || y.worth - x.worth);
  const kept: State[] = [];
  let most = -1;
  for (const state of all) {
    if (state.worth <= most) continue;
    kept.push(state);
    most = state.worth;
  }
  return kept;
}
