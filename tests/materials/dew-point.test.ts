import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { dewPoint, humidityAt, MAGNUS, OLDER_MAGNUS } from '../../src/materials/dew-point.js';
import { fahrenheit, toFahrenheit } from '../../src/measure/temperature.js';
import { referenceRows } from '../support/reference-rows.js';

describe('dew point', () => {
  // Worked by hand with g = ln(RH/100) + bT/(c + T), Td = c g/(b - g), to a hundredth.
  test.each(
    referenceRows('Magnus formula, b 17.625 and c 243.04, sums on paper', [
      [5, 90, 3.5],
      [10, 80, 6.71],
      [15, 60, 7.3],
      [16, 71, 10.74],
      [20, 50, 9.26],
      [20, 65, 13.22],
      [20, 85, 17.4],
      [22, 78, 17.99],
      [25, 60, 16.7],
      [30, 40, 14.93],
      [30, 70, 23.93],
    ] as const),
  )('%d °C at %d %% is %d °C', (air, humidity, dew) => {
    expect(Math.abs(dewPoint(air, humidity) - dew)).toBeLessThan(0.0051);
  });

  test.each(
    referenceRows(([, , , , , source]) => source, [
      [22, 78, OLDER_MAGNUS, 17.98, 0.0051, 'worked physics answer with the older constants'],
      [16, 71, MAGNUS, 11, 0.5, 'paint maker chart, 16 °C and 71 %'],
    ] as const),
  )('%d °C at %d %% is as published', (air, humidity, form, dew, within, _source) => {
    expect(Math.abs(dewPoint(air, humidity, form) - dew)).toBeLessThan(within);
  });

  // Paint maker chart: dry bulb 21 °C, wet bulb 17 °C, dew point 15 °C. Vapor pressure by the usual
  // psychrometer equation: 19.37 - 0.000662 x 1013.25 x 4 = 16.69 hPa of 24.86 hPa, so 67.1 %.
  test('21 °C with a wet bulb of 17 °C is the chart 15 °C', () => {
    expect(Math.round(dewPoint(21, 67.1))).toBe(15);
  });

  // Field case F32: 54 F with a dew point of 49 F, and 50 F with 47 F.
  test.each(
    referenceRows('field case F32', [
      [54, 49],
      [50, 47],
    ] as const),
  )('the humidity of %d F with a dew point of %d F gives that dew point back', (air, dew) => {
    const humidity = humidityAt(fahrenheit(air), fahrenheit(dew));
    expect(humidity).toBeGreaterThan(75);
    expect(humidity).toBeLessThan(95);
    expect(toFahrenheit(dewPoint(fahrenheit(air), humidity))).toBeCloseTo(dew, 6);
  });

  test('both sets of constants agree within 0.15 °C, and dew is never warmer than the air', () => {
    const air = fc.double({ min: -10, max: 45, noNaN: true });
    const humidity = fc.double({ min: 30, max: 100, noNaN: true });
    fc.assert(
      fc.property(air, humidity, (celsius, percent) => {
        const dew = dewPoint(celsius, percent);
        expect(Math.abs(dew - dewPoint(celsius, percent, OLDER_MAGNUS))).toBeLessThan(0.15);
        expect(dew).toBeLessThanOrEqual(celsius + 1e-9);
      }),
    );
  });
});
