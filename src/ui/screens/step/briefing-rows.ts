import { textWidth } from '../../../text/width.js';
import { cut, padEnd } from '../../../text/wrap.js';
import { plainer } from '../../widgets/facts.js';
import { BLANK, type Row, withFoot } from '../../widgets/rows.js';
import { isAtEnd, limitTop, type ScrollRoom, scrollTo, scrollWords } from '../../widgets/scroll.js';
import { briefingBody } from './briefing-body.js';
import { moveRow } from './move-words.js';
import type { Move } from './next-move.js';
import type { Work } from './work-rows.js';

type Briefing = Extract<Move, { readonly kind: 'brief' }>;

const WIDEST = 76;
const HEAD_ROWS = 3;

/** What is told before the first work of its kind, as high as the screen. */
export function briefingRows(move: Briefing, work: Work, top: number): readonly Row[] {
  const { step, at } = work;
  const { rows } = at.size;
  const columns = columnsOf(work);
  const before = plainer(at.ascii)(`Before: ${step.title}`);
  const which = move.of === 1 ? '' : `${move.number} of ${move.of} to tell`;
  const head: readonly Row[] = [
    {
      text: `${padEnd(cut(before, columns - textWidth(which) - 2), columns - textWidth(which))}${which}`,
    },
    { text: cut(askWords(move, work), columns), tone: 'strong' },
    BLANK,
  ];
  const room = briefingRoom(move, work);
  const first = limitTop(top, room);
  const body = bodyRows(move, work).slice(first, first + room.height);
  const foot: Row = isAtEnd(top, room)
    ? moveRow(move, work)
    : { text: `Space: read on   (${scrollWords(first, room)})`, tone: 'now' };
  return withFoot([...head, ...body], [foot], rows);
}

/** How far a caution scrolls that is higher than the screen: none of it may be left unread. */
export function briefingRoom(move: Briefing, work: Work): ScrollRoom {
  return { count: bodyRows(move, work).length, height: bodyHeight(work) };
}

/** First line after reading on, by a window less one line. */
export function readOn(top: number, room: ScrollRoom): number {
  return scrollTo(top, { name: 'page-down' }, room) ?? top;
}

/** Who speaks, and who answers. */
function askWords({ page }: Briefing, { build }: Work): string {
  if (build.plan.time.people === 1) return 'Read this before you begin.';
  switch (page.kind) {
    case 'read':
    case 'heed':
      return 'The lead reads this aloud, the helper says it back.';
    case 'ask':
      return 'The lead asks, the helper answers.';
    case 'tell':
      return 'The lead shows and tells this, then asks.';
    case 'refresh':
      return 'The lead reads this aloud, then asks.';
  }
}

function bodyRows({ page }: Briefing, work: Work): readonly Row[] {
  const style = { columns: columnsOf(work), ascii: work.at.ascii };
  const styles = [true, false].map(roomy => briefingBody(page, { ...style, roomy }));
  return styles.find(rows => rows.length < bodyHeight(work)) ?? styles.at(-1) ?? [];
}

/** Between the three rows on top and the row that says what the big key does. */
function bodyHeight({ at }: Work): number {
  return Math.max(1, at.size.rows - HEAD_ROWS - 1);
}

function columnsOf({ at }: Work): number {
  return Math.min(WIDEST, at.size.columns);
}
