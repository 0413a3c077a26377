import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { humidityAt } from '../../src/materials/dew-point.js';
import { type SealWeather, sealDay } from '../../src/materials/seal-day.js';
import { sealVerdict, sealWhen } from '../../src/materials/seal-words.js';
import { MILLIMETERS, SIXTEENTHS } from '../../src/measure/displays.js';
import { fahrenheit, toFahrenheit } from '../../src/measure/temperature.js';
import { referenceRows } from '../support/reference-rows.js';

const FINE: SealWeather = {
  air: fahrenheit(70),
  surface: fahrenheit(70),
  humidityPercent: 50,
  low: fahrenheit(55),
  moisturePercent: 14,
  sprinkle: 'not-tried',
  nowMinutes: 11 * 60,
  sunsetMinutes: 19 * 60 + 40,
};

function day(change: Partial<SealWeather>) {
  return sealDay('penetrating-sealer', { ...FINE, air: change.surface ?? FINE.air, ...change });
}

function kinds(change: Partial<SealWeather>) {
  return day(change).obstacles.map(({ kind }) => kind);
}

/** F32 gives dew points, and no sunset: 19:40 is assumed, the work was done after dark. */
function f32(air: number, dew: number, hour: number): Partial<SealWeather> {
  return {
    surface: fahrenheit(air),
    humidityPercent: humidityAt(fahrenheit(air), fahrenheit(dew)),
    low: fahrenheit(46),
    nowMinutes: hour * 60,
  };
}

describe('may I seal now', () => {
  // Field case F32: stained from 20:00 to 23:00, 54 F over a dew point of 49 F, then 50 F over 47 F; 46
  // to 49 F overnight; label 50 to 90 F; in the morning dew lay on it and color came off.
  test.each(
    referenceRows('field case F32', [
      [54, 49, 20, 5],
      [50, 47, 23, 3],
    ] as const),
  )(
    'F32: %d F over a dew point of %d F at %d h has %d F to spare, and is refused',
    (air, dew, hour, spread) => {
      const found = day(f32(air, dew, hour));
      expect(found.verdict).toBe('not-today');
      expect((found.spread * 9) / 5).toBeCloseTo(spread, 6);
      expect(found.obstacles.map(({ kind }) => kind)).toEqual(
        expect.arrayContaining(['near-dew-point', 'cold-night', 'too-late']),
      );
      expect(found.dewTonight).toBe(true);
    },
  );

  // Field case F32: finish at least 4 h before sunset: 19:40 - 4:00 = 15:40.
  test('F32: the last stroke is 4 h before sunset', () => {
    expect(sealVerdict(day({}), SIXTEENTHS)).toBe('Yes, until 15:40.');
    expect(sealVerdict(day({ sunsetMinutes: 21 * 60 + 40 }), SIXTEENTHS)).toBe('Yes, until 17:40.');
    expect(kinds({ nowMinutes: 15 * 60 + 40 })).toEqual(['too-late']);
  });

  test('in the morning the dew goes first', () => {
    const early = day({ nowMinutes: 8 * 60 });
    expect(early.verdict).toBe('later-today');
    expect(sealVerdict(early, SIXTEENTHS)).toMatch(/^Not yet: from 10:00 until 15:40 today/);
  });

  test.each(
    referenceRows(
      ({ source }) => source,
      [
        {
          source: 'Wood Handbook chapter 16, from memory',
          title: 'wood below 20 %',
          given: { moisturePercent: 20 },
          told: ['wet-wood'],
        },
        {
          source: 'Wood Handbook chapter 16, from memory',
          title: '19.9 % passes',
          given: { moisturePercent: 19.9 },
          told: [],
        },
        {
          source: 'This Old House',
          title: 'deck finish above 50 F',
          given: { surface: fahrenheit(49) },
          told: ['too-cold', 'cold-night'],
          low: 49,
        },
        {
          source: 'coating trade notes',
          title: 'humidity below 85 %',
          given: { humidityPercent: 85, surface: fahrenheit(70) },
          told: ['damp-air', 'near-dew-point'],
        },
        {
          source: 'field case F34',
          title: 'water stands in beads, wait',
          given: { sprinkle: 'beads' as const },
          told: ['beads'],
        },
        {
          source: 'field case F34',
          title: 'water soaks in, ready',
          given: { sprinkle: 'soaks-in' as const },
          told: [],
        },
      ],
    ),
  )('$source: $title', ({ given, told, low }) => {
    expect(kinds(low === undefined ? given : { ...given, low: fahrenheit(low) })).toEqual(told);
  });

  // °F of air and wood by day, with a night as warm, in dry air.
  test.each(
    referenceRows(([, , , source]) => source, [
      ['penetrating-oil', 44, false, 'penetrating oil application sheet: 45 to 80 F'],
      ['penetrating-oil', 46, true, 'penetrating oil application sheet: 45 to 80 F'],
      ['penetrating-oil', 80, true, 'penetrating oil application sheet: 45 to 80 F'],
      ['penetrating-oil', 81, false, 'penetrating oil application sheet: 45 to 80 F'],
      ['semitransparent-stain', 49, false, 'This Old House, deck finish above 50 F'],
      ['semitransparent-stain', 51, true, 'This Old House, deck finish above 50 F'],
    ] as const),
  )('%s at %d °F: %s', (id, degrees, may, _source) => {
    const air = fahrenheit(degrees);
    const found = sealDay(id, { ...FINE, air, surface: air, low: air, humidityPercent: 40 });
    expect(found.verdict === 'yes').toBe(may);
  });

  // Field case F34: a test and not the calendar.
  test('F34: without a meter and without the sprinkle test it says to try that first', () => {
    const { moisturePercent: _none, ...unmeasured } = FINE;
    const found = sealDay('penetrating-sealer', unmeasured);
    expect(found.verdict).toBe('test-first');
    expect(sealVerdict(found, SIXTEENTHS)).toMatch(/^Sprinkle water.*yes, until 15:40/);
    const early = sealDay('penetrating-sealer', { ...unmeasured, nowMinutes: 8 * 60 });
    expect(sealVerdict(early, SIXTEENTHS)).toContain('yes, from 10:00 until 15:40');
  });

  // Under a roof dew does not fall on it (common practice): a damp or cold evening is still one.
  test('where no sunset is told, no hour of the day speaks against it, and none is told', () => {
    const { sunsetMinutes: _none, ...roof } = { ...FINE, nowMinutes: 22 * 60 };
    const found = sealDay('penetrating-sealer', roof);
    expect(found.verdict).toBe('yes');
    expect(sealVerdict(found, SIXTEENTHS)).toBe('Yes, as far as warmth, damp and dew point go.');
    const damp = sealDay('penetrating-sealer', { ...roof, humidityPercent: 90 });
    expect(damp.verdict).toBe('not-today');
    const { moisturePercent: _meter, ...unmeasured } = roof;
    const test = sealVerdict(sealDay('penetrating-sealer', unmeasured), SIXTEENTHS);
    expect(test).toMatch(/10 min, yes; if it stands in beads, wait\.$/);
  });

  // Sum on paper: 70 F at 50 % has a dew point of 50.5 F, so 19.5 F to spare.
  test('the sum is told', () => {
    expect(toFahrenheit(day({}).dewPoint)).toBeCloseTo(50.5, 1);
    expect((day({}).spread * 9) / 5).toBeCloseTo(19.5, 1);
  });

  test('not today names every reason and what has to come true', () => {
    const found = day({ moisturePercent: 26, low: fahrenheit(40) });
    expect(sealVerdict(found, SIXTEENTHS)).toMatch(/26%.*40 °F/);
    expect(sealWhen(found, SIXTEENTHS)).toBe(
      'From tomorrow 10:00 at the earliest, if a meter shows less than 20%, and the night stays at 50 °F or more.',
    );
  });

  test('a day too short for a stroke is refused', () => {
    expect(kinds({ sunsetMinutes: 13 * 60, nowMinutes: 8 * 60 })).toEqual(['short-day']);
  });

  // Sum on paper: air of 70 F at 50 % has a dew point of 50.5 F; wood at 54 F has 3.5 F to spare.
  test('wood colder than the air is nearer to the dew point', () => {
    expect(kinds({ air: fahrenheit(70), surface: fahrenheit(54) })).toEqual(['near-dew-point']);
  });

  test('metric words say the same', () => {
    const found = day({ low: 5 });
    expect(sealVerdict(found, MILLIMETERS)).toContain('5 °C');
    expect(sealVerdict(found, MILLIMETERS)).toContain('10 °C');
  });
});

describe('whatever the weather', () => {
  const aDay = fc.record({
    air: fc.double({ min: -5, max: 40, noNaN: true }),
    surface: fc.double({ min: -5, max: 40, noNaN: true }),
    humidityPercent: fc.double({ min: 10, max: 100, noNaN: true }),
    low: fc.double({ min: -10, max: 25, noNaN: true }),
    moisturePercent: fc.double({ min: 6, max: 35, noNaN: true }),
    sprinkle: fc.constantFrom('soaks-in', 'beads', 'not-tried') as fc.Arbitrary<
      SealWeather['sprinkle']
    >,
    nowMinutes: fc.integer({ min: 0, max: 1439 }),
    sunsetMinutes: fc.integer({ min: 900, max: 1320 }),
  });

  test('damper air, wetter wood or a colder night never turn a no into a yes', () => {
    const more = fc.double({ min: 0, max: 10, noNaN: true });
    fc.assert(
      fc.property(aDay, more, (weather, by) => {
        if (sealDay('penetrating-sealer', weather).verdict === 'yes') return;
        const worse: readonly Partial<SealWeather>[] = [
          { humidityPercent: Math.min(100, weather.humidityPercent + by) },
          { moisturePercent: weather.moisturePercent + by },
          { low: weather.low - by },
        ];
        for (const change of worse)
          expect(sealDay('penetrating-sealer', { ...weather, ...change }).verdict).not.toBe('yes');
      }),
    );
  });
});
