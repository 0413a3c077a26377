import { type Dryness, drynessNamed } from '../materials/dryness.js';
import { AGE_BANDS, type AgeBand } from '../materials/helper-ages.js';
import { type Saw, sawNamed } from '../materials/saws.js';
import { climateNamed, inTheOpen, type Swing, swingOf } from '../materials/seasons.js';
import { type Species, speciesNamed } from '../materials/species.js';
import { type CalendarDay, WEEKDAYS } from '../measure/calendar.js';
import { inches } from '../measure/inch.js';
import type { Display, Minutes, Mm } from '../measure/quantities.js';
import { DAY } from '../measure/spans.js';
import type { Answers, Offer, OnHand, WorkDay } from '../recipe/values.js';

/** What the standard questions settle for the whole plan; each falls back to what is usual. */
export type Setting = {
  readonly display: Display;
  readonly species: Species;
  readonly dryness: Dryness;
  /** How dry and how wet boards get where it stands. */
  readonly swing: Swing;
  readonly metal: string;
  readonly saw: Saw;
  /** Squaring cut at the first end of each board, blade not counted. */
  readonly trim: Mm;
  readonly offers: readonly Offer[];
  /** What counts more where boards can be cut in several ways at the same cost. */
  readonly first: 'settings' | 'offcut';
  readonly onHand: readonly OnHand[];
  readonly people: 1 | 2;
  /** Age of the helper; none where somebody builds alone. */
  readonly helper: AgeBand | undefined;
  readonly sessionMinutes: Minutes;
  readonly sessions: SessionHabit;
};

/** When somebody works, as it was answered. */
export type SessionHabit = {
  /** Where none is given, sessions are numbered and have no date. */
  readonly firstDay?: CalendarDay;
  readonly days: readonly Required<WorkDay>[];
  /** Saws and other loud tools rest from then on. */
  readonly noiseUntil: Minutes;
};

/** Common practice: 1/4 to 1/2 in comes off a factory end so that it is square. */
export const SQUARING_TRIM: Mm = inches(1 / 4);

/** An evening; a guess of ours, asked. */
const USUAL_SESSION_HOURS = 3;

/**
 * The setting that these answers make. A recipe that asks none of the standard questions gets
 * kiln-dried redwood, a full-kerf miter saw, stainless screws, two people and three hours.
 */
export function settingOf(answers: Answers, display: Display): Setting {
  const species = speciesNamed(textOf(answers, 'species', 'redwood'));
  const dryness = drynessNamed(textOf(answers, 'dryness', 'kiln-dried'));
  const saw = sawNamed(textOf(answers, 'saw', 'miter-saw'));
  if (!species || !dryness || !saw) throw new Error('an answer names something no table has');
  return {
    display,
    species,
    dryness,
    saw,
    swing: swingAt(textOf(answers, 'climate', 'cold-winter'), textOf(answers, 'exposure', 'open')),
    metal: textOf(answers, 'metal', 'stainless-304'),
    trim: SQUARING_TRIM,
    first: textOf(answers, 'left_over', 'settings') === 'offcut' ? 'offcut' : 'settings',
    offers: listOf(answers, 'offers', 'offers'),
    onHand: listOf(answers, 'on_hand', 'boards'),
    people: textOf(answers, 'people', 'helper') === 'alone' ? 1 : 2,
    helper: helperOf(textOf(answers, 'people', 'helper')),
    sessionMinutes: hoursOf(answers) * 60,
    sessions: habitOf(answers, hoursOf(answers) * 60),
  };
}

/** `helper` alone is a grown one: builds begun before ages were asked say it so. */
function helperOf(people: string): AgeBand | undefined {
  if (people === 'alone') return undefined;
  return AGE_BANDS.find(({ id }) => people === `helper-${id}`)?.id ?? 'grown';
}

function swingAt(climate: string, exposure: string): Swing {
  const place = climateNamed(climate);
  if (!place) throw new Error(`an answer names a climate that no table has: ${climate}`);
  const swing = swingOf(place);
  return exposure === 'open' ? inTheOpen(swing) : swing;
}

function textOf(answers: Answers, id: string, otherwise: string): string {
  const answer = answers[id];
  return answer?.kind === 'choice' ? answer.value : otherwise;
}

function hoursOf(answers: Answers): number {
  const answer = answers.session_hours;
  return answer?.kind === 'hours' ? answer.value : USUAL_SESSION_HOURS;
}

/** After work and supper; a guess of ours, asked first of all. */
const USUAL_FROM: Minutes = 18 * 60;
/** From memory, unchecked: many towns want quiet from 22:00. Asked, since the rule of the house decides. */
const USUAL_NOISE_UNTIL: Minutes = 22 * 60;

function habitOf(answers: Answers, length: Minutes): SessionHabit {
  const from = clockOf(answers, 'session_from', USUAL_FROM);
  const first = answers.first_day;
  const given = answers.session_days;
  const days: readonly WorkDay[] =
    given?.kind === 'days' && given.value.length > 0 ? given.value : WEEKDAYS.map(on => ({ on }));
  return {
    ...(first?.kind === 'date' && first.value !== '' ? { firstDay: first.value } : {}),
    days: days.map(day => ({
      on: day.on,
      from: day.from ?? from,
      to: day.to ?? Math.min(from + length, DAY),
    })),
    noiseUntil: clockOf(answers, 'noise_until', USUAL_NOISE_UNTIL),
  };
}

function clockOf(answers: Answers, id: string, otherwise: Minutes): Minutes {
  const answer = answers[id];
  return answer?.kind === 'clock' ? answer.value : otherwise;
}

type Lists = { readonly offers: readonly Offer[]; readonly boards: readonly OnHand[] };

function listOf<Kind extends keyof Lists>(answers: Answers, id: string, kind: Kind): Lists[Kind] {
  const answer = answers[id];
  return answer?.kind === kind ? (answer.value as Lists[Kind]) : [];
}
