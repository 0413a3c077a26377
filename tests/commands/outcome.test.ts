import { expect, test } from 'vitest';
import { EXIT, failed } from '../../src/commands/outcome.js';

// ECMA-48: a color, a cleared screen and a title are control functions; none may come back from an argument.
test.each([
  ['--set \x1b[31mseat=x: no such answer', '--set seat=x: no such answer\n'],
  ['\x1b[2J\x1b]0;owned\x07bench.yaml: not found', 'bench.yaml: not found\n'],
])('an argument that would steer the terminal is told without its controls: %j', (line, told) => {
  expect(failed([line], EXIT.usage).err).toBe(told);
});
