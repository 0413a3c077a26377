/** Where recipes come from, as the commands see it; the disk is somebody else's business. */
export type RecipeText =
  | { readonly ok: true; readonly file: string; readonly text: string }
  | { readonly ok: false; readonly problem: string };

export type Library = {
  /** Text of every recipe that comes with the program. */
  readonly all: () => readonly RecipeText[];
  /** By name, or by a path to a file. */
  readonly find: (nameOrPath: string) => RecipeText;
};
