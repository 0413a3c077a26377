import { Resvg } from '@resvg/resvg-js';
import { DOMParser } from '@xmldom/xmldom';
import { describe, expect, test } from 'vitest';
import { layOut } from '../../src/print/print-paper.js';
import { drawingSvg } from '../../src/print/svg/drawing-svg.js';
import { svgText } from '../../src/print/svg/write-svg.js';
import { paperAsk } from '../support/paper.js';

const { pack } = layOut(paperAsk());

/** Parsed by a general reader of XML that stops at the first mistake. */
function parsed(svg: string) {
  const stop = (level: string, message: string) => {
    throw new Error(`${level}: ${message}`);
  };
  return new DOMParser({ onError: stop }).parseFromString(svg, 'image/svg+xml');
}

/** Share of the picture that is not white, as a general renderer paints it. */
function inkOf(svg: string): number {
  const { pixels } = new Resvg(svg, { fitTo: { mode: 'width', value: 400 } }).render();
  let dark = 0;
  for (let at = 0; at < pixels.length; at += 4) if ((pixels[at] ?? 255) < 200) dark += 1;
  return dark / (pixels.length / 4);
}

describe('drawings as SVG, as general libraries read and paint them', () => {
  test.each(pack.drawings.map(({ name }) => name))('%s is sound XML and not blank', name => {
    const named = pack.drawings.find(one => one.name === name);
    if (named === undefined) throw new Error(name);
    const svg = drawingSvg(named.draw(), pack.plan.title, pack.measure.rule);
    const root = parsed(svg).documentElement;
    expect(root?.namespaceURI).toBe('http://www.w3.org/2000/svg');
    expect(root?.getElementsByTagName('desc').item(0)?.textContent).not.toBe('');
    expect(inkOf(svg)).toBeGreaterThan(0.002);
  });

  test('words that look like marks of XML stay words', () => {
    const about = { width: 10, height: 10, title: '<A & "B">\u0007', inWords: '1 < 2' };
    const root = parsed(svgText([], about)).documentElement;
    expect(root?.getElementsByTagName('title').item(0)?.textContent).toBe('<A & "B">');
  });

  // By hand: 48 in of seat and two planters of 18 in make 84 in; the planters are 22 in high.
  test('keeps one scale for width and height', () => {
    const front = pack.drawings.find(({ name }) => name === 'front')?.draw();
    if (front === undefined) throw new Error('no front view');
    const svg = drawingSvg({ ...front, dimensions: [] }, 'Front', pack.measure.rule);
    const lines = Array.from(parsed(svg).getElementsByTagName('line'));
    const spread = (names: readonly string[]) => {
      const all = lines.flatMap(it => names.map(name => Number(it.getAttribute(name))));
      return Math.max(...all) - Math.min(...all);
    };
    expect(spread(['x1', 'x2']) / spread(['y1', 'y2'])).toBeCloseTo(84 / 22, 3);
  });
});
