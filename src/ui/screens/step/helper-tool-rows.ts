import { hanging } from '../../../text/page-lines.js';
import { count } from '../../../text/plural.js';
import { wrap } from '../../../text/wrap.js';
import { dayWords } from '../../../workbook/clock-words.js';
import { plainer } from '../../widgets/facts.js';
import { plainRows, type Row } from '../../widgets/rows.js';
import { knownSince } from './briefing-pages.js';
import type { Work } from './work-rows.js';

/** What the helper may hold at a step, and since when; nothing where the lead alone does it. */
export function toolRows({ step, build, at }: Work, columns: number): readonly Row[] {
  if (step.who === 'lead') return [];
  const plain = plainer(at.ascii);
  return step.tools.flatMap(id => {
    const tool = build.plan.tools.find(it => it.id === id);
    if (tool === undefined || step.handsOff.includes(id)) return [];
    const known = build.progress.toolsBriefed.get(id) ?? knownSince(id, build);
    const since = known === undefined ? '' : ` Signed off ${dayWords(known)}.`;
    return plainRows(hanging('- ', plain(`${tool.name}: ${tool.plainly}${since}`), columns));
  });
}

/** What is known from earlier builds. */
export function beforeRows({ build }: Work, columns: number): readonly Row[] {
  const before = build.progress.helperBefore;
  if (before === undefined) return [];
  const { alone, together } = before;
  const words = `From earlier builds: ${count(alone, 'step')} alone, ${together} together with the lead.`;
  return plainRows(wrap(words, columns));
}
