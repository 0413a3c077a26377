import TextInput from 'ink-text-input';
import { usePress } from '../press.js';

type TextLineProps = { readonly value: string; readonly hint?: string };

/**
 * A line for a name or a note. What it holds goes to the screen as `typed`, enter as `enter`; control
 * characters never get into the value.
 */
export function TextLine({ value, hint = '' }: TextLineProps) {
  const press = usePress();
  return (
    <TextInput
      value={value}
      placeholder={hint}
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
