/**
 * A number written with points or commas. `plain` and the readings are ordinary decimal digits that
 * Number() takes. "1,200" has two readings: one and a fifth, or one thousand two hundred.
 */
export type Decimal =
  | { readonly kind: 'plain'; readonly digits: string }
  | {
      readonly kind: 'two-readings';
      readonly mark: ',' | '.';
      readonly asDecimal: string;
      readonly asThousands: string;
    }
  | { readonly kind: 'none' };

/**
 * Reads digits with points and commas, from any country: `63.5`, `1,5`, `.5`, `1,234.5`, `1.234,5`.
 * One mark with exactly three digits after it, and one to three digits before it that do not start
 * with 0, has two readings; the caller knows the unit and decides.
 */
export function readDecimal(text: string): Decimal {
  if (/^\d+$/.test(text)) return plain(text);
  const once = /^(\d*)([.,])(\d*)$/.exec(text);
  if (once !== null) {
    const [, whole = '', mark = '', fraction = ''] = once;
    return readOneMark(whole, mark === ',' ? ',' : '.', fraction);
  }
  const thousands = /^\d{1,3}(?:([.,])\d{3})(?:\1\d{3})*(?:(?!\1)[.,]\d+)?$/.exec(text);
  if (thousands === null) return { kind: 'none' };
  const [, grouping = ''] = thousands;
  return plain(text.replaceAll(grouping, '').replace(',', '.'));
}

function readOneMark(whole: string, mark: ',' | '.', fraction: string): Decimal {
  if (whole === '' && fraction === '') return { kind: 'none' };
  const digits = `${whole || '0'}.${fraction || '0'}`;
  if (!/^[1-9]\d{0,2}$/.test(whole) || fraction.length !== 3) return plain(digits);
  return { kind: 'two-readings', mark, asDecimal: digits, asThousands: whole + fraction };
}

function plain(digits: string): Decimal {
  return { kind: 'plain', digits };
}
