import { Box, Text } from 'ink';
import { textWidth } from '../../text/width.js';
import { cut } from '../../text/wrap.js';
import { ACCENT, useLook } from '../theme.js';
import { plainer } from './facts.js';
import type { Field } from './field.js';

type FieldViewProps = { readonly field: Field; readonly width: number };

/** The line being typed, with its cursor; a long text shows the part around it. */
export function FieldView({ field, width }: FieldViewProps) {
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

/** As much of the end as fits. */
function tail(text: string, width: number): string {
  const signs = Array.from(text);
  while (textWidth(signs.join('')) > width) signs.shift();
  return signs.join('');
}
