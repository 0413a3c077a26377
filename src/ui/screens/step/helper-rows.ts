import { wordsOfStep, wordsOfSteps } from '../../../plan/step-words.js';
import { listWords } from '../../../text/list.js';
import { hanging } from '../../../text/page-lines.js';
import { count } from '../../../text/plural.js';
import { wrap } from '../../../text/wrap.js';
import { dayWords } from '../../../workbook/clock-words.js';
import { factLines, plainer } from '../../widgets/facts.js';
import { BLANK, plainRows, type Row } from '../../widgets/rows.js';
import { knownSince } from './briefing-pages.js';
import type { Work } from './work-rows.js';

const PART = {
  helper: 'This one is yours. The lead is within call: ask when anything is not as it says here.',
  both: 'You two do this together.',
  lead: 'The lead does this. Stand where the lead sees you, and wear what the lead wears.',
} as const;

/** A step for somebody who is new to it: whose it is, what is done, why, with what, and the words. */
export function helperRows(work: Work, columns: number): readonly Row[] {
  const { step, at } = work;
  const plain = plainer(at.ascii);
  const what = step.plain.length > 0 ? step.plain : step.say;
  const blocks: readonly (readonly Row[])[] = [
    partRows(work, columns),
    plainRows(what.flatMap(text => hanging('- ', plain(text), columns))),
    step.why === '' ? [] : plainRows(hanging('Why  ', plain(step.why), columns)),
    named('What you hold', toolRows(work, columns)),
    named('Words', wordRows(work, columns)),
    beforeRows(work, columns),
  ];
  return blocks
    .filter(rows => rows.length > 0)
    .flatMap((rows, number) => (number === 0 ? rows : [BLANK, ...rows]));
}

/** All words of the trade that this build uses. */
export function allWordRows({ build, at }: Work, columns: number): readonly Row[] {
  const plain = plainer(at.ascii);
  const facts = wordsOfSteps(build.plan.steps).map(({ word, means }) => ({
    name: word,
    text: plain(means),
  }));
  return plainRows(factLines(facts, columns));
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

function toolRows({ step, build, at }: Work, columns: number): readonly Row[] {
  const plain = plainer(at.ascii);
  return step.tools.flatMap(id => {
    const tool = build.plan.tools.find(it => it.id === id);
    if (tool === undefined || step.handsOff.includes(id)) return [];
    const known = build.progress.toolsBriefed.get(id) ?? knownSince(id, build);
    const since = known === undefined ? '' : ` Signed off ${dayWords(known)}.`;
    return plainRows(hanging('- ', plain(`${tool.name}: ${tool.plainly}${since}`), columns));
  });
}

/** What is known from earlier builds. */
function beforeRows({ build }: Work, columns: number): readonly Row[] {
  const before = build.progress.helperBefore;
  if (before === undefined) return [];
  const { alone, together } = before;
  const words = `From earlier builds: ${count(alone, 'step')} alone, ${together} together with the lead.`;
  return plainRows(wrap(words, columns));
}

function wordRows({ step, at }: Work, columns: number): readonly Row[] {
  const plain = plainer(at.ascii);
  return wordsOfStep(step).flatMap(({ word, means }) =>
    plainRows(hanging('- ', plain(`${word}: ${means}`), columns)),
  );
}
