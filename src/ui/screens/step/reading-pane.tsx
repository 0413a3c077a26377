import { Box } from 'ink';
import { textWidth } from '../../../text/width.js';
import { cut } from '../../../text/wrap.js';
import { Picture } from '../../widgets/picture.js';
import { type Row, Rows } from '../../widgets/rows.js';
import { limitTop, scrollWords } from '../../widgets/scroll.js';
import { BESIDE, pictureBeside } from './helper-picture.js';
import { readingRoom, readingRows } from './reading.js';
import type { ReadingKind } from './state.js';
import type { Work } from './work-rows.js';

const NAMES: Readonly<Record<Exclude<ReadingKind, 'helper'>, string>> = {
  why: 'Why',
  cautions: 'Cautions',
  words: 'Words of the trade in this build',
};

type ReadingProps = {
  readonly kind: ReadingKind;
  readonly top: number;
  readonly work: Work;
};

/** What is read over a step: why, cautions, for the helper, the words. */
export function ReadingPane({ kind, top, work }: ReadingProps) {
  const { columns, rows } = work.at.size;
  const room = readingRoom(kind, work);
  const position = scrollWords(top, room);
  const name = kind === 'helper' ? `For the helper: ${work.step.title}` : NAMES[kind];
  const nameWidth = columns - (position === '' ? 0 : textWidth(position) + 3);
  const text = [cut(name, nameWidth), position].filter(words => words !== '').join('   ');
  const lines = readingRows(kind, work).slice(limitTop(top, room));
  const shown: readonly Row[] = [{ text, tone: 'strong' }, { text: '' }, ...lines];
  const picture = kind === 'helper' ? pictureBeside(work) : undefined;
  if (picture === undefined) return <Rows rows={shown} width={columns} height={rows} />;
  return (
    <Box>
      <Rows rows={shown} width={BESIDE} height={rows} />
      <Picture picture={picture} />
    </Box>
  );
}
