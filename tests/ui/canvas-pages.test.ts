import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import type { SquareView as View } from '../../src/drawing/strokes.js';
import { allParts, drawView } from '../../src/drawing/view.js';
import { SIXTEENTHS } from '../../src/measure/displays.js';
import { setInCells } from '../../src/ui/canvas.js';
import { smallBench } from '../support/small-bench.js';

/**
 * Each page under tests/pages was looked at before it was kept: whoever changes how boards are drawn
 * looks again, with the eyes of someone who has to build the piece.
 */
type Page = {
  readonly page: string;
  readonly view: View;
  readonly columns: number;
  readonly rows: number;
  readonly ascii?: boolean;
  /** Boards being added, and those that stand there, by the beginnings of their ids. */
  readonly adds?: readonly string[];
  readonly stand?: readonly string[];
};

const WIDE = { columns: 110, rows: 30 };
const USUAL = { columns: 76, rows: 18 };

const PAGES: readonly Page[] = [
  { page: 'bench-front-usual', view: 'front', ...USUAL },
  { page: 'bench-front-usual-ascii', view: 'front', ...USUAL, ascii: true },
  { page: 'bench-front-wide', view: 'front', ...WIDE },
  { page: 'bench-above-usual', view: 'above', ...USUAL },
  { page: 'bench-above-wide', view: 'above', ...WIDE },
  { page: 'bench-end-usual', view: 'end', ...USUAL },
  {
    page: 'panel-front-corners-usual',
    view: 'front',
    ...USUAL,
    adds: ['planter/left/front/post', 'planter/left/front/panel_rail'],
    stand: [],
  },
  {
    page: 'panel-front-infill-usual-ascii',
    view: 'front',
    ...USUAL,
    ascii: true,
    adds: ['planter/left/front/infill'],
    stand: ['planter/left/front'],
  },
  { page: 'bench-front-slats-usual', view: 'front', ...USUAL, adds: ['seat_slat'], stand: [''] },
  { page: 'bench-above-slats-wide', view: 'above', ...WIDE, adds: ['seat_slat'], stand: [''] },
  {
    page: 'bench-front-rails-usual',
    view: 'front',
    ...USUAL,
    adds: ['seat_rail'],
    stand: ['end_panel', 'foot'],
  },
  { page: 'bench-front-small', view: 'front', columns: 40, rows: 10 },
];

function begins(id: string, beginnings: readonly string[]): boolean {
  return beginnings.some(beginning => id.startsWith(beginning));
}

function pageText({ view, adds, stand, columns, rows, ascii = false }: Omit<Page, 'page'>): string {
  const model = smallBench();
  const ids = [...allParts(model)];
  const drawing = drawView({
    model,
    view,
    bright: new Set(ids.filter(id => begins(id, adds ?? []))),
    standing: new Set(ids.filter(id => begins(id, stand ?? ['']))),
    display: SIXTEENTHS,
    dimensions: adds === undefined ? 'overall' : 'added',
  });
  const picture = setInCells(drawing, { columns, rows }, { ascii });
  const lines = picture.lines.map(line => line.text);
  const note = picture.note === undefined ? [] : [picture.note];
  return [drawing.title, '', ...lines, '', ...note, drawing.inWords, ''].join('\n');
}

describe('the bench as a woodworker sees it on the screen', () => {
  test.each(PAGES)('is set as on the page $page', ({ page, ...how }) => {
    const kept = readFileSync(new URL(`../pages/${page}.txt`, import.meta.url), 'utf8');
    expect(pageText(how)).toBe(kept);
  });
});
