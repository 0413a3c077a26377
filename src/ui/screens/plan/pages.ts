import { formatMinutes } from '../../../measure/duration.js';
import { allPages } from '../../../plan/pages/all-pages.js';
import { wordsPage } from '../../../plan/pages/words-page.js';
import type { Plan } from '../../../plan/plan.js';
import type { Phase } from '../../../recipe/recipe.js';
import type { Block, Page } from '../../../text/page.js';
import { bodyLines } from '../../../text/page-lines.js';
import { count } from '../../../text/plural.js';
import { toAscii } from '../../../text/safe-text.js';
import { HAND_OVER } from '../../../workbook/pages/hand-over-pages.js';
import type { Progress } from '../../../workbook/workbook.js';
import type { Build, Context } from '../../screen.js';
import { WHO } from '../step/phase-words.js';
import { stepAtHand } from '../step/shown-step.js';
import { pageNow } from './page-now.js';

/** A page of the plan on the screen: its key, its short name, what is on it. */
export type PlanPage = {
  readonly id: string;
  readonly key: string;
  readonly name: string;
  /** What is on it, worked out when it is first looked at. */
  readonly body: () => PageBody;
};

export type PageBody = {
  readonly title: string;
  /** Empty for the drawing, which is no text. */
  readonly blocks: readonly Block[];
};

/** Names short enough for one line of 80 columns. */
const NAMES: Readonly<Record<string, string>> = {
  drawing: 'Drawing',
  overview: 'About',
  fit: 'Fit',
  cut: 'Cuts',
  boards: 'Buy',
  spacing: 'Gaps',
  hardware: 'Screws',
  tools: 'Tools',
  time: 'Time',
  words: 'Words',
  steps: 'Steps',
  care: 'Care',
  record: 'Record',
};

/** Number keys 1 to 9 and 0, and letters for the pages beyond them. */
const NUMBERED = 10;
const LETTERS: Readonly<Record<string, string>> = { words: 'w', care: 'c', record: 'r' };

const kept = new WeakMap<Progress, readonly PlanPage[]>();

/** All pages in order; the record of the build once there is something in it. */
export function planPages(build: Build): readonly PlanPage[] {
  const known = kept.get(build.progress);
  if (known !== undefined) return known;
  const pages = sourcesOf(build).map(
    ({ id, make }, at): PlanPage => ({
      id,
      key: at < NUMBERED ? String((at + 1) % NUMBERED) : (LETTERS[id] ?? ''),
      name: NAMES[id] ?? id,
      body: once(make),
    }),
  );
  kept.set(build.progress, pages);
  return pages;
}

/** A page by its id, and how it is made. */
type Source = { readonly id: string; readonly make: () => PageBody };

const DRAWING: PageBody = { title: 'The finished piece', blocks: [] };

function sourcesOf(build: Build): readonly Source[] {
  const only = planOnly(build.plan).map(
    (page): Source => ({ id: page.id, make: () => pageNow(page, build) }),
  );
  const ids = isBegun(build) ? (['care', 'record'] as const) : (['care'] as const);
  const last = ids.map((id): Source => ({ id, make: () => HAND_OVER[id](build) }));
  return [{ id: 'drawing', make: () => DRAWING }, ...only, ...last];
}

function once<T>(make: () => T): () => T {
  let made: { readonly it: T } | undefined;
  return () => {
    made ??= { it: make() };
    return made.it;
  };
}

const keptOnly = new WeakMap<Plan, readonly Page[]>();

/** Pages that no entry of the journal changes. */
function planOnly(plan: Plan): readonly Page[] {
  const known = keptOnly.get(plan) ?? [...allPages(plan), stepList(plan), wordsPage(plan)];
  keptOnly.set(plan, known);
  return known;
}

/** Something was done, so that there is something to look back on. */
export function isBegun({ progress }: Build): boolean {
  return progress.done.size > 0 || progress.tallies.size > 0;
}

/** Steps that send one to the boards: with the list in hand to the store, by their numbers to the saw. */
const BOARD_PHASES: readonly Phase[] = ['buy', 'cut'];

/**
 * Where the pages open: from a step of the store or the saw at the list of boards that it speaks of, at the care
 * sheet when all is built, else at the drawing.
 */
export function firstPage(build: Build, { stepSeen }: Pick<Context, 'stepSeen'>): number {
  const step = stepAtHand(build, { stepSeen });
  if (step === undefined || step.phase === 'hand-over') return numberOf('care', build);
  const isAtBench = stepSeen !== undefined;
  return isAtBench && BOARD_PHASES.includes(step.phase) ? numberOf('boards', build) : 0;
}

function numberOf(page: string, build: Build): number {
  return Math.max(
    0,
    planPages(build).findIndex(({ id }) => id === page),
  );
}

/** The steps in a table: the whole of each is for the bench. */
function stepList({ steps, time }: Plan): Page {
  const table = {
    id: 'steps',
    columns: [
      { title: 'No.', align: 'right' as const },
      { title: 'Step', grow: true },
      { title: 'Who' },
      { title: 'About', align: 'right' as const },
    ],
    rows: steps.map(({ title, who, minutes }, at) => [
      String(at + 1),
      title,
      time.people === 1 ? 'you' : WHO[who],
      formatMinutes(minutes.value),
    ]),
  };
  return { id: 'steps', title: count(steps.length, 'step'), blocks: [{ kind: 'table', table }] };
}

export type LineStyle = { readonly columns: number; readonly ascii: boolean };

const linesKept = new WeakMap<readonly Block[], Map<string, readonly string[]>>();

/** The text of a page, laid out once for each width. */
export function pageText(blocks: readonly Block[], { columns, ascii }: LineStyle) {
  const known = linesKept.get(blocks) ?? new Map<string, readonly string[]>();
  linesKept.set(blocks, known);
  const id = `${columns} ${ascii}`;
  const lines = known.get(id) ?? bodyLines(ascii ? blocks.map(asciiBlock) : blocks, columns);
  known.set(id, lines);
  return lines;
}

/** Plain ASCII before the layout, since some of its stand-ins are wider. */
function asciiBlock(block: Block): Block {
  switch (block.kind) {
    case 'heading':
    case 'words':
      return { ...block, text: toAscii(block.text) };
    case 'list':
      return { ...block, items: block.items.map(toAscii) };
    case 'facts':
      return {
        ...block,
        facts: block.facts.map(fact => ({
          ...fact,
          name: toAscii(fact.name),
          text: toAscii(fact.text),
        })),
      };
    case 'bars':
      return { ...block, bars: block.bars.map(row => ({ ...row, text: toAscii(row.text) })) };
    case 'table':
      return {
        ...block,
        table: {
          ...block.table,
          columns: block.table.columns.map(column => ({ ...column, title: toAscii(column.title) })),
          rows: block.table.rows.map(row => row.map(toAscii)),
        },
      };
  }
}
