import type { Step } from '../../../plan/plan.js';
import { bigDigits } from '../../../text/big-digits.js';
import { count } from '../../../text/plural.js';
import { textWidth } from '../../../text/width.js';
import { padEnd, wrap } from '../../../text/wrap.js';
import { type TallySoFar, tallyOf } from '../../../workbook/next-step.js';
import type { Build } from '../../screen.js';
import { BLANK, type Row } from '../../widgets/rows.js';

/** Measures only: a screw's name in large figures would be half large, half small. */
const MEASURE = /^[\d\s/.:'"-]+(?:in|mm)?$/;
/** Less than this beside the figures is no place for words. */
const LEAST_BESIDE = 16;
const GAP = 3;
const LONGEST_BAR = 40;

export type FigureInput = {
  readonly big: Step['big'];
  readonly tally: TallySoFar | undefined;
  readonly columns: number;
  /** Large figures are wanted, where the text is a measure and there is room across. */
  readonly large: boolean;
};

/** The one figure of a step as it is now: where cups are filled, what goes into the next one. */
export function bigNow({ big, cups, ...step }: Step, { progress }: Build): Step['big'] {
  if (cups === undefined) return big;
  const next = cups[tallyOf(step, progress)?.done ?? 0];
  if (next === undefined) return undefined;
  return { text: String(next.count), caption: `${next.what}, for ${next.joint.toLowerCase()}` };
}

/** Can the figure of this step be shown large in so many columns? */
export function isLarge(big: Step['big'], columns: number): boolean {
  if (big === undefined || !MEASURE.test(big.text)) return false;
  return textWidth(bigDigits(big.text)[0] ?? '') <= columns;
}

/** The one figure of a step, what it is, and how far the count is. */
export function figureRows({ big, tally, columns, large }: FigureInput): readonly Row[] {
  if (big === undefined) return tallyRows(tally, columns);
  if (large && isLarge(big, columns)) return largeRows(big, tally, columns);
  const line: readonly Row[] = wrap(`${big.text}: ${big.caption}`, columns).map(strong);
  return [...line, ...tallyRows(tally, columns)];
}

function largeRows(
  big: NonNullable<Step['big']>,
  tally: TallySoFar | undefined,
  columns: number,
): readonly Row[] {
  const digits = bigDigits(big.text);
  const width = textWidth(digits[0] ?? '');
  const room = columns - width - GAP;
  const bar = tallyRows(tally, room);
  const beside = [...wrap(big.caption, room), '', ...bar.map(({ text }) => text)];
  if (room < LEAST_BESIDE || beside.length > digits.length) {
    return [
      ...toldOnce(digits, big.text),
      ...wrap(big.caption, columns).map(strong),
      ...tallyRows(tally, columns),
    ];
  }
  const lines = digits.map((line, at) =>
    `${padEnd(line, width + GAP)}${beside[at] ?? ''}`.trimEnd(),
  );
  const counted = tally === undefined ? '' : `. ${tallyWords(tally)}`;
  return toldOnce(lines, `${big.text}: ${big.caption}${counted}`);
}

/** Figures drawn of blocks are no words: who listens hears once what they are. */
function toldOnce(lines: readonly string[], words: string): readonly Row[] {
  return lines.map((line, at) => ({ ...strong(line), told: at === 0 ? words : '' }));
}

function tallyWords({ done, count: all, of }: TallySoFar): string {
  return `${done} of ${count(all, of)}`;
}

/** `7 of 12 pieces` and a bar of twelve. */
function tallyRows(tally: TallySoFar | undefined, columns: number): readonly Row[] {
  if (tally === undefined) return [];
  const words = tallyWords(tally);
  const bar = `${'█'.repeat(tally.done)}${'░'.repeat(tally.count - tally.done)}`;
  if (tally.count > LONGEST_BAR || tally.count > columns) return [strong(words)];
  if (words.length + 2 + tally.count <= columns) {
    return [{ ...strong(`${words}  ${bar}`), told: words }];
  }
  return [strong(words), { ...strong(bar), told: '' }];
}

function strong(text: string): Row {
  return text === '' ? BLANK : { text, tone: 'strong' };
}
