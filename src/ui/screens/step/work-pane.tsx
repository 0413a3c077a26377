import { Box, useIsScreenReaderEnabled } from 'ink';
import { cut } from '../../../text/wrap.js';
import { plainer } from '../../widgets/facts.js';
import { Picture } from '../../widgets/picture.js';
import { type Row, Rows } from '../../widgets/rows.js';
import { limitTop, scrollWords } from '../../widgets/scroll.js';
import { briefingRows } from './briefing-rows.js';
import { nextMove } from './next-move.js';
import { layOutWork, roomOf, type WorkLayout } from './work-layout.js';
import type { Work } from './work-rows.js';

type WorkPaneProps = {
  readonly work: Work;
  /** First row of the body that is seen; it finds its own place unless somebody scrolled. */
  readonly top: number | undefined;
  /** Stands in the foot instead of what the big key does. */
  readonly question: string | undefined;
};

/** The step: title, what to do, the next move; its picture where there is room. */
export function WorkPane({ work, top, question }: WorkPaneProps) {
  const { columns, rows } = work.at.size;
  const move = nextMove(work.step, work.build, work.at.nowMs);
  if (move.kind === 'brief') {
    const briefing = briefingRows(move, work, top ?? 0);
    return <Rows rows={asked(briefing, question, work)} width={columns} height={rows} />;
  }
  const layout = layOutWork(work);
  const foot = asked(footRows(layout, work, top), question, work);
  return (
    <Box flexDirection="column">
      <Rows rows={layout.head} width={columns} height={rows - 1} />
      <Body work={work} layout={layout} top={top} />
      <Rows rows={foot} width={columns} height={layout.foot.length} />
    </Box>
  );
}

type BodyProps = {
  readonly work: Work;
  readonly layout: WorkLayout;
  readonly top: number | undefined;
};

function Body({ work, layout, top }: BodyProps) {
  const isHeard = useIsScreenReaderEnabled();
  const { columns } = work.at.size;
  const { body, height, picture } = layout;
  if (picture === undefined) {
    const room = roomOf(layout);
    const first = limitTop(top ?? room.top, room);
    return (
      <Box height={height} flexShrink={0}>
        <Rows rows={body.slice(first)} width={columns} height={height} />
      </Box>
    );
  }
  if (picture.where === 'below') {
    return (
      <Box flexDirection="column" flexShrink={0} height={height}>
        <Rows rows={[...body, { text: '' }]} width={columns} height={height} />
        <Picture picture={picture.set} />
      </Box>
    );
  }
  // Read aloud, what stands side by side would run on in one line.
  return (
    <Box flexDirection={isHeard ? 'column' : 'row'} columnGap={2} flexShrink={0} height={height}>
      <Rows rows={body} width={layout.columns} height={height} />
      <Picture picture={picture.set} />
    </Box>
  );
}

/** Where the body scrolls, the foot says where one is. */
function footRows(layout: WorkLayout, work: Work, top: number | undefined): readonly Row[] {
  const room = roomOf(layout);
  const words = layout.picture === undefined ? scrollWords(top ?? room.top, room) : '';
  if (words === '') return layout.foot;
  return layout.foot.map(row =>
    row.text === '' ? row : { ...row, text: withEnd(row.text, words, work.at.size.columns) },
  );
}

function withEnd(text: string, end: string, columns: number): string {
  const room = columns - end.length - 2;
  return room < 8 ? text : `${cut(text, room).padEnd(room)}  ${end}`;
}

function asked(rows: readonly Row[], question: string | undefined, { at }: Work): readonly Row[] {
  if (question === undefined) return rows;
  const text = cut(plainer(at.ascii)(question), at.size.columns);
  return [...rows.slice(0, -1), { text, tone: 'heed' }];
}
