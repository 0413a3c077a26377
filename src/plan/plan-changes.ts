import { formatLength } from '../measure/format-length.js';
import type { Mm } from '../measure/quantities.js';
import { snap } from '../measure/round.js';
import { sameLength } from '../measure/tolerance.js';
import { count } from '../text/plural.js';
import type { CutPieces } from './as-cut.js';
import { type BoardsBeside, boardChanges } from './board-changes.js';
import { onTheTape } from './on-tape.js';
import type { CutRow, Plan, Step } from './plan.js';

/** What a measured length changes, told before it is taken over. */
export type PlanChanges = {
  /** Still to be made, by new figures. */
  readonly toCome: readonly string[];
  /** Made already: it stays, and this is how far it is off. */
  readonly stays: readonly string[];
  /** What to look at because of it. */
  readonly heed: readonly string[];
};

type Pair = BoardsBeside & { readonly cut: readonly CutPieces[] };

/** Every figure that is not what it was, in words for the bench. */
export function planChanges(pair: Pair): PlanChanges {
  const { before, after } = pair;
  const steps = stepChanges(pair);
  return {
    toCome: [
      ...lengthChanges(pair),
      ...spacingChanges(pair),
      ...boardChanges(pair),
      ...steps.toCome,
    ],
    stays: [...cutOtherwise(pair), ...steps.stays],
    heed: [...notAlike(pair), ...after.warnings.filter(words => !before.warnings.includes(words))],
  };
}

/** True where nothing that anybody cuts, marks or looks at is another one. */
export function changesNothing({ toCome, stays, heed }: PlanChanges): boolean {
  return toCome.length + stays.length + heed.length === 0;
}

function lengthChanges({ before, after, cut }: Pair): readonly string[] {
  const there = new Set(cut.flatMap(({ pieces }) => pieces));
  const was = rowsById(before);
  const groups = new Map<string, { readonly now: CutRow; readonly old: CutRow; count: number }>();
  let more: readonly CutRow[] = [];
  for (const now of after.cutList) {
    for (const id of now.pieces) {
      const old = was.get(id);
      if (old === undefined) more = [...more, now];
      if (old === undefined || there.has(id) || sameLength(old.length.value, now.length.value)) {
        continue;
      }
      const key = `${now.mark} ${old.length.value}`;
      const group = groups.get(key);
      if (group === undefined) groups.set(key, { now, old, count: 1 });
      else group.count += 1;
    }
  }
  const length = ({ length: it }: CutRow) => formatLength(it.value, after.display);
  const changed = [...groups.values()].map(({ now, old, count: all }) => {
    const mark = now.mark === old.mark ? now.mark : `${now.mark} (was ${old.mark})`;
    return `${mark} ${count(all, nameOf(now))}: ${length(old)} becomes ${length(now)}`;
  });
  const fewer = before.cutList.flatMap(old => {
    const now = rowsById(after);
    return old.pieces.filter(id => !now.has(id)).map(() => old);
  });
  return [
    ...changed,
    ...counted(more).map(
      ([row, all]) => `${row.mark} ${count(all, nameOf(row))} more, ${length(row)}`,
    ),
    ...counted(fewer).map(([row, all]) => `${row.mark} ${count(all, nameOf(row))} fewer`),
  ];
}

function counted(rows: readonly CutRow[]): readonly (readonly [CutRow, number])[] {
  return [...new Set(rows)].map(row => [row, rows.filter(it => it === row).length] as const);
}

function rowsById({ cutList }: Plan): ReadonlyMap<string, CutRow> {
  return new Map(cutList.flatMap(row => row.pieces.map(id => [id, row] as const)));
}

function nameOf({ name }: CutRow): string {
  return name.toLowerCase();
}

/** Pieces that are cut at another length than they would have now. */
function cutOtherwise({ after, cut }: Pair): readonly string[] {
  const { display, model } = after;
  const rows = rowsById(after);
  const ideal = new Map(model.parts.map(({ id, length }) => [id, snap(length, display.grid)]));
  return cut.flatMap(({ mark, length, pieces }) => {
    const off = pieces.filter(id => !sameLength(ideal.get(id) ?? length, length));
    const gone = pieces.filter(id => !ideal.has(id));
    const [first] = off;
    const lines: string[] = [];
    if (first !== undefined) {
      const name = rows.get(first)?.name.toLowerCase() ?? 'piece';
      const would = formatLength(ideal.get(first) ?? length, display);
      lines.push(
        `${mark} ${count(off.length, name)}: cut at ${formatLength(length, display)}; would be ${would} now, ${apart(length, ideal.get(first) ?? length, after)}`,
      );
    }
    if (gone.length > 0) lines.push(`${mark}: ${count(gone.length, 'piece')} not needed any more`);
    return lines;
  });
}

/** Pieces that were to be equal and would now be cut at two lengths: a panel of both is no rectangle. */
function notAlike({ before, after, cut }: Pair): readonly string[] {
  const there = new Set(cut.flatMap(({ pieces }) => pieces));
  const now = rowsById(after);
  const length = (mm: Mm) => formatLength(mm, after.display);
  return before.cutList.flatMap(row => {
    const made = row.pieces.filter(id => there.has(id));
    const open = row.pieces.filter(id => !there.has(id) && now.has(id));
    const [one, other] = [now.get(made[0] ?? ''), now.get(open[0] ?? '')];
    if (one === undefined || other === undefined) return [];
    if (sameLength(one.length.value, other.length.value)) return [];
    return [
      `${count(made.length, nameOf(row))} at ${length(one.length.value)} and ${open.length} at ${length(other.length.value)} do not go together in one frame: leave as planned to cut all alike, or cut the ${made.length} again.`,
    ];
  });
}

function apart(length: Mm, wanted: Mm, { display }: Plan): string {
  const by = formatLength(Math.abs(length - wanted), display);
  return length > wanted ? `${by} shorter` : `${by} longer`;
}

function spacingChanges({ before, after }: Pair): readonly string[] {
  return after.spacing.flatMap(now => {
    const old = before.spacing.find(({ id }) => id === now.id);
    if (old === undefined) return [];
    const lines: string[] = [];
    if (old.count !== now.count) lines.push(`${old.count} become ${now.count}`);
    if (!sameLength(old.gap.value, now.gap.value)) {
      const gap = (mm: Mm) => onTheTape(mm, after.display);
      const [was, is] = [gap(old.gap.value), gap(now.gap.value)];
      lines.push(
        was === is ? `the gap stays ${is}, the marks are new` : `the gap ${was} becomes ${is}`,
      );
    }
    if (lines.length === 0 && old.marks.join() !== now.marks.join()) lines.push('new marks');
    return lines.length === 0 ? [] : [`${now.name}: ${lines.join(', ')}`];
  });
}

/** Steps that say another figure than before; those that cut are told by their pieces. */
function stepChanges({
  before,
  after,
  work: { done },
}: Pair): Pick<PlanChanges, 'toCome' | 'stays'> {
  const changed = after.steps.filter(step => {
    const old = before.steps.find(({ id }) => id === step.id);
    return old !== undefined && step.phase !== 'cut' && figuresOf(old) !== figuresOf(step);
  });
  const open = changed.filter(({ id }) => !done.has(id)).map(({ title }) => title);
  const made = changed.filter(({ id }) => done.has(id)).map(({ title }) => title);
  return {
    toCome: open.length === 0 ? [] : [`New figures at: ${open.join('; ')}`],
    stays: made.length === 0 ? [] : [`Done by the old figures: ${made.join('; ')}`],
  };
}

function figuresOf({ big, settings, say, look, tally }: Step): string {
  return JSON.stringify([big?.text, settings, say, look, tally]);
}
