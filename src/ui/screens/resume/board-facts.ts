import { isOpen, progressWords, racksTold } from '../../../plan/rack-told.js';
import { benchOf } from '../../bench-of.js';
import type { Build } from '../../screen.js';
import type { NamedText } from '../../widgets/facts.js';

/** What has to be bought first, and how far the boards are that are being cut. */
export function boardFacts(build: Build): readonly NamedText[] {
  const open = racksTold(benchOf(build)).filter(isOpen);
  const buy = open.flatMap(({ buyWords }) => (buyWords === '' ? [] : [buyWords]));
  const far = open.map(told => `${told.section}: ${progressWords(told)}`);
  return [
    ...(buy.length === 0 ? [] : [{ name: 'Buy first', text: buy.join('; ') }]),
    ...(far.length === 0 ? [] : [{ name: 'Boards', text: far.join('; ') }]),
  ];
}
