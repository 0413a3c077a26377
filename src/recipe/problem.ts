import type { Place } from './place.js';
import type { SetOutProblem } from './set-out-problem.js';

/** What is wrong in a project file, with the facts; how it is said is in problem-words.ts. */
export type Problem = { readonly kind: ProblemKind; readonly at: Place };

export type ProblemKind = FormulaProblem | FileProblem | CheckProblem | SetOutProblem;

/** What a value is, in words for an author: "a length", "an area", "a text". */
export type KindName = string;

/** Found while a formula is parsed, checked or worked out. */
export type FormulaProblem =
  | { readonly is: 'formula-empty' }
  | { readonly is: 'formula-too-long'; readonly length: number; readonly most: number }
  | { readonly is: 'formula-too-deep'; readonly most: number }
  | { readonly is: 'formula-bad-character'; readonly character: string }
  | { readonly is: 'formula-text-open' }
  | { readonly is: 'unreadable'; readonly problem: string; readonly hint: string }
  | { readonly is: 'formula-bad-number'; readonly text: string }
  | { readonly is: 'formula-expected'; readonly expected: string; readonly found: string }
  | { readonly is: 'formula-two-comparisons' }
  | {
      readonly is: 'formula-unknown-call';
      readonly name: string;
      readonly near: string | undefined;
    }
  | {
      readonly is: 'formula-call-count';
      readonly name: string;
      readonly wants: string;
      readonly given: number;
    }
  | { readonly is: 'unknown-name'; readonly name: string; readonly near: string | undefined }
  | {
      readonly is: 'kinds-differ';
      readonly doing: string;
      readonly left: KindName;
      readonly right: KindName;
    }
  | {
      readonly is: 'wrong-kind';
      readonly what: string;
      readonly wanted: KindName;
      readonly got: KindName;
    }
  | { readonly is: 'divides-by-zero'; readonly what: string }
  | { readonly is: 'too-large'; readonly what: string }
  | { readonly is: 'circular'; readonly names: readonly string[] };

/** Found while the words of the file are read. */
export type FileProblem =
  | { readonly is: 'file-too-large'; readonly bytes: number; readonly most: number }
  | { readonly is: 'not-yaml'; readonly why: string; readonly hint: string }
  | { readonly is: 'yaml-alias' }
  | { readonly is: 'yaml-tag'; readonly tag: string }
  | { readonly is: 'too-deep'; readonly most: number }
  | { readonly is: 'other-format'; readonly found: string }
  | { readonly is: 'no-format' }
  | { readonly is: 'wrong-shape'; readonly wanted: string; readonly got: string }
  | {
      readonly is: 'unknown-word';
      readonly word: string;
      readonly near: string | undefined;
      readonly words: readonly string[];
    }
  | { readonly is: 'text-after-comma'; readonly text: string }
  | { readonly is: 'missing-word'; readonly word: string; readonly of: string }
  | { readonly is: 'duplicate-word'; readonly word: string; readonly firstLine: number }
  | { readonly is: 'bad-id'; readonly id: string; readonly hyphens: boolean }
  | { readonly is: 'reserved-id'; readonly id: string }
  | {
      readonly is: 'not-one-of';
      readonly text: string;
      readonly near: string | undefined;
      readonly words: readonly string[];
    }
  | { readonly is: 'empty-text' }
  | { readonly is: 'text-too-long'; readonly length: number; readonly most: number }
  | {
      readonly is: 'too-many';
      readonly what: string;
      readonly count: number;
      readonly most: number;
    }
  | { readonly is: 'hole-open' }
  | { readonly is: 'brace-alone' };

/** What a reference in a recipe may point at. */
export type Target =
  | 'question'
  | 'board'
  | 'part'
  | 'layout'
  | 'assembly'
  | 'take'
  | 'notch'
  | 'joint'
  | 'step'
  | 'size'
  | 'tool'
  | 'caution'
  | 'section'
  | 'option';

/** Found in a recipe that reads well but does not hold together. */
export type CheckProblem =
  | {
      readonly is: 'unknown-target';
      readonly target: Target;
      readonly name: string;
      readonly near: string | undefined;
    }
  | { readonly is: 'not-measurable'; readonly size: string; readonly got: KindName }
  | { readonly is: 'missing-take'; readonly take: string; readonly assembly: string }
  | { readonly is: 'wrong-list'; readonly name: string }
  | { readonly is: 'inside-itself'; readonly assembly: string }
  | { readonly is: 'two-axes' }
  | { readonly is: 'stack-on-end' }
  | { readonly is: 'duplicate-id'; readonly id: string; readonly firstLine: number }
  | { readonly is: 'later-question'; readonly name: string }
  | { readonly is: 'unused'; readonly target: Target; readonly name: string }
  | { readonly is: 'never-cut'; readonly path: string }
  | { readonly is: 'never-notched'; readonly path: string }
  | { readonly is: 'never-closed'; readonly path: string }
  | { readonly is: 'used-before-cut'; readonly path: string; readonly step: string }
  | { readonly is: 'used-before-notched'; readonly path: string; readonly step: string }
  | { readonly is: 'waits-for-later'; readonly step: string; readonly other: string }
  | { readonly is: 'range-upside-down'; readonly from: string; readonly to: string }
  | {
      readonly is: 'usual-outside';
      readonly usual: string;
      readonly from: string;
      readonly to: string;
    }
  | { readonly is: 'usual-unreadable'; readonly problem: string; readonly hint: string };
