import { closer, nextView, type Sight } from '../../pictures.js';
import type { Ask, Build, Context, Key, Outcome } from '../../screen.js';
import { limitTop, type ScrollRoom, scrollTo } from '../../widgets/scroll.js';
import { asksToEnter } from '../step/shown-step.js';
import { askedBlocks } from './asked-blocks.js';
import { firstPage, type PlanPage, pageText, planPages } from './pages.js';
import { planSubject } from './subject.js';
import { tabRows } from './tabs.js';

export type PlanState = {
  /** Number of the page, from 0. */
  readonly page: number;
  readonly top: number;
  /** From where the drawing is seen. */
  readonly sight: Sight;
  /** Shows where the figures are from, instead of the page. */
  readonly asked: boolean;
};

export function open(at: Context): PlanState {
  const page = at.build === undefined ? 0 : firstPage(at.build, at);
  return { page, top: 0, sight: { view: 'front', close: 0 }, asked: false };
}

/** The page that is turned to. */
export function shownPage({ page }: PlanState, build: Build): PlanPage | undefined {
  return planPages(build)[page];
}

/** The lines below the tabs: of the page, or of where its figures are from. */
export function shownLines(state: PlanState, build: Build, at: Context): readonly string[] {
  const page = shownPage(state, build);
  if (page === undefined) return [];
  const style = { columns: at.size.columns, ascii: at.ascii };
  return pageText(state.asked ? askedBlocks(page.id, build) : page.body().blocks, style);
}

/** The tabs and the title of the page stand above what scrolls. */
export function headHeight({ page }: PlanState, build: Build, { size }: Context): number {
  return tabRows(planPages(build), page, size.columns).length + 1;
}

export function scrollRoom(state: PlanState, build: Build, at: Context): ScrollRoom {
  const height = Math.max(1, at.size.rows - headHeight(state, build, at));
  return { count: shownLines(state, build, at).length, height };
}

export function press(state: PlanState, key: Key, at: Context): Outcome<PlanState> {
  const { build } = at;
  if (build === undefined) return { state, asks: [{ kind: 'leave' }] };
  switch (key.name) {
    case 'left':
    case 'right':
      return show(turnedBy(state, key.name === 'left' ? -1 : 1, build));
    case 'enter':
      return { state, asks: asksToEnter(build, at.nowMs) };
    case 'escape':
    case 'backspace':
      return state.asked
        ? show({ ...state, asked: false, top: 0 })
        : { state, asks: [{ kind: 'leave' }] };
    case 'space':
    case 'page-down':
      return show(further(state, build, at));
    case 'character':
      return pressSign(state, key.text, { build, at });
    default: {
      const top = scrollTo(state.top, key, scrollRoom(state, build, at));
      return show(top === undefined ? state : { ...state, top });
    }
  }
}

/** Down by a window, to where an entry begins; from the end of a page to the next one. */
function further(state: PlanState, build: Build, at: Context): PlanState {
  const room = scrollRoom(state, build, at);
  const from = limitTop(state.top, room);
  const top = scrollTo(state.top, { name: 'page-down' }, room) ?? from;
  if (top === from) return turnedBy(state, 1, build);
  const lines = shownLines(state, build, at).slice(from, top + 1);
  const entry = lines.findLastIndex(line => !/^ {2,}/.test(line));
  return { ...state, top: entry > 0 ? from + entry : top };
}

function turnedBy(state: PlanState, by: 1 | -1, build: Build): PlanState {
  const count = planPages(build).length;
  return { ...state, page: (state.page + by + count) % count, top: 0, asked: false };
}

type Bench = { readonly build: Build; readonly at: Context };

function pressSign(state: PlanState, sign: string, { build }: Bench): Outcome<PlanState> {
  const page = planPages(build).findIndex(({ key }) => key === sign);
  if (page >= 0) return show({ ...state, page, top: 0, asked: false });
  switch (sign) {
    case '?':
      return show({ ...state, asked: !state.asked, top: 0 });
    case 'v':
      return show({ ...state, page: 0, top: 0, asked: false, sight: otherSight(state) });
    case 'z':
      return show({ ...state, page: 0, top: 0, asked: false, sight: closerSight(state, build) });
    case 'a':
      return { state, asks: [changeAnswers(build)] };
    case 't':
      return { state, asks: [{ kind: 'go', to: 'timers' }] };
    case 'k':
      return { state, asks: [{ kind: 'go', to: 'keys' }] };
    default:
      return show(state);
  }
}

/** Where the drawing is not on the screen, the key only shows it. */
function otherSight({ page, sight, asked }: PlanState): Sight {
  const isShown = page === 0 && !asked && sight.close === 0;
  return { view: isShown ? nextView(sight.view) : sight.view, close: 0 };
}

/** The sheets of joints one after the other, and then the whole again. */
function closerSight({ sight }: PlanState, { plan }: Build): Sight {
  return closer(sight, planSubject(plan));
}

function changeAnswers({ workbook }: Build): Ask {
  return { kind: 'begin-interview', recipe: workbook.recipe, answers: workbook.answers };
}

function show(state: PlanState): Outcome<PlanState> {
  return { state, asks: [] };
}
