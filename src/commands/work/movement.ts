import { type Across, type Movement, movement, type Piece } from '../../materials/movement.js';
import { figure } from '../../measure/figure-text.js';
import { formatLengthExact } from '../../measure/format-length.js';
import type { Display } from '../../measure/quantities.js';
import type { Answered, Given, WorkOption, WorkResult, WorkRule } from './rule.js';
import { GRAIN_OPTION, grainOf, percentOption, WOOD_OPTION, woodOf } from './wood-options.js';

/** `notchbook work movement`: how much a board grows or shrinks across the grain. */
export const MOVEMENT_RULE: WorkRule = {
  name: 'movement',
  say: 'how much a board grows or shrinks across the grain',
  example: 'notchbook work movement --width 5.5in --wood "white oak" --grain flat --from 12 --to 8',
  options: [
    sizeOption('width', '5.5in'),
    sizeOption('thickness', '3/4in'),
    WOOD_OPTION,
    GRAIN_OPTION,
    percentOption('from', 'moisture percent at which the size was measured', '12'),
    percentOption('to', 'moisture percent that it will come to', '8'),
    {
      name: 'count',
      kind: 'count',
      say: 'how many stand side by side',
      example: '60',
      usual: '1',
      least: 1,
      most: 1000,
    },
  ],
  work,
};

function sizeOption(name: Across, example: string): WorkOption {
  return {
    name,
    kind: 'length',
    say: `${name} of the board; give width, thickness or both`,
    example,
    usual: '',
    least: 1,
    most: 10_000,
  };
}

function work(given: Given): WorkResult {
  const read = woodOf(given);
  if (!read.ok) return { ok: false, problems: [`${read.problem} ${read.hint}`] };
  const wood = read.value;
  const grain = grainOf(given);
  const sizes = (['width', 'thickness'] as const).filter(name => given.has(name));
  if (sizes.length === 0) {
    return { ok: false, problems: ['Give --width, --thickness or both, such as --width 5.5in.'] };
  }
  const figures = sizes.flatMap(across => {
    const piece: Piece = { size: given.number(across), across, wood, grain };
    const moved = movement(piece, given.number('from'), given.number('to'));
    return [...pieceFigures(piece, moved, given.display), ...stackFigures(moved, piece, given)];
  });
  return {
    ok: true,
    figures,
    more: { count: given.number('count'), wood: wood.name, grain },
    notes: [
      'Boards of one pile differ: most are neither wholly flat-sawn nor quarter-sawn.',
      'Lengthwise a board hardly moves.',
    ],
  };
}

function pieceFigures(
  { size, across }: Piece,
  moved: Movement,
  display: Display,
): readonly Answered[] {
  const length = (mm: number) => formatLengthExact(mm, display);
  const sum = `${length(size)} ${moved.change < 0 ? '-' : '+'} ${length(Math.abs(moved.change))}`;
  return [
    {
      name: across,
      say: `${across} then`,
      figure: figure(moved.size, 'mm', sum, moved.source),
    },
    {
      name: changeName(across),
      say: `change of ${across}`,
      figure: figure(
        moved.change,
        'mm',
        `${length(size)} x ${moved.factor}; ${moved.why}`,
        moved.source,
      ),
    },
  ];
}

/** What many pieces in a row come to, as slats on a rod: shared out, every gap takes one change. */
function stackFigures(moved: Movement, { across }: Piece, given: Given): readonly Answered[] {
  const count = given.number('count');
  if (count === 1) return [];
  const one = formatLengthExact(moved.change, given.display);
  return [
    {
      name: across === 'width' ? 'total_change' : 'total_thickness_change',
      say: 'all of them',
      figure: figure(
        moved.change * count,
        'mm',
        `${count} x ${one}; shared out, each gap takes ${one}`,
        moved.source,
      ),
    },
  ];
}

function changeName(across: Across): string {
  return across === 'width' ? 'change' : 'thickness_change';
}
