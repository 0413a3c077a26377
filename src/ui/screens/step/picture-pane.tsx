import { Box } from 'ink';
import type { SquareView as View } from '../../../drawing/strokes.js';
import { cut } from '../../../text/wrap.js';
import { pictureOf } from '../../pictures.js';
import { plainer } from '../../widgets/facts.js';
import { Picture } from '../../widgets/picture.js';
import { Rows } from '../../widgets/rows.js';
import { subjectOf } from './subject.js';
import type { Work } from './work-rows.js';

/** The picture of a step over the whole screen, under a line that names view and step. */
export function PicturePane({ work, view }: { readonly work: Work; readonly view: View }) {
  const { step, build, at } = work;
  const { columns, rows } = at.size;
  const frame = { columns, rows: Math.max(1, rows - 2), ascii: at.ascii };
  const picture = pictureOf(subjectOf(step, build.plan), view, frame);
  const note = picture.note === undefined ? '' : ` (${picture.note})`;
  const text = cut(plainer(at.ascii)(`${picture.title}: ${step.title}${note}`), columns);
  return (
    <Box flexDirection="column">
      <Rows
        rows={[{ text, tone: 'strong' }, { text: '' }]}
        width={columns}
        height={Math.min(2, rows - 1)}
      />
      <Picture picture={picture} />
    </Box>
  );
}
