import { Box, Text } from 'ink';
import SelectInput from 'ink-select-input';
import { toAscii } from '../../text/safe-text.js';
import { cut } from '../../text/wrap.js';
import { usePress } from '../press.js';
import { ACCENT, marks, useLook } from '../theme.js';

/** A line of a menu: what `chosen` will say, and the words shown. */
export type MenuItem = { readonly id: string; readonly label: string };

type MenuProps = {
  readonly items: readonly MenuItem[];
  readonly width: number;
  /** Row that is marked first. */
  readonly row?: number;
};

/** A short menu, at most nine lines: up and down and enter, or the number alone. */
export function Menu({ items, width, row = 0 }: MenuProps) {
  const press = usePress();
  const { ascii } = useLook();
  if (items.length === 0) return null;
  return (
    <SelectInput
      items={items.map(({ id, label }, i) => ({
        value: id,
        label: cut(`${i + 1}  ${ascii ? toAscii(label) : label}`, width - 2),
      }))}
      initialIndex={Math.min(row, items.length - 1)}
      indicatorComponent={Pointer}
      itemComponent={Line}
      onSelect={item => press({ name: 'chosen', id: item.value })}
    />
  );
}

function Pointer({ isSelected = false }: { readonly isSelected?: boolean }) {
  const { pointer } = marks(useLook().ascii);
  return (
    <Box marginRight={1} flexShrink={0}>
      <Text color={ACCENT.now}>{isSelected ? pointer : ' '}</Text>
    </Box>
  );
}

function Line({
  isSelected = false,
  label,
}: {
  readonly isSelected?: boolean;
  readonly label: string;
}) {
  return (
    <Text bold={isSelected} wrap="truncate">
      {label}
    </Text>
  );
}
