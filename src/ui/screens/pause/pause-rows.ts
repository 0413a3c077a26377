import { listWords } from '../../../text/list.js';
import { hanging } from '../../../text/page-lines.js';
import { count } from '../../../text/plural.js';
import { wrap } from '../../../text/wrap.js';
import { tallyOf } from '../../../workbook/next-step.js';
import type { Build, Context } from '../../screen.js';
import { plainer } from '../../widgets/facts.js';
import { BLANK, plainRows, type Row, withFoot } from '../../widgets/rows.js';
import { limitTop, scrollWords } from '../../widgets/scroll.js';
import { stepToOpen } from '../step/shown-step.js';
import { isSeenTo, leavingLines, type PauseState } from './state.js';

type Seen = { readonly state: PauseState; readonly build: Build; readonly at: Context };

/** Where one stops: the step, and how far its count is. */
export function placeRows({ build, at }: Omit<Seen, 'state'>): readonly Row[] {
  const step = stepToOpen(build);
  const { columns } = at.size;
  if (step === undefined) return [{ text: 'Every step is done.', tone: 'strong' }];
  const number = build.plan.steps.indexOf(step) + 1;
  const tally = tallyOf(step, build.progress);
  const far = tally === undefined ? '' : `, ${tally.done} of ${count(tally.count, tally.of)}`;
  const text = `You stop at step ${number} of ${build.plan.steps.length}: ${step.title}${far}`;
  return wrap(plainer(at.ascii)(text), columns).map(
    (line): Row => ({ text: line, tone: 'strong' }),
  );
}

/** What to lay ready, so that the next session finds it waiting. */
function layReady({ build, at }: Omit<Seen, 'state'>): readonly Row[] {
  const { tools } = build.plan;
  const ids = stepToOpen(build)?.tools ?? [];
  if (ids.length === 0) return [];
  const names = ids.map(id => tools.find(tool => tool.id === id)?.name.toLowerCase() ?? id);
  const words = `Lay ready for next time: ${listWords(names)}`;
  return plainRows(hanging('', plainer(at.ascii)(words), at.size.columns));
}

export const NOTE_ASKED =
  'One line for next time: what is half done, what is missing, a setting that must not be lost. Or nothing.';

/** What has to be looked after, with ticks; it scrolls to the first open one. */
export function leaveRows({ state, build, at }: Seen): readonly Row[] {
  const { columns, rows } = at.size;
  const plain = plainer(at.ascii);
  const lines = leavingLines(build, at.nowMs);
  const note = state.note === '' ? [] : plainRows(hanging('Note: ', plain(state.note), columns));
  const head = [...placeRows({ build, at }), ...note, ...layReady({ build, at }), BLANK];
  const open = lines.find(line => !isSeenTo(state, line));
  const words =
    open === undefined
      ? 'Space: lock up, until next time'
      : `Space: ${lines.indexOf(open) + 1} is seen to${open.must ? ', before all else' : ''}`;
  const blocks = lines.map((line, number) => {
    const { id, say } = line;
    const mark = isSeenTo(state, line) ? 'x' : ' ';
    return hanging(`[${mark}] ${number + 1} `, plain(say), columns).map(
      (text): Row => (id === open?.id ? { text, tone: line.must ? 'heed' : 'strong' } : { text }),
    );
  });
  const body = blocks.flat();
  const height = Math.max(1, rows - head.length - 1);
  const before = blocks
    .slice(0, open === undefined ? undefined : lines.indexOf(open))
    .flat().length;
  const room = { count: body.length, height };
  const top = limitTop(state.top ?? (body.length <= height ? 0 : before), room);
  const position = scrollWords(top, room);
  const foot: Row = { text: position === '' ? words : `${words}   (${position})`, tone: 'now' };
  return withFoot([...head, ...body.slice(top, top + height)], [foot], rows);
}
