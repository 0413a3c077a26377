import { type Parsed, parsed, quoted, unreadable } from '../../measure/parsed.js';
import { nearestWord } from '../../measure/suggest.js';
import type { Option } from '../recipe.js';

const MOST_LISTED = 8;

/** One of the options, by its id or by its words: `roof` or `Roof terrace`. */
export function parseChoice(text: string, options: readonly Option[]): Parsed<string> {
  const typed = letters(text);
  const found = options.find(({ id, say }) => letters(id) === typed || letters(say) === typed);
  if (found !== undefined && typed !== '') return parsed(found.id);
  const near = nearestOption(text, options);
  const ids = options.map(({ id }) => id);
  const listed = ids.length > MOST_LISTED ? '' : `It can be ${ids.join(', ')}.`;
  const meant = near === undefined ? '' : `Did you mean ${near.id} (${near.say})? `;
  const hint = `${meant}${listed}`.trim();
  return unreadable(
    `${quoted(text)} is none of the choices.`,
    hint === '' ? 'Choose one of the list.' : hint,
  );
}

function nearestOption(text: string, options: readonly Option[]): Option | undefined {
  const byId = nearestWord(
    text.trim(),
    options.map(({ id }) => id),
  );
  const bySay = nearestWord(
    text.trim(),
    options.map(({ say }) => say),
  );
  return options.find(({ id, say }) => (byId === undefined ? say === bySay : id === byId));
}

function letters(text: string): string {
  return text.toLowerCase().replace(/[^\p{L}\p{N}]/gu, '');
}
