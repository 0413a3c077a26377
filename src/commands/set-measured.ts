import { formatLength } from '../measure/format-length.js';
import { parseLength } from '../measure/length.js';
import type { Mm } from '../measure/quantities.js';
import { nearestWord } from '../measure/suggest.js';
import { isFar } from '../plan/measures.js';
import type { Plan } from '../plan/plan.js';

export type SetMeasured =
  | { readonly ok: true; readonly measured: ReadonlyMap<string, Mm> }
  | { readonly ok: false; readonly problems: readonly string[] };

/** What `--measured name=length` says; everything that is wrong is told at once. */
export function setMeasured(given: readonly string[], { measures, display }: Plan): SetMeasured {
  const problems: string[] = [];
  const measured = new Map<string, Mm>();
  for (const word of given) {
    const [name, length] = splitAtFirst(word);
    const row = measures.find(({ id }) => id === name);
    if (length === undefined) {
      problems.push(`--measured ${word}: write it as name=length, for example 2x4.width=3-7/16in.`);
      continue;
    }
    if (row === undefined) {
      const ids = measures.map(({ id }) => id);
      const near = nearestWord(name, ids);
      const help = near === undefined ? `Write one of ${ids.join(', ')}.` : `Did you mean ${near}?`;
      problems.push(`--measured ${name}: nothing of that name is measured on this piece. ${help}`);
      continue;
    }
    const read = parseLength(length, display.system);
    if (!read.ok) problems.push(`--measured ${word}: ${read.problem} ${read.hint}`.trim());
    else if (isFar(read.value, row.planned.value)) {
      const planned = formatLength(row.planned.value, display);
      problems.push(`--measured ${word}: by the plan it is ${planned}. Measure again.`);
    } else measured.set(name, read.value);
  }
  return problems.length > 0 ? { ok: false, problems } : { ok: true, measured };
}

function splitAtFirst(text: string): readonly [string, string | undefined] {
  const at = text.indexOf('=');
  return at < 0 ? [text, undefined] : [text.slice(0, at).trim(), text.slice(at + 1).trim()];
}
