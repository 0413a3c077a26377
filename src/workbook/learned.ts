import type { Plan } from '../plan/plan.js';
import type { Event } from './events.js';
import { standingEvents } from './taken-back.js';
import type { Progress, Workbook } from './workbook.js';

/** What the helper did and was signed off for in one build. Nobody is named, and no build. */
export type Learned = {
  /** Recipe and moment of the start: enough to tell builds apart. */
  readonly build: string;
  /** When each tool was signed off. */
  readonly tools: readonly { readonly tool: string; readonly atMs: number }[];
  /** Steps done by the helper alone, and by both. */
  readonly alone: number;
  readonly together: number;
  /** When another helper came to this build; 0 where none did. */
  readonly sinceMs: number;
  /** Newest of it. */
  readonly lastAtMs: number;
};

/** A build with the fold of its journal. */
export type LearnedFrom = {
  readonly workbook: Workbook;
  readonly plan: Plan;
  readonly progress: Pick<Progress, 'toolsBriefed'>;
};

/** The same build, whatever it is called by now. */
export function buildKey({ recipe, createdAtMs }: Workbook): string {
  return `${recipe} ${createdAtMs}`;
}

/**
 * What is kept of a build for the next one, as its journal stands: what was taken back is not learned.
 * Nothing of the example, of who builds alone, and of a build in which nobody learned anything yet.
 */
export function learnedIn({
  workbook,
  plan: { steps, time },
  progress,
}: LearnedFrom): Learned | undefined {
  if (workbook.example || time.people === 1) return undefined;
  const events = standingEvents(workbook.events);
  const changed = events.findLast(({ kind }) => kind === 'helper-changed');
  const sinceMs = changed?.atMs ?? 0;
  const since = changed === undefined ? events : events.slice(events.indexOf(changed) + 1);
  const whoOf = (event: Event) =>
    event.kind === 'step-done' ? steps.find(({ id }) => id === event.step)?.who : undefined;
  const tools = [...progress.toolsBriefed].map(([tool, atMs]) => ({ tool, atMs }));
  const alone = since.filter(event => whoOf(event) === 'helper');
  const together = since.filter(event => whoOf(event) === 'both');
  const times = [...tools, ...alone, ...together].map(({ atMs }) => atMs);
  if (times.length === 0 && sinceMs === 0) return undefined;
  return {
    build: buildKey(workbook),
    tools,
    alone: alone.length,
    together: together.length,
    sinceMs,
    lastAtMs: Math.max(sinceMs, ...times),
  };
}

/**
 * What the helper brings along to a new build: of all builds since the last change of helper, the
 * newest sign-off of each tool and the steps in all. None where nothing is known.
 */
export function helperCame(builds: readonly Learned[], atMs: number): Event | undefined {
  const since = Math.max(0, ...builds.map(({ sinceMs }) => sinceMs));
  const own = builds.filter(({ lastAtMs }) => lastAtMs >= since);
  const newest = new Map<string, number>();
  for (const { tool, atMs: signed } of own.flatMap(({ tools }) => tools)) {
    if (signed >= since) newest.set(tool, Math.max(signed, newest.get(tool) ?? 0));
  }
  const alone = own.reduce((sum, build) => sum + build.alone, 0);
  const together = own.reduce((sum, build) => sum + build.together, 0);
  if (newest.size === 0 && alone + together === 0) return undefined;
  const tools = [...newest].map(([tool, signed]) => ({ tool, atMs: signed }));
  return { kind: 'helper-came', atMs, tools, alone, together };
}
