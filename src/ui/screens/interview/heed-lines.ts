import { textWidth } from '../../../text/width.js';
import { cut, wrap } from '../../../text/wrap.js';

type Room = { readonly width: number; readonly height: number };

/**
 * Warnings in a little room, each with its mark. What to do about one stands at its end, so one is
 * told whole before the next is begun; what has no room is counted: `! and 2 more, in the plan`.
 */
export function heedLines(heeds: readonly string[], { width, height }: Room): readonly string[] {
  const blocks = heeds.map(text => marked(text, width));
  if (blocks.flat().length <= height) return blocks.flat();
  const shown: string[] = [];
  let told = 0;
  for (const block of blocks) {
    if (shown.length + block.length > height - 1) break;
    shown.push(...block);
    told += 1;
  }
  if (told > 0) return [...shown, `! and ${heeds.length - told} more, in the plan`];
  return cutShort(blocks[0] ?? [], { width, height });
}

function marked(text: string, width: number): readonly string[] {
  return wrap(text, width - 2).map((line, i) => `${i === 0 ? '!' : ' '} ${line}`);
}

/** The first rows of a warning that is too long by itself. */
function cutShort(block: readonly string[], { width, height }: Room): readonly string[] {
  const shown = block.slice(0, height);
  const last = shown.at(-1);
  if (last === undefined || block.length <= height) return shown;
  return [...shown.slice(0, -1), cut(`${last} ${(block[height] ?? '').trim()}`, width)];
}

/** Lines joined where two fit into one: rows are what a small window has least of. */
export function onFewLines(lines: readonly string[], width: number): readonly string[] {
  const joined: string[] = [];
  for (const line of lines) {
    const both = `${joined.at(-1) ?? ''}; ${line}`;
    const fits = joined.length > 0 && textWidth(both) <= width;
    if (fits) joined[joined.length - 1] = both;
    else joined.push(line);
  }
  return joined;
}
