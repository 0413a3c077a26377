/** Words in a row: "a", "a and b", "a, b and c"; with "or" when asked. */
export function listWords(words: readonly string[], last: 'and' | 'or' = 'and'): string {
  const [final = '', ...others] = words.toReversed();
  if (others.length === 0) return final;
  return `${others.toReversed().join(', ')} ${last} ${final}`;
}
