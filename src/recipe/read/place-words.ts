import type { PlacedAssembly, Stand, Take } from '../recipe.js';
import { axis, each } from './assembly-words.js';
import type { Entry, MapEntry } from './entry.js';
import { idText, named } from './ids.js';
import type { Log } from './log.js';
import {
  allRead,
  asMap,
  grouped,
  type Named,
  needed,
  optional,
  pickWords,
  present,
  type Reader,
} from './reader.js';
import { formulaOf, idOf, oneOf, tripleOf } from './scalars.js';

const MOST_USES = 60;
const MOST_STANDS = 60;
const MOST_TAKES = 30;

/** Reads `takes`: the sizes that an assembly is given where it is used. */
export const takes: Reader<readonly Take[]> = each(
  named({ what: 'takes', read: oneOf(['length', 'count']), most: MOST_TAKES }),
  ({ id, at, value }) => ({ id, kind: value, at }),
);

const TURNS = { '0': 0, '1': 1, '2': 2, '3': 3 } as const;
const turn = oneOf(['0', '1', '2', '3']);

const stand = grouped('a stand', {
  at: needed(tripleOf),
  turn: optional(turn),
  mirror: optional(axis),
});

const stands: Reader<readonly Stand[]> = each(
  named({ what: 'stands', read: stand, most: MOST_STANDS }),
  ({ id, value: { at: corner, turn: quarter, mirror } }) => ({
    ...present({ mirror }),
    id,
    corner,
    turn: TURNS[quarter ?? '0'],
  }),
);

const WORDS = {
  use: needed(idOf('name')),
  stands: needed(stands),
  when: optional(formulaOf('flag')),
};

type Use = Omit<PlacedAssembly, 'id' | 'at'>;

/** A use of an assembly: beside the fixed words stand the sizes that the assembly takes. */
const use: Reader<Use> = (entry: Entry, log: Log) => {
  const map = asMap(entry, log, 'a use of an assembly');
  if (map === undefined) return undefined;
  const read = pickWords(map, { what: 'a use of an assembly', words: WORDS, log });
  const given = givenSizes(map, log);
  if (read === undefined || given === undefined) return undefined;
  const { use: assembly, ...rest } = read;
  return { ...present(rest), assembly, sizes: given };
};

const value = formulaOf('anything');

function givenSizes(map: MapEntry, log: Log): Use['sizes'] | undefined {
  const pairs = map.pairs.filter(({ key }) => !Object.hasOwn(WORDS, key));
  return allRead(
    pairs.map(({ key, at, value: entry }) => {
      const take = idText(key, at, { log, style: 'name' });
      const formula = value(entry, log);
      return take === undefined || formula === undefined ? undefined : { take, formula };
    }),
  );
}

/** Reads `places`. */
export const places: Reader<readonly PlacedAssembly[]> = each(
  named({ what: 'places', read: use, most: MOST_USES }),
  ({ id, at, value: read }: Named<Use>) => ({ ...read, id, at }),
);
