import { formatLength } from '../../measure/format-length.js';
import type { Block } from '../../text/page.js';
import { onTheTape, tapeAndExact } from '../on-tape.js';
import type { Plan } from '../plan.js';
import { squareSize } from '../square-words.js';

/** The diagonals of everything that has to be square. */
export function squareBlocks({ squares, steps, display }: Plan): readonly Block[] {
  const closed = squares.filter(row =>
    steps.some(it => it.id === row.step && it.phase !== 'dry-fit'),
  );
  if (closed.length === 0) return [];
  const titleById = new Map(steps.map(({ id, title }) => [id, title]));
  return [
    { kind: 'heading', text: 'Square: both diagonals, corner to corner on the outside' },
    {
      kind: 'table',
      table: {
        id: 'squares',
        columns: [
          { title: 'Step', grow: true },
          { title: 'Count', align: 'right' },
          { title: 'Size', grow: true },
          { title: 'Diagonals', align: 'right' },
          { title: 'May differ', align: 'right' },
        ],
        rows: closed.map(row => [
          titleById.get(row.step) ?? row.step,
          String(row.count),
          squareSize(row, display),
          tapeAndExact(row.diagonal.value, display),
          formatLength(row.mayDiffer.value, display),
        ]),
      },
    },
    { kind: 'list', items: WHAT_TO_DO },
  ];
}

const WHAT_TO_DO = [
  'Measure the sides first: equal diagonals prove nothing where opposite sides differ.',
  'The longer diagonal is too long: a clamp across its two corners, a little at a time, until both agree; then the screws.',
];

/** What goes under each row of feet, or comes off it, where the ground falls. */
export function footBlocks({ feet, display }: Plan): readonly Block[] {
  if (feet.length === 0) return [];
  return [
    { kind: 'heading', text: 'Feet on ground that falls: shims under them, or trimmed instead' },
    {
      kind: 'table',
      table: {
        id: 'feet',
        columns: [
          { title: 'From the high end', align: 'right' },
          { title: 'Feet', align: 'right' },
          { title: 'Shim under each', align: 'right' },
          { title: 'Or cut off each', align: 'right' },
        ],
        rows: feet.map(row => [
          onTheTape(row.fromHighEnd.value, display),
          String(row.feet),
          onTheTape(row.shim.value, display),
          row.mayTrim ? onTheTape(row.trim.value, display) : 'more than half of it',
        ]),
      },
    },
    {
      kind: 'words',
      text: 'Measured over the whole piece and shared evenly: lay the level on before you cut anything off.',
    },
  ];
}
