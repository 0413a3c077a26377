import { formatFigure } from '../../measure/figure-text.js';
import { listWords } from '../../text/list.js';
import type { Page } from '../../text/page.js';
import type { Plan } from '../plan.js';

/** What the owner is given at the end: what it is made of, and what to look after when. */
export function careSheetPage(plan: Plan): Page {
  return {
    id: 'care',
    title: 'Care sheet for the owner',
    blocks: [
      { kind: 'facts', facts: madeOf(plan) },
      { kind: 'heading', text: 'After four weeks' },
      { kind: 'list', items: ['Tighten every screw you can reach by hand: new wood settles.'] },
      { kind: 'heading', text: 'Every spring' },
      { kind: 'list', items: EVERY_SPRING },
      { kind: 'heading', text: 'Keep in mind' },
      { kind: 'list', items: keepInMind(plan) },
    ],
  };
}

function madeOf(plan: Plan) {
  const answer = (id: string) => plan.answers.find(it => it.id === id)?.text ?? '';
  const size = [plan.overall.width, plan.overall.depth, plan.overall.height];
  const screws = plan.screws.filter(row => row.kind === 'screw').map(row => row.what);
  return [
    { name: 'Size', text: size.map(it => formatFigure(it, plan.display)).join(' x ') },
    { name: 'Weight, empty', text: formatFigure(plan.weight, plan.display) },
    { name: 'Wood', text: answer('species') },
    { name: 'Screws', text: `${listWords([...new Set(screws)])}; ${answer('metal')}` },
    { name: 'Glue', text: plan.glue.kind },
    { name: 'Sealer', text: plan.sealer.kind },
  ].filter(fact => fact.text !== '');
}

/** Common practice for penetrating finishes and screwed outdoor pieces. */
const EVERY_SPRING = [
  'Tighten the screws again.',
  'Sprinkle water on it. Where it no longer beads, clean, let it dry for some days and seal again.',
  'Lift out loose planks and blocks, brush the dirt out, see that water runs off everywhere.',
  'Press a screwdriver into feet and joints near the ground: soft wood is rot, have it replaced.',
  'Sit on each end and rock. What moves is tightened or mended before anybody trusts it.',
];

function keepInMind(plan: Plan): readonly string[] {
  const oil = plan.cautions.some(caution => caution.id === 'rags');
  return [
    ...(oil
      ? [
          'Rags with sealer catch fire by themselves: dry them flat outdoors, or drown them in water.',
        ]
      : []),
    'It was not built as a ladder, a step or a guard. Keep it away from a railing that children could climb over.',
    'Wet soil is heavy. More planters on a deck, balcony or roof: ask its owner or a licensed engineer first.',
  ];
}
