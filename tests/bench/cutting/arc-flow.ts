import { normalize } from '../../../src/solve/cutting/normalize.js';
import type { CuttingProblem } from '../../../src/solve/cutting/problem.js';

/**
 * The purchase as flow along the boards (J.M. Valério de Carvalho, Annals of Operations Research 86, 1999), in the LP
 * text format: every board is a path from 0 to its room over pieces, longest first, and then waste.
 */
export function arcFlowText(problem: CuttingProblem): string {
  const { lengths, demands, kinds } = normalize(problem);
  const widest = Math.max(...kinds.map(({ room }) => room));
  const into = new Map<number, string[]>();
  const cut = lengths.map((): string[] => []);
  const balance = (node: number, term: string): void => {
    into.set(node, [...(into.get(node) ?? []), term]);
  };
  // Where a path may stand after pieces of the lengths so far, longest first (only so few of each as are wanted).
  let nodes = new Set([0]);
  for (const [i, length] of lengths.entries()) {
    const after = new Set(nodes);
    const arcs = new Set<number>();
    for (const node of nodes) {
      for (
        let n = 1, at = node;
        n <= (demands[i] ?? 0) && at + length <= widest;
        n++, at += length
      ) {
        arcs.add(at);
        after.add(at + length);
      }
    }
    for (const at of arcs) {
      const name = `x${at}_${i}`;
      balance(at, `- ${name}`);
      balance(at + length, `+ ${name}`);
      cut[i]?.push(name);
    }
    nodes = after;
  }
  const stops = [...new Set([...nodes, ...kinds.map(({ room }) => room)])].sort((a, b) => a - b);
  const waste = stops.slice(1).map((stop, at) => {
    const name = `w${stop}`;
    balance(stops[at] ?? 0, `- ${name}`);
    balance(stop, `+ ${name}`);
    return name;
  });
  for (const [k, { room }] of kinds.entries()) {
    balance(0, `+ z${k}`);
    balance(room, `- z${k}`);
  }
  const boards = kinds.map((_, k) => `z${k}`);
  const limits = kinds.map(
    ({ available }, k) => `z${k} <= ${available === Infinity ? 1e4 : available}`,
  );
  const rows = [...into].map(([node, terms]) => `n${node}: ${terms.join('\n ')} = 0`);
  const wanted = cut.map(
    (names, i) => `d${i}: ${names.map(name => `+ ${name}`).join('\n ')} >= ${demands[i]}`,
  );
  const cost = kinds.map((kind, k) => `+ ${kind.cost} z${k}`).join(' ');
  return `Minimize\n obj: ${cost}\nSubject To\n${[...rows, ...wanted].join('\n')}\nBounds\n ${limits.join('\n ')}\nGeneral\n ${[...boards, ...waste, ...cut.flat()].join('\n ')}\nEnd\n`;
}
