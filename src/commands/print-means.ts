import { putFiles } from '../files/put-files.js';
import { readBuild } from '../files/read-build.js';
import { readTypeface } from '../files/typeface.js';
import type { Library } from './library.js';
import type { PrintMeans } from './print.js';

/** The disk and the clock as printing needs them; `from` is where the program runs. */
export function printMeans(folder: string, library: Library, from: string): PrintMeans {
  return {
    library,
    build: word => readBuild(folder, word),
    typeface: () => readTypeface(from),
    put: putFiles,
    nowMs: Date.now(),
  };
}
