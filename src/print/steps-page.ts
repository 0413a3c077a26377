import { formatMinutes } from '../measure/duration.js';
import type { Plan, Step } from '../plan/plan.js';
import type { Block, Page } from '../text/page.js';
import { count } from '../text/plural.js';

/** Every step in order, with its figures, for paper and for a pipe. */
export function stepsPage(plan: Plan): Page {
  return {
    id: 'steps',
    title: 'Step by step',
    blocks: plan.steps.flatMap((step, at) => stepBlocks(step, at + 1)),
  };
}

const WHO = { lead: 'lead only', helper: 'helper alone', both: 'together' } as const;

function stepBlocks(step: Step, number: number): readonly Block[] {
  const facts = [
    ...step.settings.map(({ name, text }) => ({ name, text })),
    ...(step.tally ? [{ name: 'Count', text: count(step.tally.count, step.tally.of) }] : []),
    ...step.timers.map(({ name, minutes }) => ({
      name: 'Wait',
      text: `${formatMinutes(minutes)}: ${name.toLowerCase()}`,
    })),
    ...step.look.map(text => ({ name: 'Look', text })),
    ...(step.why === '' ? [] : [{ name: 'Why', text: step.why }]),
  ];
  return [
    {
      kind: 'heading',
      text: `${number}. ${step.title} (${WHO[step.who]}, about ${formatMinutes(step.minutes.value)})`,
    },
    { kind: 'list', items: step.say },
    { kind: 'facts', facts },
  ];
}
