import type { Figure } from '../../../measure/figure.js';
import { formatFigure, sourceText } from '../../../measure/figure-text.js';
import type { Plan } from '../../../plan/plan.js';
import type { Block } from '../../../text/page.js';
import { placeFigures, squareFigures, wetDayFigures } from './trade-figures.js';

type Named = { readonly name: string; readonly figure: Figure };

const kept = new WeakMap<Plan, Map<string, readonly Block[]>>();

/** Where the figures of a page are from: the rule with the numbers put in, and its source. */
export function whereFrom(page: string, plan: Plan): readonly Block[] {
  const known = kept.get(plan) ?? new Map<string, readonly Block[]>();
  kept.set(plan, known);
  const blocks = known.get(page) ?? blocksOf(figuresOf(page, plan), plan);
  known.set(page, blocks);
  return blocks;
}

function blocksOf(figures: readonly Named[], plan: Plan): readonly Block[] {
  if (figures.length === 0) {
    return [{ kind: 'words', text: 'This page holds words, or figures that other pages explain.' }];
  }
  return figures.flatMap(({ name, figure }): readonly Block[] => [
    { kind: 'heading', text: `${name}: ${formatFigure(figure, plan.display)}` },
    {
      kind: 'list',
      items: [figure.because, `Source: ${sourceText(figure.source)}`],
    },
  ]);
}

function figuresOf(page: string, plan: Plan): readonly Named[] {
  switch (page) {
    case 'drawing':
      return sizesOf(plan);
    case 'overview':
      return [
        ...sizesOf(plan),
        { name: 'Weight, empty', figure: plan.weight },
        { name: 'Boards', figure: plan.cost },
        { name: 'Hands-on time', figure: plan.time.hands },
        ...plan.sizes.map(({ id, figure }) => ({ name: id.replaceAll('_', ' '), figure })),
      ];
    case 'fit':
      return [
        ...plan.fit.map(({ say, value }) => ({ name: say, figure: value })),
        ...placeFigures(plan),
      ];
    case 'cut':
      return cutFigures(plan);
    case 'boards':
      return plan.purchases.flatMap(({ section, cost, thickness, width }) => [
        { name: `${section}, cost`, figure: cost },
        { name: `${section}, thick`, figure: thickness },
        { name: `${section}, wide`, figure: width },
      ]);
    case 'spacing':
      return [...spacingFigures(plan), ...squareFigures(plan)];
    case 'hardware':
      return [...screwFigures(plan), ...wetFigures(plan), ...wetDayFigures(plan)];
    case 'time':
      return [
        { name: 'Hands-on time', figure: plan.time.hands },
        { name: 'From the first move to the last', figure: plan.time.finish },
      ];
    case 'steps':
      return plan.steps.map(({ title, minutes }) => ({ name: title, figure: minutes }));
    default:
      return [];
  }
}

function sizesOf({ overall }: Plan): readonly Named[] {
  return [
    { name: 'Long', figure: overall.width },
    { name: 'Deep', figure: overall.depth },
    { name: 'High', figure: overall.height },
  ];
}

function cutFigures({ cutList, notches }: Plan): readonly Named[] {
  return [
    ...cutList.map(({ mark, name, length }) => ({ name: `${mark} ${name}`, figure: length })),
    ...notches.flatMap(({ mark, name, depth, along, left }) => [
      { name: `${mark} ${name}, deep`, figure: depth },
      { name: `${mark} ${name}, along`, figure: along },
      { name: `${mark} ${name}, leaves`, figure: left },
    ]),
  ];
}

function spacingFigures({ spacing }: Plan): readonly Named[] {
  return spacing.flatMap(({ name, gap, endGap, spacer, drift }) => [
    { name: `${name}, gap`, figure: gap },
    { name: `${name}, gap at the ends`, figure: endGap },
    { name: `${name}, spacer`, figure: spacer },
    { name: `${name}, error of the spacer alone`, figure: drift },
  ]);
}

function screwFigures({ screws, hardware }: Plan): readonly Named[] {
  const holes = (row: Plan['screws'][number]): readonly Named[] => [
    ...(row.clearance === undefined
      ? []
      : [{ name: `${row.joint}, clearance hole`, figure: row.clearance }]),
    ...(row.pilot === undefined ? [] : [{ name: `${row.joint}, pilot hole`, figure: row.pilot }]),
  ];
  return [
    ...hardware.map(({ what, count }) => ({ name: what, figure: count })),
    ...screws.flatMap(row => [
      { name: `${row.joint}, length`, figure: row.length },
      { name: `${row.joint}, bite`, figure: row.bite },
      ...holes(row),
    ]),
  ];
}

function wetFigures({ glue, sealer }: Plan): readonly Named[] {
  return [
    { name: 'Glue', figure: glue.amount },
    { name: 'Glue, close within', figure: glue.openTime },
    { name: 'Glue, clamps stay', figure: glue.clampTime },
    { name: 'Glue, full strength', figure: glue.cureTime },
    { name: 'Glue, not below', figure: glue.lowest },
    { name: 'Sealer', figure: sealer.amount },
    { name: 'Sealer, wipe after', figure: sealer.dwell },
    { name: 'Sealer, dry after', figure: sealer.dry },
  ];
}
