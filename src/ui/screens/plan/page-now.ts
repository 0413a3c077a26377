import type { Page } from '../../../text/page.js';
import { forecast } from '../../../workbook/forecast.js';
import { forecastWords } from '../../../workbook/forecast-words.js';
import type { Build } from '../../screen.js';
import { withBoardsNow } from './boards-now.js';

/** A page of the plan with what the build has made of it by now. */
export function pageNow(page: Page, build: Build): Page {
  return page.id === 'time' ? withForecast(page, build) : withBoardsNow(page, build);
}

const LEARNED =
  'Learned from how long your steps took, kind of work by kind of work; pauses and waits are left out, and an hour of the plan counts beside it.';

/** On the page of time, above what was planned: when it will likely be done, as of the last entry. */
function withForecast(page: Page, build: Build): Page {
  const { done, lastAtMs } = build.progress;
  if (done.size === 0 || lastAtMs === undefined) return page;
  const likely = forecast(build, lastAtMs);
  if (likely === undefined) return page;
  const text = `Likely done ${forecastWords(likely)}. ${LEARNED}`;
  const now = { kind: 'words', text } as const;
  const planned = { kind: 'heading', text: 'As it was planned' } as const;
  return { ...page, blocks: [now, planned, ...page.blocks] };
}
