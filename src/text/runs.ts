/** Fewer in a row are told one by one. */
const SHORTEST_RUN = 3;

/** 3, 4, 5, 6, 8, 9 as `3 to 6`, `8`, `9`. */
export function runsOf(numbers: readonly number[]): readonly string[] {
  const found: [number, ...number[]][] = [];
  for (const number of numbers) {
    const run = found.at(-1);
    if (run !== undefined && number === (run.at(-1) ?? 0) + 1) run.push(number);
    else found.push([number]);
  }
  return found.flatMap(run =>
    run.length < SHORTEST_RUN ? run.map(String) : [`${run[0]} to ${run.at(-1)}`],
  );
}
