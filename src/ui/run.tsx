import { render } from 'ink';
import { App } from './app.js';
import type { Services } from './services.js';
import { Session, type Start } from './session.js';
import type { Terminal } from './terminal.js';

/** What the screens need besides the terminal, which brings the rest. */
export type Opening = Omit<Start, 'services'> & {
  readonly services: Omit<Services, 'isTypedAhead' | 'bell' | 'title' | 'suspend' | 'quit'>;
  /** Loads what the first screen does without. Keys wait for it, so nothing is asked of it before. */
  readonly prepare: () => Promise<void>;
};

/**
 * Opens the screens and waits until they are left. An error of ours comes out as an Error, after the
 * user's own screen is back, so that it can be told there.
 */
export async function runScreens(opening: Opening, terminal: Terminal): Promise<void> {
  const ending: { quit: () => void } = { quit: () => undefined };
  const services: Services = {
    ...opening.services,
    isTypedAhead: () => terminal.keys.isTypedAhead,
    bell: () => terminal.bell(),
    title: text => terminal.title(text),
    suspend: () => terminal.suspend(),
    quit: () => ending.quit(),
  };
  const session = new Session({ ...opening, services });
  terminal.open(session.repaint);
  terminal.keys.hold();
  try {
    const app = render(<App session={session} />, {
      // Ink asks of its input no more than what the key stream has.
      stdin: terminal.keys as unknown as NodeJS.ReadStream,
      patchConsole: false,
      maxFps: 60,
    });
    ending.quit = () => app.unmount();
    await Promise.all([app.waitUntilExit(), prepared(opening, terminal, app)]);
  } finally {
    terminal.close();
  }
}

/** Prepares once the first frame is out, then lets the keys go that were pressed meanwhile. */
async function prepared(
  { prepare }: Opening,
  { keys }: Terminal,
  app: { readonly unmount: () => void },
): Promise<void> {
  try {
    await new Promise(resolve => setImmediate(resolve));
    await prepare();
    keys.letGo();
  } catch (error) {
    app.unmount();
    throw error;
  }
}
