import { formatMinutes } from '../../../measure/duration.js';
import type { Step } from '../../../plan/plan.js';
import { listWords } from '../../../text/list.js';
import type { Build } from '../../screen.js';
import type { NamedText } from '../../widgets/facts.js';
import { openBeforeWords, whyShortFirst } from '../step/open-before-words.js';
import { WHO } from '../step/phase-words.js';
import { stepToOpen } from '../step/shown-step.js';

/** The next move, who makes it, and what to take out first. */
export function nextFacts(build: Build): readonly NamedText[] {
  const { plan } = build;
  const step = stepToOpen(build);
  if (step === undefined) return [{ name: 'Next', text: 'Nothing: every step is done.' }];
  const tools = step.tools.map(id => plan.tools.find(tool => tool.id === id)?.name ?? id);
  const number = plan.steps.indexOf(step) + 1;
  const minutes = formatMinutes(step.minutes.value);
  const who = plan.time.people === 1 ? '' : `${WHO[step.who]}, `;
  return [
    { name: 'Next', text: `Step ${number}: ${step.title} (${who}about ${minutes})` },
    ...openFacts(step, build),
    ...(tools.length === 0
      ? []
      : [{ name: 'Take out', text: listWords(tools.map(name => name.toLowerCase())) }]),
  ];
}

/** What was passed over on the way to it. */
function openFacts(step: Step, build: Build): readonly NamedText[] {
  const open = openBeforeWords(step, build);
  if (open === '') return [];
  return [{ name: 'Open first', text: `${open}. ${whyShortFirst(step, build)}`.trimEnd() }];
}
