import { expect, test } from 'vitest';
import { underFire } from '../support/under-fire.js';

const KILLS = 50;
/** Builds under way at once, each with its own folder and its share of the kills: a core for each. */
const SEEDS = [20_261_103, 20_261_104];

test(`nothing that was shown is lost by ${KILLS} kills (seeds ${SEEDS.join(', ')})`, async () => {
  const tolls = await Promise.all(
    SEEDS.map(seed => underFire({ seed, kills: KILLS / SEEDS.length })),
  );
  for (const { kills, lost, unreadable, events } of tolls) {
    expect(lost).toEqual([]);
    expect(unreadable).toEqual([]);
    // The keys did get somewhere: a build that stands still would lose nothing either.
    expect(events).toBeGreaterThan(kills);
  }
}, 120_000);
