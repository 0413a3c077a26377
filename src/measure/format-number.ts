/**
 * A number with at most so many decimals, closing zeros dropped, and never "-0":
 * `formatNumber(2.50, 2)` is "2.5", `formatNumber(-0.001, 2)` is "0".
 */
export function formatNumber(value: number, places: number): string {
  return trimmed(value.toFixed(places));
}

/** About two figures for a quantity nobody measures finer: 1.19 is "1.2", 37.6 is "38". */
export function formatAbout(value: number): string {
  return formatNumber(value, Math.abs(value) < 9.95 ? 1 : 0);
}

function trimmed(digits: string): string {
  const short = digits.includes('.') ? digits.replace(/\.?0+$/, '') : digits;
  return short === '-0' ? '0' : short;
}
