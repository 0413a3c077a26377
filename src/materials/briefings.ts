import { CAREFUL_BRIEFINGS, QUIET_BRIEFINGS } from './briefings-by-hand.js';
import { POWERED_BRIEFINGS } from './briefings-powered.js';
import type { CautionId } from './cautions.js';

/** A question that the lead asks back, and what a good answer has in it. */
export type AskedBack = { readonly ask: string; readonly listenFor: string };

/**
 * What a helper has to know before a tool is first used. What is read aloud is the tool's plain
 * description and its own caution, whose source holds for the answers too.
 */
export type Briefing = {
  readonly tool: string;
  /** The caution that is about this tool; none for tools that hardly hurt. */
  readonly caution?: CautionId;
  /** One sentence for somebody who was briefed before; the helper can say it. */
  readonly inShort: string;
  readonly asked: readonly [AskedBack, ...AskedBack[]];
};

export const BRIEFINGS: readonly Briefing[] = [
  ...POWERED_BRIEFINGS,
  ...CAREFUL_BRIEFINGS,
  ...QUIET_BRIEFINGS,
];

/** What to say before this tool is first used; none for a tool that nobody has to be told about. */
export function briefingOf(tool: string): Briefing | undefined {
  return BRIEFINGS.find(briefing => briefing.tool === tool);
}
