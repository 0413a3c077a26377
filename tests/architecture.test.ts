import { readdirSync, readFileSync } from 'node:fs';
import { join, relative, sep } from 'node:path';
import { describe, expect, test } from 'vitest';

const ROOT = new URL('..', import.meta.url).pathname;
const SRC = join(ROOT, 'src');

/**
 * Folders in the order of the job. A folder imports only from folders above it; the exceptions below
 * forbid more.
 */
const ORDER = [
  'measure',
  'solve',
  'text',
  'materials',
  'recipe',
  'model',
  'plan',
  'drawing',
  'workbook',
  'print',
  'ui',
  'files',
  'commands',
];

/** What the order alone would allow but must not happen. */
const FORBIDDEN: Readonly<Record<string, readonly string[]>> = {
  solve: ['measure'],
  text: ['solve'],
  materials: ['solve', 'text'],
  recipe: ['solve', 'text'],
  model: ['solve', 'text'],
  drawing: ['solve', 'materials', 'recipe'],
  workbook: ['solve', 'materials', 'model', 'drawing'],
  ui: ['print', 'solve'],
  files: ['print', 'ui', 'drawing', 'model'],
};

function sources(folder: string): readonly string[] {
  return readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter(name => /\.(ts|tsx)$/.test(name))
    .map(name => join(folder, name));
}

const FILES = sources(SRC).map(path => ({
  path: relative(ROOT, path).split(sep).join('/'),
  text: readFileSync(path, 'utf8'),
}));

function folderOf(path: string): string {
  const [, folder = '', rest] = path.split('/');
  return rest === undefined ? 'main' : folder;
}

function importsOf(text: string): readonly string[] {
  const found = text.matchAll(/^\s*(?:import|export)\b[^'"]*?from\s+'([^']+)'/gms);
  const lazy = text.matchAll(/\bimport\('([^']+)'\)/g);
  return [...found, ...lazy].map(match => match[1] ?? '');
}

/** Imports of ours that bring something to run; a type-only import is a contract, not a dependency. */
function runningImports(text: string): readonly string[] {
  return importsOf(text.replace(/^\s*import type\b[^'"]*?from\s+'[^']+';?$/gms, '')).filter(name =>
    name.startsWith('.'),
  );
}

function targetFolder(path: string, specifier: string): string | undefined {
  if (!specifier.startsWith('.')) return undefined;
  const resolved = new URL(specifier, `file:///${path}`).pathname.slice(1);
  return folderOf(resolved);
}

describe('folders import only what stands above them', () => {
  test.each(FILES.map(file => [file.path, file.text] as const))('%s', (path, text) => {
    const folder = folderOf(path);
    if (folder === 'main') return;
    const at = ORDER.indexOf(folder);
    expect(at, `src/${folder} is not in the import table`).toBeGreaterThanOrEqual(0);
    const targets = importsOf(text).flatMap(specifier => targetFolder(path, specifier) ?? []);
    const allowed = new Set(
      ORDER.slice(0, at + 1).filter(name => !(FORBIDDEN[folder] ?? []).includes(name)),
    );
    expect(targets.filter(target => !allowed.has(target))).toEqual([]);
  });

  test('in model/, only setout files see a recipe', () => {
    const seeing = FILES.filter(
      ({ path, text }) =>
        path.startsWith('src/model/') && importsOf(text).some(name => name.includes('/recipe/')),
    ).map(({ path }) => path.split('/').at(-1) ?? '');
    expect(seeing.filter(name => !name.startsWith('setout'))).toEqual([]);
  });

  test('packages are used only where they belong', () => {
    const homes: Readonly<Record<string, RegExp>> = {
      yaml: /^src\/recipe\//,
      conf: /^src\/files\//,
      pdfkit: /^src\/print\/pdf\//,
      ink: /^src\/(ui\/|main)/,
      react: /^src\/(ui\/|main)/,
      'ink-select-input': /^src\/ui\//,
      'ink-text-input': /^src\/ui\//,
      'string-width': /^src\/text\//,
      'node:fs': /^src\/(files\/|main)/,
      'node:os': /^src\/(files\/|main)/,
    };
    const astray = FILES.flatMap(({ path, text }) =>
      importsOf(text)
        .filter(name => homes[name] !== undefined && !homes[name]?.test(path))
        .map(name => `${path} imports ${name}`),
    );
    expect(astray).toEqual([]);
  });
});

describe('sizes', () => {
  test('no file is longer than 300 lines', () => {
    const long = FILES.filter(({ text }) => text.split('\n').length > 301).map(({ path }) => path);
    expect(long).toEqual([]);
  });

  test('no file imports more than 10 others, but for the two that join all of it', () => {
    const joining = /^src\/(?:main\.tsx|plan\/make-plan\.ts)$/;
    const busy = FILES.filter(
      ({ path, text }) => !joining.test(path) && runningImports(text).length > 10,
    ).map(({ path }) => path);
    expect(busy).toEqual([]);
  });

  test('no function is longer than 60 lines, no component than 80', () => {
    const long = FILES.flatMap(({ path, text }) =>
      functionLengths(text)
        .filter(({ lines }) => lines > (path.endsWith('.tsx') ? 80 : 60))
        .map(({ name, lines }) => `${path} ${name}: ${lines} lines`),
    );
    expect(long).toEqual([]);
  });
});

/** Formatted code closes a top-level function with a brace in the column where it began. */
function functionLengths(text: string): readonly { name: string; lines: number }[] {
  const lines = text.split('\n');
  return lines.flatMap((line, at) => {
    const opened = /^(\s*)(?:export )?(?:async )?function (\w+)/.exec(line);
    if (!opened) return [];
    const [, indent = '', name = ''] = opened;
    const end = lines.findIndex((other, index) => index > at && other === `${indent}}`);
    return end < 0 ? [] : [{ name, lines: end - at + 1 }];
  });
}

describe('rules that keep figures honest', () => {
  test('25.4 stands in measure/ alone', () => {
    const elsewhere = FILES.filter(
      ({ path, text }) => !path.startsWith('src/measure/') && /\b25\.4\b/.test(code(text)),
    );
    expect(elsewhere.map(({ path }) => path)).toEqual([]);
  });

  test('nothing above ui/ looks at a clock or rolls dice', () => {
    const pure = /^src\/(measure|solve|text|materials|recipe|model|plan|drawing|workbook|print)\//;
    const impure = FILES.filter(
      ({ path, text }) =>
        pure.test(path) &&
        /\bDate\.now\b|\bnew Date\(\)|\bMath\.random\b|\bperformance\.now\b/.test(code(text)),
    );
    expect(impure.map(({ path }) => path)).toEqual([]);
  });

  test('no default exports, no any, no unfinished notes', () => {
    const words = new RegExp(
      ['export default', ': any\\b', 'as any\\b', 'TO' + 'DO', 'FIX' + 'ME', 'XX' + 'X'].join('|'),
    );
    const found = FILES.filter(({ text }) => words.test(code(text)) || /\bTO(DO)\b/.test(text));
    expect(found.map(({ path }) => path)).toEqual([]);
  });

  test('no folder or file is called by a name that fits everything', () => {
    const vague = /(^|\/)(utils?|helpers?|common|types|index)(\.tsx?|\/|$)/;
    expect(FILES.filter(({ path }) => vague.test(path)).map(({ path }) => path)).toEqual([]);
  });
});

function code(text: string): string {
  return text.replace(/\/\*[\s\S]*?\*\//g, '').replace(/(^|\s)\/\/.*$/gm, '');
}

describe('the lock file', () => {
  test('holds no address of a registry', () => {
    const lock = readFileSync(join(ROOT, 'package-lock.json'), 'utf8');
    expect(lock).not.toMatch(/"resolved"|https?:\/\/[^"]*registry/);
  });
});

describe('the top level', () => {
  test('holds only what it should', () => {
    const allowed = [
      'DEVELOPERS.md',
      'LICENSE',
      'README.md',
      'package-lock.json',
      'package.json',
      'projects',
      'src',
      'tests',
      'tsconfig.json',
    ];
    const built = ['node_modules', 'dist', 'coverage'];
    const there = readdirSync(ROOT).filter(name => !name.startsWith('.') && !built.includes(name));
    expect(there.filter(name => !allowed.includes(name))).toEqual([]);
  });
});
