import { sealerOf } from '../materials/sealer.js';
import { formatClock } from '../measure/clock.js';
import { formatTemperature } from '../measure/temperature.js';
import { count } from '../text/plural.js';
import type { Laid, LaidOut } from './lay-work.js';
import type { Session, Step } from './plan.js';
import { sealHoursWords } from './seal-hours.js';
import { SEALER } from './sealer-plan.js';
import type { Setting } from './setting.js';

/** What stands against the hours that were given: too few, too late for saws, at the wrong time of day for sealer. */
export function timeTroubles(laid: Laid, steps: readonly Step[], setting: Setting): string {
  if (laid.ok)
    return [beyondWords(laid.sessions), sealWords(laid, steps, setting)]
      .filter(it => it !== '')
      .join(' ');
  return TROUBLES[laid.why](setting);
}

/** The hours of sealing, where none that somebody has suit it. */
function sealWords(
  { sessions, sealed }: LaidOut,
  steps: readonly Step[],
  { display }: Setting,
): string {
  if (sealed === 'fair') return '';
  const coats = steps.filter(({ day }) => day === 'seal').map(({ id }) => id);
  const turns = sessions.flatMap(({ date, turns }) => turns.map(turn => ({ ...turn, date })));
  const sealing = turns.find(({ step }) => coats.includes(step));
  if (sealing === undefined) return '';
  const warm = formatTemperature(sealerOf(SEALER).lowest.value, display);
  return `Sealing falls at ${formatClock(sealing.from)}, when dew may settle on it; outdoors it wants ${sealHoursWords(sealing.date)}. Give it the morning of a day off, or seal indoors where it stays ${warm} or more, the night too, with the air moving.`;
}

/** The dates that were named are too few: said, and more days like the last stand in. */
function beyondWords(sessions: readonly Session[]): string {
  const more = sessions.filter(({ beyond }) => beyond).length;
  if (more === 0) return '';
  const named = count(sessions.length - more, 'date');
  return `The ${named} you named do not hold all the work: ${count(more, 'session')} more like the last ${more === 1 ? 'is' : 'are'} laid after them.`;
}

const TROUBLES: Readonly<Record<'no-loud-hour' | 'too-few-days', (setting: Setting) => string>> = {
  'no-loud-hour': ({ sessions }) =>
    `No session begins before ${formatClock(sessions.noiseUntil)}, the last hour of noise: the saws have no time. Begin earlier on one day, or cut elsewhere.`,
  'too-few-days': () =>
    'The days you named do not hold all the work. Name more of them, or longer hours.',
};
