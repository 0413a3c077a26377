/** Whole numbers below a limit, from a fixed start (D.H. Lehmer's generator with the factor 48271). */
export function fixedNumbers(start: number): (below: number) => number {
  let state = start;
  return below => {
    state = (state * 48_271) % 2_147_483_647;
    return state % below;
  };
}
