import { describe, expect, test } from 'vitest';
import {
  AGE_BANDS,
  type AgeBand,
  needsCompany,
  toolRight,
} from '../../src/materials/helper-ages.js';
import { TOOLS } from '../../src/materials/tools.js';

const YOUNGEST_FIRST: readonly AgeBand[] = ['under-9', '9-11', '12-15', '16-17', 'grown'];
const POWERED = TOOLS.filter(({ noise }) => noise !== undefined).map(({ id }) => id);

describe('what a helper may hold, by age', () => {
  /** Field case F55: nine, with close supervision: drill-driver, hand saw, hammer, sanding. */
  test.each(['drill-driver', 'hand-saw', 'mallet', 'sander'])('at nine a %s, together', tool => {
    expect(toolRight(tool, '9-11').value).toBe('together');
  });

  /** Field case F55: table saw and miter saw stay with the adult; school shops start about twelve. */
  test.each(['table-saw', 'miter-saw', 'circular-saw'])('no helper holds the %s', tool => {
    for (const { id } of AGE_BANDS) expect(toolRight(tool, id).value).toBe('lead');
  });

  /** Field case F55 speaks of nine: nothing is said of younger ones, so the lead holds it. */
  test('under nine nobody holds a saw', () => {
    expect(toolRight('hand-saw', 'under-9').value).toBe('lead');
  });

  test('a chisel from twelve, as in school shops', () => {
    expect(toolRight('chisel', '9-11').value).toBe('lead');
    expect(toolRight('chisel', '12-15').value).toBe('together');
  });

  /** 29 CFR 570.55: nobody under 18 is employed at power-driven woodworking tools. */
  test.each(POWERED)('under 18 nobody is alone with the %s', tool => {
    for (const band of YOUNGEST_FIRST.slice(0, -1))
      expect(toolRight(tool, band).value).not.toBe('alone');
  });

  test('who is older never may less', () => {
    const rank = { lead: 0, together: 1, alone: 2 };
    for (const { id } of TOOLS) {
      const ranks = YOUNGEST_FIRST.map(band => rank[toolRight(id, band).value]);
      expect(ranks, id).toEqual([...ranks].sort());
    }
  });

  test('a tool that only the lead uses is never handed on', () => {
    for (const { id } of TOOLS.filter(({ who }) => who === 'lead'))
      expect(toolRight(id, 'grown').value, id).toBe('lead');
  });

  test('heavy, oily and treated things need somebody beside a young helper', () => {
    expect(needsCompany(['lifting'], '16-17')).toBe(true);
    expect(needsCompany(['rags'], '12-15')).toBe(true);
    expect(needsCompany(['lifting'], 'grown')).toBe(false);
    expect(needsCompany(['noise'], '9-11')).toBe(false);
  });

  test('every rule names where it is from', () => {
    for (const { id } of TOOLS) expect(toolRight(id, '12-15').source.place, id).toMatch(/\w/);
  });
});
