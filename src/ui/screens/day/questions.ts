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
  readonly read: (text: string, display: Display) => Parsed<number>;
};

const degrees = (text: string, { system }: Display) => parseTemperature(text, system);

function percent(text: string): Parsed<number> {
  const [, digits = ''] = /^\s*(\d{1,3}(?:[.,]\d)?)\s*%?\s*$/.exec(text) ?? [];
  const value = Number(digits.replace(',', '.'));
  if (digits !== '' && value <= 100) return parsed(value);
  return unreadable(`${quoted(text)} is not a percentage.`, 'Write a number such as 65.');
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
      hint: 'nothing where it stays as warm',
      read: degrees,
    },
    {
      field: 'slept',
      say: 'Where the wood lay last night',
      hint: 'nothing where it lay as warm',
      read: degrees,
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
      hint: 'nothing where it stays as warm',
      read: degrees,
    },
    {
      field: 'sunsetMinutes',
      say: 'Sunset',
      hint: 'such as 17:40; nothing under a roof',
      read: parseClock,
    },
    METER,
  ],
};

export function questionsFor(work: DayWork): readonly DayQuestion[] {
  return QUESTIONS[work];
}
