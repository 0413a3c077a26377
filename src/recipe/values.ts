import type { CalendarDay, Weekday } from '../measure/calendar.js';
import type { Minutes, Mm } from '../measure/quantities.js';

/** A value that a formula gives: lengths have power 1, areas 2, volumes 3, plain numbers 0. */
export type Value =
  | { readonly kind: 'number'; readonly value: number; readonly power: number }
  | { readonly kind: 'text'; readonly value: string }
  | { readonly kind: 'flag'; readonly value: boolean };

/** One thing of a list answer, its lengths by field name. */
export type Item = Readonly<Record<string, Mm>>;

export type Offer = { readonly section: string; readonly length: Mm; readonly cents?: number };
export type OnHand = { readonly section: string; readonly length: Mm; readonly count: number };

/** A day on which somebody works: each week, or once; with its own hours where they differ. */
export type WorkDay = {
  readonly on: Weekday | CalendarDay;
  readonly from?: Minutes;
  readonly to?: Minutes;
};

export type Answer =
  | { readonly kind: 'length'; readonly value: Mm }
  | { readonly kind: 'count'; readonly value: number }
  | { readonly kind: 'hours'; readonly value: number }
  /** Minutes since midnight. */
  | { readonly kind: 'clock'; readonly value: Minutes }
  /** A day of the calendar; empty where none is fixed yet. */
  | { readonly kind: 'date'; readonly value: CalendarDay | '' }
  | { readonly kind: 'days'; readonly value: readonly WorkDay[] }
  | { readonly kind: 'choice'; readonly value: string }
  | { readonly kind: 'text'; readonly value: string }
  | { readonly kind: 'yes'; readonly value: boolean }
  | { readonly kind: 'items'; readonly value: readonly Item[] }
  | { readonly kind: 'offers'; readonly value: readonly Offer[] }
  | { readonly kind: 'boards'; readonly value: readonly OnHand[] };

/** Answers by question id. Complete when every question that is asked has one. */
export type Answers = Readonly<Record<string, Answer>>;
