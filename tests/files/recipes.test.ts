import { spawnSync } from 'node:child_process';
import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { beforeAll, describe, expect, test } from 'vitest';
import { builtInRecipes, MOST_RECIPE_BYTES, readRecipeText } from '../../src/files/recipes.js';
import { scratchFolder } from './second-program.js';

const scratch = scratchFolder();

function put(name: string, content: string | Buffer): string {
  const file = join(scratch.path, name);
  writeFileSync(file, content);
  return file;
}

describe('the projects that come with the program', () => {
  test('are found from a source file and from a bundle alike', () => {
    const root = new URL('../../', import.meta.url);
    for (const from of ['src/main.tsx', 'src/files/recipes.ts', 'dist/app.mjs']) {
      const found = builtInRecipes(new URL(from, root).href);
      expect(found.map(({ id }) => id)).toContain('planter-bench');
      expect(found.map(({ file }) => readRecipeText(file).ok)).not.toContain(false);
    }
  });

  test('are folders with a recipe in them, by name', () => {
    for (const id of ['stool', 'bench', 'notes']) {
      mkdirSync(join(scratch.path, 'box', 'projects', id), { recursive: true });
    }
    put('box/projects/stool/recipe.yaml', 'recipe: 1');
    put('box/projects/bench/recipe.yaml', 'recipe: 1');
    put('box/projects/README.md', '');
    const from = pathToFileURL(join(scratch.path, 'box', 'deep', 'down', 'app.mjs')).href;
    expect(builtInRecipes(from).map(({ id }) => id)).toEqual(['bench', 'stool']);
  });
});

describe('the text of a project file', () => {
  beforeAll(() => {
    mkdirSync(join(scratch.path, 'my-bench'));
    put('my-bench/recipe.yaml', 'recipe: 1\ntitle: Bank fürs Beet\n');
  });

  test('is read from the file or from the folder it lies in', () => {
    const folder = join(scratch.path, 'my-bench');
    const text = { ok: true, value: 'recipe: 1\ntitle: Bank fürs Beet\n' };
    expect(readRecipeText(folder)).toEqual(text);
    expect(readRecipeText(join(folder, 'recipe.yaml'))).toEqual(text);
  });

  test('loses the byte-order mark that some editors put in front', () => {
    expect(readRecipeText(put('bom.yaml', '\ufeffrecipe: 1'))).toEqual({
      ok: true,
      value: 'recipe: 1',
    });
  });

  const refused: readonly (readonly [string, () => string, RegExp])[] = [
    ['not there', () => join(scratch.path, 'none.yaml'), /^There is no file .*none\.yaml\.$/],
    ['an empty folder', () => scratch.path, /^There is no file .*recipe\.yaml\.$/],
    ['below a file', () => join(put('file', 'x'), 'recipe.yaml'), /^There is no file /],
    ['a name with a zero in it', () => 'bench\0.yaml', /can't be read/],
    ['empty', () => put('empty.yaml', ''), /is empty/],
    [
      'one byte too long',
      () => put('long.yaml', Buffer.alloc(MOST_RECIPE_BYTES + 1, 'a')),
      /larger than 256 KB/,
    ],
    ['UTF-16', () => put('utf16.yaml', Buffer.from('recipe: 1', 'utf16le')), /not a text in UTF-8/],
    ['Latin-1', () => put('latin.yaml', Buffer.from('für', 'latin1')), /not a text in UTF-8/],
    [
      'a picture',
      () => put('picture.png', Buffer.from('89504e470d0a1a0a0000', 'hex')),
      /not a text/,
    ],
  ];
  test.each(refused)('refused: %s', (_, path, problem) => {
    const result = readRecipeText(path());
    expect(result).toMatchObject({ ok: false, problem: expect.stringMatching(problem) });
    expect(result.ok ? '' : result.hint).toMatch(/\.$/);
  });

  test.skipIf(process.platform === 'win32')('a pipe and a device do not keep it waiting', () => {
    const pipe = join(scratch.path, 'pipe');
    expect(spawnSync('mkfifo', [pipe]).status).toBe(0);
    for (const path of [pipe, '/dev/zero']) {
      expect(readRecipeText(path), path).toMatchObject({
        ok: false,
        problem: expect.stringContaining('it is no plain file'),
      });
    }
  });
});
