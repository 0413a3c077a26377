import { Box, Text } from 'ink';
import { toAscii } from '../../text/safe-text.js';
import { cut } from '../../text/wrap.js';
import { ACCENT, useLook } from '../theme.js';

/** One line of a screen; the tone only underlines what its words or its mark say. */
export type Row = {
  readonly text: string;
  readonly tone?: 'strong' | 'now' | 'heed';
  /** Said in its place to those who listen; where it is empty, nothing is. */
  readonly told?: string;
};

type RowsProps = {
  readonly rows: readonly Row[];
  readonly width: number;
  readonly height: number;
};

/** Lines from top to bottom, none wider and not more of them than there is room for. */
export function Rows({ rows, width, height }: RowsProps) {
  const { ascii } = useLook();
  const shown = rows.slice(0, Math.max(0, height)).map((row, number) => ({ ...row, number }));
  return (
    <Box flexDirection="column" width={width} flexShrink={0}>
      {shown.map(({ text, tone, told, number }) => (
        <Text key={number} wrap="truncate" {...styleOf(tone)} {...heard(told ?? unruled(text))}>
          {cut(ascii ? toAscii(text) : text, width) || ' '}
        </Text>
      ))}
    </Box>
  );
}

/** What is said in place of a text; nothing at all where it is empty. */
export function heard(told: string | undefined) {
  if (told === undefined) return {};
  return told === '' ? { 'aria-hidden': true } : { 'aria-label': told };
}

/**
 * A line that is only drawn is not read out sign by sign: the rule under the heads of a table, the bar of a
 * board whose pieces stand in words above it.
 */
function unruled(text: string): string | undefined {
  return /^[ ─═-]*[─═-][ ─═-]*$|^ *├/.test(text) ? '' : undefined;
}

function styleOf(tone: Row['tone']) {
  if (tone === undefined) return {};
  return tone === 'strong' ? { bold: true } : { bold: true, color: ACCENT[tone] };
}

/** Plain lines as rows. */
export function plainRows(lines: readonly string[]): readonly Row[] {
  return lines.map(text => ({ text }));
}

export const BLANK: Row = { text: '' };

/** Rows with the last of them at the bottom of the room, where the eye looks for it. */
export function withFoot(rows: readonly Row[], foot: readonly Row[], height: number) {
  const room = Math.max(0, height - foot.length);
  const shown = rows.slice(0, room);
  const blank = Array.from({ length: room - shown.length }, () => BLANK);
  return [...shown, ...blank, ...foot];
}
