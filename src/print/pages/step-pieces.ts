import { formatMinutes } from '../../measure/duration.js';
import type { Mm } from '../../measure/quantities.js';
import type { Step } from '../../plan/plan.js';
import { count } from '../../text/plural.js';
import { tallyOf } from '../../workbook/next-step.js';
import { line, words } from '../sheet/mark.js';
import { beside, bound, lower, type Piece, piece } from '../sheet/piece.js';
import { factPieces } from '../sheet/set-blocks.js';
import { itemPieces, type Measure, TICK_BOX, tickBox, wordPieces } from '../sheet/set-words.js';
import { ascent, leading, SIZE } from '../sheet/type.js';
import type { Pack } from './pack.js';
import { checkIsMade, stepIsDone } from './so-far.js';
import { picturePieces, showsWhole, wherePiece } from './step-pictures.js';

const WHO = { lead: 'lead', helper: 'helper', both: 'together' } as const;
const BIG = 24;

/** Heights of pictures, the first that lets a step stay on one page. */
const HEIGHTS: readonly Mm[] = [66, 52, 40];

/** A step as it is built from, kept on one page where it can be. */
export function stepPieces(step: Step, number: number, pack: Pack): readonly Piece[] {
  const rest = restPieces(step, number, pack);
  const set = HEIGHTS.map(high => () => [
    ...headPieces(step, number, pack),
    ...picturePieces(step, number, pack, high),
    ...rest,
  ]);
  const whole = set.find(make => heightOf(make()) <= pack.frame.height);
  return whole === undefined ? (set.at(-1)?.() ?? []) : [bound(whole())];
}

function heightOf(pieces: readonly Piece[]): Mm {
  return pieces.reduce((sum, one) => sum + one.above + one.height, 0);
}

/** What to do, the number to hit, what to look at, what to mind. */
function restPieces(step: Step, number: number, pack: Pack): readonly Piece[] {
  const { measure } = pack;
  return [
    ...sayPieces(step, pack),
    ...spacedOut(factPieces(factsOf(step, pack), measure)),
    ...step.look.flatMap((text, at) =>
      itemPieces(text, checkIsMade(step, at, pack) ? 'ticked' : 'box', measure),
    ),
    ...carePieces(step, number, pack),
    ...(step.why === '' ? [] : wordPieces(`Why: ${step.why}`, measure, { size: 10, above: 1.5 })),
    ...notePieces(step, pack),
  ];
}

/** Where a step's boards stand nowhere yet, a small picture beside the words shows where they will be. */
function sayPieces(step: Step, pack: Pack): readonly Piece[] {
  const said = (measure: Measure) => [
    ...bigPieces(step, measure),
    ...step.say.flatMap(text => itemPieces(text, 'dash', measure)),
  ];
  if (!showsWhole(step)) return said(pack.measure);
  const { width, rule } = pack.measure;
  const left = width - WHERE.width - 4;
  const picture = wherePiece(step, pack, WHERE);
  return [{ ...beside(bound(said({ width: left, rule })), picture, left + 4), above: 2 }];
}

const WHERE = { width: 62, height: 40 };

function spacedOut(pieces: readonly Piece[]): readonly Piece[] {
  return pieces.map((one, at) => (at === 0 ? lower(one, 2) : one));
}

function headPieces(step: Step, number: number, pack: Pack): readonly Piece[] {
  const { measure } = pack;
  const done = stepIsDone(step, pack);
  const indent = TICK_BOX + 3.5;
  const about = `${WHO[step.who]}, about ${formatMinutes(step.minutes.value)}${done ? '; done' : ''}`;
  const inner = { ...measure, width: measure.width - indent };
  const title = bound([
    ...wordPieces(`${number}. ${step.title}`, inner, { size: 15, bold: true }),
    ...wordPieces(about, inner, { size: 10 }),
  ]);
  const tick = piece(TICK_BOX, tickBox({ x: 0.3, y: ascent(15) - TICK_BOX + 0.2 }, done));
  const rule = piece(0.5, [line({ x: 0, y: 0 }, { x: measure.width, y: 0 }, 0.3)]);
  return [
    { ...rule, above: 6, staysWithNext: true },
    { ...beside(tick, title, indent), above: 2, staysWithNext: true },
  ];
}

function bigPieces({ big }: Step, { rule, width }: Measure): readonly Piece[] {
  if (big === undefined) return [];
  const wide = rule(big.text, BIG, true);
  const base = ascent(BIG);
  const number = words({ x: 0, y: base }, big.text, BIG, { bold: true });
  if (wide + 4 + rule(big.caption, SIZE.words, false) > width) {
    const caption = bound(wordPieces(big.caption, { rule, width }));
    return [piece(leading(BIG), [number], { above: 1 }), caption];
  }
  const caption = words({ x: wide + 4, y: base }, big.caption, SIZE.words);
  return [piece(leading(BIG), [number, caption], { above: 1 })];
}

function factsOf(step: Step, { build }: Pack) {
  const tally = build === undefined ? undefined : tallyOf(step, build.progress);
  return [
    ...step.settings,
    ...(step.tally === undefined
      ? []
      : [
          {
            name: 'Count',
            text: `${count(step.tally.count, step.tally.of)}${tally === undefined ? '' : `, ${tally.done} done`}`,
          },
        ]),
    ...step.timers.map(({ name, minutes }) => ({
      name: 'Wait',
      text: `${formatMinutes(minutes)}: ${name.toLowerCase()}`,
    })),
  ];
}

/**
 * Each caution by its first line where the step before did not name it, else by its name. All of it
 * stands on the page of tools and cautions.
 */
function carePieces(step: Step, number: number, { plan, measure }: Pack): readonly Piece[] {
  const before = new Set(plan.steps[number - 2]?.care ?? []);
  const named = plan.cautions.filter(({ id }) => step.care.includes(id));
  const fresh = named.filter(({ id }) => !before.has(id));
  const known = named.filter(({ id }) => before.has(id)).map(({ title }) => title);
  const lines = [
    ...fresh.map(({ title, lines: [first = ''] }) => `${title}: ${first}`),
    ...(known.length > 0 ? [`As before: ${known.join('; ')}.`] : []),
  ];
  return lines.flatMap((text, at) =>
    itemPieces(at === 0 ? `Mind! ${text}` : text, 'dash', measure, {
      size: 10,
      above: at === 0 ? 2 : 0.6,
    }),
  );
}

function notePieces(step: Step, { build, measure }: Pack): readonly Piece[] {
  const notes = build?.progress.notes.filter(note => note.step === step.id) ?? [];
  return notes.flatMap(({ text }) =>
    wordPieces(`Note: ${text}`, measure, { bold: true, above: 1.5 }),
  );
}
