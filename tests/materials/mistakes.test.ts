import { describe, expect, test } from 'vitest';
import { MISTAKES, mistakeLines, mistakeNamed } from '../../src/materials/mistakes.js';

function text(id: string): string {
  const page = mistakeNamed(id);
  if (page === undefined) throw new Error(`no page ${id}`);
  return mistakeLines(page).join('\n');
}

describe('pages about mistakes', () => {
  // What somebody had to know in the field case.
  test.each([
    ['screw-snapped', /7\/64 in/, 'F18: pilot for a No. 8 in dense wood'],
    ['screw-snapped', /11\/64 in/, 'F18: hole for the shank of a No. 8'],
    ['screw-snapped', /steel screw of the same size first/, 'F18: cut the thread with steel'],
    ['screw-snapped', /[Ww]ax/, 'F18: wax, since soap holds water'],
    ['glue-white', /weak for good/, 'F21: below the chalk point it stays weak'],
    ['glue-white', /36 h/, 'F21: nearer 36 h when only just above'],
    ['glue-white', /creamy.*lumpy/, 'F22: frozen glue'],
    ['glue-skinned', /four fifths of the open time/, 'F24: open time x 0.8'],
    ['sealer-sticky', /two warm, dry days/, 'F32: not ruined, let it have two warm dry days'],
    ['sealer-sticky', /5 °F \(3 °C\)/, 'F32: 5 F over the dew point'],
    ['sealer-sticky', /lidded metal can/, 'F36: rags'],
    ['rocks', /scribe every foot/, 'F44: scribe all feet to the largest gap'],
    ['mirrored', /end grain/, 'F56: mostly end grain needs dowels'],
    ['mirrored', /stand them up/, 'F56: stand the pair up first'],
    ['board-twisted', /16 to 24 in/, 'F57: sticker every 16 to 24 in'],
  ])('%s says %s (field case %s)', (id, words) => {
    expect(text(id)).toMatch(words);
  });

  test('there is one for each slip that is asked about', () => {
    expect(MISTAKES.map(({ id }) => id)).toEqual([
      'cut-short',
      'wrong-side',
      'notch-wide',
      'notch-deep',
      'mirrored',
      'screw-snapped',
      'split-end',
      'glue-skinned',
      'glue-white',
      'rocks',
      'sealer-sticky',
      'sealer-blotchy',
      'board-twisted',
    ]);
  });

  test('each says how bad, what to look at, what to do and how it does not happen again', () => {
    for (const { id, verdicts, look, act, next } of MISTAKES) {
      expect(verdicts.length, id).toBeGreaterThanOrEqual(2);
      for (const lines of [look, act, next]) expect(lines.length, id).toBeGreaterThan(0);
    }
  });

  test('none promises what nobody can', () => {
    for (const { id } of MISTAKES) expect(text(id)).not.toMatch(/\bsafe(ly)?\b|\bguarantee/i);
  });

  test('lines are short enough to read standing', () => {
    const longest = MISTAKES.flatMap(mistakeLines).map(line => line.length);
    expect(Math.max(...longest)).toBeLessThanOrEqual(150);
  });
});
