/** A prime one below a power of two: what is over that power can be carried over in place of dividing. */
const POWER = 2_147_483_648;
const MODULUS = POWER - 1;

/** Whole numbers below a limit, from a fixed start (D.H. Lehmer's generator with the factor 48271). */
export function fixedNumbers(start: number): (below: number) => number {
  let state = start;
  return below => {
    const product = state * 48_271;
    const over = Math.floor(product / POWER);
    const sum = product - over * POWER + over;
    state = sum >= MODULUS ? sum - MODULUS : sum;
    return state % below;
  };
}
