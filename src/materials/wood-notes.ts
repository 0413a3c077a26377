import { sourced } from './sourced.js';
import { practice, seen } from './sources.js';

/** Words that several woods share. */
export const NO_TANNIN = seen(
  'wood-handbook',
  'chapter 16, woods without tannin rust brown, not black',
);
export const MILD_TANNIN = practice('mild tannin');

export const PINE_DUST = sourced(
  'Pine dust: some people get a rash or asthma-like trouble.',
  seen('wood-database', 'longleaf pine, health note'),
);
export const ANY_DUST = sourced(
  'No particular trouble is on record for this wood; its dust still belongs in a mask and a vacuum.',
  practice('general care with wood dust'),
);
