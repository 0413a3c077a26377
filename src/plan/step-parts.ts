import type { Weather } from './told-day.js';

/** Something to set, mark or take at a step. */
export type StepSetting = {
  readonly name: string;
  readonly text: string;
  /** It follows from how the boards are cut: once something happens to one of them it is another one. */
  readonly boards?: true;
  /** It tells of the glue-ups; where work goes on, the glue-up at hand is told instead. */
  readonly glueUp?: true;
  /** It is a condition of the day: once this was read off today, the verdict says it. */
  readonly asks?: keyof Weather;
};

export type TradeWait = 'glue-open' | 'glue-clamp' | 'glue-cure' | 'sealer-dwell' | 'sealer-dry';

export type StepTimer = {
  readonly id: string;
  readonly name: string;
  readonly minutes: number;
  readonly because: string;
  /** The rule of the trade that it follows; it gives another length on a colder day. */
  readonly lasts?: TradeWait;
  readonly then: string;
};
