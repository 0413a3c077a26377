import { Box, Text } from 'ink';
import { textWidth } from '../../text/width.js';
import { cut } from '../../text/wrap.js';
import { ACCENT, useLook } from '../theme.js';
import { plainer } from './facts.js';
import { type Field, fieldText } from './field.js';

type FieldViewProps = {
  readonly field: Field;
  readonly width: number;
  /** Counts as long as nothing is typed. */
  readonly suggested?: string;
};

/** The line being typed, with its cursor; a long text shows the part around it. What is only suggested is pale. */
export function FieldView({ field, width, suggested = '' }: FieldViewProps) {
  if (suggested !== '' && fieldText(field) === '') {
    return <Suggestion text={suggested} width={width} />;
  }
  return <Typed field={field} width={width} />;
}

function Typed({ field, width }: FieldViewProps) {
  const { ascii, styled } = useLook();
  const plain = plainer(ascii);
  const room = Math.max(4, width - 3);
  const before = tail(plain(field.before), room);
  const under = plain(field.after.slice(0, 1));
  const rest = cut(plain(field.after.slice(1)), Math.max(0, room - textWidth(before) - 1));
  return (
    <Box flexShrink={0}>
      <Text wrap="truncate">
        <Text color={ACCENT.now}>{'> '}</Text>
        <Text bold>{before}</Text>
        {styled ? <Text inverse>{under === '' ? ' ' : under}</Text> : `_${under}`}
        <Text bold>{rest}</Text>
      </Text>
    </Box>
  );
}

type SuggestionProps = { readonly text: string; readonly width: number };

/** Without styles it stands in brackets behind the cursor. */
function Suggestion({ text, width }: SuggestionProps) {
  const { ascii, styled } = useLook();
  const plain = cut(plainer(ascii)(text), Math.max(4, width - 6));
  return (
    <Box flexShrink={0}>
      <Text wrap="truncate">
        <Text color={ACCENT.now}>{'> '}</Text>
        {styled ? <Text inverse>{plain.slice(0, 1)}</Text> : '_ '}
        {styled ? <Text dimColor>{plain.slice(1)}</Text> : `(${plain})`}
      </Text>
    </Box>
  );
}

/** As much of the end as fits. */
function tail(text: string, width: number): string {
  const signs = Array.from(text);
  while (textWidth(signs.join('')) > width) signs.shift();
  return signs.join('');
}
