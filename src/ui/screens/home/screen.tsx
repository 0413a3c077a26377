import { Box, Text } from 'ink';
import { wrap } from '../../../text/wrap.js';
import type { Context, KeyHint, Screen } from '../../screen.js';
import { FieldView } from '../../widgets/field-view.js';
import { Lines } from '../../widgets/lines.js';
import { ListView } from '../../widgets/list-view.js';
import { Menu } from '../../widgets/menu.js';
import type { Suggested } from '../../widgets/suggested.js';
import { buildLine, timerLines } from './build-line.js';
import { allBuilds, buildRows, buildsHints } from './builds-level.js';
import { type HomeState, isNewHere, menuItems, ownBuilds, press } from './state.js';

type ViewProps = { readonly state: HomeState; readonly at: Context };

const WELCOME =
  'Notchbook asks what you would like to build, works out every board, cut, notch and screw, and then ' +
  'goes through the work with you, step by step, at your bench.';
const FIRST_TIME = 'New here? The example shows all of it in a minute; nothing in it can go wrong.';

function View({ state, at }: ViewProps) {
  const width = at.size.columns;
  if (state.level === 'builds') {
    const rows = allBuilds(at).map(line => buildLine(line, width - 2));
    return (
      <Box flexDirection="column" marginTop={1}>
        {state.naming === undefined ? (
          <Heading text={rows.length === 0 ? 'There are no builds yet.' : 'All builds'} />
        ) : (
          <Naming name={state.naming} width={width} />
        )}
        <ListView rows={rows} state={state.list} width={width} height={buildRows(at)} />
      </Box>
    );
  }
  return (
    <Box flexDirection="column" marginTop={1}>
      {state.level === 'front' ? <Front at={at} /> : <Heading text="Which piece?" />}
      <Menu key={state.level} items={menuItems(state.level, at)} width={width} />
      <Lines lines={['', ...below(state.level, at)]} />
    </Box>
  );
}

function Front({ at }: { readonly at: Context }) {
  if (ownBuilds(at).length > 0) return <Heading text="Go on with" />;
  const width = Math.min(76, at.size.columns);
  const first = isNewHere(at) ? [...wrap(FIRST_TIME, width), ''] : [];
  return <Lines lines={[...wrap(WELCOME, width), '', ...first]} />;
}

function Naming({ name, width }: { readonly name: Suggested; readonly width: number }) {
  return (
    <Box marginBottom={1} flexShrink={0}>
      <Text bold>{'New name '}</Text>
      <FieldView field={name.field} suggested={name.suggested} width={width - 10} />
    </Box>
  );
}

function Heading({ text }: { readonly text: string }) {
  return (
    <Box marginBottom={1} flexShrink={0}>
      <Text bold>{text}</Text>
    </Box>
  );
}

/** Under the menu: timers that wait, or what each piece is. */
function below(level: 'front' | 'recipes', at: Context): readonly string[] {
  const width = Math.min(76, at.size.columns);
  if (level === 'front') return timerLines(at.shelf, at.nowMs);
  return at.recipes().flatMap(({ about }, i) => wrap(`${i + 1}  ${about}`, width));
}

function hints(state: HomeState, at: Context): readonly KeyHint[] {
  const choose = [
    { key: '1-9', does: 'choose' },
    { key: 'up/down', does: 'move' },
    { key: 'enter', does: 'choose' },
  ];
  const ends = [
    { key: '?', does: 'keys' },
    { key: 'q', does: 'quit' },
  ];
  switch (state.level) {
    case 'front':
      return [...choose, ...ends];
    case 'recipes':
      return [...choose, { key: 'esc', does: 'back' }, ...ends];
    case 'builds':
      return buildsHints(state, at);
  }
}

/** Where one comes in: builds under way, a new piece, the example. */
export const homeScreen: Screen<HomeState> = {
  name: 'home',
  title: () => 'Notchbook',
  open: () => ({ level: 'front' }),
  press,
  view: View,
  hints,
  widget: ({ level }) => (level === 'builds' ? undefined : 'menu'),
};
