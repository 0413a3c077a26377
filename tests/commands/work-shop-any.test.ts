import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { WorkOption } from '../../src/commands/work/rule.js';
import { SHOP_RULES } from '../../src/commands/work/shop-rules.js';
import { workCommand } from '../../src/commands/work/work.js';

/** Words that options without a list of choices take. */
const WORDS: Readonly<Record<string, readonly string[]>> = {
  now: ['0:00', '9:30', '10:00', '15:40', '23:59'],
  sunset: ['12:00', '16:20', '19:40', '23:00'],
  area: ['1 sq ft', '38 sq ft', '800 sq ft', '75 m2', '2000 m2'],
  pot: ['clay-8', '#10', '9cm', '8in x 7-1/2in', '1in x 90in'],
  price: ['gallon=38.50', 'quart=14', 'quart=0'],
};

/** What somebody may type for an option: anything in its range, or nothing where it has a usual value. */
function typed(option: WorkOption): fc.Arbitrary<readonly string[]> {
  const { name, kind, least = 0, most = 1000, choices, usual } = option;
  if (kind === 'flag') return fc.constantFrom([], [`--${name}`]);
  const value = textFor(kind, { least, most: Math.min(most, 3000) }, choices ?? WORDS[name] ?? []);
  const given = value.map(text => [`--${name}`, text]);
  if (kind === 'words')
    return fc.array(given, { minLength: 0, maxLength: 3 }).map(all => all.flat());
  return usual === undefined ? given : fc.option(given, { nil: [] });
}

function textFor(
  kind: Exclude<WorkOption['kind'], 'flag'>,
  { least, most }: { least: number; most: number },
  words: readonly string[],
): fc.Arbitrary<string> {
  const number = fc.double({ min: least, max: most, noNaN: true }).map(n => n.toFixed(2));
  switch (kind) {
    case 'length':
      return number.map(n => `${Math.max(Number(n), least).toFixed(2)}mm`);
    case 'temperature':
      return fc.integer({ min: -20, max: 45 }).map(n => `${n}C`);
    case 'count':
      return fc.integer({ min: Math.ceil(least), max: Math.floor(most) }).map(String);
    case 'word':
    case 'words':
      return fc.constantFrom(...words);
    case 'number':
    case 'weight':
      return number;
  }
}

describe('whatever is typed in range', () => {
  test.each(SHOP_RULES.map(rule => [rule.name, rule] as const))(
    '%s answers or says why not, in words',
    (name, rule) => {
      const line = fc.tuple(...rule.options.map(typed)).map(words => words.flat());
      const units = fc.constantFrom([], ['--units', 'metric']);
      fc.assert(
        fc.property(line, units, (words, system) => {
          const { out, err, code } = workCommand([name, ...words, ...system]);
          expect([0, 2]).toContain(code);
          expect(out + err).not.toMatch(/NaN|undefined|Infinity|\bnull\b|\[object|\bsafe\b/);
          expect(code === 0 ? out : err).not.toBe('');
          const json = workCommand([name, ...words, ...system, '--as', 'json']);
          expect(json.code).toBe(code);
          if (code === 0) expect(JSON.stringify(JSON.parse(json.out))).not.toContain('null');
        }),
        { numRuns: 60 },
      );
    },
  );
});
