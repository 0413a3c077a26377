import { rangeCorners } from '../../src/recipe/range-corners.js';
import { FRAMES, firstPictureTime, withPicture } from '../support/picture-times.js';
import { planOf, project } from '../support/projects.js';

/** The first drawing of a step, warm: the least of some rounds. */
export type PictureTime = { readonly what: string; readonly ms: number };

/** A frame at 60 in a second. */
const FRAME_MS = 16;

/** Of every step of the bench at the usual answers and at ends of their ranges, in both windows. */
export function pictureTimes(rounds: number): readonly PictureTime[] {
  const recipe = project('planter-bench');
  const corners = rangeCorners(recipe).filter((_, at) => at % 7 === 0);
  return [{}, ...corners].flatMap((answers, at) => {
    const plan = planOf(recipe, answers);
    return FRAMES.flatMap(frame =>
      withPicture(plan).map(step => {
        const where = at === 0 ? 'usual' : `end ${at} of the ranges`;
        const once = () => firstPictureTime(plan, step, frame);
        let ms = Math.min(once(), once(), once());
        // Other programs hold a machine up now and then: what looks slow is looked at again.
        for (let i = 3; i < rounds && ms >= FRAME_MS; i += 1) ms = Math.min(ms, once());
        return { what: `${step.id}, ${frame.columns} columns, ${where}`, ms };
      }),
    );
  });
}
