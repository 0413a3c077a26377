import { FIRST_SCREEN } from './first-screen.js';
import { opener, type Screens } from './page.js';
import { interviewScreen } from './screens/interview/screen.js';
import { keysScreen } from './screens/keys/screen.js';
import { mistakeScreen } from './screens/mistake/screen.js';
import { pauseScreen } from './screens/pause/screen.js';
import { planScreen } from './screens/plan/screen.js';
import { resumeScreen } from './screens/resume/screen.js';
import { stepScreen } from './screens/step/screen.js';
import { timersScreen } from './screens/timers/screen.js';

/** Every screen by its name. */
export const SCREENS: Screens = {
  home: FIRST_SCREEN,
  interview: opener(interviewScreen),
  plan: opener(planScreen),
  step: opener(stepScreen),
  timers: opener(timersScreen),
  pause: opener(pauseScreen),
  resume: opener(resumeScreen),
  mistake: opener(mistakeScreen),
  keys: opener(keysScreen),
};
