import type { Step } from '../../../plan/plan.js';

export const PHASE: Readonly<Record<Step['phase'], string>> = {
  plan: 'before the wood',
  buy: 'at the store',
  cut: 'cutting',
  notch: 'notching',
  'dry-fit': 'dry fit',
  assemble: 'putting together',
  finish: 'sanding, sealing',
  place: 'on the spot',
  'hand-over': 'handing over',
};

export const WHO: Readonly<Record<Step['who'], string>> = {
  lead: 'lead only',
  helper: 'helper alone',
  both: 'together',
};
