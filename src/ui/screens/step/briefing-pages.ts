import type { Caution, Step, ToolBriefing, ToolRow } from '../../../plan/plan.js';
import type { Event } from '../../../workbook/events.js';
import { standingEvents } from '../../../workbook/taken-back.js';
import type { Build } from '../../screen.js';

/** A tool that has something to be told about. */
export type ToldTool = ToolRow & { readonly briefing: ToolBriefing };

/** One page of what is told before a step, read aloud by the lead. */
export type BriefingPage =
  /** The caution about a tool, which is described first. */
  | { readonly kind: 'read'; readonly caution: Caution; readonly tool: ToldTool }
  /** The cautions of the step that are about no tool of its own. */
  | { readonly kind: 'heed'; readonly cautions: readonly Caution[] }
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

/** What comes next of it, and which one it is of those that are told now. */
export type Briefing = {
  readonly page: BriefingPage;
  readonly number: number;
  readonly of: number;
};

/** The next page that nobody has heard in this build, and which one it is of those told now; none when all are. */
export function nextBriefing(step: Step, build: Build): Briefing | undefined {
  const [page, ...more] = pagesToTell(step, build);
  if (page === undefined) return undefined;
  const told = toldJustNow(build);
  return { page, number: told + 1, of: told + 1 + more.length };
}

/** Pages told one after the other up to now; what was told at the first use of a tool days ago is none of them. */
function toldJustNow({ workbook }: Build): number {
  const events = standingEvents(workbook.events).filter(({ kind }) => !BESIDE.includes(kind));
  const before = events.findLastIndex(({ kind }) => !TELLING.includes(kind));
  return new Set(events.slice(before + 1).map(({ atMs }) => atMs)).size;
}

const TELLING: readonly Event['kind'][] = ['briefed', 'tools-briefed'];
/** What may come between two pages that are told, and makes no new beginning. */
const BESIDE: readonly Event['kind'][] = [
  'step-visited',
  'paused',
  'resumed',
  'helper-came',
  'timer-silenced',
  'timer-snoozed',
  'clock-set-back',
];

/**
 * Tools that can hurt first, each with its caution and its questions; then the quiet ones on one page; then
 * the other cautions on one. Who builds alone reads the cautions and is asked nothing.
 */
function pagesToTell(step: Step, build: Build): readonly BriefingPage[] {
  const { progress, plan } = build;
  const cautions = cautionsOf(step, build);
  const told = plan.time.people === 1 ? [] : toolsToTell(step, build);
  const before = told.filter(({ id }) => knownSince(id, build) !== undefined);
  const fresh = told.filter(tool => !before.includes(tool));
  const own = (tool: ToldTool) => cautions.find(({ id }) => id === tool.briefing.caution);
  const hurting = fresh.filter(tool => own(tool) !== undefined);
  const quiet = fresh.filter(tool => own(tool) === undefined && !isSignedOff(tool, build));
  const ofTools = told.map(tool => tool.briefing.caution);
  const others = cautions.filter(({ id }) => !ofTools.includes(id) && !progress.briefed.has(id));
  return [
    ...before.flatMap(tool => refreshPages(tool, own(tool), build)),
    ...hurting.flatMap(tool => pagesOf(tool, own(tool), build)),
    ...(quiet.length === 0 ? [] : [{ kind: 'tell', tools: quiet } as const]),
    ...(others.length === 0 ? [] : [{ kind: 'heed', cautions: others } as const]),
  ];
}

function isSignedOff({ id }: ToldTool, { progress }: Build): boolean {
  return progress.toolsBriefed.has(id);
}

function pagesOf(
  tool: ToldTool,
  caution: Caution | undefined,
  build: Build,
): readonly BriefingPage[] {
  if (caution === undefined) return [];
  const isRead = build.progress.briefed.has(caution.id);
  return [
    ...(isRead ? [] : [{ kind: 'read', caution, tool } as const]),
    ...(isSignedOff(tool, build) ? [] : [{ kind: 'ask', tools: [tool] } as const]),
  ];
}

/** What hardly hurts needs no second telling. */
function refreshPages(
  tool: ToldTool,
  caution: Caution | undefined,
  build: Build,
): readonly BriefingPage[] {
  const lastAtMs = knownSince(tool.id, build);
  if (caution === undefined || lastAtMs === undefined || isSignedOff(tool, build)) return [];
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

/** What goes into the journal once a page is read, or answered and signed off. */
export function heardEvents(page: BriefingPage, atMs: number): readonly Event[] {
  switch (page.kind) {
    case 'read':
      return [{ kind: 'briefed', atMs, caution: page.caution.id }];
    case 'heed':
      return page.cautions.map(({ id }) => ({ kind: 'briefed', atMs, caution: id }));
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
