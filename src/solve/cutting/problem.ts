/**
 * The purchase problem for one section of board: which boards to take, and which pieces to cut from each.
 * All lengths are whole units of one grid (the caller picks it); all costs are whole cents.
 */

/** A length that is needed `count` times. Ids are unique; length is at least 1. */
export type Piece = { readonly id: string; readonly length: number; readonly count: number };

/**
 * A board that can be had. `cost` is 0 for a board on hand. `trimStart` and `trimEnd` are taken off the
 * two ends before any piece, saw cut included. Without `available` there are as many as wanted.
 */
export type Stock = {
  readonly id: string;
  readonly length: number;
  readonly cost: number;
  readonly available?: number;
  readonly trimStart: number;
  readonly trimEnd: number;
};

export type CuttingProblem = {
  readonly pieces: readonly Piece[];
  readonly stock: readonly Stock[];
  /** What one saw cut turns into dust. */
  readonly kerf: number;
};

/** One board cut up: piece ids in cutting order, longest first, and what is left on the bench. */
export type CutBoard = {
  readonly stock: string;
  readonly cuts: readonly string[];
  readonly offcut: number;
};

/**
 * Why nothing cheaper exists. `bound`: the dual prices alone say so. `search`: every cheaper combination was
 * ruled out, in so many cases. `none`: the work limit came first; the plan is at most `gap` cents too dear
 * (when pieces are missing, it is also open whether fewer could be).
 */
export type Proof =
  | { readonly kind: 'bound' }
  | { readonly kind: 'search'; readonly cases: number }
  | { readonly kind: 'none'; readonly gap: number };

export type MissingPiece = {
  readonly piece: string;
  readonly count: number;
  readonly why: 'longer-than-every-board' | 'no-board-left';
};

export type CuttingPlan = {
  readonly cost: number;
  /** No plan that cuts as many pieces as this one can cost less. */
  readonly lowerBound: number;
  readonly proof: Proof;
  readonly boards: readonly CutBoard[];
  readonly missing: readonly MissingPiece[];
  /** Counted steps of the search: the same on every machine. */
  readonly work: number;
  /** What one piece of each id is worth, in millionths of a cent: no board holds pieces worth more than it costs. */
  readonly duals: ReadonlyMap<string, number>;
};
