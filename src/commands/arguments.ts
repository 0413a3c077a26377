import { parseArgs } from 'node:util';
import {
  HALF_MILLIMETERS,
  MILLIMETERS,
  SIXTEENTHS,
  SIXTY_FOURTHS,
  THIRTY_SECONDS,
} from '../measure/displays.js';
import type { Display } from '../measure/quantities.js';
import { nearestWord } from '../measure/suggest.js';

/** The command line, read but not yet acted on. */
export type Arguments = {
  readonly command: CommandName;
  readonly rest: readonly string[];
  readonly sets: readonly string[];
  readonly measured: readonly string[];
  readonly as: 'text' | 'json' | 'csv' | 'markdown';
  readonly table: 'cut' | 'boards' | 'hardware';
  readonly display: Display;
  /** Units or grid were asked for: they then win over those of a build. */
  readonly displayGiven: boolean;
  /** Where `print` and `export` write; the paper that is printed for, the pages that are. */
  readonly to: string | undefined;
  readonly paper: 'letter' | 'a4';
  readonly pages: string | undefined;
  readonly width: number;
  readonly data: string | undefined;
  readonly ascii: boolean;
  readonly color: boolean;
};

export const COMMANDS = [
  'workbook',
  'recipes',
  'plan',
  'check',
  'show',
  'hand-over',
  'sources',
  'print',
  'schema',
  'builds',
  'export',
  'import',
  'help',
  'version',
] as const;
export type CommandName = (typeof COMMANDS)[number];

export type ReadArguments =
  | { readonly ok: true; readonly value: Arguments }
  | { readonly ok: false; readonly problems: readonly string[] };

const OPTIONS = {
  set: { type: 'string', multiple: true },
  measured: { type: 'string', multiple: true },
  as: { type: 'string' },
  table: { type: 'string' },
  units: { type: 'string' },
  grid: { type: 'string' },
  to: { type: 'string' },
  paper: { type: 'string' },
  pages: { type: 'string' },
  width: { type: 'string' },
  data: { type: 'string' },
  ascii: { type: 'boolean' },
  color: { type: 'boolean' },
  help: { type: 'boolean', short: 'h' },
  version: { type: 'boolean' },
} as const;

type Values = ReturnType<typeof parsedValues>['values'];

function parsedValues(words: readonly string[]) {
  return parseArgs({
    args: [...words],
    options: OPTIONS,
    allowPositionals: true,
    allowNegative: true,
  });
}

/** Reads the words after the program's name. All that is wrong is told at once. */
export function readArguments(words: readonly string[]): ReadArguments {
  let parsed: ReturnType<typeof parsedValues>;
  try {
    parsed = parsedValues(words);
  } catch (error) {
    return { ok: false, problems: [optionProblem(error, words)] };
  }
  const { values, positionals } = parsed;
  const problems: string[] = [];
  const pick = <Word extends string>(
    name: string,
    given: string | undefined,
    words: readonly [Word, ...Word[]],
  ): Word => {
    if (given === undefined) return words[0];
    const found = words.find(word => word === given);
    if (found === undefined) problems.push(`--${name} ${given}: use one of ${words.join(', ')}`);
    return found ?? words[0];
  };
  const command = commandOf(values, positionals[0], problems);
  const value: Arguments = {
    command,
    rest: positionals.slice(1),
    sets: values.set ?? [],
    measured: values.measured ?? [],
    as: pick('as', values.as, ['text', 'json', 'csv', 'markdown']),
    table: pick('table', values.table, ['cut', 'boards', 'hardware']),
    display: displayOf(values, pick('units', values.units, ['inch', 'metric']), problems),
    displayGiven: values.units !== undefined || values.grid !== undefined,
    to: values.to,
    paper: pick('paper', values.paper, ['letter', 'a4']),
    pages: values.pages,
    width: widthOf(values.width, problems),
    data: values.data,
    ascii: values.ascii ?? false,
    color: values.color ?? true,
  };
  return problems.length > 0 ? { ok: false, problems } : { ok: true, value };
}

function commandOf(values: Values, word: string | undefined, problems: string[]): CommandName {
  if (values.help) return 'help';
  if (values.version) return 'version';
  if (word === undefined) return 'workbook';
  const found = COMMANDS.find(command => command === word);
  if (found) return found;
  const near = nearestWord(word, COMMANDS);
  problems.push(
    `There is no command "${word}".${near ? ` Did you mean "${near}"?` : ''} See notchbook --help.`,
  );
  return 'help';
}

const GRIDS: Readonly<Record<string, Display>> = {
  '1/16in': SIXTEENTHS,
  '1/32in': THIRTY_SECONDS,
  '1/64in': SIXTY_FOURTHS,
  '1mm': MILLIMETERS,
  '0.5mm': HALF_MILLIMETERS,
};

function displayOf({ grid }: Values, system: 'inch' | 'metric', problems: string[]): Display {
  const usual = system === 'inch' ? SIXTEENTHS : MILLIMETERS;
  if (grid === undefined) return usual;
  const found = GRIDS[grid.replaceAll(' ', '')];
  const fitting = found?.system === system;
  if (!found || !fitting) {
    const fits = Object.keys(GRIDS).filter(name => GRIDS[name]?.system === system);
    problems.push(`--grid ${grid}: use one of ${fits.join(', ')} with --units ${system}`);
  }
  return found ?? usual;
}

const LEAST_WIDTH = 40;
const MOST_WIDTH = 240;
const USUAL_WIDTH = 80;

function widthOf(width: string | undefined, problems: string[]): number {
  if (width === undefined) return USUAL_WIDTH;
  const columns = Number(width);
  if (Number.isInteger(columns) && columns >= LEAST_WIDTH && columns <= MOST_WIDTH) return columns;
  problems.push(`--width ${width}: a whole number of columns from ${LEAST_WIDTH} to ${MOST_WIDTH}`);
  return USUAL_WIDTH;
}

/** Node's own words are kept where they say it well; the unknown option gets a suggestion. */
function optionProblem(error: unknown, words: readonly string[]): string {
  const message = error instanceof Error ? error.message : String(error);
  const unknown = words.find(word => word.startsWith('--') && !(bare(word) in OPTIONS));
  if (unknown === undefined) return `${message.split('. ')[0]}. See notchbook --help.`;
  const near = nearestWord(bare(unknown), Object.keys(OPTIONS));
  return `There is no option ${unknown}.${near ? ` Did you mean --${near}?` : ''} See notchbook --help.`;
}

function bare(word: string): string {
  return word.replace(/^--(no-)?/, '').split('=')[0] ?? '';
}
