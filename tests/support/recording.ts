import { readFileSync, writeFileSync } from 'node:fs';

/** Screens of one run, one below the other, each under its caption. */
export type Recording = {
  readonly add: (caption: string, lines: readonly string[]) => void;
  /** All of them, and what they were expected to be. */
  readonly pages: () => { readonly shown: string; readonly expected: string };
};

const RULE = '='.repeat(80);

/**
 * A recording kept in `tests/pages`. RECORD=1 writes it anew, to be read through like a story before it
 * is kept.
 */
export function recording(name: string): Recording {
  const file = new URL(`../pages/${name}.txt`, import.meta.url);
  const pages: string[] = [];
  return {
    add: (caption, lines) => {
      const last = lines.findLastIndex(line => line !== '');
      pages.push([RULE, caption, RULE, ...lines.slice(0, last + 1), ''].join('\n'));
    },
    pages: () => {
      const shown = pages.join('\n');
      if (process.env.RECORD === '1') writeFileSync(file, shown);
      return { shown, expected: readFileSync(file, 'utf8') };
    },
  };
}
