import onExit from 'signal-exit';
import { KeyStream } from './key-stream.js';

type Environment = Readonly<Record<string, string | undefined>>;
type Streams = { readonly stdin: NodeJS.ReadStream; readonly stdout: NodeJS.WriteStream };

/** Whether there is a person at a terminal that can show screens; otherwise print. */
export function isForScreens({ stdin, stdout }: Streams, env: Environment): boolean {
  return stdin.isTTY === true && stdout.isTTY === true && env.TERM !== 'dumb';
}

const ENTER = '\x1b[?1049h\x1b[H';
const LEAVE = '\x1b[?1049l\x1b[?25h';
const HIDE_CURSOR = '\x1b[?25l';
const KEEP_TITLE = '\x1b[22;0t';
const RESTORE_TITLE = '\x1b[23;0t';
const BELL = '\x07';
/** Long enough for a stop to take hold. */
const STOP_MS = 50;

/**
 * The terminal while the screens are open: its second screen, title, bell and Ctrl-Z. However the
 * program ends, short of kill -9, the user's own screen and cursor come back.
 */
export class Terminal {
  readonly keys: KeyStream;
  readonly #streams: Streams;
  readonly #titled: boolean;
  #inside = false;
  #woken: () => void = () => undefined;

  constructor(streams: Streams, env: Environment) {
    this.#streams = streams;
    this.keys = new KeyStream(streams.stdin);
    // The Linux console prints titles instead of keeping them.
    this.#titled = env.TERM !== 'linux';
  }

  /** Goes to the second screen; `woken` is called when the program goes on after having been stopped. */
  open(woken: () => void): void {
    this.#woken = woken;
    onExit(() => this.close(), { alwaysLast: true });
    process.on('SIGCONT', this.#wake);
    this.#write(this.#titled ? KEEP_TITLE : '');
    this.#enter();
  }

  close(): void {
    process.off('SIGCONT', this.#wake);
    if (!this.#inside) return;
    this.#inside = false;
    this.#write(LEAVE + (this.#titled ? RESTORE_TITLE : ''));
  }

  bell(): void {
    this.#write(BELL);
  }

  title(text: string): void {
    if (this.#titled && this.#inside) this.#write(`\x1b]2;${text.replace(/\p{C}/gu, ' ')}\x1b\\`);
  }

  /** Ctrl-Z: back to the shell until `fg`. The whole group stops, npm in front of us too. */
  suspend(): void {
    if (process.platform === 'win32') return;
    this.#inside = false;
    this.#write(LEAVE);
    this.#streams.stdin.setRawMode(false);
    process.kill(0, 'SIGTSTP');
    // Without a shell to go back to nothing stops; then the screen simply returns.
    setTimeout(this.#wake, STOP_MS);
  }

  readonly #wake = (): void => {
    const { stdin } = this.#streams;
    // The shell has its own mode; Node leaves out a change to the mode it believes to be on.
    stdin.setRawMode(false);
    stdin.setRawMode(true);
    this.#enter();
    this.#write(HIDE_CURSOR);
    this.#woken();
  };

  #enter(): void {
    this.#inside = true;
    this.#write(ENTER);
  }

  #write(text: string): void {
    this.#streams.stdout.write(text);
  }
}
