import type { Library } from '../../src/commands/library.js';
import { PROJECT_NAMES, projectText } from './projects.js';

/** The built-in recipes and some texts under made-up file names, without a disk. */
export function libraryOf(texts: Readonly<Record<string, string>> = {}): Library {
  const builtIn = (name: string) =>
    ({ ok: true, file: `${name}/recipe.yaml`, text: projectText(name) }) as const;
  return {
    all: () => PROJECT_NAMES.map(builtIn),
    find: name => {
      const text = texts[name];
      if (text !== undefined) return { ok: true, file: name, text };
      if (PROJECT_NAMES.includes(name)) return builtIn(name);
      return { ok: false, problem: `There is no file ${name}.` };
    },
  };
}
