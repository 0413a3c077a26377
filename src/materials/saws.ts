import { inches } from '../measure/inch.js';
import type { Mm } from '../measure/quantities.js';
import { type Sourced, sourced } from './sourced.js';
import { practice, seen } from './sources.js';

export type Saw = {
  readonly id: string;
  readonly name: string;
  /** Width of the cut. Blades differ: a test cut with the real one is better than this. */
  readonly kerf: Sourced<Mm>;
};

const FULL = sourced(inches(1 / 8), seen('saw-articles', 'full-kerf blades, 10 in class'));
const THIN = sourced(inches(3 / 32), seen('saw-articles', 'thin-kerf blades, 10 in class'));

function usual(kerf: number, range: string): Sourced<Mm> {
  return sourced(inches(kerf), practice(`typical blades cut ${range}`));
}

export const SAWS: readonly Saw[] = [
  { id: 'miter-saw', name: 'miter saw, full-kerf blade', kerf: FULL },
  { id: 'miter-saw-thin', name: 'miter saw, thin-kerf blade', kerf: THIN },
  { id: 'table-saw', name: 'table saw, full-kerf blade', kerf: FULL },
  { id: 'table-saw-thin', name: 'table saw, thin-kerf blade', kerf: THIN },
  {
    id: 'circular-saw',
    name: 'circular saw, 7-1/4 in framing blade',
    kerf: usual(1 / 16, '0.059 to 0.071 in'),
  },
  { id: 'jigsaw', name: 'jigsaw', kerf: usual(3 / 64, '0.035 to 0.06 in') },
  { id: 'hand-saw', name: 'Western hand saw', kerf: usual(0.045, 'about 0.045 in') },
  { id: 'pull-saw', name: 'pull saw', kerf: usual(0.02, 'about 0.02 in') },
  { id: 'band-saw', name: 'band saw', kerf: usual(1 / 32, '0.025 to 0.035 in') },
];

/** The saw with this id, or undefined. */
export function sawNamed(id: string): Saw | undefined {
  return SAWS.find(saw => saw.id === id);
}
