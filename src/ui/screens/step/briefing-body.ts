import { capital } from '../../../measure/capital.js';
import { hanging } from '../../../text/page-lines.js';
import { wrap } from '../../../text/wrap.js';
import { dayWords } from '../../../workbook/clock-words.js';
import { plainer } from '../../widgets/facts.js';
import { BLANK, plainRows, type Row } from '../../widgets/rows.js';
import type { BriefingPage, ToldTool } from './briefing-pages.js';
import { toldRows } from './reading.js';

type Style = { readonly columns: number; readonly ascii: boolean; readonly roomy: boolean };

/** What is read, told or asked on a page, as rows. */
export function briefingBody(page: BriefingPage, style: Style): readonly Row[] {
  switch (page.kind) {
    case 'read':
      return [...plainlyRows(page.tool, style), BLANK, ...toldRows([page.caution], style)];
    case 'heed':
      return toldRows(page.cautions, style);
    case 'ask':
      return page.tools.flatMap(tool => [
        heading(tool, style),
        ...tool.briefing.asked.flatMap(asked => [...gap(style), ...askedRows(asked, style)]),
      ]);
    case 'tell':
      return page.tools.flatMap((tool, number) => [
        ...(number === 0 ? [] : gap(style)),
        heading(tool, style),
        ...plainlyRows(tool, style),
        ...tool.briefing.asked.flatMap(asked => askedRows(asked, style)),
      ]);
    case 'refresh':
      return refreshRows(page, style);
  }
}

function gap({ roomy }: Style): readonly Row[] {
  return roomy ? [BLANK] : [];
}

function heading({ name }: ToldTool, { ascii }: Style): Row {
  const text = plainer(ascii)(name);
  return { text: capital(text), tone: 'heed' };
}

function plainlyRows({ plainly }: ToldTool, { columns, ascii }: Style): readonly Row[] {
  return plainRows(wrap(plainer(ascii)(plainly), columns));
}

type Asked = ToldTool['briefing']['asked'][number];

function askedRows({ ask, listenFor }: Asked, { columns, ascii }: Style): readonly Row[] {
  const plain = plainer(ascii);
  return [
    ...hanging('Ask: ', plain(ask), columns).map((text): Row => ({ text, tone: 'strong' })),
    ...plainRows(hanging('     Listen for: ', plain(listenFor), columns)),
  ];
}

function refreshRows(
  { tool, lastAtMs }: Extract<BriefingPage, { readonly kind: 'refresh' }>,
  style: Style,
): readonly Row[] {
  const { columns, ascii } = style;
  const plain = plainer(ascii);
  const last = `Told and answered before, last on ${dayWords(lastAtMs)}, in an earlier build. In short:`;
  return [
    heading(tool, style),
    ...plainRows(wrap(plain(last), columns)),
    ...gap(style),
    ...wrap(plain(tool.briefing.inShort), columns).map((text): Row => ({ text, tone: 'strong' })),
    ...gap(style),
    ...tool.briefing.asked.slice(0, 1).flatMap(asked => askedRows(asked, style)),
    ...gap(style),
    ...plainRows(wrap('Somebody else helps today? f: all of it from the start.', columns)),
  ];
}
