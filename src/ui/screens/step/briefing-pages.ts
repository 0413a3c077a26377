import type { Caution, Step, ToolBriefing, ToolRow } from '../../../plan/plan.js';
import type { Event } from '../../../workbook/events.js';
import type { Build } from '../../screen.js';

/** A tool that has something to be told about. */
export type ToldTool = ToolRow & { readonly briefing: ToolBriefing };

/** One page of what is told before a step, read aloud by the lead. */
export type BriefingPage =
  /** A caution; the tool that it is about is described first. */
  | { readonly kind: 'read'; readonly caution: Caution; readonly tool: ToldTool | undefined }
  /** Questions back on a tool that can hurt, after its caution was read. */
  | { readonly kind: 'ask'; readonly tools: readonly ToldTool[] }
  /** Tools that hardly hurt: told and asked back on one page. */
  | { readonly kind: 'tell'; readonly tools: readonly ToldTool[] }
  /** The helper was signed off for this tool in an earlier build. */
  | {
      readonly kind: 'refresh';
      readonly tool: ToldTool;
      readonly caution: Caution | undefined;
      readonly lastAtMs: number;
    };

/** What comes next of it, and how far one is. */
export type Briefing = {
  readonly page: BriefingPage;
  readonly number: number;
  readonly of: number;
};

/** The next page that nobody has heard in this build, of all that belong to a step; none when all are. */
export function nextBriefing(step: Step, build: Build): Briefing | undefined {
  const pages = briefingPages(step, build);
  const heard = pages.filter(page => isHeard(page, build));
  const page = pages.find(it => !isHeard(it, build));
  return page === undefined ? undefined : { page, number: heard.length + 1, of: pages.length };
}

/**
 * Tools that can hurt first, each with its caution and its questions; then the quiet ones on one page;
 * then the other cautions. Who builds alone reads the cautions and is asked nothing.
 */
function briefingPages(step: Step, build: Build): readonly BriefingPage[] {
  const cautions = cautionsOf(step, build);
  const told = build.plan.time.people === 1 ? [] : toolsToTell(step, build);
  const before = told.filter(({ id }) => knownSince(id, build) !== undefined);
  const fresh = told.filter(tool => !before.includes(tool));
  const own = (tool: ToldTool) => cautions.find(({ id }) => id === tool.briefing.caution);
  const hurting = fresh.filter(tool => own(tool) !== undefined);
  const quiet = fresh.filter(tool => own(tool) === undefined);
  const ofTools = told.map(tool => tool.briefing.caution);
  return [
    ...before.flatMap(tool => refreshPages(tool, own(tool), build)),
    ...hurting.flatMap(tool => pagesOf(tool, own(tool))),
    ...(quiet.length === 0 ? [] : [{ kind: 'tell', tools: quiet } as const]),
    ...cautions
      .filter(({ id }) => !ofTools.includes(id))
      .map(caution => ({ kind: 'read', caution, tool: undefined }) as const),
  ];
}

function pagesOf(tool: ToldTool, caution: Caution | undefined): readonly BriefingPage[] {
  if (caution === undefined) return [];
  return [
    { kind: 'read', caution, tool },
    { kind: 'ask', tools: [tool] },
  ];
}

/** What hardly hurts needs no second telling. */
function refreshPages(
  tool: ToldTool,
  caution: Caution | undefined,
  build: Build,
): readonly BriefingPage[] {
  const lastAtMs = knownSince(tool.id, build);
  if (caution === undefined || lastAtMs === undefined) return [];
  return [{ kind: 'refresh', tool, caution, lastAtMs }];
}

/** When the helper was last signed off for a tool in an earlier build. */
export function knownSince(tool: string, { progress }: Build): number | undefined {
  return progress.helperBefore?.tools.get(tool);
}

/** The tools of a step that something is told about, in the order in which they are picked up. */
function toolsToTell(step: Step, { plan }: Build): readonly ToldTool[] {
  return step.tools.flatMap(id => {
    const tool = plan.tools.find(it => it.id === id);
    return tool?.briefing === undefined ? [] : [{ ...tool, briefing: tool.briefing }];
  });
}

/** The cautions of a step, in the order in which it names them. */
export function cautionsOf(step: Step, { plan }: Build): readonly Caution[] {
  return step.care.flatMap(id => plan.cautions.find(caution => caution.id === id) ?? []);
}

function isHeard(page: BriefingPage, { progress }: Build): boolean {
  switch (page.kind) {
    case 'read':
      return progress.briefed.has(page.caution.id);
    case 'refresh':
      return progress.toolsBriefed.has(page.tool.id);
    case 'ask':
    case 'tell':
      return page.tools.every(({ id }) => progress.toolsBriefed.has(id));
  }
}

/** What goes into the journal once a page is read, or answered and signed off. */
export function heardEvents(page: BriefingPage, atMs: number): readonly Event[] {
  switch (page.kind) {
    case 'read':
      return [{ kind: 'briefed', atMs, caution: page.caution.id }];
    case 'ask':
    case 'tell':
      return [{ kind: 'tools-briefed', atMs, tools: page.tools.map(({ id }) => id) }];
    case 'refresh':
      return [
        ...(page.caution === undefined
          ? []
          : [{ kind: 'briefed', atMs, caution: page.caution.id } as const]),
        { kind: 'tools-briefed', atMs, tools: [page.tool.id] },
      ];
  }
}
