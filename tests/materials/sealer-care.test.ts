import { describe, expect, test } from 'vitest';
import { SEALERS } from '../../src/materials/sealer.js';
import { ragsCaution, sealerCaution } from '../../src/materials/sealer-care.js';
import { ragsOf } from '../../src/workbook/rags.js';
import { benchPlan, buildAfter, TUESDAY_MS } from '../support/open-build.js';

const text = (lines: readonly string[]) => lines.join(' ');

// NFPA on oily rags: oils and oil-borne finishes heat up as they dry; what is thinned with water does not. Solvents:
// typical labels, from memory.
describe.each([
  ['penetrating-sealer', 'vapor burns', 'catch fire'],
  ['penetrating-oil', 'heats up', 'catch fire'],
  ['semitransparent-stain', 'vapor burns', 'catch fire'],
  ['water-borne-sealer', 'thinned with water', 'do not heat up by themselves'],
] as const)('%s', (id, own, rags) => {
  test('its caution speaks of its own danger first, and of what all sealers ask', () => {
    const { lines } = sealerCaution(id);
    expect(lines[0]).toContain(own);
    expect(text(lines)).toContain('moving air');
    expect(text(lines)).toContain('The label');
  });

  test('its rags are told by what they do', () => {
    const { title, lines } = ragsCaution(id);
    expect(`${title} ${text(lines)}`).toContain(rags);
    if (id === 'water-borne-sealer') expect(`${title} ${text(lines)}`).not.toContain('catch fire');
  });
});

test('every sealer of the table is looked at here', () => {
  expect(SEALERS.map(({ id }) => id)).toEqual([
    'penetrating-sealer',
    'penetrating-oil',
    'semitransparent-stain',
    'water-borne-sealer',
  ]);
});

test('the line at a pause asks for a lidded can where rags heat up, and for none where they do not', () => {
  const plan = benchPlan();
  const { workbook } = buildAfter([{ kind: 'step-done', atMs: TUESDAY_MS, step: 'seal' }], plan);
  const [hot] = ragsOf({ workbook, plan });
  expect(hot).toMatchObject({ must: true });
  expect(hot?.say).toContain('tight lid');
  const cold = { ...plan, sealer: { ...plan.sealer, hotRags: false } };
  const [line] = ragsOf({ workbook, plan: cold });
  expect(line).toMatchObject({ must: false });
  expect(line?.say).not.toMatch(/tight lid|fire/);
});
