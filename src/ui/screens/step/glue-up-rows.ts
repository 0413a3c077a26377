import { clampWords, openWords } from '../../../plan/glue-up-words.js';
import { count } from '../../../text/plural.js';
import { factLines, plainer } from '../../widgets/facts.js';
import type { Row } from '../../widgets/rows.js';
import { glueUpNow } from './open-in-glue-up.js';
import type { Work } from './work-rows.js';

/** What has to be seen with glue on the hands: which glue-up, what lies in it, its clamps, how long the glue is open. */
export function glueUpRows({ step, build, at }: Work, columns: number): readonly Row[] {
  const now = glueUpNow(step, build);
  if (now === undefined) return [];
  const { row, kind, number, of } = now;
  const which = of === 1 ? 'all in one' : `${number} of ${of}`;
  const hands = row.people === 2 ? 'two need' : 'one needs';
  const facts = [
    { name: 'Glue-up', text: `${which}: ${count(kind.joints, 'joint')} of ${kind.pieces}` },
    { name: 'Clamps', text: clampWords(row) },
    {
      name: 'Open',
      text: `${openWords(row)}; ${hands} about ${Math.ceil(kind.minutes.value - 1e-9)}`,
    },
  ];
  const plain = plainer(at.ascii);
  return factLines(
    facts.map(({ name, text }) => ({ name, text: plain(text) })),
    columns,
  ).map((text): Row => ({ text, tone: 'strong' }));
}
