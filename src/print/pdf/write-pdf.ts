import PDFDocument from 'pdfkit';
import { toInches } from '../../measure/inch.js';
import type { Mm } from '../../measure/quantities.js';
import { grayText } from '../sheet/gray.js';
import {
  type AreaMark,
  type LineMark,
  type PlainMark,
  plainMarks,
  type Sheet,
  type WordsMark,
} from '../sheet/mark.js';
import type { Paper } from '../sheet/paper.js';
import { points, type TypeRule } from '../sheet/type.js';

/** The two cuts of the typeface, as they lie in their files. */
export type Fonts = { readonly plain: Uint8Array; readonly bold: Uint8Array };

export type PdfAbout = { readonly title: string; readonly madeAtMs: number };

/** Measures type with the font that it will be set in, then writes sheets as one PDF. */
export type PdfWriter = {
  readonly rule: TypeRule;
  /** Once for a writer. */
  readonly write: (sheets: readonly Sheet[]) => Promise<Uint8Array>;
};

type Document = InstanceType<typeof PDFDocument>;

/** A writer for one document, which says its title and its language to every reader. */
export function pdfWriter(fonts: Fonts, paper: Paper, { title, madeAtMs }: PdfAbout): PdfWriter {
  const document = new PDFDocument({
    autoFirstPage: false,
    size: [toPoints(paper.width), toPoints(paper.height)],
    margin: 0,
    font: '',
    pdfVersion: '1.7',
    lang: 'en-US',
    displayTitle: true,
    info: {
      Title: title,
      Creator: 'Notchbook',
      Producer: 'Notchbook',
      CreationDate: new Date(madeAtMs),
    },
  });
  document.registerFont('plain', Buffer.from(fonts.plain));
  document.registerFont('bold', Buffer.from(fonts.bold));
  return { rule: typeRule(document), write: sheets => written(document, sheets) };
}

/** An em of so many points is measured once; every size is in proportion. */
const MEASURED = 1000;

/**
 * Each letter is measured once. Kerning is left out: it only draws letters together, so a line never
 * comes out longer than measured.
 */
function typeRule(document: Document): TypeRule {
  const known = { plain: new Map<string, number>(), bold: new Map<string, number>() };
  const letterWidth = (letter: string, face: 'plain' | 'bold') => {
    const found = known[face].get(letter);
    if (found !== undefined) return found;
    const width = document.font(face).fontSize(MEASURED).widthOfString(letter) / MEASURED;
    known[face].set(letter, width);
    return width;
  };
  return (text, size, bold) => {
    const face = bold ? 'bold' : 'plain';
    let ems = 0;
    for (const letter of text) ems += letterWidth(letter, face);
    return points(ems * size);
  };
}

async function written(document: Document, sheets: readonly Sheet[]): Promise<Uint8Array> {
  const chunks: Uint8Array[] = [];
  const ended = new Promise<void>((resolve, reject) => {
    document.on('data', (chunk: Uint8Array) => chunks.push(chunk));
    document.on('end', () => resolve());
    document.on('error', reject);
  });
  for (const { marks, bookmark } of sheets) {
    document.addPage();
    if (bookmark !== undefined) document.outline.addItem(bookmark);
    for (const mark of inOneStroke(plainMarks(marks))) setMark(document, mark);
  }
  document.end();
  await ended;
  return Buffer.concat(chunks);
}

type Strokes = { readonly kind: 'strokes'; readonly lines: readonly LineMark[] };

/** Lines of one look that follow each other are one path: smaller, and sooner drawn. */
function inOneStroke(marks: readonly PlainMark[]): readonly (AreaMark | WordsMark | Strokes)[] {
  const runs: (AreaMark | WordsMark | { kind: 'strokes'; lines: LineMark[] })[] = [];
  for (const mark of marks) {
    const last = runs.at(-1);
    if (mark.kind !== 'line') runs.push(mark);
    else if (last?.kind === 'strokes' && isOneLook(last.lines[0], mark)) last.lines.push(mark);
    else runs.push({ kind: 'strokes', lines: [mark] });
  }
  return runs;
}

function isOneLook(one: LineMark | undefined, other: LineMark): boolean {
  return one?.thick === other.thick && one.dash.join() === other.dash.join();
}

function setMark(document: Document, mark: AreaMark | WordsMark | Strokes): void {
  if (mark.kind === 'strokes') setStrokes(document, mark);
  else if (mark.kind === 'area') setArea(document, mark);
  else setWords(document, mark);
}

function setStrokes(document: Document, { lines }: Strokes): void {
  const [first] = lines;
  if (first === undefined) return;
  document.lineWidth(toPoints(first.thick)).lineCap('round').strokeColor('black');
  const dash = first.dash.map(toPoints);
  if (dash.length === 0) document.undash();
  // Its own call knows a stroke and a gap, not the long and short strokes of a center line.
  else document.addContent(`[${dash.join(' ')}] 0 d`);
  for (const { from, to } of lines) {
    document.moveTo(toPoints(from.x), toPoints(from.y)).lineTo(toPoints(to.x), toPoints(to.y));
  }
  document.stroke();
}

function setArea(document: Document, { corners, fill, edge }: AreaMark): void {
  document.undash();
  document.polygon(...corners.map(({ x, y }): [number, number] => [toPoints(x), toPoints(y)]));
  const gray = fill === undefined ? undefined : grayText(fill);
  if (edge !== undefined) document.lineWidth(toPoints(edge)).lineJoin('miter').strokeColor('black');
  if (gray !== undefined && edge !== undefined) document.fillAndStroke(gray, 'black');
  else if (gray !== undefined) document.fill(gray);
  else document.stroke();
}

function setWords(document: Document, mark: WordsMark): void {
  const { at, text, size, bold, upward } = mark;
  document
    .font(bold ? 'bold' : 'plain')
    .fontSize(size)
    .fillColor('black');
  const wide = document.widthOfString(text);
  const back = mark.anchor === 'start' ? 0 : mark.anchor === 'middle' ? wide / 2 : wide;
  const [x, y] = [toPoints(at.x), toPoints(at.y)];
  if (!upward) {
    document.text(text, x - back, y, { lineBreak: false, baseline: 'alphabetic' });
    return;
  }
  document.save().rotate(-90, { origin: [x, y] });
  document.text(text, x - back, y, { lineBreak: false, baseline: 'alphabetic' });
  document.restore();
}

/** Millimeters as the units of a page: 72 to the inch. */
function toPoints(length: Mm): number {
  return toInches(length) * 72;
}
