/**
 * A publication that numbers are taken from. "Seen in" at the end of a citation names the copy that
 * was read where the publication itself was not at hand: a copy can carry misprints of its own.
 */
export type Publication = {
  /** Short enough to stand beside a number. */
  readonly name: string;
  readonly citation: string;
};
