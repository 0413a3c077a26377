import type { Source } from '../measure/figure.js';
import { FINISHING_TABLES } from './finishing-tables.js';
import { JOINING_TABLES } from './joining-tables.js';
import { LOAD_TABLES } from './load-tables.js';
import { SHOP_TABLES } from './shop-tables.js';
import { PUBLICATIONS } from './sources.js';
import { STRENGTH_TABLES } from './strength-tables.js';
import { WEATHER_TABLES } from './weather-tables.js';
import { WOOD_TABLES } from './wood-tables.js';

/** One place in a publication, and the tables here that stand on it. */
export type SourceLine = Source & {
  /** The publication in full; its short name again where there is none, as for common practice. */
  readonly citation: string;
  readonly tables: readonly string[];
};

const TABLES = {
  ...WOOD_TABLES,
  ...JOINING_TABLES,
  ...FINISHING_TABLES,
  ...WEATHER_TABLES,
  ...SHOP_TABLES,
  ...STRENGTH_TABLES,
  ...LOAD_TABLES,
};

/**
 * Every source that a table stands on, once, ordered by publication and place. Those of standing
 * "memory" have not been looked up: `sourceList().filter(line => line.standing === 'memory')`.
 */
export function sourceList(): readonly SourceLine[] {
  const lines = new Map<string, SourceLine>();
  for (const [table, rows] of Object.entries(TABLES)) {
    for (const source of sourcesIn(rows)) {
      const id = [source.publication, source.place, source.standing].join('|');
      const tables = lines.get(id)?.tables ?? [];
      if (tables.includes(table)) continue;
      lines.set(id, { ...source, citation: citationOf(source), tables: [...tables, table] });
    }
  }
  return [...lines.values()].sort(byPublication);
}

/** Every source found anywhere inside a table. */
function sourcesIn(part: unknown): readonly Source[] {
  if (typeof part !== 'object' || part === null) return [];
  return isSource(part) ? [part] : Object.values(part).flatMap(sourcesIn);
}

function isSource(part: object): part is Source {
  return 'publication' in part && 'standing' in part;
}

function citationOf({ publication }: Source): string {
  const found = Object.values(PUBLICATIONS).find(({ name }) => name === publication);
  return found === undefined ? publication : found.citation;
}

function byPublication(a: Source, b: Source): number {
  const key = ({ publication, place }: Source) => `${publication}|${place ?? ''}`;
  return key(a) < key(b) ? -1 : 1;
}
