import { formatLengthExact } from '../measure/format-length.js';
import type { NotchRow, Step } from './plan.js';
import { ruleMatches } from './select.js';
import type { Worked } from './steps.js';

type Details = Pick<Step, 'settings' | 'big' | 'tally' | 'bright'>;

/** What a step that cuts notches shows: depth, how long, what has to stay, on which marks. */
export function notchDetails(names: readonly string[], worked: Worked): Details {
  const pathById = new Map(worked.model.parts.map(part => [part.id, part.path]));
  const bright = worked.model.parts
    .filter(part =>
      part.notches.some(notch =>
        names.some(name => ruleMatches(name, notch.rule, pathById.get(part.id) ?? '')),
      ),
    )
    .map(part => part.id);
  const concerned = new Set(bright);
  const rules = new Set(names.map(name => name.slice(name.lastIndexOf('.') + 1)));
  const marks = worked.cutList.filter(row => row.pieces.some(id => concerned.has(id)));
  const rows = worked.notches.filter(
    row => rules.has(row.rule) && marks.some(it => it.mark === row.mark),
  );
  const length = (value: number) => formatLengthExact(value, worked.display);
  const [first] = rows;
  const count = rows.reduce((sum, row) => sum + row.count, 0);
  return {
    bright,
    settings: shapes(rows, length),
    ...(first ? { big: { text: length(first.depth.value), caption: 'deep' } } : {}),
    ...(count > 0 ? { tally: { of: 'notch', count } } : {}),
  };
}

/** Notches of one shape in one line, with the marks that get them. */
function shapes(rows: readonly NotchRow[], length: (value: number) => string): Step['settings'] {
  const lines = new Map<string, string[]>();
  for (const row of rows) {
    const shape = `${length(row.depth.value)} deep, ${length(row.along.value)} long, leaves ${length(row.left.value)}`;
    const end =
      row.fromEnd.value === 0 ? 'at the end' : `${length(row.fromEnd.value)} from the end`;
    const key = `${shape}, ${end}`;
    lines.set(key, [...(lines.get(key) ?? []), `${row.mark} (${row.each} each)`]);
  }
  return [...lines].flatMap(([shape, marks]) => [
    { name: 'Notch', text: shape },
    { name: 'On', text: marks.join(', ') },
  ]);
}
