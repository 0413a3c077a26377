import { describe, expect, test } from 'vitest';
import { optionLines, optionRows } from '../../src/ui/screens/interview/room.js';
import { buildAfter, contextWith } from '../support/open-build.js';
import { project } from '../support/projects.js';

const questions = project('planter-bench').groups.flatMap(group => group.questions);

/** Who decides on one answer wants to see the others: ages of a helper, glues, places, all of them at once. */
describe.each([
  [80, 24],
  [120, 40],
])('in a window of %i by %i', (columns, rows) => {
  // The frame: a row of the window, the head's two and the foot's three.
  const at = contextWith(buildAfter([]), { size: { columns, rows: rows - 6 } });

  test.each(questions.map(question => [question.say, question] as const))(
    '"%s" shows all its options, where they are no more than six',
    (_, question) => {
      const { length } = optionLines(question);
      if (length <= 6) expect(optionRows(question, at)).toBeGreaterThanOrEqual(length);
    },
  );
});
