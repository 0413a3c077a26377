import type { CloseUp } from '../drawing/close-up.js';
import {
  CORNER_VIEWS,
  type DrawInput,
  draw,
  fullestSide,
  isCorner,
  SQUARE_VIEWS,
  VIEWS,
} from '../drawing/draw.js';
import type { CornerView, Drawing, SquareView, View } from '../drawing/strokes.js';
import type { Model } from '../model/part.js';
import { type CellPicture, setInCells } from './canvas.js';

/** What is to be drawn; `id` names the parts that are bright and standing. */
export type Subject = {
  readonly id: string;
  readonly input: DrawInput;
  /** How it is drawn from a corner, where that is more than its boards in their places. */
  readonly corner?: {
    readonly draw: (view: CornerView) => Drawing;
    readonly boards: number;
    /** Boards are drawn off their places. */
    readonly isApart: boolean;
  };
  /** What has to be said under it from every side. */
  readonly notes: readonly string[];
  readonly closeUps: () => readonly CloseUp[];
};

/** From where one looks: at the whole, or at one of its close-ups, which are numbered from 1. */
export type Sight = { readonly view: View; readonly close: number };

export type Frame = { readonly columns: number; readonly rows: number; readonly ascii: boolean };

export type SetPicture = CellPicture & {
  readonly title: string;
  readonly inWords: string;
  /** What belongs under the drawing. */
  readonly under: readonly string[];
};

type Kept = {
  readonly drawings: Map<string, Drawing>;
  readonly set: Map<string, SetPicture>;
  readonly closeUps: Map<string, readonly CloseUp[]>;
  readonly sides: Map<string, SquareView>;
};

/** Drawings don't change as long as their model lives, and take longer than a key press may. */
const kept = new WeakMap<Model, Kept>();
/** Every window size that somebody drags through would stay otherwise. */
const MOST_SET = 100;

/** The subject from one side, set in the frame. */
export function pictureOf(subject: Subject, sight: Sight, frame: Frame): SetPicture {
  const { set } = keptOf(subject.input.model);
  const { columns, rows, ascii } = frame;
  const id = `${sight.view} ${sight.close} ${columns}x${rows} ${ascii} ${subject.id}`;
  const known = set.get(id);
  if (known !== undefined) return known;
  const drawing = drawingOf(subject, sight);
  const { title, inWords, notes } = drawing;
  const picture = setInCells(drawing, { columns, rows }, { ascii });
  const made = { ...picture, title, inWords, under: notes };
  if (set.size >= MOST_SET) set.clear();
  set.set(id, made);
  return made;
}

/** More than this share of edges left out, and a corner view is a thicket; found by looking. */
const THICKET = 0.36;
/** With fewer cells than this for each board it is one for certain; found by looking. */
const CELLS_FOR_A_BOARD = 30;

/**
 * From a front corner where something is pulled apart and there is room to see it; else the view in which
 * most is seen of what is bright; the front where nothing is.
 */
export function bestSight(subject: Subject, frame: Frame): Sight {
  if (subject.input.bright.size === 0) return whole('front');
  const { corner } = subject;
  const isRoomy =
    corner !== undefined && frame.columns * frame.rows >= corner.boards * CELLS_FOR_A_BOARD;
  if (isRoomy && corner.isApart) {
    const sight = whole('corner-right');
    const { leftOut = 1 } = pictureOf(subject, sight, frame);
    if (leftOut <= THICKET && drawingOf(subject, sight).patches.length > 0) return sight;
  }
  const { sides } = keptOf(subject.input.model);
  const side = sides.get(subject.id) ?? fullestSide(subject.input);
  sides.set(subject.id, side);
  return whole(side);
}

function whole(view: View): Sight {
  return { view, close: 0 };
}

/** The view that comes after this one, all of them in turn. */
export function nextView(view: View): View {
  return VIEWS[(VIEWS.indexOf(view) + 1) % VIEWS.length] ?? 'front';
}

/** The next side of the whole, or the first corner after the last side. */
export function nextSide({ view }: Sight): Sight {
  const at = isCorner(view) ? -1 : SQUARE_VIEWS.indexOf(view);
  return whole(SQUARE_VIEWS[at + 1] ?? 'corner-right');
}

/** A quarter turn: from corner to corner, or from side to side. */
export function turned({ view, close }: Sight, by: 1 | -1): Sight {
  const views: readonly View[] = isCorner(view) || close > 0 ? CORNER_VIEWS : SQUARE_VIEWS;
  const at = Math.max(0, views.indexOf(view)) + by + views.length;
  return { view: views[at % views.length] ?? view, close };
}

/** The next close-up, and after the last the whole again. */
export function closer(sight: Sight, subject: Subject): Sight {
  const count = closeUpsOf(subject).length;
  return { ...sight, close: (sight.close + 1) % (count + 1) };
}

/** Whether there is anything to see closer. */
export function hasCloseUps(subject: Subject): boolean {
  return closeUpsOf(subject).length > 0;
}

function closeUpsOf(subject: Subject): readonly CloseUp[] {
  const { closeUps } = keptOf(subject.input.model);
  const known = closeUps.get(subject.id) ?? subject.closeUps();
  closeUps.set(subject.id, known);
  return known;
}

function drawingOf(subject: Subject, { view, close }: Sight): Drawing {
  const { drawings } = keptOf(subject.input.model);
  const id = `${view} ${close} ${subject.id}`;
  const known = drawings.get(id);
  if (known !== undefined) return known;
  const drawing = drawn(subject, { view, close });
  drawings.set(id, drawing);
  return drawing;
}

function drawn(subject: Subject, { view, close }: Sight): Drawing {
  const closeUp = closeUpsOf(subject)[close - 1];
  if (closeUp !== undefined) return closeUp.draw(isCorner(view) ? view : 'corner-right');
  if (isCorner(view) && subject.corner !== undefined) return subject.corner.draw(view);
  const drawing = draw(subject.input, view);
  return { ...drawing, notes: [...drawing.notes, ...subject.notes] };
}

function keptOf(model: Model): Kept {
  const known = kept.get(model);
  if (known !== undefined) return known;
  const fresh: Kept = {
    drawings: new Map(),
    set: new Map(),
    closeUps: new Map(),
    sides: new Map(),
  };
  kept.set(model, fresh);
  return fresh;
}
