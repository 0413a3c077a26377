import type { Source } from '../measure/figure.js';
import { formatNumber } from '../measure/format-number.js';
import type { Mm } from '../measure/quantities.js';
import {
  byCoefficient,
  byFraming,
  byTotalShrinkage,
  type Change,
  COEFFICIENT_LIMITS,
  COEFFICIENT_SOURCE,
  FRAMING,
  TOTAL_SHRINKAGE_SOURCE,
} from './movement-forms.js';
import { saturationOf } from './saturation.js';
import type { Sourced } from './sourced.js';
import type { Species } from './species.js';
import { weaker } from './weaker-source.js';

export const GRAINS = ['flat', 'quarter', 'unknown'] as const;
/**
 * How the growth rings lie: along the width (flat-sawn) or square to it (quarter-sawn). Unknown counts
 * as whichever moves more, so that a gap set for it suits every board of the pile.
 */
export type Grain = (typeof GRAINS)[number];
export type Across = 'width' | 'thickness';

/** A board of some size across the grain. */
export type Piece = {
  readonly size: Mm;
  readonly across: Across;
  readonly wood: Species;
  readonly grain: Grain;
};

export type Form = 'coefficient' | 'total-shrinkage' | 'framing';

export type Movement = {
  readonly form: Form;
  /** Positive when the board grows. */
  readonly change: Mm;
  /** The size at the moisture afterwards. */
  readonly size: Mm;
  /** What the size is multiplied by, with the numbers put in. */
  readonly factor: string;
  /** Why this form and these numbers. */
  readonly why: string;
  readonly source: Source;
};

/**
 * What a board does on the way from one moisture percent to another; above saturation nothing moves.
 * @example movement(whiteOakFlat, 12, 8).change // 5-1/2 in: -2.04 mm
 */
export function movement(piece: Piece, from: number, to: number): Movement {
  return movementBy(formFor(piece, from, [to]), piece, { from, to });
}

/**
 * The form that holds for all these moistures: framing lumber of unknown grain that dries from 28 % or
 * more to within 8 to 19 %; the coefficients where all lie within 6 to 14 %; otherwise total shrinkage.
 * One form for a whole year keeps a wetter board from coming out narrower than a drier one.
 */
export function formFor(piece: Piece, from: number, others: readonly number[]): Form {
  const framing = piece.grain === 'unknown' && isFraming(piece.wood) && from >= FRAMING.wetFrom;
  if (framing && others.every(within(FRAMING))) return 'framing';
  return [from, ...others].every(within(COEFFICIENT_LIMITS)) ? 'coefficient' : 'total-shrinkage';
}

/** What a board does by one form, which formFor gives. */
export function movementBy(
  form: Form,
  piece: Piece,
  ask: { readonly from: number; readonly to: number },
): Movement {
  const { value: saturation } = saturationOf(piece.wood);
  const at = { from: Math.min(ask.from, saturation), to: Math.min(ask.to, saturation) };
  const [done, why, source] = WORKED[form](piece, at);
  const wet =
    form !== 'framing' && (at.from < ask.from || at.to < ask.to)
      ? `; wetter than ${saturation} % it is no bigger`
      : '';
  return { form, ...done, size: piece.size + done.change, why: `${why}${wet}`, source };
}

type Worker = (
  piece: Piece,
  at: { readonly from: number; readonly to: number },
) => readonly [Change, why: string, Source];

const WORKED: Readonly<Record<Form, Worker>> = {
  coefficient: (piece, at) => {
    const perPoint = worse(piece, 'change');
    return [
      byCoefficient(piece.size, perPoint.value, at),
      `${grainWords(piece)}: coefficient per 1 %, as all lies within 6 to 14 %`,
      weaker(perPoint.source, COEFFICIENT_SOURCE),
    ];
  },
  'total-shrinkage': (piece, at) => {
    const shrinks = worse(piece, 'shrink');
    const saturation = saturationOf(piece.wood);
    return [
      byTotalShrinkage(piece.size, { percent: shrinks.value, saturation: saturation.value }, at),
      `${grainWords(piece)}: ${formatNumber(shrinks.value, 1)} % shrinkage from wet to oven-dry, as not all lies within 6 to 14 %`,
      weaker(shrinks.source, TOTAL_SHRINKAGE_SOURCE),
    ];
  },
  framing: (piece, at) => [
    byFraming(piece.size, piece.across, at.to),
    'wet framing lumber of mixed grain, which dries to between 8 and 19 %',
    FRAMING.source,
  ],
};

/** Cedar and redwood saturate sooner than the lumber that the framing form was measured on. */
function isFraming(wood: Species): boolean {
  return wood.kind === 'softwood' && saturationOf(wood).value >= FRAMING.wetFrom;
}

function within({ least, most }: { least: number; most: number }): (moisture: number) => boolean {
  return moisture => moisture >= least && moisture <= most;
}

/** Along the rings a board moves about twice as much as across them. */
function worse({ wood, grain, across }: Piece, what: 'change' | 'shrink'): Sourced<number> {
  const [along, square] =
    what === 'change'
      ? [wood.changeTangential, wood.changeRadial]
      : [wood.shrinkTangential, wood.shrinkRadial];
  if (grain === 'unknown') return along.value >= square.value ? along : square;
  return (grain === 'flat') === (across === 'width') ? along : square;
}

function grainWords({ wood, grain, across }: Piece): string {
  const named = { flat: 'flat-sawn', quarter: 'quarter-sawn', unknown: 'of unknown grain' }[grain];
  const rest = grain === 'unknown' ? ', so whichever moves more' : '';
  return `${across} of ${wood.name}, ${named}${rest}`;
}
