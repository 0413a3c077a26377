import { Box, Text } from 'ink';
import { dayVerdict } from '../../../plan/day-verdict.js';
import { hanging } from '../../../text/page-lines.js';
import { wrap } from '../../../text/wrap.js';
import { clockMinutes } from '../../../workbook/clock-words.js';
import type { Build, Context, KeyHint, Screen } from '../../screen.js';
import { plainer } from '../../widgets/facts.js';
import { FieldView } from '../../widgets/field-view.js';
import { plainRows, type Row, Rows } from '../../widgets/rows.js';
import { CHANGE, isUntyped, suggestedText } from '../../widgets/suggested.js';
import { questionsFor } from './questions.js';
import { type DayState, open, press, readRow, weatherOf } from './state.js';

type ViewProps = { readonly state: DayState; readonly at: Context };

function View({ state, at }: ViewProps) {
  const { build } = at;
  if (build === undefined) return null;
  const { columns, rows } = at.size;
  const questions = questionsFor(state.work);
  return (
    <Box flexDirection="column">
      {questions.map(({ field, say, hint }, row) => (
        <Question
          key={field}
          words={`${say} (${hint})`}
          say={say}
          {...{ state, row }}
          width={columns}
        />
      ))}
      <Text> </Text>
      <Rows
        rows={verdictRows(state, build, at)}
        width={columns}
        height={Math.max(1, rows - questions.length - 2)}
      />
    </Box>
  );
}

type QuestionProps = {
  readonly say: string;
  readonly words: string;
  readonly state: DayState;
  readonly row: number;
  readonly width: number;
};

/** The question at hand with its line; the others with what stands in them. */
function Question({ say, words, state, row, width }: QuestionProps) {
  const field = state.fields[row];
  if (row === state.row && field !== undefined) {
    return (
      <Box flexDirection="column" flexShrink={0}>
        <Text bold wrap="truncate">
          {words}
        </Text>
        <FieldView {...field} width={width} />
      </Box>
    );
  }
  const text = field === undefined ? '' : suggestedText(field);
  return <Text wrap="truncate">{`${say}: ${text === '' ? 'not told' : text}`}</Text>;
}

/** What is wrong with the line that is typed, or what the day is good for so far. */
function verdictRows(state: DayState, build: Build, at: Context): readonly Row[] {
  const plain = plainer(at.ascii);
  const { display } = build.plan;
  const { columns } = at.size;
  const read = readRow(state, state.row, display);
  if (!read.ok)
    return wrap(plain(`! ${read.problem} ${read.hint}`), columns).map(
      (text): Row => ({ text, tone: 'heed' }),
    );
  const told = { ...weatherOf(state, display), atMs: at.nowMs };
  const verdict = dayVerdict(state.work, told, { display, clockMinutes: clockMinutes(at.nowMs) });
  const heed = verdict.kind === 'not-today' ? ACCENTED : {};
  return [
    ...hanging('', plain(verdict.words), columns).map((text): Row => ({ text, ...heed })),
    ...plainRows(
      [verdict.when, ...verdict.sums]
        .filter(it => it !== '')
        .flatMap(text => hanging('', plain(text), columns)),
    ),
    { text: 'The label of the bottle or can comes first.' },
  ];
}

const ACCENTED: Pick<Row, 'tone'> = { tone: 'heed' };

function hints({ row, fields }: DayState): readonly KeyHint[] {
  const field = fields[row];
  const isSuggested = field !== undefined && field.suggested !== '' && isUntyped(field);
  return [
    { key: 'enter', does: row < fields.length - 1 ? 'next' : 'note it' },
    ...(isSuggested ? [CHANGE] : []),
    { key: 'up/down', does: 'move' },
    { key: 'esc', does: 'back, not noted' },
  ];
}

/** How warm, how damp, how late it is: asked before gluing and before sealing, since waits and cautions follow. */
export const dayScreen: Screen<DayState> = {
  name: 'day',
  title: state => (state.work === 'glue' ? 'Is it a day for glue?' : 'Is it a day for sealer?'),
  open,
  press,
  view: View,
  hints,
};
