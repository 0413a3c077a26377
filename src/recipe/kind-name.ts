/** What a value is, known or not yet worked out; `options` are the only texts it can be. */
export type ValueKind =
  /** `zero` is a written 0, which stands beside a length as well as beside a number. */
  | { readonly kind: 'number'; readonly power: number; readonly zero?: boolean }
  | { readonly kind: 'text'; readonly options?: readonly string[] }
  | { readonly kind: 'flag' };

const POWERS: ReadonlyMap<number, string> = new Map([
  [0, 'a plain number'],
  [1, 'a length'],
  [2, 'an area'],
  [3, 'a volume'],
]);

/** The kind of a value for a message: "a length", "an area", "a text", "a yes or no". */
export function kindName(value: ValueKind): string {
  if (value.kind === 'text') return 'a text';
  if (value.kind === 'flag') return 'a yes or no';
  return POWERS.get(value.power) ?? `a length to the power ${value.power}`;
}
