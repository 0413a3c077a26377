import { inches } from '../../measure/inch.js';
import type { Mm } from '../../measure/quantities.js';

export type PaperName = 'letter' | 'a4';

export type Paper = { readonly name: PaperName; readonly width: Mm; readonly height: Mm };

/** ANSI/ASME Y14.1 size A and ISO 216 A4, upright. */
export const PAPERS: Readonly<Record<PaperName, Paper>> = {
  letter: { name: 'letter', width: inches(8.5), height: inches(11) },
  a4: { name: 'a4', width: 210, height: 297 },
};

/**
 * White left around: room for a punch at the left, and everywhere more than the 1/4 in that home
 * printers can't reach (common practice).
 */
export const MARGIN = { left: 18, right: 12, top: 13, bottom: 17 } as const;

/** What may be written on. */
export type Frame = { readonly width: Mm; readonly height: Mm };

export function frameOf({ width, height }: Paper): Frame {
  return {
    width: width - MARGIN.left - MARGIN.right,
    height: height - MARGIN.top - MARGIN.bottom,
  };
}
