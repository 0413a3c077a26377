import { cutStepsOf } from '../../../plan/work-so-far.js';
import { factLines, type NamedText, plainer } from '../../widgets/facts.js';
import { plainRows, type Row } from '../../widgets/rows.js';
import type { Work } from './work-rows.js';

/** The settings of a step as rows; what is large already is not said twice. */
export function settingRows(work: Work, columns: number): readonly Row[] {
  const plain = plainer(work.at.ascii);
  const shown = settingsNow(work).map(({ name, text }) => ({
    name: plain(name),
    text: plain(text),
  }));
  return plainRows(factLines(shown, columns));
}

/**
 * After a slip the boards are shared out anew: which board a piece comes from, and how much of one may be
 * skipped, is then no longer what was planned, and a skipped foot could be a piece.
 */
function settingsNow({ step, build }: Work): readonly NamedText[] {
  const settings = step.settings.filter(({ text }) => text !== step.big?.text);
  const cutting = cutStepsOf(build.plan).find(it => it.step.id === step.id);
  const isAnew = build.progress.rackChanges.some(({ section }) => section === cutting?.section);
  if (cutting === undefined || !isAnew) return settings;
  return [
    ...settings
      .filter(({ name }) => name !== 'Knots')
      .map(({ name, text }) => ({ name, text: text.replace(FROM_BOARDS, '') })),
    { name: 'Knots', text: 'skip none before you have looked at the page of boards (b)' },
  ];
}

const FROM_BOARDS = /: \d+ from no\..*$/;
