import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { parseLength } from '../../src/measure/length.js';

function refusal(text: string, assume: 'inch' | 'metric' = 'inch') {
  const length = parseLength(text, assume);
  return length.ok ? { problem: `read as ${length.value}`, hint: '' } : length;
}

describe('a text with two readings is refused and both are named', () => {
  test.each([
    ['1,200', 'inch', '1.2 in', '1200 in'],
    ['1,200', 'metric', '1.2 mm', '1200 mm'],
    ['1,200 mm', 'inch', '1.2 mm', '1200 mm'],
    ['1.200 mm', 'metric', '1.2 mm', '1200 mm'],
    ['1.200', 'metric', '1.2 mm', '1200 mm'],
    ['12,375 in', 'inch', '12.375 in', '12375 in'],
    ['1,000 ft', 'inch', '1 ft', '1000 ft'],
    ['1,250 cm', 'metric', '1.25 cm', '1250 cm'],
  ] as const)('%s in %s', (text, assume, small, large) => {
    const { problem } = refusal(text, assume);
    expect(problem).toContain(`as ${small} `);
    expect(problem).toContain(`as ${large}.`);
  });

  test('three and a half, or three less a half', () => {
    expect(refusal('3 - 1/2').problem).toContain('dash');
    expect(refusal('3 -1/2').problem).toContain('dash');
    expect(refusal('3 - 1/2').hint).toContain('3-1/2');
  });

  test('a bare fraction where millimeters are the rule', () => {
    expect(refusal('3-1/2', 'metric').problem).toContain('inches or millimeters');
    expect(refusal('½', 'metric').hint).toContain('3-1/2 in');
  });
});

describe('nonsense is refused in plain words', () => {
  test.each([
    ['', 'No length was given'],
    ['   ', 'No length was given'],
    ['banana', 'no number'],
    ['"', 'no number'],
    ['--', 'no number'],
    ['NaN', 'no number'],
    ['Infinity', 'no number'],
    ['5 bananas', '"bananas" is not a unit'],
    ['1e9', '"e" is not a unit'],
    ['0x10', '"x" is not a unit'],
    ['5/0 in', 'divides by zero'],
    ['5 3/0 in', 'divides by zero'],
    ['0/0', 'divides by zero'],
    ['3/2/1', '"/1" does not follow'],
    ['12 5', '"5" does not follow'],
    ['3 1/2 1/4', '"1/4" does not follow'],
    ['5 3 1/2', 'does not follow'],
    ['3 9/8', 'fraction is one or more'],
    ['3 8/8', 'fraction is one or more'],
    ['1.2.3', 'is not a number'],
    ['1,,2', 'is not a number'],
    ['1,23,456', 'is not a number'],
    ['-3', 'less than zero'],
    ['−3 in', 'less than zero'],
    ["5' -", 'breaks off'],
    ["5',", 'breaks off'],
    ['+5', 'no number where'],
    ['about 5', 'no number where'],
    ['5 ft 20 mm', 'mixes'],
    ['3 in 5 ft', 'larger unit to the smaller'],
    ['5 ft 3 ft', 'larger unit to the smaller'],
    ['20 cm 1 m', 'larger unit to the smaller'],
    ['1 m 20', 'no unit'],
    ['329 ft', 'longer than 328 ft'],
    ['101 m', 'longer than 100 m'],
    ['99999999999999999999999999', 'longer than'],
    ['9'.repeat(400), 'too long a text'],
  ])('%s', (text, words) => {
    const { problem, hint } = refusal(text);
    expect(problem).toContain(words);
    expect(hint).not.toBe('');
  });

  test.each([
    ['5 inchs', 'inch'],
    ['5 feeet', 'feet'],
    ['88 milimeters', 'millimeters'],
    ['2 metters', 'meters'],
  ])('%s: the unit that was meant is offered', (text, meant) => {
    expect(refusal(text).hint).toContain(`Did you mean ${meant}?`);
  });

  test('hints speak the unit the user works in', () => {
    expect(refusal('', 'inch').hint).toContain('46-1/2 in');
    expect(refusal('', 'metric').hint).toContain('1180 mm');
  });
});

describe('whatever is typed', () => {
  const keys = fc.constantFrom(
    ...Array.from('0123456789 \'"/-.,½⅜’”'),
    ...['ft', 'in', 'mm', 'cm', 'm', ' ', '1/2', '0', '-'],
  );
  const typed = fc.array(keys, { maxLength: 14 }).map(signs => signs.join(''));

  test('gives a length from 0 to 100 m or a problem with a hint, never a crash', () => {
    fc.assert(
      fc.property(fc.oneof(typed, fc.string()), fc.boolean(), (text, inch) => {
        const length = parseLength(text, inch ? 'inch' : 'metric');
        if (length.ok) {
          expect(length.value).toBeGreaterThanOrEqual(0);
          expect(length.value).toBeLessThanOrEqual(100_000);
        } else {
          expect(length.problem).toMatch(/\.$/);
          expect(length.hint).toMatch(/\.$/);
        }
      }),
      { numRuns: 2000 },
    );
  });

  test('control characters are not echoed', () => {
    expect(refusal('\x1b[31mbanana\x07').problem).not.toMatch(/[\x00-\x1f]/);
  });
});
