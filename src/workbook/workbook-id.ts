const LONGEST = 40;
/** Names that Windows keeps for devices, whatever stands after the dot. */
const DEVICES = /^(?:con|prn|aux|nul|com\d|lpt\d)$/;

/**
 * An id for a build, fit to be a file name everywhere: lower-case letters, digits and hyphens.
 * "Garden bench" becomes `garden-bench`, or `garden-bench-2` where that is taken.
 */
export function workbookId(name: string, taken: ReadonlySet<string>): string {
  const base = baseOf(name);
  for (let number = 2, id = base; ; number += 1) {
    if (!taken.has(id)) return id;
    id = `${base}-${number}`;
  }
}

/** Could `workbookId` have made this? Anything else never becomes part of a path. */
export function isWorkbookId(text: string): boolean {
  return /^[a-z0-9]+(?:-[a-z0-9]+)*$/.test(text) && text.length <= LONGEST + 8;
}

/** Accents are dropped, so that the name stays readable; other scripts have no letters left. */
function baseOf(name: string): string {
  const plain = name.normalize('NFKD').replace(/\p{M}/gu, '').toLowerCase();
  const words = plain.match(/[a-z0-9]+/g) ?? [];
  const joined = words.join('-').slice(0, LONGEST).replace(/-$/, '');
  return joined === '' || DEVICES.test(joined)
    ? ['build', joined].filter(Boolean).join('-')
    : joined;
}
