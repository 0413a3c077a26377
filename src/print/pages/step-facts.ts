import { formatMinutes } from '../../measure/duration.js';
import { settingsNow } from '../../plan/cut-step-now.js';
import type { Step } from '../../plan/plan.js';
import { listWords } from '../../text/list.js';
import { count } from '../../text/plural.js';
import { tallyOf } from '../../workbook/next-step.js';
import type { Pack } from './pack.js';
import { benchOf } from './so-far.js';

/** Settings that the large number does not say already, who may not, how many, how long to wait. */
export function factsOf(step: Step, pack: Pack) {
  const { build, plan } = pack;
  const bench = benchOf(pack);
  const settings = bench === undefined ? step.settings : settingsNow(step, bench);
  const tally = build === undefined ? undefined : tallyOf(step, build.progress);
  const off = plan.tools.filter(({ id }) => step.handsOff.includes(id)).map(({ name }) => name);
  const { big } = step;
  // The large number and its caption say it already.
  const isSaid = (text: string) => text === big?.text || big?.caption.endsWith(` ${text}`) === true;
  return [
    ...settings.filter(({ text }) => !isSaid(text)),
    ...(off.length === 0 ? [] : [{ name: 'Lead only', text: listWords(off) }]),
    ...(step.tally === undefined
      ? []
      : [
          {
            name: 'Count',
            text: `${count(step.tally.count, step.tally.of)}${tally === undefined ? '' : `, ${tally.done} done`}`,
          },
        ]),
    ...step.timers.map(({ name, minutes }) => ({
      name: 'Wait',
      text: `${formatMinutes(minutes)}: ${name.toLowerCase()}`,
    })),
  ];
}
