import { stillToBuy } from '../../../plan/rack-told.js';
import { beforeLeaving, type LeavingLine } from '../../../workbook/before-leaving.js';
import { benchOf } from '../../bench-of.js';
import type { Build, Context, Key, Outcome } from '../../screen.js';
import { noteText } from '../../widgets/note-line.js';
import { stepToOpen } from '../step/shown-step.js';

export type PauseState = {
  /** First the note, then what has to be looked after. */
  readonly stage: 'note' | 'leave';
  readonly note: string;
  /** Ids of lines that were seen to. */
  readonly seenTo: readonly string[];
  readonly top: number | undefined;
};

export function open(): PauseState {
  return { stage: 'note', note: '', seenTo: [], top: undefined };
}

/** What has to be looked after before the door is shut. */
export function leavingLines(build: Build, nowMs: number): readonly LeavingLine[] {
  const { workbook, plan, progress } = build;
  const toBuy = stillToBuy(benchOf(build));
  return beforeLeaving({ workbook, plan, progress, toBuy, nowMs });
}

/** Was it ticked here, or does the journal have it? */
export function isSeenTo({ seenTo }: PauseState, { id, seen }: LeavingLine): boolean {
  return seen === true || seenTo.includes(id);
}

/** What is still to be seen to, the most pressing first. */
export function openLines(state: PauseState, build: Build, nowMs: number): readonly LeavingLine[] {
  return leavingLines(build, nowMs).filter(line => !isSeenTo(state, line));
}

/** Nothing is left to see to: the next press goes home. */
export function isAllSeenTo(state: PauseState, { build, nowMs }: Context): boolean {
  return build === undefined || openLines(state, build, nowMs).length === 0;
}

/** What nobody leaves without. */
export function mustFirst(state: PauseState, { build, nowMs }: Context): LeavingLine | undefined {
  if (build === undefined) return undefined;
  return openLines(state, build, nowMs).find(({ must }) => must === true);
}

export function press(state: PauseState, key: Key, at: Context): Outcome<PauseState> {
  const { build } = at;
  if (build === undefined) return { state, asks: [{ kind: 'leave' }] };
  return state.stage === 'note' ? pressNote(state, key) : pressLeave(state, key, { build, at });
}

/** A space on the empty line is a clicker or a dusty thumb: no note. */
function pressNote(state: PauseState, key: Key): Outcome<PauseState> {
  switch (key.name) {
    case 'typed':
      return /^\s+$/.test(key.text) && state.note === ''
        ? show({ ...state, stage: 'leave' })
        : show({ ...state, note: noteText(key.text) });
    case 'enter':
    case 'page-down':
      return show({ ...state, note: state.note.trim(), stage: 'leave' });
    case 'escape':
    case 'page-up':
      return { state, asks: [{ kind: 'leave' }] };
    default:
      return show(state);
  }
}

type Bench = { readonly build: Build; readonly at: Context };

function pressLeave(state: PauseState, key: Key, bench: Bench): Outcome<PauseState> {
  const { build, at } = bench;
  switch (key.name) {
    case 'space':
    case 'enter':
    case 'page-down': {
      const [open] = openLines(state, build, at.nowMs);
      return open === undefined ? leave(state, bench) : seeTo(state, open, at.nowMs);
    }
    case 'backspace':
    case 'page-up':
      return show({ ...state, stage: 'note' });
    case 'escape':
      return backToWork(state, bench);
    case 'up':
    case 'down':
      return show({ ...state, top: Math.max(0, (state.top ?? 0) + (key.name === 'up' ? -1 : 1)) });
    case 'character':
      return pressSign(state, key.text, bench);
    default:
      return show(state);
  }
}

function pressSign(state: PauseState, sign: string, bench: Bench): Outcome<PauseState> {
  const line = leavingLines(bench.build, bench.at.nowMs)[Number(sign) - 1];
  if (line !== undefined) return seeTo(state, line, bench.at.nowMs);
  switch (sign) {
    case 'n':
      return show({ ...state, stage: 'note' });
    case 'p':
      return mustFirst(state, bench.at) === undefined ? leave(state, bench) : show(state);
    case '?':
      return { state, asks: [{ kind: 'go', to: 'keys' }] };
    default:
      return show(state);
  }
}

/** Ticked, or unticked where it was; what nobody leaves without goes into the journal. */
function seeTo(state: PauseState, line: LeavingLine, atMs: number): Outcome<PauseState> {
  const { id, seen } = line;
  if (seen === true) return show(state);
  if (id === 'rags') {
    const events = [{ kind: 'rags-laid', atMs } as const];
    return { state: { ...state, top: undefined }, asks: [{ kind: 'record', events }] };
  }
  const seenTo = state.seenTo.includes(id)
    ? state.seenTo.filter(it => it !== id)
    : [...state.seenTo, id];
  return show({ ...state, seenTo, top: undefined });
}

/** A note that was entered is kept at its step, though nobody leaves after all. */
function backToWork(state: PauseState, { build, at }: Bench): Outcome<PauseState> {
  const text = state.note.trim();
  const step = stepToOpen(build)?.id;
  if (text === '' || step === undefined) return { state, asks: [{ kind: 'leave' }] };
  const event = { kind: 'note-written', atMs: at.nowMs, step, text } as const;
  return { state, asks: [{ kind: 'record', events: [event] }, { kind: 'leave' }] };
}

function leave(state: PauseState, { build, at }: Bench): Outcome<PauseState> {
  const step = stepToOpen(build)?.id ?? build.progress.lastStep ?? '';
  const event = { kind: 'paused', atMs: at.nowMs, step, note: state.note.trim() } as const;
  return {
    state,
    asks: [
      { kind: 'record', events: [event] },
      { kind: 'go', to: 'home' },
    ],
  };
}

function show(state: PauseState): Outcome<PauseState> {
  return { state, asks: [] };
}
