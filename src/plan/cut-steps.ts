import { formatLength, formatLengthExact } from '../measure/format-length.js';
import { inches } from '../measure/inch.js';
import type { Mm } from '../measure/quantities.js';
import { snapDown } from '../measure/round.js';
import { lessThan, sameLength } from '../measure/tolerance.js';
import type { StepRule } from '../recipe/recipe.js';
import { listWords } from '../text/list.js';
import { plural } from '../text/plural.js';
import type { CutRow, Purchase, Step } from './plan.js';
import { selectParts } from './select.js';
import { cutMinutes } from './step-minutes.js';
import type { Worked } from './steps.js';

/** Pieces of one section and length that a step cuts at one setting of the stop. */
type Setting = {
  readonly rows: readonly { readonly row: CutRow; readonly pieces: readonly string[] }[];
};

/**
 * One step for each setting of the stop, sections in the order of the cut list, longest first. The id
 * carries section and length, so that a changed plan does not mistake one setting for another.
 */
export function cutSteps(rule: StepRule, bare: Step, worked: Worked): readonly Step[] {
  const wanted = new Set(selectParts(worked.model, rule.cuts).map(part => part.id));
  const settings = settingsOf(worked.cutList, wanted);
  return settings.flatMap((setting, at) => {
    const [first] = setting.rows;
    if (!first) return [];
    const { row } = first;
    const length = formatLengthExact(row.length.value, worked.display);
    const bright = setting.rows.flatMap(it => it.pieces);
    return [
      {
        ...bare,
        id: `${rule.id}/${row.section}@${row.length.value.toFixed(2)}`,
        title: `${bare.title} ${bright.length} at ${length}: ${namesOf(setting)}`,
        big: { text: length, caption: `set the stop at this for ${row.section}` },
        settings: [
          { name: 'Stop', text: length },
          ...setting.rows.map(it => ({
            name: `Mark ${it.row.mark}`,
            text: `${it.pieces.length} x ${it.row.name.toLowerCase()}${fromBoards(it.row, worked.purchases)}`,
          })),
          ...slackLines(setting, worked),
        ],
        tally: { of: 'piece', count: bright.length },
        bright,
        minutes: cutMinutes(bright.length, at === 0, rule, worked),
      },
    ];
  });
}

/** Which boards of the purchase a mark is cut from: another board would upset the plan of the others. */
function fromBoards({ mark, section }: CutRow, purchases: readonly Purchase[]): string {
  const boards = purchases.find(it => it.section === section)?.boards ?? [];
  const counts = boards.flatMap(board => {
    const count = board.cuts.filter(cut => cut.mark === mark).length;
    return count === 0 ? [] : [`${count} from no. ${board.number}`];
  });
  return counts.length === 0 || boards.length < 2 ? '' : `: ${counts.join(', ')}`;
}

/** Less than this is no room to dodge anything. */
const NO_ROOM: Mm = inches(1 / 4);

/**
 * How much of each board may be skipped for a knot, in all: the pieces of it still come out. It is told at each
 * stop that the board comes to, and may be taken at one of them.
 */
function slackLines({ rows }: Setting, { purchases, display }: Worked): Step['settings'] {
  const marks = new Set(rows.map(({ row }) => row.mark));
  const section = rows[0]?.row.section;
  const boards = purchases.find(it => it.section === section)?.boards ?? [];
  const used = boards.filter(({ cuts }) => cuts.some(({ mark }) => marks.has(mark)));
  if (used.length === 0) return [];
  const free = used.filter(({ slack }) => !lessThan(slack, NO_ROOM));
  const told = free.map(({ number, slack }) => {
    const room = formatLength(snapDown(slack, display.grid), display);
    return boards.length === 1 ? room : `${room} on no. ${number}`;
  });
  const others = free.length < used.length ? ', none on the others' : '';
  const text =
    free.length === 0 ? 'no room to skip one' : `once a board: skip ${told.join(', ')}${others}`;
  return [{ name: 'Knots', text }];
}

function namesOf({ rows }: Setting): string {
  return listWords([...new Set(rows.map(({ row }) => plural(row.name.toLowerCase())))]);
}

function settingsOf(rows: readonly CutRow[], wanted: ReadonlySet<string>): readonly Setting[] {
  const settings: { rows: { row: CutRow; pieces: readonly string[] }[] }[] = [];
  for (const row of rows) {
    const pieces = row.pieces.filter(id => wanted.has(id));
    if (pieces.length === 0) continue;
    const same = settings.find(({ rows: [it] }) => it !== undefined && atOneStop(it.row, row));
    if (same) same.rows.push({ row, pieces });
    else settings.push({ rows: [{ row, pieces }] });
  }
  return settings;
}

function atOneStop(a: CutRow, b: CutRow): boolean {
  return a.section === b.section && sameLength(a.length.value, b.length.value);
}
