import { Box } from 'ink';
import type { Build, Context, Screen } from '../../screen.js';
import { marks } from '../../theme.js';
import { plainer } from '../../widgets/facts.js';
import { Picture } from '../../widgets/picture.js';
import { plainRows, Rows } from '../../widgets/rows.js';
import { limitTop, scrollWords } from '../../widgets/scroll.js';
import { hints } from './keys.js';
import { planPages } from './pages.js';
import { drawing } from './picture.js';
import {
  headHeight,
  open,
  type PlanState,
  press,
  scrollRoom,
  shownLines,
  shownPage,
} from './state.js';
import { tabRows, titleLine } from './tabs.js';

type ViewProps = { readonly state: PlanState; readonly at: Context };

function View({ state, at }: ViewProps) {
  const { build } = at;
  if (build === undefined) return null;
  const { columns, rows } = at.size;
  const drawn = state.page === 0 && !state.asked;
  return (
    <Box flexDirection="column">
      <Rows
        rows={headRows(state, build, at)}
        width={columns}
        height={Math.min(headHeight(state, build, at), rows)}
      />
      {drawn ? (
        <Picture picture={drawing(state, build, at)} />
      ) : (
        <PageText state={state} build={build} at={at} />
      )}
    </Box>
  );
}

type PageProps = ViewProps & { readonly build: Build };

function PageText({ state, build, at }: PageProps) {
  const room = scrollRoom(state, build, at);
  const top = limitTop(state.top, room);
  const lines = shownLines(state, build, at).slice(top, top + room.height);
  return <Rows rows={plainRows(lines)} width={at.size.columns} height={room.height} />;
}

function headRows(state: PlanState, build: Build, at: Context) {
  const { columns } = at.size;
  const { rule } = marks(at.ascii);
  const position = scrollWords(state.top, scrollRoom(state, build, at));
  const title = plainer(at.ascii)(pageTitle(state, build, at));
  return [
    ...tabRows(planPages(build), state.page, columns).map(text => ({ text, tone: 'now' as const })),
    {
      text: titleLine(title, position, { columns, rule }),
      tone: 'strong' as const,
      told: position === '' ? title : `${title}, ${position}`,
    },
  ];
}

function pageTitle(state: PlanState, build: Build, at: Context): string {
  const page = shownPage(state, build);
  if (page === undefined) return '';
  if (state.asked) return `Where the figures are from: ${page.body().title}`;
  if (state.page > 0) return page.body().title;
  const { title, note, toScale } = drawing(state, build, at);
  if (note !== undefined) return `${title}. ${note}`;
  return toScale ? `${title}, to scale` : title;
}

/** The whole job on paper: what it will be, what to cut and buy, how long it takes. */
export const planScreen: Screen<PlanState> = {
  name: 'plan',
  title: () => 'Plan',
  open,
  press,
  view: View,
  hints,
};
