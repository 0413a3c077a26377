#!/usr/bin/env node
import { readdirSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';

const ROOT = fileURLToPath(new URL('..', import.meta.url));
const APP = join(ROOT, 'dist', 'app.mjs');

/** The latest change of any file or folder below; folders change when a file in them goes. */
function latestIn(folder) {
  let latest = statSync(folder).mtimeMs;
  for (const entry of readdirSync(folder, { withFileTypes: true })) {
    const path = `${folder}/${entry.name}`;
    const at = entry.isDirectory() ? latestIn(path) : statSync(path).mtimeMs;
    if (at > latest) latest = at;
  }
  return latest;
}

function isFresh() {
  const compiled = statSync(APP, { throwIfNoEntry: false });
  if (compiled === undefined) return false;
  const lock = statSync(join(ROOT, 'package-lock.json'), { throwIfNoEntry: false });
  return compiled.mtimeMs >= Math.max(latestIn(join(ROOT, 'src')), lock?.mtimeMs ?? 0);
}

/** What to do about a bundle that could not be made. */
function advice(error) {
  if (error.code === 'ERR_MODULE_NOT_FOUND') return 'Run "npm ci" in that folder first.';
  if (['EACCES', 'EPERM', 'EROFS'].includes(error.code)) {
    return 'Run "npm run compile" once as somebody who may write there.';
  }
  if (error.code === 'ENOSPC') return 'The disk is full: free some space and start again.';
  return 'Put the files in src/ back as they were, or mend what is named above.';
}

async function start() {
  try {
    if (!isFresh()) await (await import('./compile.mjs')).compile();
  } catch (error) {
    const what = `Notchbook could not be made ready in ${ROOT}:`;
    process.stderr.write(`${what}\n${error.message}\n${advice(error)}\n`);
    process.exitCode = 3;
    return;
  }
  await import(pathToFileURL(APP).href);
}

await start();
