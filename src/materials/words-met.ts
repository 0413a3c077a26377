import { TRADE_WORDS, type TradeWord } from './trade-words.js';

/**
 * The words that are met in these texts, in the order of the alphabet. Whole words only, either case:
 * "rails" meets `rail`, "trailer" does not.
 */
export function wordsIn(texts: readonly string[]): readonly TradeWord[] {
  const all = texts.join('\n').toLowerCase();
  return TRADE_WORDS.filter(({ word, forms = [] }) =>
    [word, ...forms].some(form => isMet(form.toLowerCase(), all)),
  );
}

function isMet(form: string, text: string): boolean {
  for (let at = text.indexOf(form); at >= 0; at = text.indexOf(form, at + 1)) {
    const before = text[at - 1] ?? ' ';
    const after = text[at + form.length] ?? ' ';
    if (!/[\p{L}\d-]/u.test(before) && !/[\p{L}\d]/u.test(after)) return true;
  }
  return false;
}
