import type { WorkOption } from './rule.js';

/** Longest thing that anybody measures in a garage, in mm: 30 m. */
const LONGEST = 30_000;

/** An option for a length that is more than nothing. */
export function lengthOption(name: string, say: string, example: string): WorkOption {
  return { name, kind: 'length', say, example, least: 1, most: LONGEST };
}

/** The same where it may be left out, or may be zero. */
export function usualLength(
  name: string,
  say: string,
  { example, usual }: { readonly example: string; readonly usual: string },
): WorkOption {
  return { ...lengthOption(name, say, example), usual, least: 0 };
}

/** An option for a temperature between those of an arctic night and a roof in the sun. */
export function temperatureOption(name: string, say: string, example: string): WorkOption {
  return { name, kind: 'temperature', say, example, least: -40, most: 60 };
}

/** The same where it may be left out. */
export function usualTemperature(name: string, say: string, example: string): WorkOption {
  return { ...temperatureOption(name, say, example), usual: '' };
}
