import { EventEmitter } from 'node:events';
import { describe, expect, test } from 'vitest';
import { KeyStream } from '../../src/ui/key-stream.js';
import { opener } from '../../src/ui/page.js';
import { urgentLines } from '../../src/ui/program.js';
import type { Key } from '../../src/ui/screen.js';
import { stepScreen } from '../../src/ui/screens/step/screen.js';
import { topPage } from '../../src/ui/session.js';
import { aMoment, programOn } from '../support/program.js';

const SPACE: Key = { name: 'space' };

/** "What follows from it" of a length that was measured: the big key goes back to the step. Two runners are to be cut. */
function atWhatFollows() {
  const { bench, session } = programOn({
    asks: [
      { kind: 'open-build', id: 'porch' },
      { kind: 'go', to: 'measure' },
    ],
    askFor: key => (key.name === 'space' ? [{ kind: 'go', to: 'step' }] : []),
    screens: { step: opener(stepScreen) },
  });
  const events = () => session.snapshot().build?.workbook.events ?? [];
  const made = (kind: string) => events().filter(event => event.kind === kind).length;
  return { bench, session, made };
}

describe('the big key pressed while the machine stood', () => {
  test('counts no piece of the step that has come up meanwhile, and that is said', () => {
    const { bench, session, made } = atWhatFollows();
    session.press(SPACE);
    expect(topPage(session.snapshot()).name).toBe('step');
    bench.typedAhead = true;
    bench.wait(3000);
    session.press(SPACE);
    session.press(SPACE);
    expect(made('piece-done')).toBe(0);
    expect(urgentLines(session.snapshot())[0]?.text).toContain('before this page was shown');
    bench.typedAhead = false;
    bench.wait(1000);
    session.press(SPACE);
    expect(made('piece-done')).toBe(1);
    expect(urgentLines(session.snapshot())).toEqual([]);
  });

  test('counts every piece of the step that was seen, and ends no step that was not', () => {
    const { bench, session, made } = atWhatFollows();
    session.press(SPACE);
    bench.wait(1000);
    session.press(SPACE);
    bench.typedAhead = true;
    for (let i = 0; i < 6; i += 1) session.press(SPACE);
    expect(made('piece-done')).toBe(2);
    expect(made('step-done') + made('check-made')).toBe(0);
  });
});

/** A terminal from which reads come, and what takes them does with each key. */
function streamOf(onKey: (key: string, stream: KeyStream) => void) {
  const reads: string[] = [];
  const source = Object.assign(new EventEmitter(), {
    setRawMode: () => undefined,
    read: () => reads.shift() ?? null,
  });
  const stream = new KeyStream(source as unknown as NodeJS.ReadStream);
  stream.on('readable', () => {
    for (let key = stream.read(); key !== null; key = stream.read()) onKey(key, stream);
  });
  stream.setRawMode(true);
  const types = (read: string) => {
    reads.push(read);
    source.emit('readable');
  };
  return { types };
}

function standFor(ms: number): void {
  const until = performance.now() + ms;
  while (performance.now() < until);
}

describe('keys that come while a slow page is made', () => {
  test('are known to be typed ahead; those of a quick burst, and those that come later, are not', async () => {
    const seen: string[] = [];
    const { types } = streamOf((key, stream) => {
      seen.push(stream.isTypedAhead ? `${key} ahead` : key);
      if (key === 's') {
        setImmediate(() => types('2'));
        standFor(300);
      }
    });
    types('ab');
    await aMoment(50);
    types('s1');
    await aMoment(400);
    types('c');
    await aMoment(50);
    expect(seen).toEqual(['a', 'b', 's', '1 ahead', '2 ahead', 'c']);
  });
});
