import { formatBoardLength, formatLengthExact } from '../measure/format-length.js';
import { formatMoney } from '../measure/money.js';
import type { Display, Mm } from '../measure/quantities.js';
import type { CuttingPlan, CuttingProblem } from '../solve/cutting/problem.js';
import {
  type BoardProof,
  type PriceProof,
  priceProof,
} from '../solve/cutting-proof/price-proof.js';
import { wrap } from '../text/wrap.js';

const COLUMNS = 78;

/** What was asked of the solver, and what its ids stand for. */
export type ProofAsked = {
  readonly problem: CuttingProblem;
  readonly priced: boolean;
  readonly piece: (id: string) => { readonly name: string; readonly length: Mm } | undefined;
  readonly board: (id: string) => { readonly length: Mm; readonly onHand: boolean } | undefined;
};

/** A sentence, or a row of the sum. */
export type ProofPart = { readonly kind: 'words' | 'row'; readonly text: string };

/** The sum that shows why nothing can cost less, written so that a person can do it again by hand. */
export function proofParts(
  asked: ProofAsked,
  plan: CuttingPlan,
  display: Display,
): readonly ProofPart[] {
  const words = (text: string): ProofPart => ({ kind: 'words', text });
  const row = (text: string): ProofPart => ({ kind: 'row', text });
  const proof = priceProof(asked.problem, plan);
  if (proof === undefined)
    return [words('There is no short sum for this one: the search alone decides.')];
  const ground = { asked, display, write: writer(proof, asked) };
  return [
    words(
      `Why not ${asked.priced ? 'cheaper' : 'less'}. Count every piece at what it is worth${asked.priced ? '' : ', in mm of board'}:`,
    ),
    ...proof.worths.map(it => row(worthLine(it, ground))),
    words('No board holds pieces worth more than it costs. The most that each can hold:'),
    ...proof.boards.map(board => row(boardLine(board, ground))),
    words(closing(proof, plan, ground)),
  ];
}

/** The same as lines for a terminal. */
export function proofLines(
  asked: ProofAsked,
  plan: CuttingPlan,
  display: Display,
): readonly string[] {
  const lines = proofParts(asked, plan, display).flatMap(({ kind, text }) =>
    kind === 'words' ? wrap(text, COLUMNS) : wrap(text, COLUMNS - 2).map(line => `  ${line}`),
  );
  return lines.length > 1 ? ['', ...lines] : lines;
}

type Ground = {
  readonly asked: ProofAsked;
  readonly display: Display;
  /** Parts of a cent as money, or as length where boards have no price. */
  readonly write: (parts: number) => string;
};

/** Money with as many digits as the proof needs; without prices a cent stands for 1/100 mm. */
function writer({ parts }: PriceProof, asked: ProofAsked): Ground['write'] {
  const digits = 2 + Math.round(Math.log10(parts));
  return amount => {
    const text = (amount / parts / 100).toFixed(digits);
    return asked.priced ? text : `${text} mm`;
  };
}

function worthLine(
  { piece, count, worth }: PriceProof['worths'][number],
  { asked, display, write }: Ground,
): string {
  const wanted = asked.piece(piece);
  const name = `${wanted?.name ?? piece} ${formatLengthExact(wanted?.length ?? 0, display)}`;
  return `${count} x ${name} at ${write(worth)} = ${write(count * worth)}`;
}

function boardLine({ stock, filling, worth, rent }: BoardProof, ground: Ground): string {
  const { asked, display, write } = ground;
  const means = asked.board(stock.id);
  if (means === undefined) throw new Error(`no board ${stock.id}`);
  const pieces = filling.map(
    ({ piece, times }) => `${times} x ${asked.piece(piece)?.name ?? piece}`,
  );
  const what = `${formatBoardLength(means.length, display)}${means.onHand ? ' on hand' : ''}`;
  const holds = pieces.length === 0 ? 'nothing' : `${pieces.join(' + ')} = ${write(worth)}`;
  const cost = formatPrice(stock.cost, asked);
  const over = rent > 0 ? `; ${write(rent)} over, and there are only ${stock.available}` : '';
  return `${what}: ${holds}, costs ${cost}${over}`;
}

function formatPrice(cents: number, { priced }: ProofAsked): string {
  return priced ? formatMoney(cents) : `${formatMoney(cents)} mm`;
}

function closing(
  { worths, boards, bound, parts }: PriceProof,
  plan: CuttingPlan,
  { asked, write }: Ground,
): string {
  const sum = worths.reduce((total, { count, worth }) => total + count * worth, 0);
  const rents = boards
    .filter(({ rent }) => rent > 0)
    .map(({ stock, rent }) => ` - ${stock.available} x ${write(rent)}`);
  const least = Math.ceil(bound / parts);
  const verb = asked.priced ? 'cost' : 'take';
  const first = `So all pieces together ${verb} at least ${write(sum)}${rents.join('')}${rents.length > 0 ? ` = ${write(bound)}` : ''}.`;
  const cost = formatPrice(plan.cost, asked);
  if (least >= plan.cost) return `${first} This plan ${verb}s ${cost}.`;
  const rest =
    plan.proof.kind === 'none'
      ? `Between that and ${cost} not everything was searched.`
      : plan.proof.kind === 'search'
        ? `Between that and ${cost} every combination was ruled out, ${plan.proof.cases} cases; that part cannot be done by hand.`
        : `No choice of boards adds up to a sum from there to below ${cost}.`;
  return `${first} ${rest}`;
}
