import { describe, expect, test } from 'vitest';
import { feet } from '../../../src/measure/inch.js';
import { stepScreen } from '../../../src/ui/screens/step/screen.js';
import { allTold, buildAfter, contextWith, ROOM, TUESDAY_MS } from '../../support/open-build.js';
import { planOf, project } from '../../support/projects.js';
import { screenPage } from '../../support/screen-page.js';

const PLAN = planOf(project('planter-bench'), {
  offers: {
    kind: 'offers',
    value: [
      { section: '2x4', length: feet(8), cents: 448 },
      { section: '1x2', length: feet(8), cents: 298 },
    ],
  },
});

const atMs = TUESDAY_MS;

describe.each([80, 60])('ripping in a window of %i columns', columns => {
  test('one fence, the strips counted, the push stick named', async () => {
    const build = buildAfter(
      [
        { kind: 'build-started', atMs },
        ...allTold(PLAN, atMs),
        { kind: 'step-visited', atMs, step: 'rip/1x2' },
      ],
      PLAN,
    );
    const at = contextWith(build, { size: ROOM[columns] ?? { columns, rows: 18 } });
    await expect(screenPage(stepScreen, stepScreen.open(at), at)).toMatchFileSnapshot(
      `../../pages/step-rip-${columns}.txt`,
    );
  });
});
