import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import * as z from 'zod/mini';
import { SIXTEENTHS } from '../measure/displays.js';
import type { Display } from '../measure/quantities.js';
import { DISPLAY_FORM } from '../workbook/saved-forms.js';
import { type DiskTrouble, diskTrouble } from './disk-trouble.js';
import { readFileBytes } from './read-file.js';
import { replaceWhole } from './whole-file.js';

/** What a builder likes, whatever is being built. */
export type Preferences = {
  readonly display: Display;
  /** Ring the terminal's bell when a timer is up. */
  readonly bell: boolean;
};

export const USUAL_PREFERENCES: Preferences = { display: SIXTEENTHS, bell: true };

const FORM = z.object({ display: DISPLAY_FORM, bell: z.boolean() });
const MOST_BYTES = 64 * 1024;

/** The preferences in a data folder; the usual ones where there are none or they can't be read. */
export function loadPreferences(folder: string): Preferences {
  const found = readFileBytes(fileIn(folder), MOST_BYTES);
  if (found.state !== 'read') return USUAL_PREFERENCES;
  try {
    const result = FORM.safeParse(JSON.parse(found.bytes.toString('utf8')));
    return result.success ? result.data : USUAL_PREFERENCES;
  } catch {
    return USUAL_PREFERENCES;
  }
}

/** Keeps them for the next start; says what is wrong where that fails. */
export function savePreferences(folder: string, preferences: Preferences): DiskTrouble | undefined {
  const file = fileIn(folder);
  try {
    mkdirSync(folder, { recursive: true });
    replaceWhole(file, { ...preferences });
    return undefined;
  } catch (error) {
    return diskTrouble(error, file);
  }
}

function fileIn(folder: string): string {
  return join(folder, 'preferences.json');
}
