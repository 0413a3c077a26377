import { useInput } from 'ink';
import { keysFrom } from './keys.js';
import type { Key, Widget } from './screen.js';

type Handlers = {
  readonly press: (key: Key) => void;
  readonly suspend: () => void;
  /** The widget that is on the screen right now takes its keys itself. */
  readonly widget: Widget | undefined;
};

/** Hands every key that no widget takes to the program. */
export function useKeys({ press, suspend, widget }: Handlers): void {
  useInput((input, key) => {
    if (key.ctrl && input === 'z') return suspend();
    for (const pressed of keysFrom(input, key)) {
      if (!isTaken(pressed, widget)) press(pressed);
    }
  });
}

function isTaken(key: Key, widget: Widget | undefined): boolean {
  switch (widget) {
    case 'menu':
      return key.name === 'character'
        ? /^[1-9jk]$/.test(key.text)
        : ['up', 'down', 'enter'].includes(key.name);
    case 'text':
      return ['character', 'space', 'backspace', 'left', 'right', 'enter'].includes(key.name);
    default:
      return false;
  }
}
