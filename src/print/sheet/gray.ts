import type { Gray } from './mark.js';

/** Gray as SVG and PDF both write it. */
export function grayText(gray: Gray): string {
  const part = Math.round(gray * 255)
    .toString(16)
    .padStart(2, '0');
  return `#${part}${part}${part}`;
}
