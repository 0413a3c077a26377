import { MILLIMETERS, SIXTEENTHS } from '../../measure/displays.js';
import { formatFigure, sourceText } from '../../measure/figure-text.js';
import { unreadable } from '../../measure/parsed.js';
import { nearestWord } from '../../measure/suggest.js';
import { toAscii } from '../../text/safe-text.js';
import { EXIT, failed, fine, type Outcome } from '../outcome.js';
import { type Form, readOptions } from './read-options.js';
import type { Answered, ReadText, WorkResult, WorkRule } from './rule.js';
import { WORK_RULES } from './rules.js';

/** What lies outside of the command: files, and a terminal that may have plain ASCII alone. */
export type Surroundings = { readonly textOf: ReadText; readonly ascii: boolean };

const NOTHING_OUTSIDE: Surroundings = {
  textOf: () => unreadable('No files can be read here.', 'Give it on the command line.'),
  ascii: false,
};

/** `notchbook work NAME …`: one number, while standing at the saw. */
export function workCommand(
  words: readonly string[],
  { textOf, ascii }: Surroundings = NOTHING_OUTSIDE,
): Outcome {
  const [name, ...rest] = words;
  if (name === undefined || name === '--help') return fine(listText());
  const rule = WORK_RULES.find(it => it.name === name);
  if (!rule) return failed(unknownRule(name), EXIT.usage);
  if (rest.includes('--help')) return fine(helpText(rule));
  const display = unitsOf(rest) === 'metric' ? MILLIMETERS : SIXTEENTHS;
  const read = readOptions(rule, rest, { display, textOf });
  if (!read.ok) return failed([...read.problems, `For example: ${rule.example}`], EXIT.usage);
  const result = rule.work(read.given);
  if (!result.ok) return failed([...result.problems, `For example: ${rule.example}`], EXIT.usage);
  const text = written(result, read.as, display);
  return fine(read.as === 'text' && (ascii || rest.includes('--ascii')) ? toAscii(text) : text);
}

function written(result: Good, as: Form, display: typeof SIXTEENTHS): string {
  if (as === 'json') return jsonText(result);
  return as === 'csv' ? (result.csv ?? '') : plainText(result, display);
}

function unitsOf(words: readonly string[]): string | undefined {
  const at = words.indexOf('--units');
  return at >= 0 ? words[at + 1] : words.find(word => word.startsWith('--units='))?.slice(8);
}

function unknownRule(name: string): readonly string[] {
  const names = WORK_RULES.map(rule => rule.name);
  const near = nearestWord(name, names);
  return [
    `There is nothing called "${name}" to work out.`,
    near === undefined ? `There are: ${names.join(', ')}.` : `Did you mean ${near}?`,
  ];
}

function listText(): string {
  const rows = WORK_RULES.map(({ name, say }) => `  ${name.padEnd(10)} ${say}`);
  return `${['notchbook work NAME: one number, while standing at the saw', '', ...rows, '', '"work NAME --help" tells what it wants.'].join('\n')}\n`;
}

function helpText(rule: WorkRule): string {
  const lines = rule.options.map(
    option =>
      `  --${option.name.padEnd(14)} ${option.say}${option.usual === undefined || option.usual === '' ? '' : ` (usual: ${option.usual})`}`,
  );
  return `${[`notchbook work ${rule.name}: ${rule.say}`, '', ...lines, '', `  ${rule.example}`].join('\n')}\n`;
}

type Good = Extract<WorkResult, { ok: true }>;

function plainText(
  { verdict, figures, lines: drawn = [], notes }: Good,
  display: typeof SIXTEENTHS,
): string {
  const lines = figures.flatMap(({ say, figure }) => [
    `${say.padEnd(22)} ${formatFigure(figure, display)}`,
    `${' '.repeat(22)} ${figure.because} [${sourceText(figure.source)}]`,
  ]);
  return `${[...said(verdict), ...lines, ...drawn, ...notes].join('\n')}\n`;
}

function said(verdict: string | undefined): readonly string[] {
  return verdict === undefined ? [] : [verdict];
}

const SUFFIX: Readonly<Record<string, string>> = {
  mm: '_mm',
  mm2: '_mm2',
  kg: '_kg',
  'kg/m2': '_kg_m2',
  MPa: '_mpa',
  C: '_c',
  min: '_minutes',
  cents: '_cents',
};

/** `gap_mm`, `change_mm` … for scripts; `figures` holds the same with because and source. */
function jsonText({ verdict, figures, more, notes, json }: Good): string {
  if (json !== undefined) return `${JSON.stringify(json, null, 2)}\n`;
  const values = figures.map(({ name, figure }) => [
    `${name}${SUFFIX[figure.unit] ?? ''}`,
    figure.value,
  ]);
  const told = Object.fromEntries(figures.map(({ name, figure }: Answered) => [name, figure]));
  return `${JSON.stringify({ ...Object.fromEntries(values), ...more, notes: [...said(verdict), ...notes], figures: told }, null, 2)}\n`;
}
