import { mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import {
  loadPreferences,
  savePreferences,
  USUAL_PREFERENCES,
} from '../../src/files/preferences.js';
import { HALF_MILLIMETERS } from '../../src/measure/displays.js';
import { scratchFolder } from './second-program.js';

const scratch = scratchFolder();

describe('preferences', () => {
  test('are the usual ones at first, and are kept', () => {
    const folder = join(scratch.path, 'new', 'folder');
    expect(loadPreferences(folder)).toEqual(USUAL_PREFERENCES);
    const metric = { display: HALF_MILLIMETERS, bell: false };
    expect(savePreferences(folder, metric)).toBe(undefined);
    expect(loadPreferences(folder)).toEqual(metric);
    expect(readdirSync(folder)).toEqual(['preferences.json']);
  });

  test.each([
    '',
    '{"display":',
    'null',
    '[]',
    '{"display":{"system":"ell","grid":1},"bell":true}',
    '{"display":{"system":"metric","grid":0},"bell":true}',
  ])('damaged (%s): the usual ones, and they can be kept anew', content => {
    const folder = join(scratch.path, 'damaged');
    mkdirSync(folder, { recursive: true });
    writeFileSync(join(folder, 'preferences.json'), content);
    expect(loadPreferences(folder)).toEqual(USUAL_PREFERENCES);
    expect(savePreferences(folder, { ...USUAL_PREFERENCES, bell: false })).toBe(undefined);
    expect(loadPreferences(folder).bell).toBe(false);
  });

  test('a folder that can not be made is told, not thrown', () => {
    const file = join(scratch.path, 'file');
    writeFileSync(file, 'mine');
    expect(savePreferences(file, USUAL_PREFERENCES)).toMatchObject({ problem: 'other' });
    expect(readFileSync(file, 'utf8')).toBe('mine');
  });
});
