import { beforeAll, describe, expect, test } from 'vitest';
import { printPaper } from '../../src/print/print-paper.js';
import { PAPERS } from '../../src/print/sheet/paper.js';
import { paperAsk } from '../support/paper.js';
import { HAS_POPPLER, NEEDS_POPPLER, pdfFonts, pdfInfo, pdfPages } from '../support/poppler.js';

/** Every page is read back by poppler, which knows nothing of how it was written. */
describe.skipIf(!HAS_POPPLER)(`the plan on paper, as poppler reads it${NEEDS_POPPLER}`, () => {
  let pdf: Uint8Array = new Uint8Array();
  let pages: readonly string[] = [];

  beforeAll(async () => {
    pdf = await printPaper(paperAsk());
    pages = pdfPages(pdf);
  }, 60_000);

  test('has as many pages as its feet say, and each says its number', () => {
    const count = Number(pdfInfo(pdf).Pages);
    expect(pages.length).toBe(count);
    for (const [at, page] of pages.entries()) expect(page).toContain(`page ${at + 1} of ${count}`);
  });

  test('says its title, and embeds every font', () => {
    expect(pdfInfo(pdf).Title).toBe('Bench with planter ends');
    expect(pdfFonts(pdf).length).toBe(2);
    expect(pdfFonts(pdf).filter(font => !font.embedded)).toEqual([]);
  });

  // ISO 32000-1, 14.9.2: the language of a document stands in its catalog under Lang.
  test('says which language it is in', () => {
    expect(Buffer.from(pdf).toString('latin1')).toMatch(/\/Lang \(en-US\)/);
  });

  test('names on the cover the page that each part really begins on', () => {
    const [, list = ''] = (pages[0] ?? '').split('In these pages');
    const entries = [...list.matchAll(/(\d+) {2,}(\S.*?)(?= {3,}|$)/gm)];
    expect(entries.length).toBeGreaterThan(8);
    for (const [, page = '', title = ''] of entries) {
      const feet = pages.map(text => text.trimEnd().split('\n').at(-1) ?? '');
      expect(feet.findIndex(foot => foot.includes(`· ${title.trim()}  `)) + 1).toBe(Number(page));
    }
  });

  test('keeps the page for the store free of saw cuts and drawings', () => {
    const store = pages.find(page => page.trimStart().startsWith('For the store')) ?? '';
    for (const words of ['2x4', '10 ft', '16 boards in all', '1 x 8 oz bottle'])
      expect(store).toContain(words);
    expect(store).not.toMatch(/kerf|slack|Stop at/);
  });

  test('has each setting of the stop on the page for the saw', () => {
    const saw = pages.find(page => page.trimStart().startsWith('At the saw')) ?? '';
    const { sawOrder } = paperAsk().plan;
    for (const { marks } of sawOrder) expect(saw).toContain(`${marks[0]?.mark}: `);
  });
});

describe.skipIf(!HAS_POPPLER)(`paper${NEEDS_POPPLER}`, () => {
  // ANSI/ASME Y14.1 size A is 8-1/2 x 11 in, ISO 216 A4 is 210 x 297 mm; a point is 1/72 in.
  test.each([
    ['letter', '612 x 792 pts (letter)'],
    ['a4', '595.276 x 841.89 pts (A4)'],
  ] as const)('%s is as large as its standard says', async (name, size) => {
    const pdf = await printPaper(paperAsk({ paper: PAPERS[name], pages: ['cover'] }));
    expect(pdfInfo(pdf)['Page size']).toBe(size);
  });

  test('holds only the pages that were asked for', async () => {
    const pdf = await printPaper(paperAsk({ pages: ['shopping'] }));
    expect(pdfInfo(pdf).Pages).toBe('1');
    expect(pdfPages(pdf)[0]).toContain('For the store');
  });
});
