import type { Key } from '../../screen.js';

/** Keys that close what lies over the step. */
export function closes(key: Key): boolean {
  return ['escape', 'backspace', 'space', 'enter', 'left'].includes(key.name);
}

/** The big key, and what stands for it. */
export function isNext({ name }: Key): boolean {
  return name === 'space' || name === 'enter' || name === 'page-down';
}

export function isSign(key: Key, sign: string): boolean {
  return key.name === 'character' && key.text === sign;
}
