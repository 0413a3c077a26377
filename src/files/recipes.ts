import { readdirSync, statSync } from 'node:fs';
import { dirname, join, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import { type Parsed, parsed, unreadable } from '../measure/parsed.js';
import { readFileBytes } from './read-file.js';

/** A project file: where it lies and what its folder is called. */
export type RecipeFile = { readonly id: string; readonly file: string };

const FILE = 'recipe.yaml';
/** Five times the longest project file here; a page of writing is 3 KB. */
export const MOST_RECIPE_BYTES = 256 * 1024;

/**
 * The projects that come with the program, by name. They lie in `projects/` beside or above the file
 * that runs, so they are found from the sources as well as from a bundle: pass `import.meta.url`.
 */
export function builtInRecipes(from: string): readonly RecipeFile[] {
  for (let folder = dirname(fileURLToPath(from)); ; folder = dirname(folder)) {
    const found = recipesIn(join(folder, 'projects'));
    if (found.length > 0 || folder === dirname(folder)) return found;
  }
}

function recipesIn(projects: string): readonly RecipeFile[] {
  return foldersIn(projects)
    .map(id => ({ id, file: join(projects, id, FILE) }))
    .filter(({ file }) => kindOf(file) === 'file');
}

function foldersIn(projects: string): readonly string[] {
  try {
    return readdirSync(projects).sort();
  } catch {
    return [];
  }
}

function kindOf(path: string): 'file' | 'folder' | 'other' {
  try {
    const about = statSync(path);
    if (about.isDirectory()) return 'folder';
    return about.isFile() ? 'file' : 'other';
  } catch {
    return 'other';
  }
}

/**
 * The text of a project file, or what is wrong with it. A folder stands for the `recipe.yaml` in it;
 * more than 256 KB, other things than plain files and other encodings than UTF-8 are refused.
 */
export function readRecipeText(path: string): Parsed<string> {
  const file = recipeFileAt(resolve(path));
  const found = readFileBytes(file, MOST_RECIPE_BYTES);
  if (found.state === 'missing') {
    return unreadable(
      `There is no file ${file}.`,
      `Give the path of a project file or of a folder with ${FILE} in it.`,
    );
  }
  if (found.state === 'refused') {
    return unreadable(
      `${file} can't be read: ${found.why}.`,
      `A project file is a text of at most ${MOST_RECIPE_BYTES / 1024} KB that you may read.`,
    );
  }
  return asText(found.bytes, file);
}

function recipeFileAt(path: string): string {
  return kindOf(path) === 'folder' ? join(path, FILE) : path;
}

function asText(bytes: Buffer, file: string): Parsed<string> {
  const hint = 'Save it as plain text in UTF-8.';
  if (bytes.length === 0) return unreadable(`${file} is empty.`, 'Give a project file.');
  if (bytes.includes(0)) return unreadable(`${file} is not a text in UTF-8.`, hint);
  try {
    return parsed(new TextDecoder('utf-8', { fatal: true }).decode(bytes));
  } catch {
    return unreadable(`${file} is not a text in UTF-8.`, hint);
  }
}
