import { boardsProofBlocks } from '../../../plan/pages/boards-proof.js';
import type { Plan } from '../../../plan/plan.js';
import type { Block } from '../../../text/page.js';
import { benchOf } from '../../bench-of.js';
import type { Build } from '../../screen.js';
import { whereFrom } from './where-from.js';

const kept = new WeakMap<Plan, readonly Block[]>();

/** Where the figures of a page are from; on the page of boards also why they cannot cost less. */
export function askedBlocks(page: string, build: Build): readonly Block[] {
  const { plan } = build;
  const blocks = whereFrom(page, plan);
  if (page !== 'boards') return blocks;
  const known = kept.get(plan) ?? [...boardsProofBlocks(plan, benchOf(build).setting), ...blocks];
  kept.set(plan, known);
  return known;
}
