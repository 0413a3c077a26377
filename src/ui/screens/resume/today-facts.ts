import { type DayRule, dayRuleText } from '../../../plan/day-rule.js';
import type { Step } from '../../../plan/plan.js';
import type { DayWork } from '../../../plan/told-day.js';
import { clockWords } from '../../../workbook/clock-words.js';
import { curedAtMs } from '../../../workbook/left-standing.js';
import { isDone, stepToReturn } from '../../../workbook/next-step.js';
import { ragsNow } from '../../../workbook/rags.js';
import type { Build } from '../../screen.js';
import type { NamedText } from '../../widgets/facts.js';
import { todaysVerdict } from '../step/next-move.js';

/** Rags of a session that was never closed. */
export function ragFacts(build: Build): readonly NamedText[] {
  if (ragsNow(build) !== 'due') return [];
  const text =
    'Nobody ticked off the rags of the last coat. Find them now: flat outdoors, or under water in a lidded can.';
  return [{ name: 'Rags', text }];
}

/** What the glue did meanwhile: whether it may be loaded now. */
export function glueFacts(build: Build, nowMs: number): readonly NamedText[] {
  const cured = curedAtMs(build);
  if (cured === undefined) return [];
  const when = clockWords(cured, nowMs);
  if (cured > nowMs) {
    return [{ name: 'Curing', text: `Glue, until ${when}: no load on the joints before that.` }];
  }
  const { paused, lastAtMs } = build.progress;
  const since = paused?.atMs ?? lastAtMs ?? 0;
  return cured < since
    ? []
    : [{ name: 'Cured', text: `Glue, at its full strength since ${when}.` }];
}

/** Is it warm and dry enough for what comes today: by the day as it was told, else the rules to go by. */
export function dayFacts(build: Build, nowMs: number): readonly NamedText[] {
  const { glueDay, sealDay } = build.plan;
  const works = new Set(stepsToday(build).flatMap(({ day }) => day ?? []));
  return [
    ...(works.has('glue') ? factsOf('glue', glueDay, { build, nowMs }) : []),
    ...(works.has('seal') ? factsOf('seal', sealDay, { build, nowMs }) : []),
  ];
}

const NAMES: Readonly<Record<DayWork, string>> = { glue: 'Glue today', seal: 'Seal today' };

type Seen = { readonly build: Build; readonly nowMs: number };

function factsOf(work: DayWork, rules: readonly DayRule[], { build, nowMs }: Seen) {
  const verdict = todaysVerdict(work, build, nowMs);
  if (verdict !== undefined) {
    const { words, when, sums } = verdict;
    const text = [words, when, ...sums].filter(it => it !== '').join(' ');
    return [{ name: NAMES[work], text }];
  }
  if (rules.length === 0) return [];
  const all = rules.map(rule => `${rule.name}: ${dayRuleText(rule)}`).join('. ');
  return [{ name: NAMES[work], text: `only if all of it holds. ${all}.` }];
}

/** Open steps of the session that the next one belongs to. */
function stepsToday({ plan, progress }: Build): readonly Step[] {
  const current = stepToReturn(plan.steps, progress);
  if (current === undefined) return [];
  const session = plan.time.sessions.find(({ steps }) => steps.includes(current.id));
  const ids = session?.steps ?? [current.id];
  return plan.steps.filter(step => ids.includes(step.id) && !isDone(step, progress));
}
