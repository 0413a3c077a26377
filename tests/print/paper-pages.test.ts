import { describe, expect, test } from 'vitest';
import type { PageName } from '../../src/print/pages/pack.js';
import { stepPieces } from '../../src/print/pages/step-pieces.js';
import { layOut, paperSheets } from '../../src/print/print-paper.js';
import { flow } from '../../src/print/sheet/flow.js';
import type { Sheet } from '../../src/print/sheet/mark.js';
import { buildInProgress } from '../support/build-on-paper.js';
import { paperAsk } from '../support/paper.js';
import { sheetText } from '../support/paper-page.js';

/**
 * Pages of the paper as they lie on the bench, kept under tests/pages as text. Each was looked at as an
 * image before it was kept; whoever changes the paper looks again (print it, then `pdftoppm -r 60 -png`).
 */
const ask = paperAsk();
const out = layOut(ask);

function pageText(sheets: readonly Sheet[], of = out): string {
  const rule = of.pack.measure.rule;
  return `${sheets.map(sheet => sheetText(sheet, ask.paper, rule)).join('\n\n')}\n`;
}

/** Kinds of pages, and how many of each are kept. */
const KINDS: readonly (readonly [PageName, number])[] = [
  ['cover', 1],
  ['views', 3],
  ['shopping', 1],
  ['cut', 2],
  ['boards', 1],
  ['joints', 3],
  ['templates', 1],
  ['marks', 1],
  ['time', 1],
  ['care', 1],
];

describe('a page of the paper', () => {
  test.each(KINDS)('%s', async (name, count) => {
    // The cover lists the others, so that all are laid out for it.
    const pages = name === 'cover' ? ask.pages : [name];
    const sheets = paperSheets({ ...ask, pages }, out).slice(0, count);
    await expect(pageText(sheets)).toMatchFileSnapshot(`../pages/paper-${name}.txt`);
  });
});

/** A step that cuts, one that notches, and those that put together, by what they do. */
const STEPS = ['notch-rails', 'end-corners', 'end-infill', 'slats', 'box-close', 'place', 'pots'];

describe('a step on paper', () => {
  test.each(STEPS)('%s', async id => {
    await expect(stepText(id, out)).toMatchFileSnapshot(`../pages/paper-step-${id}.txt`);
  });

  test('where the pieces that are cut will be', async () => {
    const step = ask.plan.steps.find(({ phase }) => phase === 'cut');
    const text = stepText(step?.id ?? '', out);
    await expect(text).toMatchFileSnapshot('../pages/paper-step-cut.txt');
  });

  function stepText(id: string, of: typeof out): string {
    const at = of.pack.plan.steps.findIndex(step => step.id === id);
    const step = of.pack.plan.steps[at];
    if (step === undefined) throw new Error(`no step ${id}`);
    const pieces = stepPieces(step, at + 1, of.pack);
    return pageText(flow(pieces, of.pack.frame.height, 'Step by step'), of);
  }

  test('in a build under way it is ticked, with its notes; the cover says how far it is', async () => {
    const build = buildInProgress();
    const begun = layOut(paperAsk(build));
    const cover = paperSheets({ ...paperAsk(build), pages: ['cover', 'marks'] }, begun);
    const text = `${pageText(cover, begun)}\n${stepText('end-corners', begun)}`;
    await expect(text).toMatchFileSnapshot('../pages/paper-in-progress.txt');
  });
});
