import { formatFigure } from '../../measure/figure-text.js';
import { formatNumber } from '../../measure/format-number.js';
import type { Display } from '../../measure/quantities.js';
import type { Block, Fact } from '../../text/page.js';
import { onTheTape } from '../on-tape.js';
import type { Plan } from '../plan.js';
import type { PlanterRow, PotRow } from '../planter.js';

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
      text: `${say(row.soil)} of soil, ${bagWords(row)}, about ${say(row.soaked)} soaked; line it first, the floor has gaps`,
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
  const length = (value: number) => onTheTape(value, display);
  const size = `${length(pot.height.value)} high, ${length(pot.across.value)} across`;
  return {
    name: pots.length > 1 ? `Pot ${pot.number}` : 'Pot',
    text: `${size}, on ${pot.blocks}: ${rimWords(pot, length)}; ${airWords(pot, length)}`,
    because: pot.rim.because,
  };
}

function rimWords({ rim, wished, near }: PotRow, length: (value: number) => string): string {
  const place =
    rim.value < 0
      ? `rim ${length(-rim.value)} over the edge`
      : `rim ${length(rim.value)} below the edge`;
  if (length(rim.value) === length(wished.value)) return place;
  const wish = `${length(wished.value)} was wished`;
  return near ? `${place} (${wish})` : `${place}, but ${wish}`;
}

function airWords({ air, verdict }: PotRow, length: (value: number) => string): string {
  if (verdict === 'does not fit') return `does not go in, ${length(-air.value)} too wide`;
  const words = `${length(air.value)} of air round it`;
  return verdict === 'fits' ? words : `${words}, 1/2 in is wanted`;
}
