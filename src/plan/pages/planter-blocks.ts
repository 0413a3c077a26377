import { formatFigure } from '../../measure/figure-text.js';
import { formatNumber } from '../../measure/format-number.js';
import type { Display } from '../../measure/quantities.js';
import type { Block, Fact } from '../../text/page.js';
import { onTheTape } from '../on-tape.js';
import type { Plan } from '../plan.js';
import type { PlanterRow, PotRow } from '../planter.js';
import { potName, potSize, rimWords } from '../pot-words.js';

/** What each planter holds, how it drains and where its pots come to. */
export function planterBlocks({ planters, display }: Plan): readonly Block[] {
  return planters.flatMap((row): readonly Block[] => [
    { kind: 'heading', text: `${row.name}${row.places > 1 ? `, ${row.places} alike` : ''}` },
    { kind: 'facts', facts: planterFacts(row, display) },
  ]);
}

function planterFacts(row: PlanterRow, display: Display): readonly Fact[] {
  const { long, deep, high } = row.inside;
  const sides = [long, deep, high].map(it => onTheTape(it.value, display)).join(' x ');
  const say = (figure: PlanterRow['soil']) => formatFigure(figure, display);
  return [
    { name: 'Inside', text: `${sides} (along, front to back, high)`, because: high.because },
    ...row.pots.map(pot => potFact(pot, row, display)),
    ...(row.pots.length === 0
      ? []
      : [
          {
            name: 'Pots, soaked',
            text: `about ${say(row.potted)} in each planter`,
            because: row.potted.because,
          },
        ]),
    {
      name: 'Filled instead',
      text: `${say(row.soil)} of soil, ${bagWords(row)}, about ${say(row.soaked)} soaked; line it first, and mind that the sums here are for pots`,
      because: row.bags.because,
    },
    { name: 'Drains', text: drainWords(row), because: row.open.because },
  ];
}

function bagWords({ bags, bag }: PlanterRow): string {
  return `${bags.value} x ${bag}`;
}

function drainWords({ open, drains }: PlanterRow): string {
  const share = `${formatNumber(open.value, 0)}% of the floor is open`;
  return drains ? `${share}; drilled floors have about 1%` : `${share}, too little: leave gaps`;
}

function potFact(pot: PotRow, { pots }: PlanterRow, display: Display): Fact {
  const words = [rimWords(pot, display), airWords(pot, display)].join('; ');
  return {
    name: potName(pot, pots.length),
    text: `${potSize(pot, display)}, on ${pot.blocks}: ${words}`,
    because: pot.rim.because,
  };
}

function airWords({ air, verdict }: PotRow, display: Display): string {
  const length = (value: number) => onTheTape(value, display);
  if (verdict === 'does not fit') return `does not go in, ${length(-air.value)} too wide`;
  const words = `${length(air.value)} of air round it`;
  return verdict === 'fits' ? words : `${words}, 1/2 in is wanted`;
}
