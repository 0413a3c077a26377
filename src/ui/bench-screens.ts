import { opener } from './page.js';
import { dayScreen } from './screens/day/screen.js';
import { measureScreen } from './screens/measure/screen.js';
import { mistakeScreen } from './screens/mistake/screen.js';
import { pauseScreen } from './screens/pause/screen.js';
import { resumeScreen } from './screens/resume/screen.js';
import { stepScreen } from './screens/step/screen.js';
import { timersScreen } from './screens/timers/screen.js';

/** The screens of a build that is under way. */
export const BENCH_SCREENS = {
  step: opener(stepScreen),
  timers: opener(timersScreen),
  pause: opener(pauseScreen),
  resume: opener(resumeScreen),
  mistake: opener(mistakeScreen),
  measure: opener(measureScreen),
  day: opener(dayScreen),
};
