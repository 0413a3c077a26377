import { BENCH_SCREENS } from './bench-screens.js';
import { FIRST_SCREEN } from './first-screen.js';
import { opener, type Screens } from './page.js';
import { interviewScreen } from './screens/interview/screen.js';
import { keysScreen } from './screens/keys/screen.js';
import { planScreen } from './screens/plan/screen.js';

/** Every screen by its name. */
export const SCREENS: Screens = {
  home: FIRST_SCREEN,
  interview: opener(interviewScreen),
  plan: opener(planScreen),
  keys: opener(keysScreen),
  ...BENCH_SCREENS,
};
