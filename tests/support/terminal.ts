import { spawn } from '@lydell/node-pty';
import xterm from '@xterm/headless';

export type TerminalOptions = {
  readonly columns?: number;
  readonly rows?: number;
  readonly args?: readonly string[];
  readonly env?: Readonly<Record<string, string>>;
  /** Where builds are kept. */
  readonly home: string;
  readonly cwd?: string;
};

export type TestTerminal = {
  /** The screen as a person sees it, without the spaces at line ends. */
  readonly screen: () => readonly string[];
  /** No picture is half painted: what the screen shows belongs together. */
  readonly isWhole: () => boolean;
  /** Everything that was written, escape sequences and all. */
  readonly written: () => string;
  /** Waits until the screen shows this; fails with the screen where it does not. */
  readonly waitFor: (wanted: string | RegExp, ms?: number) => Promise<void>;
  /** Types this as one read: `"1"`, `"\r"`, `"\x1b[B"`. */
  readonly press: (keys: string) => void;
  readonly resize: (columns: number, rows: number) => void;
  readonly kill: (signal: NodeJS.Signals) => void;
  readonly pid: number;
  /** The screen that the user comes back to, and not the program's own. */
  readonly isOnUsersScreen: () => boolean;
  readonly isCursorShown: () => boolean;
  readonly exit: Promise<{ readonly code: number; readonly signal: number }>;
};

export const KEY = {
  enter: '\r',
  escape: '\x1b',
  tab: '\t',
  up: '\x1b[A',
  down: '\x1b[B',
  right: '\x1b[C',
  left: '\x1b[D',
  pageUp: '\x1b[5~',
  pageDown: '\x1b[6~',
  backspace: '\x7f',
} as const;

const START = new URL('../../src/start.mjs', import.meta.url).pathname;
const WAIT_MS = 8000;
const LOOK_MS = 15;
const LAST_WORDS_MS = 100;
/** Around every picture; see "synchronized output" of the terminal. */
const PICTURE_BEGINS = '\x1b[?2026h';
const PICTURE_ENDS = '\x1b[?2026l';

/** What a test run sets and a person's shell does not. */
const NOT_PASSED_ON = [
  'CI',
  'CONTINUOUS_INTEGRATION',
  'NO_COLOR',
  'FORCE_COLOR',
  'VITEST',
  'NODE_ENV',
];

function environment(home: string, more: Readonly<Record<string, string>>) {
  const passed = Object.entries(process.env).filter(
    ([name, value]) =>
      value !== undefined && !NOT_PASSED_ON.includes(name) && !/^LC_|^LANG/.test(name),
  ) as [string, string][];
  return {
    ...Object.fromEntries(passed),
    TERM: 'xterm-256color',
    LANG: 'C.UTF-8',
    NOTCHBOOK_HOME: home,
    ...more,
  };
}

/** Starts the program in a real pseudo-terminal, as `npm start` would. */
export function openTerminal(options: TerminalOptions): TestTerminal {
  const { columns = 80, rows = 24, args = [], env = {}, home, cwd = home } = options;
  const screen = new xterm.Terminal({ cols: columns, rows, allowProposedApi: true });
  const child = spawn(process.execPath, [START, ...args], {
    cols: columns,
    rows,
    cwd,
    env: environment(home, env),
  });
  const output: string[] = [];
  const pictures = pictureWatch();
  let unread = 0;
  child.onData(text => {
    output.push(text);
    pictures.take(text);
    unread += 1;
    screen.write(text, () => {
      unread -= 1;
    });
  });
  const exit = new Promise<{ code: number; signal: number }>(resolve => {
    child.onExit(({ exitCode, signal }) => {
      const left = () => resolve({ code: exitCode, signal: signal ?? 0 });
      // The last words may still be on their way to the screen when the end is already known.
      setTimeout(() => screen.write('', left), LAST_WORDS_MS);
    });
  });
  const written = () => output.join('');
  const shown = () => linesOf(screen);
  return {
    screen: shown,
    isWhole: () => unread === 0 && !pictures.isPainting(),
    written,
    waitFor: (wanted, ms = WAIT_MS) => until(shown, wanted, ms),
    press: keys => child.write(keys),
    resize: (newColumns, newRows) => {
      screen.resize(newColumns, newRows);
      child.resize(newColumns, newRows);
    },
    kill: signal => child.kill(signal),
    pid: child.pid,
    isOnUsersScreen: () => screen.buffer.active.type === 'normal',
    isCursorShown: () => written().lastIndexOf('\x1b[?25h') > written().lastIndexOf('\x1b[?25l'),
    exit,
  };
}

/** Whether a picture has begun and not ended in what was read so far, however it comes in pieces. */
function pictureWatch() {
  let tail = '';
  let painting = false;
  return {
    take(text: string) {
      const read = tail + text;
      const [begins, ends] = [read.lastIndexOf(PICTURE_BEGINS), read.lastIndexOf(PICTURE_ENDS)];
      if (begins !== ends) painting = begins > ends;
      tail = read.slice(1 - PICTURE_ENDS.length);
    },
    isPainting: () => painting,
  };
}

function linesOf(screen: InstanceType<typeof xterm.Terminal>): readonly string[] {
  const { active } = screen.buffer;
  return Array.from({ length: screen.rows }, (_, row) =>
    (active.getLine(active.viewportY + row)?.translateToString(true) ?? '').trimEnd(),
  );
}

async function until(
  shown: () => readonly string[],
  wanted: string | RegExp,
  ms: number,
): Promise<void> {
  const deadline = Date.now() + ms;
  const isThere = () => {
    const text = shown().join('\n');
    return typeof wanted === 'string' ? text.includes(wanted) : wanted.test(text);
  };
  while (!isThere()) {
    if (Date.now() > deadline) {
      throw new Error(`The screen never showed ${wanted}. It shows:\n${shown().join('\n')}`);
    }
    await new Promise(resolve => setTimeout(resolve, LOOK_MS));
  }
}
