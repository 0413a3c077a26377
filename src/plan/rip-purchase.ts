import { sectionNamed } from '../materials/section.js';
import { ANSWERED, COMMON_PRACTICE, COMPUTED } from '../measure/figure.js';
import { figure } from '../measure/figure-text.js';
import { formatBoardLength } from '../measure/format-length.js';
import { formatMoney } from '../measure/money.js';
import type { Mm } from '../measure/quantities.js';
import { boughtBoards } from './bought-boards.js';
import type { BuyLine, CutRow, Purchase } from './plan.js';
import { type SectionProblem, sameSection, sectionProblem } from './purchase-problem.js';
import { ripProofWords, ripWords } from './rip-words.js';
import { type RippedBoards, rippedBoards } from './ripped-boards.js';
import { type RipCut, type RipWay, ripCutWith, ripWay } from './ripping.js';
import type { Setting } from './setting.js';

/**
 * The strips of a section ripped out of wider boards, where both have a price and that costs less; else the
 * purchase as it was. Six strips that would cost 14.88 as 1x2 come out of three 1x4 for 14.04.
 */
export function cheaperRipped(
  purchase: Purchase,
  rows: readonly CutRow[],
  setting: Setting,
): Purchase {
  if (!purchase.priced || purchase.missing.length > 0 || purchase.cost.value === 0) return purchase;
  return sourcesOf(purchase, setting).reduce(
    (best, source) => rippedFrom(source, { best, rows, setting }) ?? best,
    purchase,
  );
}

type RipSource = { readonly section: string; readonly width: Mm; readonly way: RipWay };

/** Wider sections with a price for every length that these strips come out of. */
function sourcesOf(purchase: Purchase, { offers, saw }: Setting): readonly RipSource[] {
  const strip = { thickness: purchase.thickness.value, width: purchase.width.value };
  const own = sectionNamed(purchase.section)?.name;
  const names = [...new Set(offers.map(({ section }) => sectionNamed(section)?.name))];
  return names.flatMap(name => {
    const board = name === undefined || name === own ? undefined : sectionNamed(name);
    if (board === undefined) return [];
    const sold = offers.filter(offer => sameSection(offer.section, board.name));
    if (sold.some(({ cents }) => cents === undefined)) return [];
    const way = ripWay(strip, board, ripCutWith(saw));
    return way === undefined ? [] : [{ section: board.name, width: board.width, way }];
  });
}

type Compared = {
  readonly best: Purchase;
  readonly rows: readonly CutRow[];
  readonly setting: Setting;
};

function rippedFrom(
  { section, width, way }: RipSource,
  { best, rows, setting }: Compared,
): Purchase | undefined {
  const asked = stripsAsked(rows, section, { strips: best.section, setting });
  const ripped = rippedBoards(asked.problem, way.strips, best.cost.value);
  if (ripped === undefined) return undefined;
  const bought = best.ripped?.bought ?? best.cost;
  const { display } = setting;
  const cut = ripCutWith(setting.saw);
  const words = {
    section: best.section,
    from: section,
    way,
    cut,
    bought,
    cost: ripped.cost,
    display,
  };
  const buy = buyOf(asked, ripped, setting);
  // A spare strip comes out of the boards that are ripped.
  const { spare: _, ...rest } = best;
  return {
    ...rest,
    boards: boughtBoards({ ...asked, problem: ripped.problem }, ripped.plan, rows),
    buy,
    cost: figure(ripped.cost, 'cents', `${section} to rip at the prices you gave`, COMPUTED),
    proof: {
      kind: ripped.cost <= ripped.lowerBound ? 'bound' : 'none',
      words: ripProofWords(ripped.cost, ripped.lowerBound),
    },
    ripped: {
      from: section,
      strips: way.strips,
      turned: way.turned,
      bought,
      words: ripWords(words, buy),
      ...ripFigures(width, way, cut),
    },
  };
}

/** How the fence is set, first for the edge and then for the strips. */
function ripFigures(width: Mm, { fence }: RipWay, { kerf, edge }: RipCut) {
  return {
    fence: figure(fence, 'mm', 'the side of the strip that the saw makes', COMPUTED),
    edgeFence: figure(
      width - edge - kerf,
      'mm',
      'the board less what comes off and the blade',
      COMPUTED,
    ),
    edge: figure(edge, 'mm', 'rounded edges of store boards', COMMON_PRACTICE),
    kerf: figure(kerf, 'mm', 'the blade that rips', ANSWERED),
  };
}

/** The lengths that the wider section is sold in, as if they were strips, and strips on hand. */
function stripsAsked(
  rows: readonly CutRow[],
  from: string,
  { strips, setting }: { readonly strips: string; readonly setting: Setting },
): SectionProblem {
  const offers = setting.offers
    .filter(offer => sameSection(offer.section, from))
    .map(offer => ({ ...offer, section: strips }));
  return sectionProblem(rows, strips, { ...setting, offers });
}

/** Lines for the store in boards of the wider section, longest first. */
function buyOf(
  asked: SectionProblem,
  { boards }: RippedBoards,
  { display }: Setting,
): readonly BuyLine[] {
  const lines = [...boards].flatMap(([id, count]) => {
    const length = asked.stock.get(id)?.length;
    const cents = asked.problem.stock.find(stock => stock.id === id)?.cost;
    if (length === undefined || cents === undefined) throw new Error(`no board ${id}`);
    const each = `${formatBoardLength(length, display)} at ${formatMoney(cents)}`;
    const line = {
      length: figure(length, 'mm', 'a length the store sells', ANSWERED),
      count,
      each: figure(cents, 'cents', each, ANSWERED),
    };
    return count > 0 ? [line] : [];
  });
  return lines.sort((a, b) => b.length.value - a.length.value);
}
