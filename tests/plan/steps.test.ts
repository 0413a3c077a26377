import { describe, expect, test } from 'vitest';
import { inches } from '../../src/measure/inch.js';
import type { Plan, Step } from '../../src/plan/plan.js';
import type { Answers } from '../../src/recipe/values.js';
import { planOf, project } from '../support/projects.js';

const BENCH = project('planter-bench');
const length = (value: number) => ({ kind: 'length', value: inches(value) }) as const;
const choice = (value: string) => ({ kind: 'choice', value }) as const;

const plan = planOf(BENCH);

function step(of: Plan, id: string): Step {
  const found = of.steps.find(it => it.id === id);
  if (!found) throw new Error(`no step ${id}`);
  return found;
}

const ids = (answers: Answers) => planOf(BENCH, answers).steps.map(it => it.id.split('/')[0]);

describe('the steps of the bench', () => {
  test('lead from the talk to the hand-over in the order of the work', () => {
    const phases = plan.steps.map(it => it.phase);
    const order = [
      'plan',
      'buy',
      'cut',
      'notch',
      'dry-fit',
      'assemble',
      'finish',
      'place',
      'hand-over',
    ];
    const places = phases.map(phase => order.indexOf(phase));
    expect(places).toEqual([...places].sort((a, b) => a - b));
    expect(plan.steps[0]?.id).toBe('talk');
    expect(plan.steps.at(-1)?.id).toBe('hand-over');
  });

  // Manuals of miter saws, 6-3/8 in: what is too short to hold is cut off a long board.
  test('set the stop once for each length of a section: what is too short to hold first, then the longest', () => {
    const stops = plan.steps
      .filter(it => it.id.startsWith('cut-boards/2x4@'))
      .map(it => it.big?.text);
    expect(stops).toEqual(['11-1/2 in', '48 in', '18 in', '17 in', '15 in']);
  });

  // A bench of 72 in has one stretcher: "stretchers" would have somebody look for the others.
  test('tell one piece as one', () => {
    const long = planOf(BENCH, { seat_length: length(72) });
    const one = long.steps.filter(({ tally, phase }) => phase === 'cut' && tally?.count === 1);
    expect(one.map(({ title }) => title.replace(/.*: /, ''))).toEqual(['stretcher']);
  });

  // Source: by hand: 6 panels of 18 in with two rails each, and 13 slats of the same length.
  test('cut rails and slats of one length at one setting', () => {
    const at18 = plan.steps.find(it => it.big?.text === '18 in');
    expect(at18?.tally).toEqual({ of: 'piece', count: 6 * 2 + 13 });
  });

  test('tell how deep a notch is and what it must leave', () => {
    const notching = step(plan, 'notch-rails');
    expect(notching.big?.text).toBe('1-3/4 in');
    expect(notching.settings[0]?.text).toContain('leaves 1-3/4 in');
    // Ten panels, two rails each, two ends each.
    expect(notching.tally?.count).toBe(10 * 2 * 2);
  });

  test('count the seat slats', () => {
    expect(step(plan, 'slats').tally).toEqual({ of: 'seat slat', count: 13 });
  });

  // Source: common practice: about 15 minutes, then wipe back.
  test('let sealer soak for 15 minutes and then have it wiped', () => {
    const [dwell] = step(plan, 'seal').timers;
    expect(dwell?.minutes).toBe(15);
    expect(dwell?.then).toMatch(/wipe back/i);
  });

  test('never let the sealer be used without the caution for its rags', () => {
    expect(step(plan, 'seal').care).toContain('rags');
  });

  test('show each step the parts that stand there already', () => {
    const railing = step(plan, 'seat-rails');
    expect(railing.bright.every(id => id.startsWith('seat_rail/'))).toBe(true);
    expect(railing.standing.some(id => id.startsWith('end_panel/left.post/'))).toBe(true);
    expect(railing.standing.some(id => id.startsWith('seat_slat/'))).toBe(false);
  });
});

describe('answers change the steps', () => {
  test('on a roof terrace somebody is asked what it carries, on a slab nobody is', () => {
    expect(ids({ where: choice('roof') })).toContain('ask-load');
    expect(ids({ where: choice('slab') })).not.toContain('ask-load');
  });

  test('a stretcher comes with more than 48 in of seat', () => {
    expect(ids({ seat_length: length(48) })).not.toContain('stretcher');
    expect(ids({ seat_length: length(49) })).toContain('stretcher');
  });

  test('thin slats on a deep seat get a third rail', () => {
    const deep = { seat_depth: length(20), slat: choice('thin') };
    expect(ids(deep)).toContain('middle');
    expect(ids({ ...deep, slat: choice('thick') })).not.toContain('middle');
  });
});

describe('the time plan', () => {
  test('leaves a day between sealing and setting in place', () => {
    const { sessions } = plan.time;
    const sealing = sessions.findIndex(session => session.steps.includes('seal'));
    const placing = sessions.findIndex(session => session.steps.includes('place'));
    expect(placing).toBeGreaterThan(sealing);
    expect(sessions[sealing]?.endsWith).toContain('sealer drying');
  });

  test('longer sessions are fewer', () => {
    const count = (hours: number) =>
      planOf(BENCH, { session_hours: { kind: 'hours', value: hours } }).time.sessions.length;
    expect(count(5)).toBeLessThan(count(2));
  });

  test('no session is longer than was asked for, unless one step is', () => {
    const short = planOf(BENCH, { session_hours: { kind: 'hours', value: 2 } });
    const lasting = short.time.sessions.filter(session => session.steps.length > 1);
    for (const session of lasting) expect(session.minutes).toBeLessThanOrEqual(121);
  });

  test('one person alone needs longer than two', () => {
    const alone = planOf(BENCH, { people: choice('alone') });
    expect(alone.time.hands.value).toBeGreaterThan(plan.time.hands.value);
  });
});

describe('waits and first pieces', () => {
  test('a step that needs the clamps off waits for their timer', () => {
    expect(step(plan, 'stand').after).toEqual(['end-corners/clamp']);
    expect(step(plan, 'place').after).toEqual(['seal/dry']);
    expect(step(plan, 'seal').after).toEqual([]);
  });

  test('each cutting step checks its first piece before the others', () => {
    const cutting = plan.steps.filter(it => it.id.startsWith('cut-boards/'));
    expect(cutting.every(it => it.firstCheck && /first piece/.test(it.look[0] ?? ''))).toBe(true);
  });
});

// Field case F44: check wind with two straight sticks before the screws; clamp on a flat surface, screw opposite
// corners; scribe every leg to the largest gap, since one leg cut by the whole gap leaves the seat out of level.
describe('twist of panels and boxes', () => {
  const { steps } = planOf(project('planter-bench'));
  const step = (id: string) => {
    const found = steps.find(it => it.id === id);
    if (!found) throw new Error(`no step ${id}`);
    return found;
  };

  test.each(['end-corners', 'box-corners', 'box-close'])(
    '%s looks over two straight sticks before the first screw',
    id => {
      expect(step(id).look.join('\n')).toMatch(/Before the first screw.*two straight sticks/);
      expect(step(id).say.join('\n')).toMatch(/on a flat.*opposite corners/s);
    },
  );

  test.each(['slats', 'floor'])('after %s the gap under a foot is looked for and measured', id => {
    expect(step(id).look.join('\n')).toMatch(/flat floor no foot stands clear.*largest gap/);
  });

  test('placing it says which remedy suits, and that one foot is never cut by the whole gap', () => {
    expect(step('place').say.join('\n')).toMatch(
      /twist.*two opposite corners.*scribe all feet to the largest gap.*never one foot by the whole gap/,
    );
  });
});
