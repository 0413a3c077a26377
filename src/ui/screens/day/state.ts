import { formatClock } from '../../../measure/clock.js';
import { type Parsed, parsed, unreadable } from '../../../measure/parsed.js';
import type { Display } from '../../../measure/quantities.js';
import { sunsetOfDay } from '../../../plan/seal-hours.js';
import type { DayWork, Weather } from '../../../plan/told-day.js';
import { calendarDay } from '../../../workbook/clock-words.js';
import type { Context, Key, Outcome } from '../../screen.js';
import { type Suggested, suggest, suggestedText, typeOver } from '../../widgets/suggested.js';
import { arrival, stepAtHand } from '../step/shown-step.js';
import { type DayQuestion, questionsFor } from './questions.js';

export type DayState = {
  readonly work: DayWork;
  /** What is typed so far, one for each question; the hour of sunset is suggested. */
  readonly fields: readonly Suggested[];
  readonly row: number;
};

/** Asks for what the step at the bench wants: a day for glue, or one for sealer. */
export function open(at: Context): DayState {
  const work = (at.build && stepAtHand(at.build, at)?.day) ?? 'glue';
  const sunset = formatClock(sunsetOfDay(calendarDay(at.nowMs)));
  const fields = questionsFor(work).map(({ field }) =>
    suggest(field === 'sunsetMinutes' ? sunset : ''),
  );
  return { work, fields, row: 0 };
}

export function press(state: DayState, key: Key, at: Context): Outcome<DayState> {
  const { build } = at;
  if (build === undefined || key.name === 'escape') return { state, asks: [{ kind: 'leave' }] };
  switch (key.name) {
    case 'enter':
    case 'page-down':
      return further(state, at);
    case 'down':
      return show({ ...state, row: Math.min(state.fields.length - 1, state.row + 1) });
    case 'up':
    case 'page-up':
      return show({ ...state, row: Math.max(0, state.row - 1) });
    default: {
      const field = typeOver(state.fields[state.row] ?? suggest(''), key);
      if (field === undefined) return show(state);
      return show({ ...state, fields: state.fields.with(state.row, field) });
    }
  }
}

function show(state: DayState): Outcome<DayState> {
  return { state, asks: [] };
}

/** To the next question; from the last one the day is noted. What can't be read stays under the cursor. */
function further(state: DayState, at: Context): Outcome<DayState> {
  const { build, nowMs } = at;
  if (build === undefined) return show(state);
  const { display } = build.plan;
  const read = questionsFor(state.work).map((_, row) => readRow(state, row, display));
  const wrong = read.findIndex((it, row) => row <= state.row && !it.ok);
  if (wrong >= 0) return show({ ...state, row: wrong });
  if (state.row < state.fields.length - 1) return show({ ...state, row: state.row + 1 });
  const event = {
    kind: 'day-told',
    atMs: nowMs,
    work: state.work,
    ...weatherOf(state, display),
  } as const;
  const events = [...arrival(stepAtHand(build, at), build, nowMs), event];
  return { state, asks: [{ kind: 'record', events }, { kind: 'leave' }] };
}

/** The number that stands in a row; nothing where the row is empty. */
export function readRow(
  state: DayState,
  row: number,
  display: Display,
): Parsed<number | undefined> {
  const question: DayQuestion | undefined = questionsFor(state.work)[row];
  const text = suggestedText(state.fields[row] ?? suggest(''));
  if (question === undefined || text.trim() === '') return parsed(undefined);
  if (!question.likeNow || text.trim().toLowerCase() !== 'same') {
    return question.read(text, display);
  }
  const now = readRow(state, 0, display);
  return now.ok && now.value === undefined
    ? unreadable('"same" as what? How warm it is now was not told.', 'Go up and tell that first.')
    : now;
}

/** What can be read so far. */
export function weatherOf(state: DayState, display: Display): Weather {
  const told = questionsFor(state.work).flatMap(({ field }, row) => {
    const read = readRow(state, row, display);
    return read.ok && read.value !== undefined ? [[field, read.value] as const] : [];
  });
  return Object.fromEntries(told);
}
