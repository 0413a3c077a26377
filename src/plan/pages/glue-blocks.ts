import type { Block } from '../../text/page.js';
import { type DayRule, dayRuleText } from '../day-rule.js';
import { clampWords, glueUpCount, glueUpPieces, glueUpTime } from '../glue-up-words.js';
import type { Plan } from '../plan.js';

/** How glued steps are split, and what each takes. */
export function glueUpBlocks({ glueUps }: Plan): readonly Block[] {
  if (glueUps.length === 0) return [];
  return [
    { kind: 'heading', text: 'Glue-ups: what is brushed, closed and clamped in one go' },
    {
      kind: 'list',
      items: glueUps.map(
        row =>
          `${row.title}: ${glueUpCount(row)}; ${glueUpPieces(row)}; ${glueUpTime(row)}; bar clamps: ${clampWords(row)}.`,
      ),
    },
    { kind: 'heading', text: 'In what order, inside each' },
    { kind: 'list', items: orderItems(glueUps) },
  ];
}

/** Laying out and squaring are told once: they are the same in every glue-up. */
function orderItems(rows: Plan['glueUps']): readonly string[] {
  const kinds = rows.flatMap(({ title, kinds }) => kinds.map(({ order }) => ({ title, order })));
  const between = kinds.map(({ title, order }) => `${title}: ${order.slice(1, -1).join(' ')}`);
  const told = (at: 0 | -1) => kinds.flatMap(({ order }) => order.at(at) ?? []);
  return [...new Set([...told(0), ...between, ...told(-1)])];
}

/** The conditions that a day has to meet, all of them. */
export function dayBlocks(what: string, rules: readonly DayRule[]): readonly Block[] {
  if (rules.length === 0) return [];
  return [
    { kind: 'heading', text: `May I ${what} today? When all of this is so` },
    {
      kind: 'facts',
      facts: rules.map(rule => ({
        name: rule.name,
        text: dayRuleText(rule),
        because: rule.limit.because,
      })),
    },
  ];
}
