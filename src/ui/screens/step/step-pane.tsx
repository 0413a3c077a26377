import { Box } from 'ink';
import { textWidth } from '../../../text/width.js';
import { cut } from '../../../text/wrap.js';
import { NoteLine } from '../../widgets/note-line.js';
import { Rows } from '../../widgets/rows.js';
import { limitTop, scrollWords } from '../../widgets/scroll.js';
import { noteHeadRows } from './note-rows.js';
import { PicturePane } from './picture-pane.js';
import { questionOf } from './question.js';
import { readingRoom, readingRows } from './reading.js';
import type { Pane, ReadingKind } from './state.js';
import { timerPaneRows } from './timer-pane-rows.js';
import { WorkPane } from './work-pane.js';
import type { Work } from './work-rows.js';

type PaneProps = { readonly pane: Pane; readonly work: Work };

/** A step, or what lies over it. */
export function StepPane({ pane, work }: PaneProps) {
  const { columns, rows } = work.at.size;
  switch (pane.kind) {
    case 'why':
    case 'cautions':
    case 'helper':
    case 'words':
      return <Reading kind={pane.kind} top={pane.top} work={work} />;
    case 'picture':
      return <PicturePane work={work} sight={pane} />;
    case 'timers':
      return <Rows rows={timerPaneRows(work, pane.again)} width={columns} height={rows} />;
    case 'note':
      return <Note text={pane.text} work={work} />;
    default: {
      const top = pane.kind === 'work' ? pane.top : undefined;
      const question = questionOf(pane, work.step, work.build);
      return <WorkPane work={work} top={top} question={question} />;
    }
  }
}

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

function Reading({ kind, top, work }: ReadingProps) {
  const { columns, rows } = work.at.size;
  const room = readingRoom(kind, work);
  const position = scrollWords(top, room);
  const name = kind === 'helper' ? `For the helper: ${work.step.title}` : NAMES[kind];
  const nameWidth = columns - (position === '' ? 0 : textWidth(position) + 3);
  const text = [cut(name, nameWidth), position].filter(words => words !== '').join('   ');
  const lines = readingRows(kind, work).slice(limitTop(top, room));
  return (
    <Rows rows={[{ text, tone: 'strong' }, { text: '' }, ...lines]} width={columns} height={rows} />
  );
}

function Note({ text, work }: { readonly text: string; readonly work: Work }) {
  const { columns } = work.at.size;
  const rows = noteHeadRows(work);
  return (
    <Box flexDirection="column" width={columns}>
      <Rows rows={rows} width={columns} height={rows.length} />
      <NoteLine text={text} hint="what you will want to know" width={columns} />
    </Box>
  );
}
