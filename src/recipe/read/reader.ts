import { nearestWord } from '../../measure/suggest.js';
import type { Place } from '../place.js';
import { type Entry, type MapEntry, shapeOf } from './entry.js';
import type { Log } from './log.js';

/** Makes something of an entry, or notes in the log what is wrong with it and gives undefined. */
export type Reader<T> = (entry: Entry, log: Log) => T | undefined;

export type NeededWord<T> = { readonly read: Reader<T>; readonly needed: true };
/** It may be missing; where `needed` is true after all, that is noted as a problem. */
export type OptionalWord<T> = { readonly read: Reader<T>; readonly needed: boolean };
type Word = NeededWord<unknown> | OptionalWord<unknown>;
export type Words = Readonly<Record<string, Word>>;

/** What reading a group of words gives: optional ones may be undefined. */
export type Read<W extends Words> = {
  readonly [K in keyof W]: W[K] extends NeededWord<infer T>
    ? T
    : W[K] extends OptionalWord<infer T>
      ? T | undefined
      : never;
};

export function needed<T>(read: Reader<T>): NeededWord<T> {
  return { read, needed: true };
}

export function optional<T>(read: Reader<T>): OptionalWord<T> {
  return { read, needed: false };
}

/**
 * Reads a group of known words; `what` names the group for messages, "a part" for example. A word that
 * is not known, stands twice or is missing is noted, and all the others are read all the same.
 */
export function grouped<W extends Words>(what: string, words: W): Reader<Read<W>> {
  return (entry, log) => {
    const map = asMap(entry, log, what);
    if (map === undefined) return undefined;
    refuseUnknown(map, Object.keys(words), log);
    return pickWords(map, { what, words, log });
  };
}

type Picking<W extends Words> = { readonly what: string; readonly words: W; readonly log: Log };

/** Reads these words out of a group that may hold others beside them. */
export function pickWords<W extends Words>(
  map: MapEntry,
  { what, words, log }: Picking<W>,
): Read<W> | undefined {
  const read: Record<string, unknown> = {};
  let complete = true;
  for (const [word, { read: reader, needed: must }] of Object.entries(words)) {
    const pair = map.pairs.find(({ key }) => key === word);
    if (pair === undefined) {
      if (must) log.say({ is: 'missing-word', word, of: what }, map.at);
      complete &&= !must;
      continue;
    }
    const value = reader(pair.value, log);
    if (value === undefined) complete = false;
    read[word] = value;
  }
  return complete ? (read as Read<W>) : undefined;
}

export function refuseUnknown(map: MapEntry, words: readonly string[], log: Log): void {
  for (const { key, at, value } of map.pairs) {
    if (words.includes(key)) continue;
    const near = nearestWord(key, words);
    // In { say: red, not blue } the comma ends the text: "not blue" is a word without a value.
    if (near === undefined && value.kind === 'scalar' && value.text === '') {
      log.say({ is: 'text-after-comma', text: key }, at);
    } else {
      log.say({ is: 'unknown-word', word: key, near, words }, at);
    }
  }
}

export function asMap(entry: Entry, log: Log, what: string): MapEntry | undefined {
  if (entry.kind === 'map') return entry;
  const wanted = `${what}: words with values`;
  return log.say({ is: 'wrong-shape', wanted, got: shapeOf(entry) }, entry.at);
}

/** The read value together with the place of its name. */
export type Named<T> = { readonly id: string; readonly at: Place; readonly value: T };

/** A list; a single value without brackets is a list of one. */
export function listed<T>(read: Reader<T>, most: number): Reader<readonly T[]> {
  return (entry, log) => {
    if (entry.kind === 'scalar' && entry.text === '') return [];
    const items = entry.kind === 'list' ? entry.items : [entry];
    if (items.length > most) {
      return log.say({ is: 'too-many', what: 'entries here', count: items.length, most }, entry.at);
    }
    return allRead(items.map(item => read(item, log)));
  };
}

/** All of them, or undefined when one could not be read. */
export function allRead<T>(values: readonly (T | undefined)[]): readonly T[] | undefined {
  const read = values.filter(value => value !== undefined);
  return read.length === values.length ? read : undefined;
}

type Present<T> = { [K in keyof T as undefined extends T[K] ? never : K]: T[K] } & {
  [K in keyof T as undefined extends T[K] ? K : never]?: Exclude<T[K], undefined>;
};

/** The same record without the words that are undefined, as optional fields want it. */
export function present<T extends object>(record: T): Present<T> {
  const entries = Object.entries(record).filter(([, value]) => value !== undefined);
  return Object.fromEntries(entries) as Present<T>;
}
