/** Where something stands in a project file; lines and columns count from 1. */
export type Place = { readonly line: number; readonly column: number };
