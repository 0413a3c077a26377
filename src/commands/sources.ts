import { type SourceLine, sourceList } from '../materials/source-list.js';
import type { Standing } from '../measure/figure.js';
import { count } from '../text/plural.js';
import { csvText, markdownTable, tableLines } from '../text/table.js';
import { wrap } from '../text/wrap.js';
import type { Arguments } from './arguments.js';
import { fine, type Outcome } from './outcome.js';

/** How a value stands, in words that need no explanation. */
const STANDING: Readonly<Record<Standing, string>> = {
  checked: 'seen',
  memory: 'not re-checked',
  practice: 'common practice',
  computed: 'worked out',
  answer: 'your answer',
};

const COLUMNS = [
  { title: 'Standing' },
  { title: 'Where', grow: true, least: 24 },
  { title: 'Used for', grow: true },
];

/** `notchbook sources`: every publication that a number is from, and which nobody has re-checked. */
export function sourcesCommand({ as, width }: Pick<Arguments, 'as' | 'width'>): Outcome {
  const lines = sourceList();
  if (as === 'json') return fine(`${JSON.stringify(lines, null, 2)}\n`);
  if (as === 'csv') return fine(csvText(['Publication', ...TITLES], lines.map(wholeRow)));
  if (as === 'markdown') return fine(markdownTable(WHOLE_COLUMNS, lines.map(wholeRow)));
  const pages = publications(lines).map(of => pageText(of, width));
  return fine(`${[...pages, tally(lines, width)].join('\n\n')}\n`);
}

const TITLES = COLUMNS.map(({ title }) => title);
const WHOLE_COLUMNS = [{ title: 'Publication' }, ...COLUMNS];

function publications(lines: readonly SourceLine[]): readonly (readonly SourceLine[])[] {
  const names = [...new Set(lines.map(({ publication }) => publication))];
  return names.map(name => lines.filter(({ publication }) => publication === name));
}

function pageText(lines: readonly SourceLine[], width: number): string {
  const [first] = lines;
  if (first === undefined) throw new Error('a publication without a line');
  const { publication, citation } = first;
  const heading = citation === publication ? [publication] : [publication, citation];
  return [
    ...heading.flatMap(text => wrap(text, width)),
    ...tableLines(COLUMNS, lines.map(row), width),
  ].join('\n');
}

function row({ standing, place, tables }: SourceLine): readonly string[] {
  return [STANDING[standing], place ?? '', tables.join(', ')];
}

function wholeRow(line: SourceLine): readonly string[] {
  return [line.publication, ...row(line)];
}

function tally(lines: readonly SourceLine[], width: number): string {
  const of = (standing: Standing) => lines.filter(line => line.standing === standing).length;
  const text = `${count(lines.length, 'place')} in ${count(publications(lines).length, 'publication')}: ${of('checked')} seen in the publication or a copy of it, ${of('computed')} worked out from one, ${of('practice')} common practice, ${of('memory')} remembered and not re-checked. Before you lean on a value that is not re-checked, look it up.`;
  return wrap(text, width).join('\n');
}
