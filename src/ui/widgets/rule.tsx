import { Text } from 'ink';
import { marks, useLook } from '../theme.js';

type RuleProps = {
  readonly width: number;
  /** Words set into the line near its left end. */
  readonly title?: string;
};

/** A line across, with a title set into it where it heads something. */
export function Rule({ width, title = '' }: RuleProps) {
  const { rule } = marks(useLook().ascii);
  if (title === '') {
    return (
      <Text wrap="truncate" aria-hidden>
        {rule.repeat(Math.max(0, width))}
      </Text>
    );
  }
  const rest = Math.max(0, width - title.length - 4);
  return (
    <Text wrap="truncate" aria-label={title}>
      {rule.repeat(2)} <Text bold>{title}</Text> {rule.repeat(rest)}
    </Text>
  );
}
