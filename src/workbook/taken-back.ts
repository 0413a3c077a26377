import type { Event } from './events.js';

/** Can this be taken back? Work, timers and notes can; comings, goings and looking around can't. */
export function canBeTakenBack({ kind }: Event): boolean {
  switch (kind) {
    case 'piece-done':
    case 'check-made':
    case 'step-done':
    case 'timer-started':
    case 'timer-silenced':
    case 'timer-stopped':
    case 'timer-snoozed':
    case 'day-told':
    case 'note-written':
    case 'briefed':
    case 'tools-briefed':
    case 'rags-laid':
    case 'helper-changed':
    case 'size-measured':
    case 'measure-dropped':
    case 'first-measured':
    case 'diagonals-measured':
    case 'piece-spoiled':
    case 'board-added':
    case 'board-spoiled':
      return true;
    case 'build-started':
    case 'step-visited':
    case 'paused':
    case 'resumed':
    case 'helper-came':
    case 'clock-set-back':
    case 'taken-back':
      return false;
  }
}

/**
 * The events that still hold: each `taken-back` strikes the newest one before it that can be taken
 * back and was not struck yet, so several in a row go further back. The `taken-back` events
 * themselves are left out. Three pieces done, then two taken back: one piece is left.
 */
export function standingEvents(events: readonly Event[]): readonly Event[] {
  const known = kept.get(events) ?? standing(events);
  kept.set(events, known);
  return known;
}

/** A journal is never changed, and one frame asks for this many times. */
const kept = new WeakMap<readonly Event[], readonly Event[]>();

function standing(events: readonly Event[]): readonly Event[] {
  const struck = new Set<number>();
  const open: number[] = [];
  events.forEach((event, at) => {
    if (canBeTakenBack(event)) open.push(at);
    if (event.kind !== 'taken-back') return;
    const last = open.pop();
    if (last !== undefined) struck.add(last);
  });
  return events.filter((event, at) => event.kind !== 'taken-back' && !struck.has(at));
}

/** What the next `taken-back` would strike. */
export function nextToTakeBack(events: readonly Event[]): Event | undefined {
  return standingEvents(events).findLast(canBeTakenBack);
}

/**
 * All that was noted by the act that would be taken back next, the newest last: to ask "take back: 2 pieces?"
 * before doing it. One page of cautions heard is one act, with an event for each caution; a first piece is
 * measured, counted and kept or set aside in one. Anything else is one event: two quick keys in the same
 * millisecond stay two acts.
 */
export function lastAct(events: readonly Event[]): readonly Event[] {
  const open = standingEvents(events).filter(canBeTakenBack);
  const last = open.at(-1);
  if (last === undefined) return [];
  const measured = firstPieceAct(open);
  if (measured.length > 0) return measured;
  if (!isHeard(last)) return [last];
  const before = open.findLastIndex(event => !isHeard(event) || event.atMs !== last.atMs);
  return open.slice(before + 1);
}

/** The newest events where they are of one first piece: counted, measured, then noted as short or spoiled. */
function firstPieceAct(open: readonly Event[]): readonly Event[] {
  const at = open.findLastIndex(({ kind }) => kind === 'first-measured');
  const first = open[at];
  if (first?.kind !== 'first-measured') return [];
  const isOfIt = (it: Event | undefined, ...kinds: readonly Event['kind'][]) =>
    it !== undefined &&
    kinds.includes(it.kind) &&
    it.atMs === first.atMs &&
    'step' in it &&
    it.step === first.step;
  const after = open.slice(at + 1);
  if (after.length > 1 || !after.every(it => isOfIt(it, 'note-written', 'piece-spoiled')))
    return [];
  return open.slice(isOfIt(open[at - 1], 'piece-done') ? at - 1 : at);
}

function isHeard({ kind }: Event): boolean {
  return kind === 'briefed' || kind === 'tools-briefed';
}
