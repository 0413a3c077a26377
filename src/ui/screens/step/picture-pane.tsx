import { Box } from 'ink';
import { cut, wrap } from '../../../text/wrap.js';
import { pictureOf, type Sight } from '../../pictures.js';
import { plainer } from '../../widgets/facts.js';
import { Picture } from '../../widgets/picture.js';
import { plainRows, Rows } from '../../widgets/rows.js';
import { pictureFrame, TITLE_ROWS } from './picture-frame.js';
import { subjectOf } from './subject.js';
import type { Work } from './work-rows.js';

type PicturePaneProps = { readonly work: Work; readonly sight: Sight };

/** More lines than this under a picture take more room than they are worth in a small window. */
const UNDER = 1 / 4;

/** The picture of a step over the whole screen, under a line that names view and step. */
export function PicturePane({ work, sight }: PicturePaneProps) {
  const { step, build, at } = work;
  const { columns, rows } = at.size;
  const subject = subjectOf(step, build.plan);
  const { under } = pictureOf(subject, sight, pictureFrame(at));
  const plain = plainer(at.ascii);
  const said = under.flatMap(line => wrap(plain(line), columns));
  const lines = said.length <= rows * UNDER ? said : [];
  const picture = pictureOf(subject, sight, pictureFrame(at, lines.length));
  const note = picture.note === undefined ? '' : ` (${picture.note})`;
  const text = cut(plain(`${picture.title}: ${step.title}${note}`), columns);
  return (
    <Box flexDirection="column">
      <Rows
        rows={[{ text, tone: 'strong' }, { text: '' }]}
        width={columns}
        height={Math.min(TITLE_ROWS, rows - 1)}
      />
      <Picture picture={picture} />
      {lines.length === 0 ? null : (
        <Rows rows={plainRows(lines)} width={columns} height={lines.length} />
      )}
    </Box>
  );
}
