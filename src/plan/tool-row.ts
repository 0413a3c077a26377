export type ToolRow = {
  readonly id: string;
  readonly name: string;
  readonly use: string;
  readonly who: 'lead' | 'both';
  /** For somebody who has never held one. */
  readonly plainly: string;
  /** What is told before it is first used; none for a tool that nobody has to be told about. */
  readonly briefing?: ToolBriefing;
};

/** Read aloud to the helper and asked back, before a tool is first used. */
export type ToolBriefing = {
  /** Id of the caution that is about this tool alone, where there is one. */
  readonly caution?: string;
  readonly inShort: string;
  readonly asked: readonly { readonly ask: string; readonly listenFor: string }[];
};
