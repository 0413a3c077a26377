import { listWords } from '../../../text/list.js';
import { hanging } from '../../../text/page-lines.js';
import { wrap } from '../../../text/wrap.js';
import { plainer } from '../../widgets/facts.js';
import { BLANK, plainRows, type Row } from '../../widgets/rows.js';
import { firstRows, lookRows, nowRows } from './helper-now-rows.js';
import { beforeRows, toolRows } from './helper-tool-rows.js';
import { settingRows } from './setting-rows.js';
import { wordRows } from './word-rows.js';
import type { Work } from './work-rows.js';

const PART = {
  helper: 'This one is yours. The lead is within call: ask when anything is not as it says here.',
  both: 'You two do this together.',
  lead: 'The lead does this. Stand where the lead sees you, and wear what the lead wears.',
} as const;

/**
 * A step for somebody who is new to it, in the order in which it is needed: whose it is, what to do and how far it
 * is, what to look at, what was noted; then why, the figures, the words, and what one holds.
 */
export function helperRows(work: Work, columns: number): readonly Row[] {
  const { step, at } = work;
  const plain = plainer(at.ascii);
  const what = step.plain.length > 0 ? step.plain : step.say;
  const blocks: readonly (readonly Row[])[] = [
    [...partRows(work, columns), ...firstRows(work, columns)],
    plainRows(what.flatMap(text => hanging('- ', plain(text), columns))),
    nowRows(work, columns),
    lookRows(work, columns),
    step.why === '' ? [] : plainRows(hanging('Why  ', plain(step.why), columns)),
    named('Figures', settingRows(withoutDay(work), columns)),
    named('Words', wordRows(work, columns)),
    named('What you hold', toolRows(work, columns)),
    beforeRows(work, columns),
  ];
  return blocks
    .filter(rows => rows.length > 0)
    .flatMap((rows, number) => (number === 0 ? rows : [BLANK, ...rows]));
}

function named(name: string, rows: readonly Row[]): readonly Row[] {
  return rows.length === 0 ? [] : [{ text: name, tone: 'strong' }, ...rows];
}

/** Whose step it is, what stays with the lead, and one sentence to say aloud. */
function partRows({ step, build, at }: Work, columns: number): readonly Row[] {
  const plain = plainer(at.ascii);
  const name = (id: string) => build.plan.tools.find(tool => tool.id === id)?.name ?? id;
  const hands =
    step.handsOff.length === 0
      ? ''
      : ` Only the lead holds: ${listWords(step.handsOff.map(name))}.`;
  const part = wrap(plain(`${PART[step.who]}${hands}`), columns);
  return [
    ...part.map((text): Row => ({ text, tone: 'strong' })),
    ...plainRows(hanging('Say it: ', plain(`"${sayAloud(step, build)}"`), columns)),
  ];
}

/** The short rule of the first tool that can hurt; glue hardly does. */
function sayAloud(step: Work['step'], { plan }: Work['build']): string {
  const told = step.tools.flatMap(id => plan.tools.find(tool => tool.id === id)?.briefing ?? []);
  const hurting = told.filter(({ caution }) => caution !== undefined);
  const worst = hurting.find(({ caution }) => caution !== 'glue') ?? hurting[0];
  return worst?.inShort ?? 'When something is not clear, I stop and ask.';
}

/** Whether it is a day for glue is for the person who leads to decide. */
function withoutDay(work: Work): Work {
  const settings = work.step.settings.filter(({ asks }) => asks === undefined);
  return { ...work, step: { ...work.step, settings } };
}
