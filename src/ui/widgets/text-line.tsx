import TextInput from 'ink-text-input';
import { usePress } from '../press.js';
import { useLook } from '../theme.js';

type TextLineProps = { readonly value: string; readonly hint?: string };

/**
 * A line for a note. What it holds goes to the screen as `typed`, enter as `enter`; control
 * characters never get into the value.
 */
export function TextLine({ value, hint = '' }: TextLineProps) {
  const press = usePress();
  const { styled } = useLook();
  // Without styles a hint would look like something that was typed.
  const placeholder = styled || hint === '' ? hint : `(${hint})`;
  return (
    <TextInput
      value={value}
      placeholder={placeholder}
      onChange={text => {
        const { line, ended } = cleanLine(text);
        press({ name: 'typed', text: line });
        if (ended) press({ name: 'enter' });
      }}
      onSubmit={() => press({ name: 'enter' })}
    />
  );
}

/** What was typed without control characters, paste marks and all behind the first line's end. */
export function cleanLine(text: string): { readonly line: string; readonly ended: boolean } {
  const [first = '', ...more] = text.replace(/\[20[01]~/g, '').split(/\r\n?|\n/);
  return { line: first.replace(/\p{Cc}/gu, ''), ended: more.length > 0 };
}
