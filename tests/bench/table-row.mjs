/** A row of a table of figures, printed as soon as it is known; `reached` is undefined where nothing is wanted. */
export function tableRow(what, wanted, reached, isReached) {
  const verdict = isReached ? 'reached' : 'MISSED';
  console.log(`${what.padEnd(50)} ${wanted.padEnd(14)} ${reached.padEnd(26)} ${verdict}`);
  return { what, wanted, reached, isReached };
}
