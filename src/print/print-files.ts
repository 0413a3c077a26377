import { icsText } from './calendar/ics-text.js';
import { occasions } from './calendar/occasions.js';
import schema from './plan.schema.json' with { type: 'json' };
import { planCsv } from './plan-csv.js';
import { planJson } from './plan-json.js';
import { planMarkdown } from './plan-text.js';
import { layOut, type PaperAsk, printPaper } from './print-paper.js';
import { shoppingCsv } from './shopping-csv.js';
import { drawingSvg } from './svg/drawing-svg.js';

/** A file to be made; `name` may hold a folder. */
export type PrintedFile = { readonly name: string; readonly content: Uint8Array | string };

/** Everything that `notchbook print` makes of a plan. `base` begins the names of the files. */
export async function printFiles(ask: PaperAsk, base: string): Promise<readonly PrintedFile[]> {
  const { plan } = ask;
  const out = layOut(ask);
  const { drawings, measure } = out.pack;
  return [
    { name: `${base}.pdf`, content: await printPaper(ask, out) },
    { name: `${base}-cut-list.csv`, content: planCsv(plan, 'cut') },
    { name: `${base}-shopping.csv`, content: shoppingCsv(plan) },
    { name: `${base}.md`, content: planMarkdown(plan) },
    ...calendarFiles(ask, base),
    { name: `${base}.json`, content: planJson(plan) },
    { name: 'plan.schema.json', content: `${JSON.stringify(schema, null, 2)}\n` },
    ...drawings.map(({ name, draw }) => ({
      name: `drawings/${name}.svg`,
      content: drawingSvg(draw(), plan.title, measure.rule),
    })),
  ];
}

/** No calendar where nothing has a date yet. */
function calendarFiles({ plan, build, madeAtMs }: PaperAsk, base: string): readonly PrintedFile[] {
  const dated = occasions({ plan, build, madeAtMs, base });
  if (dated.length === 0) return [];
  return [{ name: `${base}.ics`, content: icsText(plan.title, dated, madeAtMs) }];
}
