/** Something to set, mark or take at a step. */
export type StepSetting = {
  readonly name: string;
  readonly text: string;
  /** It follows from how the boards are cut: once something happens to one of them it is another one. */
  readonly boards?: true;
};

export type TradeWait = 'glue-clamp' | 'glue-cure' | 'sealer-dwell' | 'sealer-dry';

export type StepTimer = {
  readonly id: string;
  readonly name: string;
  readonly minutes: number;
  readonly because: string;
  /** The rule of the trade that it follows; it gives another length on a colder day. */
  readonly lasts?: TradeWait;
  readonly then: string;
};
