import type { Place } from './place.js';

/**
 * Pencil arithmetic of a project file, parsed but not worked out. A text that starts with `=` is a
 * formula; a length such as `3/8 in` or a plain number, word or yes/no is a formula of one literal.
 */
export type Formula = { readonly text: string; readonly node: Node; readonly at: Place };

export type Node =
  | { readonly kind: 'number'; readonly value: number }
  /** Already in mm. */
  | { readonly kind: 'length'; readonly value: number }
  | { readonly kind: 'text'; readonly value: string }
  | { readonly kind: 'flag'; readonly value: boolean }
  /** `seat_length`, `rail.width`, `seat.count`. */
  | { readonly kind: 'name'; readonly name: string; readonly at: Place }
  | { readonly kind: 'minus'; readonly of: Node }
  | { readonly kind: 'not'; readonly of: Node }
  | {
      readonly kind: 'binary';
      readonly op: Operator;
      readonly left: Node;
      readonly right: Node;
      /** Where the sign stands. */
      readonly at: Place;
    }
  | {
      readonly kind: 'call';
      readonly name: Call;
      readonly of: readonly Node[];
      readonly at: Place;
    };

export type Operator = '+' | '-' | '*' | '/' | '=' | '!=' | '<' | '<=' | '>' | '>=' | 'and' | 'or';

export type Call = 'min' | 'max' | 'floor' | 'ceil' | 'round' | 'abs' | 'if';

/** Text with `{formula}` holes, filled when the plan is made. */
export type Template = { readonly pieces: readonly (string | Formula)[]; readonly at: Place };
