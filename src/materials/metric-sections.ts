import type { Source } from '../measure/figure.js';
import type { Section } from './section.js';
import { practice, recalled, seen } from './sources.js';

type Group = {
  readonly sold: string;
  readonly source: Source;
  /** Thickness by width in mm, as the yard writes them. */
  readonly sizes: readonly string[];
};

/** Planed sizes sold in Europe. A size is listed once, in the first group that has it. */
const GROUPS: readonly Group[] = [
  {
    sold: 'planed, Dutch sizes',
    source: seen('vademecum', 'planed sections, 33 and 45 mm thick'),
    sizes: [
      '33x69',
      '33x95',
      '33x120',
      '33x145',
      '45x69',
      '45x95',
      '45x120',
      '45x145',
      '45x170',
      '45x195',
      '45x220',
    ],
  },
  {
    sold: 'planed, Canadian lumber sizes (CLS)',
    source: recalled('en336', 'United Kingdom CLS sizes'),
    sizes: ['38x63', '38x89', '38x140', '38x184', '38x235'],
  },
  {
    sold: 'regularized carcassing timber',
    source: practice('regularized C16 and C24 sizes as merchants stock them'),
    sizes: ['45x70'],
  },
  {
    sold: 'planed strip',
    source: practice('planed strips as hardware stores sell them; sizes differ, measure one'),
    sizes: ['21x21', '21x33'],
  },
  {
    sold: 'planed, Nordic sizes',
    source: practice('planed sizes as Nordic merchants stock them'),
    sizes: [
      '21x45',
      '21x70',
      '21x95',
      '21x120',
      '21x145',
      '28x45',
      '28x70',
      '28x95',
      '45x45',
      '70x70',
      '90x90',
      '95x95',
      '120x120',
    ],
  },
  {
    sold: 'planed deck board',
    source: practice('deck boards as merchants stock them'),
    sizes: ['27x144', '28x120', '28x145', '32x125', '34x145'],
  },
];

function sectionOf(name: string, group: Group): Section {
  const [thickness, width] = name.split('x').map(Number);
  if (thickness === undefined || width === undefined) {
    throw new Error(`metric section "${name}" is not written thickness x width`);
  }
  return { name, thickness, width, family: 'metric', sold: group.sold, source: group.source };
}

/** Metric planed sections. Tolerance class 2 of EN 336 lets a planed size up to 100 mm be 1 mm out. */
export const METRIC_SECTIONS: readonly Section[] = GROUPS.flatMap(group =>
  group.sizes.map(name => sectionOf(name, group)),
);
