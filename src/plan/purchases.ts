import { COMPUTED } from '../measure/figure.js';
import { figure } from '../measure/figure-text.js';
import { checkPlan } from '../solve/cutting/check-plan.js';
import { planCutting } from '../solve/cutting/plan-cutting.js';
import { boughtBoards } from './bought-boards.js';
import { buyLines } from './buy-lines.js';
import type { KeptBoards } from './kept-boards.js';
import { asBegun } from './on-kept-boards.js';
import type { CutRow, Purchase } from './plan.js';
import { sectionProblem } from './purchase-problem.js';
import { missingWords, proofWords } from './purchase-words.js';
import type { Setting } from './setting.js';
import { spareFor } from './spare.js';

/** Boards that are there already. */
type There = {
  /** Those of a section, cut by its rows as they are now. */
  readonly bought?: (own: readonly CutRow[]) => Purchase | undefined;
  /** Those that a build began with. */
  readonly kept?: KeptBoards | undefined;
};

/** Boards to buy and to cut, section by section in the order of the cut list. */
export function purchases(
  rows: readonly CutRow[],
  setting: Setting,
  { bought, kept = [] }: There = {},
): readonly Purchase[] {
  const sections = [...new Set(rows.map(row => row.section))];
  return sections.map(section => {
    const own = rows.filter(row => row.section === section);
    const there = bought?.(own);
    if (there !== undefined) return there;
    const began = kept.find(it => it.section === section);
    return asBegun(purchase(own, section, setting), began, { rows: own, setting });
  });
}

function purchase(rows: readonly CutRow[], section: string, setting: Setting): Purchase {
  const asked = sectionProblem(rows, section, setting);
  const plan = planCutting(asked.problem, { first: setting.first });
  const wrong = checkPlan(asked.problem, plan);
  if (wrong.length > 0) throw new Error(`a cutting plan does not add up: ${wrong.join('; ')}`);
  const [first] = rows;
  if (!first) throw new Error('a section without pieces');
  const boards = boughtBoards(asked, plan, rows);
  const spare = spareFor(asked, boards);
  return {
    section,
    width: first.width,
    thickness: first.thickness,
    boards,
    buy: buyLines(asked, boards, setting.display),
    priced: asked.priced,
    cost: figure(
      asked.priced ? plan.cost : 0,
      'cents',
      asked.priced
        ? 'boards to buy at the prices you gave'
        : 'no prices given: least length instead',
      COMPUTED,
    ),
    proof: { kind: plan.proof.kind, words: proofWords(plan, asked) },
    ...(spare === undefined ? {} : { spare }),
    missing: missingWords(plan, rows, setting.display),
    kerf: setting.saw.kerf.value,
    trim: setting.trim,
  };
}
