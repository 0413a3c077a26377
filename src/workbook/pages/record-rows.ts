import { formatMinutes } from '../../measure/duration.js';
import { formatLength } from '../../measure/format-length.js';
import type { Plan, Step } from '../../plan/plan.js';
import { listWords } from '../../text/list.js';
import { count } from '../../text/plural.js';
import { dayWords, timeWords } from '../clock-words.js';
import type { Event, SlipKind } from '../events.js';
import { learnedIn } from '../learned.js';
import { isCheckMade, isDone } from '../next-step.js';
import { standingEvents } from '../taken-back.js';
import type { BadBoard } from '../workbook.js';
import type { Recorded } from './build-record-page.js';

const WENT_WRONG: Readonly<Record<SlipKind, string>> = {
  short: 'cut too short',
  'wrong-side': 'cut on the wrong side of the line',
  split: 'split or chipped',
  other: 'spoiled',
};

/** Pieces that were lost: what happened, what was left, and what the new one came from. */
export function mistakeRows(
  { plan, progress }: Pick<Recorded, 'plan' | 'progress'>,
  zone?: string,
): readonly string[] {
  return progress.rackChanges.flatMap(change => {
    if (change.kind === 'added') {
      const length = formatLength(change.length, plan.display);
      return [
        `Added to the rack: ${count(change.count, 'board')} of ${change.section}, ${length}.`,
      ];
    }
    if (change.kind === 'board-spoiled') return [badBoardRow(change, plan, zone)];
    const { atMs, step, mark, section, what, left, then, buy } = change;
    const sound =
      left > 0 ? `${formatLength(left, plan.display)} of it left sound` : 'none of it left';
    const mended = [then, buy === '' ? '' : `To buy: ${buy}.`].filter(text => text !== '');
    return [
      `${dayWords(atMs, zone)}, "${titleOf(step, plan)}": 1 x ${mark} (${section}) ${WENT_WRONG[what]}, ${sound}. ${mended.join(' ')}`.trim(),
    ];
  });
}

function badBoardRow(change: BadBoard, { display }: Plan, zone?: string): string {
  const length = (mm: number) => formatLength(mm, display);
  const { atMs, board, section, from, to, then, buy } = change;
  const mended = [then, buy === '' ? '' : `To buy: ${buy}.`].filter(text => text !== '');
  return `${dayWords(atMs, zone)}: ${board} (${section}) bad from ${length(from)} to ${length(to)}. ${mended.join(' ')}`.trim();
}

/** When glue was clamped and sealer put on, and for how long it was let be. */
export function waitRows(
  { workbook, plan }: Pick<Recorded, 'workbook' | 'plan'>,
  zone?: string,
): readonly string[] {
  return standingEvents(workbook.events).flatMap(event =>
    event.kind === 'timer-started' ? [waitLine(event, plan, zone)] : [],
  );
}

type Started = Extract<Event, { readonly kind: 'timer-started' }>;

function waitLine({ atMs, name, lastsMinutes, step }: Started, plan: Plan, zone?: string): string {
  const when = `${dayWords(atMs, zone)} ${timeWords(atMs, zone)}`;
  return `${when}: ${name}, ${formatMinutes(lastsMinutes)} ("${titleOf(step, plan)}")`;
}

/** Steps that were called done although checks or pieces were open. */
export function leftOpen({
  plan,
  progress,
}: Pick<Recorded, 'plan' | 'progress'>): readonly string[] {
  return plan.steps
    .filter(step => isDone(step, progress))
    .flatMap(step => {
      const open = openWords(step, progress);
      return open === '' ? [] : [`${step.title}: ${open}`];
    });
}

function openWords(step: Step, progress: Recorded['progress']): string {
  const checks = step.look.filter((_, number) => !isCheckMade(step, number, progress));
  const pieces =
    step.tally === undefined ? 0 : step.tally.count - (progress.tallies.get(step.id) ?? 0);
  return [
    ...(pieces > 0 ? [`${count(pieces, step.tally?.of ?? 'piece')} not counted`] : []),
    ...(checks.length > 0 ? [`not ticked: ${checks.join(' ')}`] : []),
  ].join('; ');
}

/** What was written down at work and at pauses, in order. */
export function noteRows(
  { workbook, plan }: Pick<Recorded, 'workbook' | 'plan'>,
  zone?: string,
): readonly string[] {
  return standingEvents(workbook.events).flatMap(event => {
    const text = textOf(event);
    if (text === '' || !('step' in event)) return [];
    return [`${dayWords(event.atMs, zone)}, "${titleOf(event.step, plan)}": ${text}`];
  });
}

function textOf(event: Event): string {
  if (event.kind === 'note-written') return event.text.trim();
  return event.kind === 'paused' ? event.note.trim() : '';
}

function titleOf(id: string, { steps }: Plan): string {
  return steps.find(step => step.id === id)?.title ?? 'a step that is no longer in the plan';
}

/** What the helper was signed off for and did in this build. */
export function helperRows(
  { workbook, plan, progress }: Pick<Recorded, 'workbook' | 'plan' | 'progress'>,
  zone?: string,
): readonly string[] {
  const learned = learnedIn({ workbook: { ...workbook, example: false }, plan, progress });
  if (learned === undefined) return [];
  const { tools, alone, together } = learned;
  const name = (id: string) => plan.tools.find(tool => tool.id === id)?.name ?? id;
  const days = [...new Set(tools.map(({ atMs }) => dayWords(atMs, zone)))];
  const signed = days.map(day => {
    const names = tools.filter(({ atMs }) => dayWords(atMs, zone) === day);
    return `Signed off on ${day}: ${listWords(names.map(({ tool }) => name(tool)))}.`;
  });
  const done = `${count(alone, 'step')} alone, ${together} together with the lead.`;
  return [...signed, ...(alone + together > 0 ? [done] : [])];
}
