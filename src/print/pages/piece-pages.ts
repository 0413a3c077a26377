import type { Piece } from '../sheet/piece.js';
import { cutPieces } from './cut-sheet.js';
import { jointPieces } from './joint-pieces.js';
import { marksPieces } from './marks-pieces.js';
import type { Pack, PageName } from './pack.js';
import { shoppingPieces } from './shopping-page.js';
import { timePieces } from './time-sheet.js';
import { viewPieces } from './view-pieces.js';

type PiecePage = Extract<PageName, 'views' | 'shopping' | 'cut' | 'joints' | 'marks' | 'time'>;

/** Parts of the paper that are laid out for it, piece under piece. */
export const PIECE_PAGES: Readonly<
  Record<PiecePage, { readonly title: string; readonly pieces: (pack: Pack) => readonly Piece[] }>
> = {
  views: { title: 'From all sides', pieces: viewPieces },
  shopping: { title: 'For the store', pieces: shoppingPieces },
  cut: { title: 'At the saw', pieces: cutPieces },
  joints: { title: 'Joints', pieces: jointPieces },
  marks: { title: 'Spacing', pieces: marksPieces },
  time: { title: 'Time plan', pieces: timePieces },
};
