import { hanging } from '../../../text/page-lines.js';
import { cut, wrap } from '../../../text/wrap.js';
import { clockWords } from '../../../workbook/clock-words.js';
import { ringsAtMs, timerWords } from '../../../workbook/timers.js';
import type { Timer } from '../../../workbook/workbook.js';
import type { Build, Context } from '../../screen.js';
import { plainer } from '../../widgets/facts.js';
import { BLANK, plainRows, type Row } from '../../widgets/rows.js';
import { meanwhileRows } from './meanwhile-rows.js';
import { markedTimer, shownTimers, type TimersState } from './state.js';

type Seen = { readonly state: TimersState; readonly build: Build; readonly at: Context };

/** The timers, the marked one in full, then what can be done until it ends. */
export function timersRows(seen: Seen): readonly Row[] {
  const { build, at } = seen;
  const timers = shownTimers(build.progress);
  const { rows } = at.size;
  const elsewhere = elsewhereRows(at);
  if (timers.length === 0) {
    const text = 'No timer runs here. A step that has to wait offers one on the key t.';
    const instead = meanwhileRows(build, at);
    return [...plainRows(wrap(text, at.size.columns)), ...instead, ...elsewhere].slice(0, rows);
  }
  const marked = markedTimer(seen.state, build);
  const blocks = timers.map((timer, number) => timerBlock(timer, { ...seen, number, marked }));
  const question = questionRows(seen);
  const room = rows - question.length;
  const first = firstSeen(
    blocks,
    timers.findIndex(({ id }) => id === marked?.id),
    room,
  );
  const list = blocks.slice(first).flat();
  const rest = [...meanwhileRows(build, at), ...elsewhere];
  return [...[...list, ...rest].slice(0, room), ...question];
}

/** The first timer from which on the marked one is seen whole. */
function firstSeen(blocks: readonly (readonly Row[])[], marked: number, room: number): number {
  let first = 0;
  const height = () => blocks.slice(first, marked + 1).reduce((sum, it) => sum + it.length, 0);
  while (first < marked && height() > room) first += 1;
  return first;
}

type Place = Seen & { readonly number: number; readonly marked: Timer | undefined };

function timerBlock(timer: Timer, { number, marked, build, at }: Place): readonly Row[] {
  const plain = plainer(at.ascii);
  const { columns } = at.size;
  const isMarked = timer.id === marked?.id;
  const rings = ringsAtMs(timer) <= at.nowMs && !timer.silenced;
  const state = `${rings ? 'TIME IS UP, ' : ''}${timerWords(timer, at.nowMs)}${timer.silenced ? ', heard' : ''}`;
  const line = `${isMarked ? '>' : ' '} ${number + 1} ${plain(timer.name)}: ${state}`;
  const tone: Pick<Row, 'tone'> = rings ? { tone: 'heed' } : isMarked ? { tone: 'strong' } : {};
  const head: Row = { text: cut(line, columns), ...tone };
  if (!isMarked) return [head];
  const step = build.plan.steps.find(({ id }) => id === timer.step);
  const since = clockWords(timer.startedAtMs, at.nowMs);
  const detail = [
    `Then: ${timer.then}`,
    ...(step === undefined ? [] : [`Started ${since}, in "${step.title}".`]),
  ];
  return [head, ...plainRows(detail.flatMap(text => hanging('    ', plain(text), columns)))];
}

function questionRows({ state, build, at }: Seen): readonly Row[] {
  const timer = build.progress.timers.find(({ id }) => id === state.stopping);
  if (timer === undefined) return [];
  const text = `Stop "${plainer(at.ascii)(timer.name)}"? Nothing will ring then.`;
  return [{ text: cut(text, at.size.columns), tone: 'heed' }];
}

/** Timers of the builder's other builds. */
function elsewhereRows({ shelf, build, nowMs, ascii, size }: Context): readonly Row[] {
  const lines = shelf
    .filter(({ id }) => id !== build?.workbook.id)
    .flatMap(({ name, timers }) =>
      timers.map(timer => {
        const when = clockWords(timer.endsAtMs, nowMs);
        const words = timer.endsAtMs <= nowMs ? `ready since ${when}` : `ready ${when}`;
        return plainer(ascii)(`- ${name}, ${timer.name}: ${words}`);
      }),
    );
  if (lines.length === 0) return [];
  return [
    BLANK,
    { text: 'In other builds', tone: 'strong' },
    ...plainRows(lines.map(line => cut(line, size.columns))),
  ];
}
