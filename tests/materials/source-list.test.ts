import { describe, expect, test } from 'vitest';
import { sourceList } from '../../src/materials/source-list.js';
import { PUBLICATIONS } from '../../src/materials/sources.js';

const lines = sourceList();

describe('the list of sources', () => {
  test('every publication that is named is used by a table', () => {
    const used = new Set(lines.map(({ publication }) => publication));
    const idle = Object.entries(PUBLICATIONS).filter(([, { name }]) => !used.has(name));
    expect(idle.map(([id]) => id)).toEqual([]);
  });

  test('each line is there once and says which tables stand on it', () => {
    const ids = lines.map(
      ({ publication, place, standing }) => `${publication}|${place}|${standing}`,
    );
    expect(new Set(ids).size).toBe(ids.length);
    expect(lines.every(({ tables }) => tables.length > 0)).toBe(true);
  });

  test('a published source says where in the publication, and gives its full citation', () => {
    for (const { publication, place, citation } of lines) {
      expect(place ?? '', publication).not.toBe('');
      if (publication !== 'common practice')
        expect(citation.length).toBeGreaterThan(publication.length);
    }
  });

  // The NDS itself was not at hand, so everything taken from it must say so.
  test('nothing from the NDS passes for checked', () => {
    const nds = lines.filter(({ publication }) => publication.startsWith('NDS'));
    expect(nds.length).toBeGreaterThan(3);
    expect(nds.filter(({ standing }) => standing === 'checked')).toEqual([]);
  });

  test('short names of publications are all different', () => {
    const names = Object.values(PUBLICATIONS).map(({ name }) => name);
    expect(new Set(names).size).toBe(names.length);
  });
});
