import { gapTraps, SEATING } from '../../materials/seating.js';
import { sourceText } from '../../measure/figure-text.js';
import { formatLength, formatLengthExact } from '../../measure/format-length.js';
import { inches } from '../../measure/inch.js';
import type { Display, Mm } from '../../measure/quantities.js';
import { snap } from '../../measure/round.js';
import { sameLength } from '../../measure/tolerance.js';
import type { Compared } from '../../model/spacing-compare.js';
import { driftOver, errorFromStack } from '../../model/spacing-drift.js';
import type { LappedSpacing } from '../../model/spacing-laps.js';
import type { CheckMark } from '../../model/spacing-marks.js';
import { onTheRule } from '../../plan/on-tape.js';

/** "0, 8-1/4, 16-7/16 in": each mark rounded alone. */
export function marksWords(marks: readonly Mm[], display: Display): string {
  const unit = display.system === 'metric' ? 'mm' : 'in';
  const read = marks.map(mark => formatLength(mark, display).replace(` ${unit}`, ''));
  return `${read.join(', ')} ${unit}`;
}

/** What stepping the rounded gap, or a spacer a hair off, does to the last piece. */
export function driftWords(gap: Mm, steps: number, display: Display): readonly string[] {
  if (steps < 1) return [];
  const length = (mm: Mm) => formatLengthExact(mm, display);
  const rounded = snap(gap, display.grid);
  const { worst } = driftOver(steps, rounded - gap);
  const stepped = sameLength(worst, 0)
    ? []
    : [
        `Do not step ${length(rounded)} along: after ${steps} gaps the last piece would be ${length(Math.abs(worst))} ${worst > 0 ? 'too far' : 'short'}.`,
      ];
  const hair = display.system === 'metric' ? 0.5 : inches(1 / 64);
  const said = display.system === 'metric' ? '0.5 mm' : '1/64 in';
  return [
    ...stepped,
    `A spacer ${said} off puts the last piece ${length(driftOver(steps, hair).worst)} off; stack six and measure the stack to find so little.`,
  ];
}

/** So many spacers are laid end to end: an error too small to read on one alone shows on them. */
const STACK = 6;

/** "Each is 1/64 in too long: stepped along, they would put the last piece 3/16 in too far." */
export function stackWords(
  stack: Mm,
  { gap, steps }: { readonly gap: Mm; readonly steps: number },
  display: Display,
): readonly string[] {
  const length = (mm: Mm) => onTheRule(Math.abs(mm), display);
  const error = errorFromStack(stack, gap, STACK);
  if (sameLength(error, 0)) return [`Six spacers measure ${length(stack)}, as they should.`];
  const { worst } = driftOver(steps, error);
  const [long, far] = error > 0 ? ['long', 'far'] : ['short', 'near'];
  return [
    `Six spacers should measure ${length(STACK * gap)}; at ${length(stack)} each is ${length(error)} too ${long}. Stepped along, they would put the last piece ${length(worst)} too ${far}: true them, or hold each piece to its mark.`,
  ];
}

/** The counts beside this one. */
export function besideWords(
  compared: readonly Compared[],
  count: number,
  display: Display,
): readonly string[] {
  const others = compared.filter(it => it.count !== count);
  if (others.length === 0) return [];
  const said = others.map(({ count: n, spacing }) => {
    const { gap, endGap } = spacing;
    const ends = sameLength(endGap, 0) ? '' : `, ends ${formatLengthExact(endGap, display)}`;
    return `${n} pieces: gap ${formatLengthExact(gap, display)}${ends}`;
  });
  return [`Beside it, ${said.join('; ')}.`];
}

/** One reading from the other end, before anything is cut or drilled. */
export function checkWords(check: CheckMark, display: Display): string {
  const length = (mm: Mm) => formatLength(mm, display);
  return `Hook the tape once and mark them all. Then check from the far end: piece ${check.piece} has its mark at ${length(check.fromDatum)} and reads ${length(check.fromFarEnd)} from there.`;
}

/** A warning when the gap is of a size that may hold a finger or a head. */
export function trapWords(gap: Mm, display: Display): readonly string[] {
  const held = gapTraps(gap);
  if (held === undefined) return [];
  const { from, to, source } = held === 'finger' ? SEATING.fingerTrap : SEATING.headTrap;
  const length = (mm: Mm) => formatLengthExact(mm, display);
  return [
    `A gap from ${length(from)} to ${length(to)} may hold ${held === 'finger' ? 'a finger' : 'a child’s head'} (${sourceText(source)}).`,
  ];
}

/** Where the backing of a lapped panel goes, and whether its ends look thin. */
export function lapsWords(laps: LappedSpacing | undefined, display: Display): readonly string[] {
  if (laps === undefined) return [];
  const marks = `Backing, near edges: ${marksWords(laps.backingMarks, display)}`;
  return laps.narrowEnds ? [marks, 'The ends show less than half a board.'] : [marks];
}
