/**
 * Numbers to reckon with for a moment. Making such an array takes longer than most sums on it, so one is kept from
 * call to call; nobody may keep what it gives beyond the one sum.
 */
export class Slate {
  private kept = new Float64Array(64);

  /** So many places, or more, all 0. */
  clean(places: number): Float64Array {
    return this.asLeft(places).fill(0, 0, places);
  }

  /** So many places, or more, with what the last sum left in them. */
  asLeft(places: number): Float64Array {
    if (this.kept.length < places) this.kept = new Float64Array(2 * places);
    return this.kept;
  }
}
