import { Rows } from '../../widgets/rows.js';
import { NotePane } from './note-pane.js';
import { PicturePane } from './picture-pane.js';
import { questionOf } from './question.js';
import { ReadingPane } from './reading-pane.js';
import type { Pane } from './state.js';
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
      return <ReadingPane kind={pane.kind} top={pane.top} work={work} />;
    case 'picture':
      return <PicturePane work={work} sight={pane} />;
    case 'timers':
      return <Rows rows={timerPaneRows(work, pane.asked)} width={columns} height={rows} />;
    case 'note':
      return <NotePane text={pane.text} work={work} />;
    default: {
      const top = pane.kind === 'work' ? pane.top : undefined;
      const question = questionOf(pane, work.step, work.build);
      return <WorkPane work={work} top={top} question={question} />;
    }
  }
}
