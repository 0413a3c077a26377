import type { Problem } from './problem.js';
import type { Value } from './values.js';

/** Where names get their values; a problem of its own when a name is known but cannot be worked out. */
export type Scope = { find(name: string): Value | Problem | undefined };
