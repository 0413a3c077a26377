import { afterEach, describe, expect, test } from 'vitest';
import { toInches } from '../../src/measure/inch.js';
import { topPage } from '../../src/ui/session.js';
import { aMoment, type ProgramOptions, shownOn } from '../support/program.js';

const BEGIN = [{ kind: 'begin-interview', recipe: 'duckboard' }] as const;
const DOWN = '\x1b[B';
const PAGE_UP = '\x1b[5~';

let shown: Awaited<ReturnType<typeof shownOn>>;

async function interview(options: ProgramOptions = {}) {
  shown = await shownOn({ asks: BEGIN, ...options });
  return shown;
}

afterEach(() => shown.close());

/** Single reads for a text: a person types one key after the other. */
function letters(text: string): readonly string[] {
  return Array.from(text);
}

async function toLength() {
  await interview();
  await shown.press('\r');
}

describe('a question', () => {
  test('stands alone, with its group, its number, its reason and its choices', async () => {
    const { text } = await interview();
    expect(text()).toContain('The size: question 1 of 4');
    expect(text()).toContain('Where will it lie?');
    expect(text()).toContain('Wet ground rots wood.');
    expect(text()).toContain('> 1  Porch  stays dry');
    expect(text()).toContain('  2  Lawn   always damp');
  });

  test('has its usual answer standing there, and enter takes it', async () => {
    await toLength();
    expect(shown.text()).toContain('The size: question 2 of 4');
    expect(shown.text()).toContain('> 36 in');
    // 36 in x 25.4 mm = 914.4 mm.
    expect(shown.text()).toContain('36 in, that is 914 mm');
    expect(shown.text()).toContain('From 2 ft (24 in) to 5 ft (60 in). Usual: 36 in.');
    await shown.press('\r');
    expect(shown.text()).toContain('question 3 of 4');
  });

  test('takes a typed answer in place of the usual one', async () => {
    await toLength();
    await shown.press(...letters('4ft'));
    expect(shown.text()).toContain('48 in, that is 1219 mm');
  });

  test('says at once what is wrong and what would be right, and enter stays', async () => {
    await toLength();
    await shown.press(...letters('9 ft'), '\r');
    expect(shown.text()).toContain('! 9 ft is more than 5 ft (60 in). From 24 in to 60 in.');
    expect(shown.text()).toContain('question 2 of 4');
  });

  test('asks one more where an answer calls for it', async () => {
    await interview();
    await shown.press(DOWN);
    expect(shown.text()).toContain('question 1 of 4');
    await shown.press('\r');
    expect(shown.text()).toContain('question 2 of 5');
  });

  test('a number marks a choice, enter takes it', async () => {
    await interview();
    await shown.press('2');
    expect(shown.text()).toContain('> 2  Lawn');
    await shown.press('\r', '\r', '\r');
    expect(shown.text()).toContain('How deep is it on the lawn?');
  });

  test('a list is one line with its form beside it', async () => {
    await toLength();
    await shown.press('\r', '\r');
    expect(shown.text()).toContain('Write section, length @ price');
    await shown.press(...letters('1x4 8 ft @ 3.98'));
    expect(shown.text()).toContain('1 board on offer');
  });
});

describe('back and forth', () => {
  test('going back loses nothing', async () => {
    await toLength();
    await shown.press(...letters('50 in'), PAGE_UP);
    expect(shown.text()).toContain('question 1 of 4');
    await shown.press('\r');
    expect(shown.text()).toContain('> 50 in');
  });

  test('an answer that was only looked at stays the usual one', async () => {
    await toLength();
    await shown.press(PAGE_UP, '\t');
    expect(shown.text()).toMatch(/How long is it\? +36 in \(usual\)/);
  });

  test('what is suggested gives way to what is typed, a list too, and right changes it', async () => {
    await toLength();
    expect(shown.text()).toContain('> 36 in');
    await shown.press(...letters('50 in'), PAGE_UP, '\r', ...letters('60 in'));
    expect(shown.text()).toMatch(/> 60 in *$/m);
    await shown.press('\r', '\r', ...letters('1x4 8 ft @ 3.98, 2x4 8 ft'), PAGE_UP, '\r');
    await shown.press('\x1b[C', ...letters(' @ 7'));
    expect(shown.text()).toMatch(/> 1x4 .*3.98.*2x4 .*8 ft @ 7 *$/m);
    await shown.press(PAGE_UP, '\r', ...letters('1x2 8 ft @ 2'));
    expect(shown.text()).toMatch(/> 1x2 8 ft @ 2 *$/m);
  });

  test('that typing replaces it stands there, and Ctrl-U clears what was typed', async () => {
    await toLength();
    expect(shown.text()).toContain('What you type replaces it.');
    await shown.press(...letters('5'));
    expect(shown.text()).not.toContain('replaces it');
    await shown.press('\x1b[1;8A');
    expect(shown.text()).toContain('> 36 in');
    await shown.press('\x1b[C', '\x1b[1;8A', ...letters('4ft'));
    expect(shown.text()).toContain('48 in, that is 1219 mm');
  });

  test('left goes back too, once the cursor is at the start', async () => {
    await toLength();
    await shown.press('\x1b[H', '\x1b[D');
    expect(shown.text()).toContain('question 1 of 4');
  });

  test('leaving with answers given asks once', async () => {
    await toLength();
    await shown.press(PAGE_UP, PAGE_UP);
    expect(shown.text()).toContain('Leaving forgets these answers');
    await shown.press(PAGE_UP);
    expect(shown.text()).toContain('Start a piece of your own');
  });
});

describe('what an answer does to the piece', () => {
  test('shows in the next pause: size, boards, pieces, money', async () => {
    await toLength();
    expect(await shown.until('With this answer')).toContain('36 in wide');
    await shown.press(...letters('48 in'));
    const text = await shown.until('48 in wide');
    // Two runners of 48 in; slats 3-1/2 in wide with gaps of about 1/2 in: 12 x 3-1/2 + 11 x 6/11 = 48.
    expect(text).toContain('14 pieces');
    await shown.press('\r', '\r', ...letters('2x4 8 ft @ 7.00, 1x4 8 ft @ 3.00'));
    // Two 2x4 of 48 in less kerf do not come out of one 8 ft board: 2 boards. Twelve 1x4 of
    // 19-1/2 in: four to an 8 ft board, 3 boards. 2 x 7.00 + 3 x 3.00 = 23.00.
    expect(await shown.until('23.00')).toContain('23.00 for boards');
  });

  test('is not claimed for a text that can not be read', async () => {
    await toLength();
    await shown.until('With this answer');
    await shown.press('x');
    expect(await shown.until('Before this answer')).toContain('Before this answer');
  });

  test('comes with a picture where there is room', async () => {
    await interview({ size: { columns: 100, rows: 40 } });
    expect(await shown.until('┌')).toContain('┌');
  });
});

describe('the end', () => {
  test('tab takes the usual for all the rest and shows all answers', async () => {
    await toLength();
    await shown.press(...letters('50 in'), '\t');
    const text = shown.text();
    expect(text).toContain('All right so');
    expect(text).toMatch(/How long is it\? +50 in$/m);
    expect(text).toMatch(/Shall the edges be rounded\? +no \(usual\)/);
  });

  test('one key leaves from there, asked once where answers would be forgotten', async () => {
    await interview();
    await shown.press(DOWN, '\r', '\t');
    expect(shown.text()).toContain('[q] leave');
    await shown.press('q');
    expect(shown.text()).toContain('Press q once more to leave');
    await shown.press(DOWN);
    expect(shown.text()).not.toContain('once more');
    await shown.press('q', 'q');
    expect(topPage(shown.session.snapshot()).name).toBe('home');
  });

  test('esc leaves a copy of a build at once, since its answers are kept there', async () => {
    await interview({ asks: [{ kind: 'build-alike', id: 'porch' }] });
    expect(shown.text()).toContain('Your answers');
    expect(shown.text()).toContain('[esc] leave');
    await shown.press('\x1b');
    await aMoment(50);
    expect(topPage(shown.session.snapshot()).name).toBe('home');
  });

  test('one answer can be changed from there, and one is back there after it', async () => {
    await interview();
    await shown.press('\t', DOWN, DOWN, '\r', ...letters('40 in'), '\r');
    expect(shown.text()).toMatch(/> How long is it\? +40 in$/m);
  });

  test('the build gets a name and begins with all answers', async () => {
    await interview();
    await shown.press('\t', '\r');
    expect(shown.text()).toContain('> Duckboard');
    shown.bench.wait(1000);
    await shown.press('\x1b[C', ' ', '2', '\r');
    const [made] = shown.bench.created;
    expect(made?.name).toBe('Duckboard 2');
    const long = made?.answers.long;
    expect(long?.kind === 'length' ? toInches(long.value) : 0).toBeCloseTo(36, 6);
    expect(shown.text()).toContain('the plan screen');
  });

  test('a glove that bounces does not name a build by accident', async () => {
    await interview();
    await shown.press('\t', '\r', '\r');
    expect(shown.bench.created).toHaveLength(0);
  });

  test.each([
    ['nothing', [], 'Duckboard'],
    ['a space of a dusty thumb', [' '], 'Duckboard'],
    ['a name', letters('For the roof'), 'For the roof'],
    ['a name, all of it taken back', [...letters('Ro'), '\x7f', '\x7f', '\x7f'], 'Duckboard'],
    ['right, to change the suggestion', ['\x1b[C', '\x7f', ...letters('ing')], 'Duckboaring'],
  ])('with %s typed, the suggested name is taken or gives way', async (_, keys, name) => {
    await interview();
    await shown.press('\t', '\r', ...keys);
    shown.bench.wait(1000);
    await shown.press('\r');
    expect(shown.bench.created.map(made => made.name)).toEqual([name]);
  });

  test('control characters in a pasted name are dropped', async () => {
    await interview();
    await shown.press('\t', '\r', ' a\x07b[201~');
    expect(shown.text()).toMatch(/> ab *$/m);
  });
});

describe('in any window', () => {
  test.each([
    [60, 20],
    [80, 24],
    [100, 40],
  ])('%i by %i: nothing is wider or higher than the frame', async (columns, rows) => {
    await interview({ size: { columns, rows } });
    await shown.until('With this answer');
    for (const read of ['\r', '\r', '\r', '\r', '\r']) {
      expect(shown.lines().length).toBeLessThanOrEqual(rows - 1);
      expect(Math.max(...shown.lines().map(line => line.length))).toBeLessThanOrEqual(columns);
      expect(shown.text()).toContain('[esc] back');
      await shown.press(read);
    }
  });

  test('plain ASCII has no other characters', async () => {
    await interview({ ascii: true, size: { columns: 100, rows: 40 } });
    await shown.until('With this answer');
    expect(shown.text()).toMatch(/^[\x20-\x7e\n]*$/);
  });
});
