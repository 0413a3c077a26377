import { Box, Text } from 'ink';
import { head } from '../../text/wrap.js';
import { TextLine } from './text-line.js';

/** Longer is a letter, and does not fit the smallest window. */
export const LONGEST_NOTE = 160;
/** Rows that the line takes, however short. */
export const NOTE_ROWS = 4;

type NoteLineProps = {
  readonly text: string;
  readonly hint: string;
  readonly width: number;
};

/** A line of one's own words; a long one goes on below. */
export function NoteLine({ text, hint, width }: NoteLineProps) {
  return (
    <Box width={width} height={NOTE_ROWS} flexShrink={0} overflow="hidden">
      <Box width={2} flexShrink={0}>
        <Text>{'> '}</Text>
      </Box>
      <Box width={width - 2}>
        <TextLine value={text} hint={hint} />
      </Box>
    </Box>
  );
}

/** What was typed, as long as a note may be. */
export function noteText(typed: string): string {
  return head(typed, LONGEST_NOTE);
}
