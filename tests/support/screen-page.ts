import { Box, renderToString } from 'ink';
import { createElement } from 'react';
import { hintRows } from '../../src/ui/hint-rows.js';
import type { Context, Screen } from '../../src/ui/screen.js';
import { LookProvider } from '../../src/ui/theme.js';

/** The lines of a screen's own view, as the frame around it would cut them. */
export function viewLines<State>(screen: Screen<State>, state: State, at: Context): string[] {
  const view = createElement(screen.view, { state, at });
  const room = createElement(Box, { flexDirection: 'column', width: at.size.columns }, view);
  const look = createElement(LookProvider, { value: { ascii: at.ascii, styled: true } }, room);
  return renderToString(look, { columns: at.size.columns })
    .split('\n')
    .map(line => line.replace(/\u001b\[[\d;]*m/g, '').trimEnd());
}

/** Title, view and keys of a screen, as a page that a person can look at. */
export function screenPage<State>(screen: Screen<State>, state: State, at: Context): string {
  const lines = viewLines(screen, state, at);
  const hints = hintRows(screen.hints(state, at), at.size.columns).map(row =>
    row.map(({ key, does }) => `[${key}] ${does}`).join('   '),
  );
  const rule = '='.repeat(at.size.columns);
  return [screen.title(state, at), rule, ...lines, rule, ...hints, ''].join('\n');
}
