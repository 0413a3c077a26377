import { COMMON_PRACTICE } from '../measure/figure.js';
import type { Plan } from '../plan/plan.js';
import { listWords } from '../text/list.js';
import type { LeavingLine } from './before-leaving.js';
import { standingEvents } from './taken-back.js';
import { thisSession } from './this-session.js';
import type { Workbook } from './workbook.js';

type Used = { readonly workbook: Workbook; readonly plan: Plan };

const SAWS = ['miter-saw', 'table-saw', 'circular-saw', 'jigsaw'];
const CORDLESS = ['drill-driver', 'brad-nailer', 'sander'];

/** What is done with the tools, by those that were in use since the session began. */
export function sessionTools(used: Used): readonly LeavingLine[] {
  const tools = toolsUsed(used);
  const saws = SAWS.filter(id => tools.has(id));
  const cordless = CORDLESS.filter(id => tools.has(id));
  return [...(tools.has('glue-brush') ? [GLUE_IN] : []), powerLine(saws, cordless, used.plan)];
}

function powerLine(saws: readonly string[], cordless: readonly string[], plan: Plan): LeavingLine {
  const name = (id: string) => plan.tools.find(tool => tool.id === id)?.name.toLowerCase() ?? id;
  const saw = saws.length === 0 ? 'saw' : listWords(saws.map(name));
  const tools = cordless.length === 0 ? 'the tools' : listWords(cordless.map(name));
  return {
    id: 'batteries',
    say: `Unplug the ${saw}. Take the batteries out of ${tools} and charge them where it does not freeze.`,
    why: 'No tool starts by accident or in the wrong hands, and the next session does not begin with a wait.',
    source: COMMON_PRACTICE,
  };
}

/** Tools of the steps that were worked on in this session. */
function toolsUsed({ workbook, plan }: Used): ReadonlySet<string> {
  const worked = standingEvents(thisSession(workbook.events)).flatMap(event =>
    event.kind === 'step-done' || event.kind === 'piece-done' || event.kind === 'check-made'
      ? [event.step]
      : [],
  );
  return new Set(plan.steps.filter(({ id }) => worked.includes(id)).flatMap(({ tools }) => tools));
}

const GLUE_IN: LeavingLine = {
  id: 'glue-in',
  say: 'Close the glue, wash out the brush, and take the bottle in where it may freeze tonight.',
  why: 'Glue that was frozen may be lumpy, and lumpy glue holds nothing.',
  source: COMMON_PRACTICE,
};
