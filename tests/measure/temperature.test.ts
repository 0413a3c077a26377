import { expect, test } from 'vitest';
import { MILLIMETERS, SIXTEENTHS } from '../../src/measure/displays.js';
import {
  fahrenheit,
  formatTemperature,
  parseTemperature,
  toFahrenheit,
} from '../../src/measure/temperature.js';

// Fixed points: water freezes at 32 °F and boils at 212 °F; the scales meet at -40 (NIST SP 811, B.8).
test.each([
  [32, 0],
  [212, 100],
  [-40, -40],
  [50, 10],
  [68, 20],
])('%d °F is %d °C', (f, c) => {
  expect(fahrenheit(f)).toBe(c);
  expect(toFahrenheit(c)).toBe(f);
});

test.each([
  ['68 F', 20, 20],
  ['68°F', 20, 20],
  ['68 deg F', 20, 20],
  ['20 °C', 20, 20],
  ['20c', 20, 20],
  ['20℃', 20, 20],
  ['50', 10, 50],
  ['50 degrees', 10, 50],
  ['-40', -40, -40],
  ['−5 C', -5, -5],
  ['minus 5 C', -5, -5],
  ['+5 C', 5, 5],
  ['20,5 C', 20.5, 20.5],
])('%s', (text, inch, metric) => {
  expect(parseTemperature(text, 'inch')).toEqual({ ok: true, value: inch });
  expect(parseTemperature(text, 'metric')).toEqual({ ok: true, value: metric });
});

test.each([
  ['', 'No temperature'],
  ['warm', 'not a temperature'],
  ['68 K', 'not a temperature'],
  ['1e2', 'not a temperature'],
  ['68', 'outside any weather'],
  ['-300 C', 'outside any weather'],
])('%s is refused where degrees are Celsius', (text, words) => {
  const celsius = parseTemperature(text, 'metric');
  expect(celsius.ok ? 'read' : celsius.problem).toContain(words);
});

test.each([
  [20, '68 °F', '20 °C'],
  [10, '50 °F', '10 °C'],
  [-0.4, '31 °F', '0 °C'],
  [-17.8, '0 °F', '-18 °C'],
])('%d °C is written %s or %s', (celsius, inch, metric) => {
  expect(formatTemperature(celsius, SIXTEENTHS)).toBe(inch);
  expect(formatTemperature(celsius, MILLIMETERS)).toBe(metric);
});
