import type { Step } from '../plan/plan.js';

/** Ids of the boards of a step's picture: being added, and standing there. */
export type StepSubject = {
  readonly bright: readonly string[];
  /** None: all the others stand there too. */
  readonly standing: readonly string[] | undefined;
};

/**
 * What the picture of a step shows. Pieces that are cut or notched stand nowhere yet, so they are
 * shown where they will be in the finished piece.
 */
export function stepSubject({ bright, standing, phase }: Step): StepSubject {
  const whole = bright.length === 0 || phase === 'cut' || phase === 'notch';
  return { bright, standing: whole ? undefined : standing };
}
