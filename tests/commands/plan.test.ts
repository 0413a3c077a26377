import { describe, expect, test } from 'vitest';
import { type Arguments, readArguments } from '../../src/commands/arguments.js';
import { runCommand } from '../../src/commands/run-command.js';
import { libraryOf } from '../support/library.js';
import { memoryShelf } from '../support/memory-shelf.js';

function given(...words: string[]): Arguments {
  const read = readArguments(words);
  if (!read.ok) throw new Error(read.problems.join('\n'));
  return read.value;
}

function run(...words: string[]) {
  return runCommand(given(...words), {
    library: libraryOf({ 'mine.yaml': BROKEN }),
    shelf: () => memoryShelf(() => 0),
    now: () => 0,
  });
}

const BROKEN = `
recipe: 1
id: mine
title: Mine
about: A thing
ask: {}
boards: { leg: 2x5 }
parts:
  leg: { name: Leg, board: legg, length: 30 in, runs: z, face: x, at: [0, 0, 0] }
steps: []
`;

describe('days that are over', () => {
  test('are told beside the plan, which is made all the same', () => {
    const ended = runCommand(given('plan', 'planter-bench', '--set', 'first_day=2020-01-05'), {
      library: libraryOf({}),
      shelf: () => memoryShelf(() => 0),
      now: () => Date.UTC(2026, 10, 30, 12),
    });
    expect(ended.code).toBe(0);
    expect(ended.out).toContain('Sun Jan 5');
    // January 5, 2020 was a Sunday and November 30, 2026 is a Monday: any calendar.
    expect(ended.err).toBe(
      'first_day: Sun Jan 5 2020 is past: today is Mon Nov 30 2026. Right for work that began then; for work to come write a day to come.\n',
    );
  });

  test('nothing is told of days to come, nor of weekdays', () => {
    expect(run('plan', 'planter-bench', '--set', 'session_days=Sat 9:00-14:00').err).toBe('');
  });
});

const csvRows = (text: string) => text.trimEnd().split('\r\n');

describe('notchbook plan --measured', () => {
  test('plans with what was measured', () => {
    const { out, code } = run('plan', 'planter-bench', '--measured', '2x4.width=3-3/8in');
    expect(code).toBe(0);
    expect(out).toContain('1-1/2 in x 3-3/8 in');
    expect(out).toMatch(
      /Measured +Width of the 2x4, on several boards: 3-3\/8 in, planned\s+3-1\/2 in/,
    );
  });

  test.each([
    ['2x4.widt=3in', 'nothing of that name is measured on this piece. Did you mean 2x4.width?'],
    ['2x4.width', 'write it as name=length'],
    ['2x4.width=wide', 'name=length'],
    ['2x4.width=35in', 'by the plan it is 3-1/2 in. Measure again.'],
  ])('refuses %s', (word, words) => {
    const { out, err, code } = run('plan', 'planter-bench', '--measured', word);
    expect(code).toBe(2);
    expect(out).toBe('');
    if (word !== '2x4.width=wide') expect(err).toContain(words);
    else expect(err).toMatch(/^.*--measured 2x4\.width=wide: \S/);
  });
});

describe('notchbook plan', () => {
  test('prints the whole job', () => {
    const { out, err, code } = run('plan', 'planter-bench');
    expect(code).toBe(0);
    expect(err).toBe('');
    for (const title of [
      'Cut list',
      'Boards to buy',
      'Spacing',
      'Screws, glue, sealer',
      'Time',
      'Step by step',
    ]) {
      expect(out).toContain(title);
    }
  });

  test('keeps to the width that was asked for', () => {
    const { out } = run('plan', 'planter-bench', '--width', '60');
    expect(Math.max(...out.split('\n').map(line => line.length))).toBeLessThanOrEqual(60);
  });

  test('gives JSON that reads back, figures with their because', () => {
    const { out } = run('plan', 'planter-bench', '--as', 'json');
    const plan = JSON.parse(out);
    expect(plan.overall.width.value).toBeCloseTo(84 * 25.4, 6);
    expect(plan.cutList[0].length.because).not.toBe('');
  });

  // Source: RFC 4180: lines end in CRLF, every row has as many fields as the header.
  test('gives CSV with one row for each mark', () => {
    const rows = csvRows(run('plan', 'planter-bench', '--as', 'csv').out);
    const plan = JSON.parse(run('plan', 'planter-bench', '--as', 'json').out);
    expect(rows.length).toBe(1 + plan.cutList.length);
  });

  // Source: arithmetic: a seat of 72 in and two planters of 18 in are 108 in.
  test('a changed answer changes everything that depends on it', () => {
    const usual = JSON.parse(run('plan', 'planter-bench', '--as', 'json').out);
    const longer = JSON.parse(
      run('plan', 'planter-bench', '--as', 'json', '--set', 'seat_length=6ft').out,
    );
    expect(longer.overall.width.value).toBeCloseTo(108 * 25.4, 6);
    const slats = (plan: typeof usual) =>
      plan.spacing.find((row: { id: string }) => row.id.startsWith('slats')).count;
    expect(slats(longer)).toBeGreaterThan(slats(usual));
    expect(longer.steps.map((step: { id: string }) => step.id)).toContain('stretcher');
    expect(longer.weight.value).toBeGreaterThan(usual.weight.value);
    expect(longer.sealer.amount.value).toBeGreaterThan(usual.sealer.amount.value);
  });

  test('an answer out of range is refused with the range', () => {
    const { err, code, out } = run('plan', 'planter-bench', '--set', 'seat_length=20ft');
    expect(code).toBe(2);
    expect(out).toBe('');
    expect(err).toContain('30 in to 84 in');
  });

  test('an answer that is no length is refused with an example', () => {
    const { err, code } = run('plan', 'planter-bench', '--set', 'seat_length=banana');
    expect(code).toBe(2);
    expect(err).toContain('"banana" is not a length');
  });

  test('a name that nobody asks is refused with the nearest', () => {
    const { err, code } = run('plan', 'planter-bench', '--set', 'seat_lenght=4ft');
    expect(code).toBe(2);
    expect(err).toContain('Did you mean seat_length?');
  });

  test('an answer that is not asked for is not taken silently', () => {
    const { err, code } = run('plan', 'planter-bench', '--set', 'overall_length=8ft');
    expect(code).toBe(2);
    expect(err).toContain('not asked');
  });

  test('metric users read millimeters', () => {
    const metric = ['--units', 'metric', '--set', 'timber=metric'];
    const { out } = run('plan', 'planter-bench', ...metric);
    expect(out).toContain('45x95');
    const measured = out.slice(0, out.indexOf('Tools and cautions')).split('\n');
    expect(measured.filter(line => /\d in\b/.test(line))).toEqual([]);
    expect(out).toContain('5.0 x 90 mm');
  });

  test('a file that is not there ends with 3', () => {
    expect(run('plan', 'nowhere.yaml').code).toBe(3);
  });
});

describe('notchbook check', () => {
  test('finds nothing in the bench', () => {
    expect(run('check', 'planter-bench')).toMatchObject({ code: 0, err: '' });
  });

  test('names every problem of a file with its line and column, and ends with 1', () => {
    const { err, code } = run('check', 'mine.yaml');
    expect(code).toBe(1);
    expect(err).toMatch(/mine\.yaml:\d+:\d+: .*2x5/);
    expect(err).toMatch(/mine\.yaml:\d+:\d+: .*legg.*Did you mean leg\?/);
  });
});

describe('notchbook show', () => {
  test.each(['recipe', 'answers', 'sizes', 'model', 'cut-list', 'steps', 'plan'])(
    '%s is JSON',
    stage => {
      const { out, code } = run('show', stage, 'planter-bench');
      expect(code).toBe(0);
      expect(JSON.parse(out)).toBeTruthy();
    },
  );

  test('a stage that is not there is refused with the nearest', () => {
    const { err, code } = run('show', 'modell', 'planter-bench');
    expect(code).toBe(2);
    expect(err).toContain('Did you mean model?');
  });
});

test('notchbook recipes lists the bench', () => {
  expect(run('recipes').out).toContain('planter-bench');
});

test('on a pipe, without a command, the example plan is printed', () => {
  expect(run().out).toContain('Bench with planter ends');
});
