import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';

/** The two cuts of the typeface that pages are set in. */
export type Typeface = { readonly plain: Uint8Array; readonly bold: Uint8Array };

/**
 * DejaVu Sans Condensed from its package, under the license of Bitstream Vera: free to embed. Throws
 * where the package is not installed.
 */
export function readTypeface(from: string): Typeface {
  const { resolve } = createRequire(from);
  const cut = (name: string) => readFileSync(resolve(`dejavu-fonts-ttf/ttf/${name}.ttf`));
  return { plain: cut('DejaVuSansCondensed'), bold: cut('DejaVuSansCondensed-Bold') };
}
