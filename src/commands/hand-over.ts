import { readBuild } from '../files/read-build.js';
import { nearestWord } from '../measure/suggest.js';
import type { Page } from '../text/page.js';
import { pageLines } from '../text/page-lines.js';
import { pageMarkdown } from '../text/page-markdown.js';
import { openBuild } from '../ui/build.js';
import { handOverPages } from '../workbook/pages/hand-over-pages.js';
import type { Arguments } from './arguments.js';
import { PLANNER, SAVED_BEFORE, withRecipe } from './kept-build.js';
import { EXIT, failed, type Outcome } from './outcome.js';

type Builds = ReturnType<typeof readBuild> & { readonly ok: false };

/** `notchbook hand-over BUILD`: care sheet and build record of a build, as text or Markdown. */
export function handOverCommand(given: Arguments, folder: string): Outcome {
  const [name, ...more] = given.rest;
  if (given.as === 'json' || given.as === 'csv') {
    return failed([`--as ${given.as}: hand-over prints text or markdown`], EXIT.usage);
  }
  if (more.length > 0) {
    return failed(
      [`hand-over takes one build; quote a name of several words: "${given.rest.join(' ')}"`],
      EXIT.usage,
    );
  }
  const found = readBuild(folder, name ?? '');
  if (!found.ok) return notFound(found, name, folder);
  const opened = openBuild(withRecipe(found.workbook), PLANNER);
  if (!opened.ok) return failed([opened.problem], EXIT.files);
  const pages = handOverPages(opened.build);
  const err = found.savedBefore ? SAVED_BEFORE : '';
  return { out: printed(pages, given), err, code: EXIT.fine };
}

function printed(pages: readonly Page[], { as, width }: Arguments): string {
  if (as === 'markdown') return `${pages.map(pageMarkdown).join('\n\n')}\n`;
  return `${pages.map(page => pageLines(page, width).join('\n')).join('\n\n\n')}\n`;
}

function notFound(found: Builds, name: string | undefined, folder: string): Outcome {
  if (found.why === 'unreadable') return failed([found.words], EXIT.files);
  if (found.known.length === 0) {
    const none = `There are no builds in ${folder}.`;
    return failed(
      [`${none} Start one with "notchbook", or name another folder with --data.`],
      EXIT.usage,
    );
  }
  const ids = found.known.map(({ id }) => id);
  const near = name === undefined ? undefined : nearestWord(name, ids);
  const asked = name === undefined ? 'Which build?' : `There is no build "${name}" in ${folder}.`;
  return failed(
    [`${asked}${near ? ` Did you mean ${near}?` : ''}`, `There are: ${ids.join(', ')}`],
    EXIT.usage,
  );
}
