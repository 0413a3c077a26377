import { formatLength } from '../../measure/format-length.js';
import { snap } from '../../measure/round.js';
import type { Block } from '../../text/page.js';
import { alongBoard, groupAlike, isCutAlike } from '../board-bars.js';
import { isShortToHold, TO_HOLD, turnsOf } from '../cutting-order.js';
import { unfoundAsTheyCome } from '../keep-numbers.js';
import type { Plan, Purchase, StopSetting } from '../plan.js';

/** How the stop is set, and which boards a piece may come from. */
export function sawBlocks(plan: Plan): readonly Block[] {
  const [first] = plan.purchases;
  if (first === undefined) return [];
  const length = (value: number) => formatLength(value, plan.display);
  return [
    {
      kind: 'list',
      items: [
        ...orderWords(plan),
        `First cut of each board: ${length(first.trim)} off its end to square it. That end goes against the stop.`,
        `Measure from the stop to the side of the blade that faces it. The blade, ${length(first.kerf)}, then comes off the rest of the board and not off the piece.`,
        ...plan.purchases.flatMap(purchase => numberWords(purchase, plan)),
      ],
    },
  ];
}

/** Why the order is what it is, where pieces too short to be held come before all others of their section. */
function orderWords({ sawOrder, display }: Plan): readonly string[] {
  const isShort = (setting: StopSetting) => isShortToHold(setting.length.value);
  const isLate = (setting: StopSetting, at: number) =>
    isShort(setting) &&
    sawOrder.slice(0, at).some(it => it.section === setting.section && !isShort(it));
  if (!sawOrder.some(isShort) || sawOrder.every(isShort) || sawOrder.some(isLate)) return [];
  return [
    `Pieces under ${formatLength(TO_HOLD, display)} come first, while there is a long board to hold; then the longest first.`,
  ];
}

/** Cutting board by board saves wood where the pieces would not come out of any board as it comes. */
function numberWords(purchase: Purchase, { cutList, display }: Plan): readonly string[] {
  const { section, boards } = purchase;
  if (boards.length < 2) return [];
  const unfound = unfoundAsTheyCome(purchase, turnsOf(cutList));
  if (unfound.length === 0)
    return [
      `${section}: take each piece from the lowest number that still has room, in the order of the list.`,
    ];
  const words = unfound
    .map(({ mark, length, count }) => `${count} x ${mark} ${formatLength(length, display)}`)
    .join(', ');
  return [
    `${section}: keep to the numbers of the boards, that saves wood. Taken from any board as it comes, ${words} would find none.`,
  ];
}

/** For a saw without a stop: every piece's end from the squared end of its board, each rounded alone. */
export function tapeBlocks(plan: Plan): readonly Block[] {
  const { display } = plan;
  const unit = display.system === 'metric' ? ' mm' : ' in';
  const mark = (value: number) =>
    formatLength(snap(value, display.grid), display).replace(unit, '');
  const rows = plan.purchases.flatMap(purchase =>
    groupAlike(purchase.boards, isCutAlike).map(([board, ...others]) => [
      purchase.section,
      others.length > 0 ? `${board.number}-${others.at(-1)?.number}` : String(board.number),
      alongBoard(board.cuts, { start: 0, kerf: purchase.kerf })
        .map(({ cut, to }) => `${cut.mark} ${mark(to)}`)
        .join(', ') + unit,
    ]),
  );
  return [
    {
      kind: 'heading',
      text: 'Without a stop: where each piece ends, the tape hooked over the squared end',
    },
    {
      kind: 'table',
      table: {
        id: 'tape-marks',
        columns: [{ title: 'Board' }, { title: 'No.' }, { title: 'Ends at', grow: true }],
        rows,
      },
    },
    {
      kind: 'words',
      text: 'Mark an X beyond each line: the blade runs in the X. The next piece begins behind the blade.',
    },
  ];
}
