import type { Mm } from '../../measure/quantities.js';
import { lessThan } from '../../measure/tolerance.js';
import type { Span } from '../sight.js';

/** A length drawn shorter, with breaks where nothing is to be seen. */
export type Squeezed = {
  readonly length: Mm;
  /** From a place on the board to the place on the paper. */
  readonly toPaper: (at: Mm) => Mm;
  /** Stretches on the paper that stand for what is left out. */
  readonly breaks: readonly Span[];
};

/**
 * Keeps some stretches of a board true and draws what lies between them as a break of one length, where
 * that saves anything.
 */
export function squeeze(whole: Mm, keep: readonly Span[], gap: Mm): Squeezed {
  const kept = united(keep, whole);
  const cuts: { from: Mm; to: Mm }[] = [];
  let last = 0;
  for (const { from, to } of [...kept, { from: whole, to: whole }]) {
    if (lessThan(last + 2 * gap, from)) cuts.push({ from: last, to: from });
    last = to;
  }
  const toPaper = (at: Mm) =>
    cuts.reduce((place, { from, to }) => {
      if (at <= from) return place;
      const inside = Math.min(at, to) - from;
      return place - inside + (inside / (to - from)) * gap;
    }, at);
  return {
    length: toPaper(whole),
    toPaper,
    breaks: cuts.map(({ from, to }) => ({ from: toPaper(from), to: toPaper(to) })),
  };
}

function united(spans: readonly Span[], whole: Mm): readonly Span[] {
  const found: { from: Mm; to: Mm }[] = [];
  for (const span of [...spans].sort((a, b) => a.from - b.from)) {
    const [from, to] = [Math.max(0, span.from), Math.min(whole, span.to)];
    const last = found.at(-1);
    if (last !== undefined && from <= last.to) last.to = Math.max(last.to, to);
    else found.push({ from, to });
  }
  return found;
}
