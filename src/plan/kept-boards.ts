import type { BoughtBoard, Purchase } from './plan.js';

/** The boards that a build began with, in the order of the numbers that are written on them. */
export type KeptSection = {
  readonly section: string;
  /** Section of the boards that these were ripped out of, where they were. */
  readonly from?: string | undefined;
  readonly boards: readonly Pick<BoughtBoard, 'length' | 'onHand' | 'cuts'>[];
};

/** What a build keeps of its boards, so that a later program that plans them otherwise renumbers no wood. */
export type KeptBoards = readonly KeptSection[];

/** What is to be kept of the boards of a plan in which nothing is measured yet. */
export function keptBoards(purchases: readonly Purchase[]): KeptBoards {
  return purchases.map(({ section, ripped, boards }) => ({
    section,
    ...(ripped === undefined ? {} : { from: ripped.from }),
    boards: boards.map(({ length, onHand, cuts }) => ({
      length,
      onHand,
      cuts: cuts.map(cut => ({ mark: cut.mark, length: cut.length })),
    })),
  }));
}
