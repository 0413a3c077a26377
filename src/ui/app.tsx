import { Box, Text } from 'ink';
import { useEffect, useSyncExternalStore } from 'react';
import { Foot } from './foot.js';
import { Head } from './head.js';
import { windowTitle } from './head-lines.js';
import { PressProvider } from './press.js';
import { contextOf, frameOf, isTooSmall, SMALLEST } from './program.js';
import { type Session, topPage } from './session.js';
import { LookProvider } from './theme.js';
import { useSettling, useTicker } from './ticker.js';
import { useKeys } from './use-keys.js';
import { useRepaint, useResize } from './window-size.js';

/** The frame around every screen: head, the screen that is on top, foot. */
export function App({ session }: { readonly session: Session }) {
  const program = useSyncExternalStore(session.subscribe, session.snapshot);
  const page = topPage(program);
  const at = contextOf(program);
  const title = windowTitle(program);
  useKeys({ press: session.press, suspend: session.suspend, widget: page.widget(at) });
  useResize(session.resize);
  useRepaint(program.paints);
  useTicker(program, session.tick);
  useSettling(page, session.settle);
  useEffect(() => {
    session.call(title);
  }, [session, title]);
  const { columns, rows } = frameOf(program.size);
  if (isTooSmall(program.size)) return <TooSmall />;
  return (
    <LookProvider value={program.look}>
      <PressProvider value={session.press}>
        <Box flexDirection="column" width={columns} height={rows}>
          <Head program={program} title={page.title(at)} width={columns} />
          <Box
            key={page.name}
            flexDirection="column"
            height={at.size.rows}
            flexShrink={0}
            overflow="hidden"
          >
            {page.view(at)}
          </Box>
          <Foot hints={page.hints(at)} width={columns} />
        </Box>
      </PressProvider>
    </LookProvider>
  );
}

function TooSmall() {
  const { columns, rows } = SMALLEST;
  return <Text wrap="truncate">{`Make the window at least ${columns}x${rows}.`}</Text>;
}
