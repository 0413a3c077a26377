import { execFileSync, spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

/**
 * Poppler, a reader of PDF that has nothing to do with this project: Debian package poppler-utils.
 * Where it is missing, tests that need it are skipped, and their names say so.
 */
export const HAS_POPPLER = spawnSync('pdfinfo', ['-v']).status === 0;

export const NEEDS_POPPLER = HAS_POPPLER ? '' : ' (SKIPPED: poppler-utils is not installed)';

function withFile<T>(pdf: Uint8Array, use: (file: string, folder: string) => T): T {
  const folder = mkdtempSync(join(tmpdir(), 'notchbook-pdf-'));
  try {
    const file = join(folder, 'it.pdf');
    writeFileSync(file, pdf);
    return use(file, folder);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

/** What pdfinfo says of a file, by its own names: `Pages`, `Title`, `Page size`. */
export function pdfInfo(pdf: Uint8Array): Readonly<Record<string, string>> {
  const text = withFile(pdf, file => execFileSync('pdfinfo', [file], { encoding: 'utf8' }));
  return Object.fromEntries(
    text.split('\n').flatMap(line => {
      const at = line.indexOf(':');
      return at < 0 ? [] : [[line.slice(0, at), line.slice(at + 1).trim()]];
    }),
  );
}

/** The text of each page, as somebody gets it who selects and copies it. */
export function pdfPages(pdf: Uint8Array): readonly string[] {
  const text = withFile(pdf, file =>
    execFileSync('pdftotext', ['-layout', file, '-'], { encoding: 'utf8', maxBuffer: 1 << 26 }),
  );
  return text.split('\f').slice(0, -1);
}

/** Names of the fonts and whether each is embedded. */
export function pdfFonts(pdf: Uint8Array): readonly { name: string; embedded: boolean }[] {
  const text = withFile(pdf, file => execFileSync('pdffonts', [file], { encoding: 'utf8' }));
  return text
    .trimEnd()
    .split('\n')
    .slice(2)
    .map(line => {
      const words = line.split(/\s+/);
      return { name: words[0] ?? '', embedded: words.at(-5) === 'yes' };
    });
}

export type GrayPicture = {
  readonly width: number;
  readonly height: number;
  /** 0 is black; row by row. */
  readonly pixels: Uint8Array;
};

/** A page as pdftoppm paints it, in gray, at so many dots to the inch. */
export function pdfPicture(pdf: Uint8Array, page: number, dotsPerInch: number): GrayPicture {
  const bytes = withFile(pdf, (file, folder) => {
    const root = join(folder, 'page');
    const of = String(page);
    const how = ['-gray', '-r', String(dotsPerInch), '-f', of, '-l', of, '-singlefile'];
    execFileSync('pdftoppm', [...how, file, root]);
    return readFileSync(`${root}.pgm`);
  });
  // Netpbm gray map: "P5", width, height, 255, then the pixels.
  const head = /^P5\s+(\d+)\s+(\d+)\s+255\s/.exec(bytes.subarray(0, 64).toString('latin1'));
  if (head === null) throw new Error('not a gray map');
  const [whole, width, height] = head;
  return { width: Number(width), height: Number(height), pixels: bytes.subarray(whole.length) };
}
