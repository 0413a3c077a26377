import { parseClock } from '../../../measure/clock.js';
import { type Parsed, parsed, quoted, unreadable } from '../../../measure/parsed.js';
import type { Display } from '../../../measure/quantities.js';
import { parseTemperature } from '../../../measure/temperature.js';
import type { DayWork, Weather } from '../../../plan/told-day.js';

/** One thing to read off, and how it is written. */
export type DayQuestion = {
  readonly field: keyof Weather;
  readonly say: string;
  readonly hint: string;
  /** Nothing where a word was written that stands for no number. */
  readonly read: (text: string, display: Display) => Parsed<number | undefined>;
  /** May be answered with "same": as warm as it is now. */
  readonly likeNow?: true;
};

const degrees = (text: string, { system }: Display) => parseTemperature(text, system);

function percent(text: string): Parsed<number> {
  const [, digits = ''] = /^\s*(\d{1,3}(?:[.,]\d)?)\s*%?\s*$/.exec(text) ?? [];
  const value = Number(digits.replace(',', '.'));
  if (digits !== '' && value <= 100) return parsed(value);
  return unreadable(`${quoted(text)} is not a percentage.`, 'Write a number such as 65.');
}

/** Under a roof the sun is not waited for. */
function sunset(text: string): Parsed<number | undefined> {
  return text.trim().toLowerCase() === 'roof' ? parsed(undefined) : parseClock(text);
}

const METER: DayQuestion = {
  field: 'moisturePercent',
  say: 'Meter in the wood',
  hint: 'percent, such as 14; nothing without a meter',
  read: percent,
};

const QUESTIONS: Readonly<Record<DayWork, readonly DayQuestion[]>> = {
  glue: [
    {
      field: 'now',
      say: 'Coldest of wood, glue and air now',
      hint: 'such as 62 F or 17 C',
      read: degrees,
    },
    {
      field: 'coldest',
      say: 'Coldest there until tomorrow evening',
      hint: 'such as 50 F, or "same"',
      read: degrees,
      likeNow: true,
    },
    {
      field: 'slept',
      say: 'Where the wood lay last night',
      hint: 'such as 40 F, or "same"',
      read: degrees,
      likeNow: true,
    },
    METER,
  ],
  seal: [
    {
      field: 'now',
      say: 'Colder of air and wood now',
      hint: 'such as 62 F or 17 C',
      read: degrees,
    },
    {
      field: 'humidityPercent',
      say: 'Humidity of the air',
      hint: 'percent, such as 65',
      read: percent,
    },
    {
      field: 'coldest',
      say: 'Coldest until tomorrow evening',
      hint: 'such as 50 F, or "same"',
      read: degrees,
      likeNow: true,
    },
    {
      field: 'sunsetMinutes',
      say: 'Sunset, outdoors',
      hint: 'such as 17:40, or "roof" for a place under one',
      read: sunset,
    },
    METER,
  ],
};

export function questionsFor(work: DayWork): readonly DayQuestion[] {
  return QUESTIONS[work];
}
