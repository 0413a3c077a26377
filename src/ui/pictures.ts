import { draw, SQUARE_VIEWS as VIEWS } from '../drawing/draw.js';
import { boxRound } from '../drawing/sight.js';
import type { Drawing, Patch, SquareView as View } from '../drawing/strokes.js';
import { allParts } from '../drawing/view.js';
import type { Display } from '../measure/quantities.js';
import type { Model } from '../model/part.js';
import { type CellPicture, setInCells } from './canvas.js';

/** What is to be drawn; `id` names the parts that are bright and standing. */
export type Subject = {
  readonly id: string;
  readonly model: Model;
  readonly display: Display;
  readonly bright: readonly string[];
  /** None: all the others stand there too. */
  readonly standing: readonly string[] | undefined;
};

export type Frame = { readonly columns: number; readonly rows: number; readonly ascii: boolean };

export type SetPicture = CellPicture & { readonly title: string; readonly inWords: string };

/** Drawings don't change as long as their model lives, and take longer than a key press may. */
const kept = new WeakMap<Model, { drawings: Map<string, Drawing>; set: Map<string, SetPicture> }>();
/** Every window size that somebody drags through would stay otherwise. */
const MOST_SET = 100;

/** The subject from one side, set in the frame. */
export function pictureOf(subject: Subject, view: View, frame: Frame): SetPicture {
  const { set } = keptOf(subject.model);
  const { columns, rows, ascii } = frame;
  const id = `${view} ${columns}x${rows} ${ascii} ${subject.id}`;
  const known = set.get(id);
  if (known !== undefined) return known;
  const drawing = drawingOf(subject, view);
  const { title, inWords } = drawing;
  const made = { ...setInCells(drawing, { columns, rows }, { ascii }), title, inWords };
  if (set.size >= MOST_SET) set.clear();
  set.set(id, made);
  return made;
}

/** The view in which most is seen of what is bright; the front where nothing is. */
export function bestView(subject: Subject): View {
  const seen = (view: View) =>
    drawingOf(subject, view).patches.reduce((sum, patch) => sum + areaOf(patch), 0);
  if (subject.bright.length === 0) return 'front';
  return VIEWS.reduce((best, view) => (seen(view) > seen(best) ? view : best));
}

function areaOf({ corners }: Patch): number {
  const { u, v } = boxRound(corners);
  return (u.to - u.from) * (v.to - v.from);
}

/** The view that comes after this one, or before it. */
export function turned(view: View, by: 1 | -1): View {
  const at = VIEWS.indexOf(view) + by + VIEWS.length;
  return VIEWS[at % VIEWS.length] ?? 'front';
}

function drawingOf(subject: Subject, view: View): Drawing {
  const { drawings } = keptOf(subject.model);
  const id = `${view} ${subject.id}`;
  const known = drawings.get(id);
  if (known !== undefined) return known;
  const { model, display, bright, standing } = subject;
  const stands = standing === undefined ? allParts(model) : new Set(standing);
  const drawing = draw({ model, display, bright: new Set(bright), standing: stands }, view);
  drawings.set(id, drawing);
  return drawing;
}

function keptOf(model: Model) {
  const known = kept.get(model);
  if (known !== undefined) return known;
  const fresh = { drawings: new Map<string, Drawing>(), set: new Map<string, SetPicture>() };
  kept.set(model, fresh);
  return fresh;
}
