import { formatLengthExact } from '../measure/format-length.js';
import type { StepRule } from '../recipe/recipe.js';
import { listWords } from '../text/list.js';
import { plural } from '../text/plural.js';
import { boardLines } from './board-lines.js';
import { boardsNamed, groupedBy, type NamedBoard, numbered } from './boards-named.js';
import { boardsBegun, type CutStop, cutStops } from './cut-stops.js';
import type { BoughtBoard, CutRow, Step, StepSetting } from './plan.js';
import { cutMinutes } from './step-minutes.js';
import type { Worked } from './steps.js';

/**
 * One step for each setting of the stop, sections in the order of the cut list, in the order of sawing. The id
 * carries section and length, so that a changed plan does not mistake one setting for another.
 */
export function cutSteps(rule: StepRule, bare: Step, worked: Worked): readonly Step[] {
  const stops = cutStops(worked);
  const first = stops.findIndex(stop => stop.rule === rule);
  const own = stops.filter(stop => stop.rule === rule);
  return own.map((setting, at) => {
    const [{ row }] = setting.rows;
    const boards = boardsOf(row.section, worked);
    const before = boardsBegun(boards, stops.slice(0, first + at));
    const begun = boardsBegun(boards, stops.slice(0, first + at + 1)) - before;
    const length = formatLengthExact(row.length.value, worked.display);
    const bright = setting.rows.flatMap(it => it.pieces);
    return {
      ...bare,
      id: `${rule.id}/${row.section}@${row.length.value.toFixed(2)}`,
      title: `${bare.title} ${bright.length} at ${length}: ${namesOf(setting)}`,
      big: { text: length, caption: `set the stop at this for ${row.section}` },
      settings: [
        { name: 'Stop', text: length },
        ...setting.rows.map(it => fromBoards(it, boards)),
        ...stopLines(setting, worked),
      ],
      tally: { of: 'piece', count: bright.length },
      bright,
      minutes: cutMinutes({ pieces: bright.length, ends: begun, isFirst: at === 0 }, rule, worked),
    };
  });
}

function boardsOf(section: string, { purchases }: Worked): readonly BoughtBoard[] {
  return purchases.find(it => it.section === section)?.boards ?? [];
}

/** So many pieces, how many of them are still to be cut, and how many of those come from which board. */
export type Counted = {
  readonly count: number;
  readonly left: number;
  readonly from: readonly (NamedBoard & { readonly count: number })[];
};

/** Which boards a mark is cut from, where there are several: another board would upset the plan of the others. */
export function markLine(
  { mark, name }: Pick<CutRow, 'mark' | 'name'>,
  { count, left, from }: Counted,
): StepSetting {
  const each = groupedBy(from, it => String(it.count)).map(([number, those]) => {
    const many = left === 1 ? '' : `${number}${those.length > 1 ? ' each' : ''} `;
    return `${many}from ${boardsNamed(those)}`;
  });
  const boards = each.length === 0 ? '' : `: ${each.join('; ')}`;
  const toGo = left === 0 ? ', all cut' : `, ${left} to go`;
  const text = `${count} x ${name.toLowerCase()}${left === count ? '' : toGo}${boards}`;
  return { name: `Mark ${mark}`, text, boards: true };
}

function fromBoards(
  { row, pieces }: CutStop['rows'][number],
  boards: readonly BoughtBoard[],
): StepSetting {
  const from = boards.flatMap(board => {
    const count = board.cuts.filter(cut => cut.mark === row.mark).length;
    return count === 0 ? [] : [{ count, ...numbered(board.number) }];
  });
  const { length: count } = pieces;
  return markLine(row, { count, left: count, from: boards.length < 2 ? [] : from });
}

/** What may be skipped for knots on the boards of a stop, and what has to be clamped there. */
function stopLines({ rows }: CutStop, { purchases, display }: Worked): readonly StepSetting[] {
  const marks = new Set(rows.map(({ row }) => row.mark));
  const [{ row }] = rows;
  const purchase = purchases.find(it => it.section === row.section);
  if (purchase === undefined) return [];
  const used = purchase.boards
    .filter(({ cuts }) => cuts.some(({ mark }) => marks.has(mark)))
    .map(({ number, slack, cuts, offcut }) => ({
      ...(purchase.boards.length === 1 ? { name: '' } : numbered(number)),
      slack,
      cuts,
      left: offcut,
    }));
  const { kerf } = purchase;
  return boardLines(used, marks, { kerf, display });
}

/** `stretcher and slats`: what there is one of is told as one. */
function namesOf({ rows }: CutStop): string {
  const counts = new Map<string, number>();
  for (const { row, pieces } of rows) {
    const name = row.name.toLowerCase();
    counts.set(name, (counts.get(name) ?? 0) + pieces.length);
  }
  return listWords([...counts].map(([name, count]) => (count === 1 ? name : plural(name))));
}
