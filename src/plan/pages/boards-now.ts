import { capital } from '../../measure/capital.js';
import { formatBoardLength, formatLength } from '../../measure/format-length.js';
import type { Display, Mm } from '../../measure/quantities.js';
import { fromUnits } from '../../measure/round.js';
import type { BarRow, Block } from '../../text/page.js';
import { offcutStretch, pieceStretches } from '../board-bars.js';
import { boardName, isFresh, type Rack, type RackBoard } from '../rack.js';
import type { Bench } from '../rack-now.js';
import { roomOn } from '../rack-room.js';
import {
  isAsPlanned,
  isOpen,
  leftOfBoards,
  progressWords,
  type RackTold,
  racksTold,
} from '../rack-told.js';
import { cutWords } from './boards-page.js';

/** The boards as they are now, above what was planned; nothing before the first cut. */
export function boardsNowBlocks(bench: Bench): readonly Block[] {
  const told = racksTold(bench);
  if (told.length === 0) return [];
  return [
    ...told.flatMap(it => sectionBlocks(it, bench)),
    { kind: 'heading', text: 'As it was planned at first' },
  ];
}

function sectionBlocks(told: RackTold, { plan, setting }: Bench): readonly Block[] {
  const { section, cutUp, open, happened, planned, rack } = told;
  const { display } = setting;
  if (!isOpen(told)) {
    return [{ kind: 'heading', text: `${section} now: all cut` }, ...changes(told)];
  }
  const bars = open.map(board => barOf(board, rack, { display, note: noteOf(board) }));
  function noteOf(board: RackBoard): string {
    if (board.kind === 'to-buy') return ', still to buy';
    return happened.length === 0 || isAsPlanned(board, plan, section) ? '' : ', cut otherwise now';
  }
  return [
    { kind: 'heading', text: `${section} now: ${progressWords(told)}` },
    ...(planned === '' ? [] : changes(told)),
    ...(told.buyWords === ''
      ? []
      : [{ kind: 'words' as const, text: `STILL TO BUY: ${told.buyWords}.` }]),
    { kind: 'bars', bars },
    ...(cutUp.length === 0
      ? []
      : [{ kind: 'words' as const, text: `Cut up: ${leftOfBoards(cutUp, display)}.` }]),
  ];
}

function changes({ happened, planned }: RackTold): readonly Block[] {
  if (happened.length === 0) return [];
  return [{ kind: 'list', items: [...happened.map(capital), planned] }];
}

type Told = { readonly display: Display; readonly note: string };

function barOf(board: RackBoard, rack: Rack, { display, note }: Told): BarRow {
  const { kerf, trim } = rack;
  const length = (mm: Mm) => formatLength(mm, display);
  const left = fromUnits(roomOn(board, rack));
  const cuts = board.cuts.length === 0 ? 'nothing planned' : cutWords(board, length);
  return {
    name: board.number === undefined ? '+' : String(board.number),
    text: `${whatIsLeft(board, display)}${note}: ${cuts}`,
    bar: {
      length: board.length,
      stretches: [
        ...offcutStretch(left, board.length),
        ...pieceStretches(board.cuts, { start: isFresh(board) ? trim + kerf : 0, kerf, display }),
      ],
    },
  };
}

/** The number stands beside it: `8 ft`, `the rest, 50-1/2 in`, `beyond 38 in, 58 in`. */
function whatIsLeft(board: RackBoard, display: Display): string {
  const { kind, number, stretch = '' } = board;
  const length = formatBoardLength(board.length, display);
  if (number === undefined) {
    const isWhole = kind === 'to-buy' || kind === 'spare';
    return isWhole ? boardName(board) : `${boardName(board)}, ${length}`;
  }
  return [kind === 'started' ? 'the rest' : '', stretch, length].filter(it => it !== '').join(', ');
}
