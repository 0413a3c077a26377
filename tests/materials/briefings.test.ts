import { describe, expect, test } from 'vitest';
import { BRIEFINGS, briefingOf } from '../../src/materials/briefings.js';
import { CAUTIONS } from '../../src/materials/cautions.js';
import { TOOLS, toolNamed } from '../../src/materials/tools.js';

describe('what is told before a tool is first used', () => {
  test.each(TOOLS.map(({ id }) => id))('the %s has its briefing, once', id => {
    expect(BRIEFINGS.filter(({ tool }) => tool === id)).toHaveLength(1);
  });

  test.each(TOOLS.filter(({ noise }) => noise !== undefined).map(({ id }) => id))(
    'the %s, which can hurt, is asked about at least twice, after its own caution',
    id => {
      const briefing = briefingOf(id);
      expect(briefing?.asked.length).toBeGreaterThanOrEqual(2);
      expect(toolNamed(id)?.cautions).toContain(briefing?.caution);
    },
  );

  /** A figure in an answer is one of the caution that was read, which names its publication. */
  test.each(BRIEFINGS.filter(({ caution }) => caution !== undefined))(
    'no figure about the $tool is new in question or answer',
    ({ tool, caution, inShort, asked }) => {
      const read = caution === undefined ? '' : CAUTIONS[caution].lines.join(' ');
      const said = [inShort, ...asked.flatMap(it => [it.ask, it.listenFor])].join(' ');
      for (const figure of said.match(/\d[\d\-/]*/g) ?? []) expect(read, tool).toContain(figure);
    },
  );

  /** Field case F36: rags flat outdoors, or drowned in a lidded metal can; never crumpled, never in the bin. */
  test('who brushes on sealer has to say what becomes of the rags', () => {
    const answers = briefingOf('brush')
      ?.asked.map(({ listenFor }) => listenFor)
      .join(' ');
    expect(answers).toMatch(/Flat and single outdoors, or under water in a metal can with a lid/);
    expect(answers).toMatch(/burn hours later/);
  });

  /** Field case F51: the hook slides by its own thickness so that hooking and pushing agree. */
  test('the loose hook of the tape is explained', () => {
    expect(briefingOf('tape')?.asked[0].listenFor).toMatch(/slides by its own thickness/);
  });

  test('questions are questions, and nothing is called safe', () => {
    for (const { asked, inShort } of BRIEFINGS) {
      for (const { ask, listenFor } of asked) {
        expect(ask).toMatch(/[?]$|\?.*\?$/);
        expect(`${listenFor} ${inShort}`).not.toMatch(/\bsafe/i);
      }
    }
  });
});
