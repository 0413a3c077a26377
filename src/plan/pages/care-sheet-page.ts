import { formatFigure } from '../../measure/figure-text.js';
import { listWords } from '../../text/list.js';
import type { Block, Fact, Page } from '../../text/page.js';
import type { Plan } from '../plan.js';
import { holdAdvice, holdSums, holdTable, notCounted } from './hold-blocks.js';

/** The days that care falls on, in words; known once the piece has been handed over. */
export type CareDays = {
  readonly handedOver: string;
  /** Four weeks later. */
  readonly tighten: string;
  /** When a coat may be used up at the earliest, and when at the latest. */
  readonly sealFrom: string;
  readonly sealBy: string;
};

/** To be filled in by hand. */
const BLANK = '____________';

/**
 * What the owner is given at the end: what it is made of, what to look after when, what it carries by
 * which sums, and who decides where the sums end. Without days it has lines to write them on.
 */
export function careSheetPage(plan: Plan, days?: CareDays): Page {
  return {
    id: 'care',
    title: 'Care sheet for the owner',
    blocks: [
      { kind: 'facts', facts: madeOf(plan, days) },
      { kind: 'heading', text: `After four weeks, on ${days?.tighten ?? BLANK}` },
      { kind: 'list', items: [TIGHTEN] },
      { kind: 'heading', text: 'Every spring' },
      { kind: 'list', items: EVERY_SPRING },
      { kind: 'heading', text: 'Sealing again' },
      { kind: 'list', items: sealAgain(plan, days) },
      ...carries(plan),
      { kind: 'heading', text: 'Keep in mind' },
      { kind: 'list', items: keepInMind(plan) },
    ],
  };
}

function madeOf(plan: Plan, days: CareDays | undefined): readonly Fact[] {
  const answer = (id: string) => plan.answers.find(it => it.id === id)?.text ?? '';
  const size = [plan.overall.width, plan.overall.depth, plan.overall.height];
  const screws = plan.screws.filter(row => row.kind === 'screw').map(row => row.what);
  const sections = plan.purchases.map(({ section }) => section);
  const metal = answer('metal');
  return [
    { name: 'Piece', text: plan.title },
    { name: 'Handed over', text: days?.handedOver ?? BLANK },
    { name: 'Size', text: size.map(it => formatFigure(it, plan.display)).join(' x ') },
    { name: 'Weight, empty', text: formatFigure(plan.weight, plan.display) },
    {
      name: 'Wood',
      text: [answer('species'), listWords([...new Set(sections)])].filter(Boolean).join(': '),
    },
    {
      name: 'Screws',
      text: [listWords([...new Set(screws)]), metal].filter(Boolean).join('; '),
    },
    { name: 'Glue', text: plan.glue.area.value > 0 ? plan.glue.kind : 'none' },
    { name: 'Sealer', text: `${plan.sealer.kind}, color and can: ${BLANK}` },
  ].filter(fact => fact.text !== '');
}

/** Common practice: new wood settles and dries in its first weeks. */
const TIGHTEN =
  'Tighten every screw you can reach, by hand: new wood settles and dries in its first weeks. Again in the first spring, and then each spring.';

/** Common practice for penetrating finishes and screwed outdoor pieces. */
const EVERY_SPRING = [
  'Tighten the screws. One that turns and does not bite gets a longer or thicker one of the same metal.',
  'Sprinkle water on the seat and on the ends of boards. Where it no longer stands in beads, it is time to seal.',
  'Lift out what is loose, brush the dirt out, see that water runs off everywhere and that no gap is stopped up.',
  'Press a screwdriver into feet and joints near the ground: soft wood is rot. Have that board replaced before anybody trusts it.',
  'Look along boards and joints for new cracks, open glue lines and splinters; sand the splinters off.',
  'Sit on each end and rock. What moves is tightened or mended before anybody trusts it.',
];

function sealAgain({ sealer }: Plan, days: CareDays | undefined): readonly string[] {
  const { from, to, source } = sealer.lasts;
  const usual = `A coat of ${sealer.kind} usually lasts ${from} to ${to} years outdoors (${source}); sun and rain decide.`;
  const when =
    days === undefined
      ? `Try it with water each spring, and expect to seal again from ${BLANK} on, by ${BLANK} at the latest.`
      : `Try it with water each spring, and expect to seal again from ${days.sealFrom} on, by ${days.sealBy} at the latest.`;
  return [
    `${usual} ${when}`,
    'Brush it clean, let it dry for some days, and use the same kind. The label comes first, for the day as well.',
    sealer.care,
    ...(sealer.hotRags
      ? [
          'Rags with this sealer catch fire by themselves: spread them flat outdoors until stiff, or drown them in water in a metal can with a lid.',
        ]
      : [
          'Rags with this sealer do not heat up by themselves, as far as its kind goes: let them dry spread out. The label comes first.',
        ]),
  ];
}

function carries(plan: Plan): readonly Block[] {
  if (plan.holds.length === 0) return [];
  return [
    { kind: 'heading', text: 'What it carries, each by the sum below and by no other' },
    holdTable(plan),
    holdAdvice(plan),
    ...holdSums(plan),
    { kind: 'heading', text: 'What the sums leave out, and who decides there' },
    { kind: 'list', items: notCounted(plan) },
  ];
}

function keepInMind(plan: Plan): readonly string[] {
  return [
    ...plan.planters.map(
      row =>
        `${row.name}: soaked pots weigh about ${formatFigure(row.potted, plan.display)} in each; filled with soil instead it would be about ${formatFigure(row.soaked, plan.display)} in each, which the sums here do not count.`,
    ),
    'Wet soil is heavy. More planters, or a new place on a deck, balcony or roof: ask its owner, the local building code or a licensed engineer first.',
    'It was not built as a ladder, a step or a guard. Keep it away from a railing that children could climb over.',
    'Where it stands in public, or at work, local rules on seats, gaps and access apply: ask before it is moved there.',
  ];
}
