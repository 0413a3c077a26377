import { sealerOf } from '../materials/sealer.js';
import { formatClock } from '../measure/clock.js';
import { formatMinutes } from '../measure/duration.js';
import type { Minutes } from '../measure/quantities.js';
import { formatTemperature } from '../measure/temperature.js';
import { count } from '../text/plural.js';
import type { Laid, LaidOut } from './lay-work.js';
import type { Session, Step } from './plan.js';
import { sealHoursWords } from './seal-hours.js';
import { SEALER } from './sealer-plan.js';
import type { Setting } from './setting.js';
import { isLoud } from './work-pieces.js';

/** What stands against the hours that were given: too few, too late for saws, at the wrong time of day for sealer. */
export function timeTroubles(laid: Laid, steps: readonly Step[], setting: Setting): string {
  if (laid.ok)
    return [beyondWords(laid.sessions), sealWords(laid, steps, setting)]
      .filter(it => it !== '')
      .join(' ');
  return TROUBLES[laid.why](setting, steps);
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
  return `The ${named} you named ${sessions.length - more === 1 ? 'does' : 'do'} not hold all the work: ${count(more, 'session')} more like the last ${more === 1 ? 'is' : 'are'} laid after them.`;
}

function loudMinutes(steps: readonly Step[]): Minutes {
  return steps.reduce((sum, step) => sum + (isLoud(step) ? step.minutes.value : 0), 0);
}

const TROUBLES: Readonly<
  Record<
    Extract<Laid, { readonly ok: false }>['why'],
    (setting: Setting, steps: readonly Step[]) => string
  >
> = {
  'no-loud-hour': ({ sessions }) =>
    `No session begins before ${formatClock(sessions.noiseUntil)}, the last hour of noise: the saws have no time. Begin earlier on one day, or cut elsewhere.`,
  'few-loud-hours': ({ sessions }, steps) =>
    `Saws, nailer and sander need about ${formatMinutes(loudMinutes(steps))} before ${formatClock(sessions.noiseUntil)}, the last hour of noise, and your sessions leave them less than that. Begin earlier on some days, or cut elsewhere.`,
  'too-few-days': () =>
    'The days you named do not hold all the work. Name more of them, or longer hours.',
};
