import type { Mm } from '../../measure/quantities.js';
import { MOST_PIECES } from '../../model/spacing.js';
import type { Given, WorkOption } from './rule.js';

export const WAYS = ['flush', 'gap', 'half', 'margins', 'laps'] as const;
/** How the ends are treated: as even spacing does, or with a fixed gap and what is left at both ends. */
export type Way = (typeof WAYS)[number];

const LONGEST: Mm = 100_000;

export const SPACING_OPTIONS: readonly WorkOption[] = [
  {
    name: 'over',
    kind: 'length',
    say: 'the length to fill',
    example: '96in',
    least: 1,
    most: LONGEST,
  },
  {
    name: 'piece',
    kind: 'length',
    say: 'size of one piece along that length, as it will stand',
    example: '5.5in',
    least: 1,
    most: LONGEST,
  },
  {
    name: 'count',
    kind: 'count',
    say: 'how many pieces; left out, it follows from --gap',
    example: '12',
    usual: '',
    least: 1,
    most: MOST_PIECES,
  },
  {
    name: 'gap',
    kind: 'length',
    say: 'the clear gap that is wished for; kept exactly with margins and laps',
    example: '3/8in',
    usual: '',
    least: 0,
    most: LONGEST,
  },
  {
    name: 'ends',
    kind: 'word',
    say: 'flush, a whole gap, half a gap, equal margins, or board on board with hidden laps',
    example: 'flush',
    usual: 'flush',
    choices: WAYS,
  },
  {
    name: 'lap',
    kind: 'length',
    say: 'with laps: how far backing boards reach behind their neighbors',
    example: '1in',
    usual: '',
    least: 0,
    most: LONGEST,
  },
  {
    name: 'stack',
    kind: 'length',
    say: 'six of your spacers end to end: tells what each of them is off',
    example: '16-15/32in',
    usual: '',
    least: 1,
    most: LONGEST,
  },
];

export type SpacingAsk = {
  readonly over: Mm;
  readonly piece: Mm;
  readonly way: Way;
  readonly count: number | undefined;
  readonly gap: Mm | undefined;
  readonly lap: Mm | undefined;
};

export function spacingAsk(given: Given): SpacingAsk {
  const optional = (name: string) => (given.has(name) ? given.number(name) : undefined);
  const way = WAYS.find(it => it === given.word('ends'));
  if (way === undefined) throw new Error(`ends ${given.word('ends')} was let through`);
  return {
    over: given.number('over'),
    piece: given.number('piece'),
    way,
    count: optional('count'),
    gap: optional('gap'),
    lap: optional('lap'),
  };
}
