import { Box, Text } from 'ink';
import { toAscii } from '../text/safe-text.js';
import { statusLine, statusTold, titleLine } from './head-lines.js';
import { type Program, urgentLines } from './program.js';
import { ACCENT } from './theme.js';
import { heard } from './widgets/rows.js';

type HeadProps = {
  readonly program: Program;
  readonly title: string;
  readonly width: number;
};

/** Where one is, what is running, whether it is saved; and what must not be overlooked. */
export function Head({ program, title, width }: HeadProps) {
  const { ascii } = program.look;
  const line = titleLine(title, buildName(program), width);
  return (
    <Box flexDirection="column" flexShrink={0}>
      <Text bold wrap="truncate">
        {ascii ? toAscii(line) : line}
      </Text>
      <Text wrap="truncate" {...heard(statusTold(program))}>
        {statusLine(program, width)}
      </Text>
      {urgentLines(program).map(({ text, key }) => (
        <Box key={text} height={1} columnGap={2}>
          <Text bold inverse color={ACCENT.heed} wrap="truncate">
            {text}
          </Text>
          {key === '' ? null : (
            <Box flexShrink={0}>
              <Text bold>{key}</Text>
            </Box>
          )}
        </Box>
      ))}
    </Box>
  );
}

/** Screens that are not about the build that happens to be open. */
const OF_NO_BUILD = ['home', 'interview'];

function buildName({ pages, build }: Program): string {
  const name = pages.at(-1)?.name ?? 'home';
  return build === undefined || OF_NO_BUILD.includes(name) ? '' : build.workbook.name;
}
