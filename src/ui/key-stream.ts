import { EventEmitter } from 'node:events';
import { singleReads } from './keys.js';

/** A pasted page is no series of keys; what is beyond this is left out. */
const LONGEST_BURST = 2000;

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

  constructor(source: NodeJS.ReadStream) {
    super();
    this.#source = source;
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
    this.#next = key;
    this.emit('readable');
    // Two turns: the first lets a lone escape be told from a sequence, the second draws.
    setImmediate(() => setImmediate(() => this.#goOn()));
  }

  #goOn(): void {
    this.#busy = false;
    this.#give();
  }
}
