import { EventEmitter } from 'node:events';
import { singleReads } from './keys.js';

/** A pasted page is no series of keys; what is beyond this is left out. */
const LONGEST_BURST = 2000;

/** A picture that stands longer than this under a key is pressed at once more, since nothing seems to happen. */
const STOOD_MS = 200;

/**
 * The terminal's input, one key at a time: between two keys the screen has had its turn, so that
 * every widget sees the state that the key before it made.
 */
export class KeyStream extends EventEmitter {
  readonly isTTY = true;
  readonly #source: NodeJS.ReadStream;
  #waiting: string[] = [];
  #next: string | null = null;
  #busy = false;
  #held = false;
  #begunMs = 0;
  /** So many of the keys that wait were typed before the picture that is seen now. */
  #ahead = 0;
  #typedAhead = false;

  constructor(source: NodeJS.ReadStream) {
    super();
    this.#source = source;
  }

  /** Whether the key that was read last was typed while the picture stood under a slow key before it. */
  get isTypedAhead(): boolean {
    return this.#typedAhead;
  }

  read(): string | null {
    const key = this.#next;
    this.#next = null;
    return key;
  }

  setRawMode(on: boolean): this {
    this.#source.setRawMode(on);
    this.#source.off('readable', this.#take);
    if (on) this.#source.on('readable', this.#take);
    return this;
  }

  setEncoding(encoding: BufferEncoding): this {
    this.#source.setEncoding(encoding);
    return this;
  }

  ref(): this {
    this.#source.ref();
    return this;
  }

  unref(): this {
    this.#source.unref();
    return this;
  }

  /** Keeps the keys that come from now on, in order, until they are let go. */
  hold(): void {
    this.#held = true;
  }

  letGo(): void {
    this.#held = false;
    this.#give();
  }

  readonly #take = (): void => {
    for (let chunk = this.#source.read(); chunk !== null; chunk = this.#source.read()) {
      const room = LONGEST_BURST - this.#waiting.length;
      this.#waiting.push(...singleReads(String(chunk)).slice(0, Math.max(0, room)));
    }
    this.#give();
  };

  #give(): void {
    if (this.#busy || this.#held) return;
    const key = this.#waiting.shift();
    if (key === undefined) return;
    this.#busy = true;
    this.#begunMs = performance.now();
    this.#typedAhead = this.#ahead > 0;
    this.#ahead = Math.max(0, this.#ahead - 1);
    this.#next = key;
    this.emit('readable');
    // Two turns: the first lets a lone escape be told from a sequence, the second draws.
    setImmediate(() => setImmediate(() => this.#goOn()));
  }

  #goOn(): void {
    this.#busy = false;
    // A key that was left out painted a line that says so: whoever presses again has seen it.
    const stood = performance.now() - this.#begunMs > STOOD_MS;
    if (stood && !this.#typedAhead) this.#ahead = this.#waiting.length;
    this.#give();
  }
}
