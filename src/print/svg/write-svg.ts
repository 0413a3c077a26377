import type { Mm } from '../../measure/quantities.js';
import { grayText } from '../sheet/gray.js';
import {
  type AreaMark,
  type LineMark,
  type Mark,
  type PlainMark,
  plainMarks,
  type WordsMark,
} from '../sheet/mark.js';
import { points } from '../sheet/type.js';

export type SvgAbout = {
  readonly width: Mm;
  readonly height: Mm;
  readonly title: string;
  /** The drawing in words, for who can't see it. */
  readonly inWords: string;
};

/**
 * Marks as a drawing in SVG 1.1, in true millimeters, black on white. Text stays text, in the typeface
 * of the printed pages where it is installed.
 */
export function svgText(
  marks: readonly Mark[],
  { width, height, title, inWords }: SvgAbout,
): string {
  const size = `width="${round(width)}mm" height="${round(height)}mm" viewBox="0 0 ${round(width)} ${round(height)}"`;
  return [
    '<?xml version="1.0" encoding="UTF-8"?>',
    `<svg xmlns="http://www.w3.org/2000/svg" ${size} role="img" aria-labelledby="title words">`,
    `<title id="title">${escaped(title)}</title>`,
    `<desc id="words">${escaped(inWords)}</desc>`,
    `<rect width="${round(width)}" height="${round(height)}" fill="#ffffff"/>`,
    `<g stroke-linecap="round" fill="none" stroke="#000000" font-family="${FAMILY}">`,
    ...plainMarks(marks).map(element),
    '</g>',
    '</svg>',
    '',
  ].join('\n');
}

const FAMILY = "'DejaVu Sans Condensed', 'DejaVu Sans', 'Liberation Sans', Arial, sans-serif";

function element(mark: PlainMark): string {
  if (mark.kind === 'line') return lineElement(mark);
  return mark.kind === 'area' ? areaElement(mark) : wordsElement(mark);
}

function lineElement({ from, to, thick, dash }: LineMark): string {
  const dashes = dash.length === 0 ? '' : ` stroke-dasharray="${dash.map(round).join(' ')}"`;
  return `<line x1="${round(from.x)}" y1="${round(from.y)}" x2="${round(to.x)}" y2="${round(to.y)}" stroke-width="${round(thick)}"${dashes}/>`;
}

function areaElement({ corners, fill, edge }: AreaMark): string {
  const at = corners.map(({ x, y }) => `${round(x)},${round(y)}`).join(' ');
  const inside = fill === undefined ? '' : ` fill="${grayText(fill)}"`;
  const outline = edge === undefined ? ' stroke="none"' : ` stroke-width="${round(edge)}"`;
  return `<polygon points="${at}"${inside}${outline}/>`;
}

function wordsElement({ at, text, size, bold, anchor, upward }: WordsMark): string {
  const [x, y] = [round(at.x), round(at.y)];
  const weight = bold ? ' font-weight="bold"' : '';
  const turned = upward ? ` transform="rotate(-90 ${x} ${y})"` : '';
  return `<text x="${x}" y="${y}" font-size="${round(points(size))}" text-anchor="${anchor}"${weight}${turned} fill="#000000" stroke="none">${escaped(text)}</text>`;
}

/** Tenths of a micrometer are finer than any printer. */
function round(length: number): number {
  return Math.round(length * 1e4) / 1e4;
}

const ENTITIES: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
};

/** Text as XML 1.0 takes it; controls that it forbids are left out. */
function escaped(text: string): string {
  return text
    .replace(/[\x00-\x08\x0b\x0c\x0e-\x1f\ufffe\uffff]/g, '')
    .replace(/[&<>"]/g, sign => ENTITIES[sign] ?? sign);
}
