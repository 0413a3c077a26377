import type { Plan } from '../plan/plan.js';
import { keptDrawings } from './kept-drawings.js';
import { coverPieces, type Entry } from './pages/cover-pieces.js';
import type { BuildSoFar, Pack, PageName } from './pages/pack.js';
import { PARTS } from './pages/parts.js';
import { type Fonts, type PdfWriter, pdfWriter } from './pdf/write-pdf.js';
import { flow } from './sheet/flow.js';
import { line, type Sheet, words } from './sheet/mark.js';
import { frameOf, MARGIN, type Paper } from './sheet/paper.js';
import { SIZE } from './sheet/type.js';

export type PaperAsk = {
  readonly plan: Plan;
  readonly build: BuildSoFar | undefined;
  /** Parts of the paper, in the order of `PAGE_NAMES`. */
  readonly pages: readonly PageName[];
  readonly paper: Paper;
  readonly fonts: Fonts;
  readonly madeAtMs: number;
};

/** The plan laid out: what its pages are made from, and what writes them. */
export type LaidOut = { readonly pack: Pack; readonly writer: PdfWriter; readonly title: string };

/** Makes ready what pages and drawings need; nothing is drawn yet. */
export function layOut({ plan, build, paper, fonts, madeAtMs }: PaperAsk): LaidOut {
  const title = build === undefined ? plan.title : `${build.workbook.name}: ${plan.title}`;
  const writer = pdfWriter(fonts, paper, { title, madeAtMs });
  const frame = frameOf(paper);
  const measure = { width: frame.width, rule: writer.rule };
  const pack: Pack = { plan, drawings: keptDrawings(plan), build, measure, frame };
  return { pack, writer, title };
}

/** The plan on paper as one PDF, the pages numbered, the cover with a list of the parts. */
export async function printPaper(ask: PaperAsk, out: LaidOut = layOut(ask)): Promise<Uint8Array> {
  return out.writer.write(paperSheets(ask, out));
}

/** The sheets of the paper with all that stands on them, before they are written. */
export function paperSheets(
  { pages, paper }: PaperAsk,
  { pack, title }: LaidOut,
): readonly Sheet[] {
  const parts = pages.flatMap(name => (name === 'cover' ? [] : [PARTS[name](pack)]));
  const cover = pages.includes('cover') ? coverSheets(pack, parts) : [];
  const sheets = [...cover, ...parts.flat()];
  return sheets.map((sheet, at) => withFoot(sheet, at + 1, { title, paper, sheets }));
}

/** The cover is set twice: where the parts begin depends on how long it is. */
function coverSheets(pack: Pack, parts: readonly (readonly Sheet[])[]): readonly Sheet[] {
  const set = (before: number) => {
    return flow(coverPieces(pack, entriesOf(parts, before)), pack.frame.height, 'Cover');
  };
  return set(set(1).length);
}

function entriesOf(parts: readonly (readonly Sheet[])[], before: number): readonly Entry[] {
  let page = before + 1;
  return parts.flatMap(sheets => {
    const [first] = sheets;
    const entry = first === undefined ? [] : [{ title: first.title, page }];
    page += sheets.length;
    return entry;
  });
}

type Whole = { readonly title: string; readonly paper: Paper; readonly sheets: readonly Sheet[] };

/** What it is and which page, so that a sheet that lies around finds its place again. */
function withFoot(sheet: Sheet, number: number, { title, paper, sheets }: Whole): Sheet {
  const y = paper.height - MARGIN.bottom + 8;
  const right = paper.width - MARGIN.right;
  const foot = [
    line({ x: MARGIN.left, y: y - 4.5 }, { x: right, y: y - 4.5 }, 0.15),
    words({ x: MARGIN.left, y }, `${title} · ${sheet.title}`, SIZE.small),
    words({ x: right, y }, `page ${number} of ${sheets.length}`, SIZE.small, { anchor: 'end' }),
  ];
  return { ...sheet, marks: [...sheet.marks, ...foot] };
}
