import { formatLength } from '../../../measure/format-length.js';
import type { Plan } from '../../../plan/plan.js';
import { finer } from '../../../plan/readings.js';
import { listWords } from '../../../text/list.js';
import { count } from '../../../text/plural.js';
import type { Event } from '../../../workbook/events.js';
import type { MeasureEvent } from '../../../workbook/measure-events.js';

/**
 * What would be taken back, in words: `2 pieces of "Cut the frame"`, `3 cautions were read`,
 * `the first piece, measured at 18 in and counted`.
 */
export function actWords(act: readonly Event[], plan: Plan): string {
  const first = act.find(({ kind }) => kind === 'first-measured');
  if (first !== undefined) return listWords([eventWords(first, plan), ...withFirst(act)]);
  const cautions = act.filter(({ kind }) => kind === 'briefed').length;
  if (cautions < 2) return listWords(act.map(event => eventWords(event, plan)));
  const rest = act.filter(({ kind }) => kind !== 'briefed').map(event => eventWords(event, plan));
  return listWords([`${cautions} cautions were read`, ...rest]);
}

/** What else was done to the first piece when it was measured. */
function withFirst(act: readonly Event[]): readonly string[] {
  const has = (kind: Event['kind']) => act.some(it => it.kind === kind);
  return [
    ...(has('piece-done') ? ['counted'] : []),
    ...(has('note-written') ? ['noted as short'] : []),
    ...(has('piece-spoiled') ? ['set aside'] : []),
  ];
}

function eventWords(event: Event, plan: Plan): string {
  const { steps, cautions, tools } = plan;
  const of = 'step' in event ? `"${titleOf(event.step, steps)}"` : '';
  switch (event.kind) {
    case 'piece-done':
      return `${count(event.count, countedIn(event.step, steps))} of ${of}`;
    case 'check-made':
      return `check ${event.check + 1} of ${of}`;
    case 'step-done':
      return `${of} is done`;
    case 'timer-started':
      return `the start of the timer "${event.name}"`;
    case 'timer-silenced':
      return 'a timer was heard';
    case 'timer-stopped':
      return 'a timer was stopped';
    case 'timer-snoozed':
      return 'a timer was put off';
    case 'day-told':
      return 'how warm it is today was told';
    case 'note-written':
      return `the note "${event.text}"`;
    case 'briefed':
      return `the caution "${cautions.find(({ id }) => id === event.caution)?.title ?? ''}" was read`;
    case 'tools-briefed':
      return `the briefing on ${listWords(event.tools.map(id => toolName(id, tools)))}`;
    case 'rags-laid':
      return 'that the rags are laid out';
    case 'helper-changed':
      return 'that another helper came';
    case 'piece-spoiled':
      return `1 x ${event.mark} of ${of} was spoiled`;
    case 'board-added':
      return `${count(event.count, 'board')} of ${event.section} added to the rack`;
    case 'board-spoiled':
      return `${event.board} of ${event.section} is bad`;
    case 'size-measured':
    case 'measure-dropped':
    case 'first-measured':
    case 'diagonals-measured':
      return measureWords(event, plan);
    case 'clock-set-back':
    case 'build-started':
    case 'step-visited':
    case 'paused':
    case 'resumed':
    case 'helper-came':
    case 'taken-back':
      return '';
  }
}

function titleOf(id: string, steps: Plan['steps']): string {
  return steps.find(step => step.id === id)?.title ?? 'a step that is no longer in the plan';
}

function toolName(id: string, tools: Plan['tools']): string {
  return tools.find(tool => tool.id === id)?.name ?? id;
}

function countedIn(id: string, steps: Plan['steps']): string {
  return steps.find(step => step.id === id)?.tally?.of ?? 'piece';
}

function measureWords(event: MeasureEvent, { display, measures }: Plan): string {
  switch (event.kind) {
    case 'first-measured':
      return `the first piece, measured at ${formatLength(event.measured, display)}`;
    case 'diagonals-measured':
      return 'the two diagonals';
    case 'size-measured':
    case 'measure-dropped': {
      const say = measures.find(({ id }) => id === event.what)?.say ?? event.what;
      if (event.kind === 'measure-dropped') return `"${say}" counts as planned again`;
      // The length stands first: a row of 80 columns may have no room for all that was measured.
      const length = formatLength(event.value, finer(display));
      return event.isTaken ? `${length} for "${say}"` : `the note of ${length} for "${say}"`;
    }
  }
}
