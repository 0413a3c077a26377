import { createHash } from 'node:crypto';
import { existsSync, mkdirSync, renameSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { dirname, join, resolve } from 'node:path';
import { type Parsed, parsed, unreadable } from '../measure/parsed.js';
import { errorCode } from './disk-trouble.js';
import { readFileBytes } from './read-file.js';
import { tempName } from './temp-name.js';

/** A file to be made in a folder that somebody named; `name` may hold a folder: `drawings/front.svg`. */
export type MadeFile = { readonly name: string; readonly content: Uint8Array | string };

/** What we wrote into a folder: by name the digests that a file of ours may have. */
type Record = ReadonlyMap<string, readonly string[]>;

/** Remembers what in the folder is ours, so that nothing else is ever written over. */
export const RECORD_NAME = 'notchbook-files.json';
const MOST_BYTES = 64 * 1024 * 1024;

/**
 * Writes files into a folder, which is made where it is missing. A file that stands there already is
 * written over only where it is ours and as we left it; else nothing at all is written. Files that an
 * earlier run made and that are made no more go. Never throws for what a disk does.
 */
export function putFiles(folder: string, files: readonly MadeFile[]): Parsed<string> {
  const root = resolve(folder);
  try {
    makeFolder(root);
    const known = readRecord(root);
    const foreign = files.filter(file => isForeign(join(root, file.name), file, known));
    if (foreign.length > 0) return clash(root, foreign);
    const fresh: Record = new Map(files.map(file => [file.name, [digest(file.content)]]));
    writeWhole(join(root, RECORD_NAME), recordText(joined(known, fresh)));
    for (const file of files) writeWhole(join(root, file.name), file.content);
    for (const [name, digests] of known) {
      if (!fresh.has(name)) dropOurs(join(root, name), digests);
    }
    writeWhole(join(root, RECORD_NAME), recordText(fresh));
    return parsed(root);
  } catch (error) {
    return unreadable(whyNot(error, root), 'Name another folder with --to.');
  }
}

function isForeign(path: string, { name, content }: MadeFile, known: Record): boolean {
  const there = readFileBytes(path, MOST_BYTES);
  if (there.state === 'missing') return false;
  if (there.state === 'refused') return true;
  const its = digest(there.bytes);
  return its !== digest(content) && known.get(name)?.includes(its) !== true;
}

function clash(root: string, foreign: readonly MadeFile[]): Parsed<never> {
  const [first, ...others] = foreign.map(({ name }) => join(root, name));
  const more = others.length > 0 ? ` (and ${others.length} more)` : '';
  return unreadable(
    `${first}${more} is there already, and was not made by notchbook print or was changed since. Nothing was written.`,
    'Move it away, or name another folder with --to.',
  );
}

function digest(content: Uint8Array | string): string {
  return createHash('sha256').update(content).digest('hex');
}

/** No record, or one that can't be read, and nothing there counts as ours. */
function readRecord(root: string): Record {
  const found = readFileBytes(join(root, RECORD_NAME), MOST_BYTES);
  if (found.state !== 'read') return new Map();
  try {
    const read: unknown = JSON.parse(found.bytes.toString('utf8'));
    const files = isObject(read) && isObject(read.files) ? read.files : {};
    return new Map(
      Object.entries(files).flatMap(([name, digests]): [string, string[]][] =>
        Array.isArray(digests) && isPlainName(name) ? [[name, digests.map(String)]] : [],
      ),
    );
  } catch {
    return new Map();
  }
}

function isObject(value: unknown): value is { readonly [name: string]: unknown } {
  return typeof value === 'object' && value !== null;
}

/** A record that somebody wrote by hand must not reach outside the folder. */
function isPlainName(name: string): boolean {
  return /^[\w-][\w.-]*(?:\/[\w-][\w.-]*)?$/.test(name);
}

function recordText(record: Record): string {
  const about =
    'Written by notchbook print: files named here may be written over by the next print.';
  return `${JSON.stringify({ about, files: Object.fromEntries(record) }, null, 2)}\n`;
}

function joined(one: Record, other: Record): Record {
  const names = new Set([...one.keys(), ...other.keys()]);
  return new Map(
    [...names].map(name => [name, [...(one.get(name) ?? []), ...(other.get(name) ?? [])]]),
  );
}

/** Folder by folder: where the system says of a folder that it is not there, Node would try for ever. */
function makeFolder(path: string): void {
  if (existsSync(path) && statSync(path).isDirectory()) return;
  const above = dirname(path);
  if (above !== path) makeFolder(above);
  mkdirSync(path);
}

function writeWhole(path: string, content: Uint8Array | string): void {
  makeFolder(dirname(path));
  const temp = tempName(path);
  try {
    writeFileSync(temp, content, { flag: 'wx' });
    renameSync(temp, path);
  } finally {
    rmSync(temp, { force: true });
  }
}

function dropOurs(path: string, digests: readonly string[]): void {
  const there = readFileBytes(path, MOST_BYTES);
  if (there.state === 'read' && digests.includes(digest(there.bytes))) rmSync(path);
}

function whyNot(error: unknown, root: string): string {
  const code = errorCode(error);
  if (code === 'ENOSPC' || code === 'EDQUOT') return `The disk that holds ${root} is full.`;
  if (code === 'EACCES' || code === 'EPERM' || code === 'EROFS')
    return `You have no right to write into ${root}.`;
  if (code === 'EEXIST' || code === 'ENOTDIR') return `${root} is no folder.`;
  return `${root} could not be written to (${code ?? String(error)}).`;
}
