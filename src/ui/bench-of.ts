import type { Bench } from '../plan/rack-now.js';
import { settingOf } from '../plan/setting.js';
import type { Build } from './screen.js';

/** What the plan's rules of the rack need to know of a build. */
export function benchOf({ plan, workbook, progress }: Build): Bench {
  return { plan, setting: settingOf(workbook.answers, plan.display), work: progress };
}
