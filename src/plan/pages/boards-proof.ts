import { planCutting } from '../../solve/cutting/plan-cutting.js';
import type { Block } from '../../text/page.js';
import type { Plan, Purchase } from '../plan.js';
import { type ProofPart, proofParts } from '../proof-lines.js';
import { sectionProblem } from '../purchase-problem.js';
import type { Setting } from '../setting.js';

/**
 * Why the boards of each section cannot cost less, as sums to do again by hand. Worked out when somebody asks: the
 * boards are planned again for it. Sections that are ripped, or cut from boards that lie there already, have none.
 */
export function boardsProofBlocks(plan: Plan, setting: Setting): readonly Block[] {
  return plan.purchases.flatMap(purchase => {
    const parts = sectionParts(purchase, plan, setting);
    if (parts.length === 0) return [];
    return [
      { kind: 'heading' as const, text: `${purchase.section}: the sum that proves it` },
      ...asBlocks(parts),
    ];
  });
}

/** Sentences as they are, the rows between two of them as one list. */
function asBlocks(parts: readonly ProofPart[]): readonly Block[] {
  const blocks: Block[] = [];
  for (const { kind, text } of parts) {
    const last = blocks.at(-1);
    if (kind === 'words') blocks.push({ kind, text });
    else if (last?.kind === 'list')
      blocks.splice(-1, 1, { kind: 'list', items: [...last.items, text] });
    else blocks.push({ kind: 'list', items: [text] });
  }
  return blocks;
}

function sectionParts(
  { section, ripped, cost, priced, missing }: Purchase,
  { cutList, display }: Plan,
  setting: Setting,
): readonly ProofPart[] {
  const rows = cutList.filter(row => row.section === section);
  if (ripped !== undefined || missing.length > 0 || rows.length === 0) return [];
  const asked = sectionProblem(rows, section, setting);
  const cutting = planCutting(asked.problem, { first: setting.first });
  if (priced && cutting.cost !== cost.value) return [];
  const lengths = new Map(rows.map(row => [row.mark, row.length.value]));
  const ground = {
    problem: asked.problem,
    priced,
    piece: (id: string) => ({ name: id, length: lengths.get(id) ?? 0 }),
    board: (id: string) => asked.stock.get(id),
  };
  return proofParts(ground, cutting, display);
}
