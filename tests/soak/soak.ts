import { parseArgs } from 'node:util';
import { underFire } from '../support/under-fire.js';

/** Builds under way at once: each mostly waits for its screen. */
const AT_ONCE = 2;
const TELL_EVERY = 50;

const { values } = parseArgs({
  options: { kills: { type: 'string' }, seed: { type: 'string' } },
});
const wanted = Number(values.kills ?? 1000);
const seed = Number(values.seed ?? 20_261_130);
if (!Number.isInteger(wanted) || wanted < AT_ONCE || !Number.isInteger(seed) || seed < 1) {
  console.error(`--kills: a whole number from ${AT_ONCE} up; --seed: one from 1 up`);
  process.exit(2);
}

let killed = 0;
function onKill(): void {
  killed += 1;
  if (killed % TELL_EVERY === 0) console.log(`${killed} of ${wanted} kills`);
}

const shares = Array.from({ length: AT_ONCE }, (_, i) => Math.floor((wanted + i) / AT_ONCE));
const tolls = await Promise.all(
  shares.map((kills, i) => underFire({ seed: seed + i, kills, onKill })),
);
const lost = tolls.flatMap(toll => toll.lost);
const unreadable = tolls.flatMap(toll => toll.unreadable);
for (const line of [...lost, ...unreadable]) console.log(line);
const events = tolls.reduce((sum, toll) => sum + toll.events, 0);
console.log(`entries in the journals: ${events}, seed: ${seed}`);
console.log(`kills: ${killed}, lost: ${lost.length}, unreadable: ${unreadable.length}`);
process.exitCode = lost.length + unreadable.length === 0 ? 0 : 1;
