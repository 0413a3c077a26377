/**
 * Work for a few people in the hours they have: who does what when, so that all of it is done as early as can be.
 * All times are whole minutes from one moment that the caller picks. Nothing here knows what the work is.
 */

/** Something that is done in one go. Ids are unique; at least 1 minute. */
export type Task = {
  readonly id: string;
  readonly minutes: number;
  /** Everybody in `all` at once, or any one of `anyOf`; people are counted from 0. */
  readonly needs: { readonly all: readonly number[] } | { readonly anyOf: readonly number[] };
  /** Has to be over before the quiet of a session begins. */
  readonly loud: boolean;
  /** Only within the fair hours of a session; not at all in one that has none. */
  readonly fair?: boolean;
  /** Not before this minute; 0 where nothing holds it up. */
  readonly from: number;
};

/** `then` begins at the earliest so many minutes after the end of `first`; they run on between sessions too. */
export type Wait = { readonly first: string; readonly then: string; readonly minutes: number };

/** Time in which people are there, in order and apart; loud work ends by `quietFrom`. */
export type Session = {
  readonly from: number;
  readonly to: number;
  readonly quietFrom: number;
  /** Hours for work that hangs on the time of day, inside the session; none where it never suits. */
  readonly fair?: { readonly from: number; readonly to: number };
};

export type ScheduleProblem = {
  readonly people: number;
  readonly tasks: readonly Task[];
  readonly waits: readonly Wait[];
  readonly sessions: readonly Session[];
};

/** A task with its time, the session it falls in and who does it. */
export type Turn = {
  readonly task: string;
  readonly from: number;
  readonly to: number;
  readonly session: number;
  readonly people: readonly number[];
};

/**
 * Why nothing ends earlier. `bound`: a sum alone says so. `search`: every other order was ruled out, in so many
 * cases. `none`: the limit of counted steps came first, and it may be possible to end as early as the lower bound.
 */
export type Proof =
  | { readonly kind: 'bound' }
  | { readonly kind: 'search'; readonly cases: number }
  | { readonly kind: 'none' };

export type Schedule = {
  readonly turns: readonly Turn[];
  /** The last minute of work. */
  readonly finish: number;
  /** Nobody can be done before. */
  readonly lowerBound: number;
  readonly proof: Proof;
  /** Sessions in which something is done. */
  readonly sessions: number;
  /** That fewer sessions would not do for this finish is certain. */
  readonly fewestProven: boolean;
  /** Counted steps: the same on every machine. */
  readonly work: number;
};

/** None where the sessions do not hold the work. */
export type Found = { readonly ok: true; readonly schedule: Schedule } | { readonly ok: false };
