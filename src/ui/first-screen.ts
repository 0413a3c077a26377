import { opener } from './page.js';
import { homeScreen } from './screens/home/screen.js';

/** What the program opens with; everything else is loaded behind it. */
export const FIRST_SCREEN = opener(homeScreen);
