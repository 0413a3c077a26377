import { formatNumber } from './format-number.js';
import { type Parsed, parsed, quoted, unreadable } from './parsed.js';
import type { Celsius, Display } from './quantities.js';

/** Degrees Fahrenheit as Celsius, exact by definition (NIST SP 811, B.8): 50 °F is 10. */
export function fahrenheit(degrees: number): Celsius {
  return ((degrees - 32) * 5) / 9;
}

/** Celsius as degrees Fahrenheit: 20 is 68. */
export function toFahrenheit(celsius: Celsius): number {
  return (celsius * 9) / 5 + 32;
}

/** The coldest and the warmest weather anybody has measured, with some room. */
const COLDEST: Celsius = -90;
const WARMEST: Celsius = 60;

const TEXT =
  /^([+-]?)(\d+(?:[.,]\d+)?)\s*(?:°|º|˚|deg(?:rees?)?\.?)?\s*(f|c|fahrenheit|celsius|℉|℃)?$/u;

/**
 * An air or wood temperature in Celsius: `68 F`, `68°F`, `20 °C`, `-5`. Without a letter it is
 * Fahrenheit or Celsius by `assume`. Refused: what no weather reaches, anything else.
 */
export function parseTemperature(text: string, assume: Display['system']): Parsed<Celsius> {
  const hint = `Write it such as ${assume === 'inch' ? '68 F' : '20 C'}.`;
  const typed = text
    .trim()
    .toLowerCase()
    .replace(/[−–]/u, '-')
    .replace(/^minus\s*/, '-');
  if (typed === '') return unreadable('No temperature was given.', hint);
  const found = TEXT.exec(typed);
  if (found === null) return unreadable(`${quoted(text)} is not a temperature.`, hint);
  const [, sign, digits = '', letter = assume === 'inch' ? 'f' : 'c'] = found;
  const degrees = Number(digits.replace(',', '.')) * (sign === '-' ? -1 : 1);
  const celsius = /^[f℉]/u.test(letter) ? fahrenheit(degrees) : degrees;
  if (celsius < COLDEST || celsius > WARMEST) {
    return unreadable(
      `${quoted(text)} is outside any weather.`,
      'Write the letter too, such as 68 F or 20 C.',
    );
  }
  return parsed(celsius);
}

/** A temperature to the whole degree: "68 °F" or "20 °C". */
export function formatTemperature(celsius: Celsius, display: Display): string {
  if (display.system === 'metric') return `${formatNumber(celsius, 0)} °C`;
  return `${formatNumber(toFahrenheit(celsius), 0)} °F`;
}
