import { useStdout } from 'ink';
import { useEffect, useRef } from 'react';
import type { Size } from './screen.js';

type Window = { readonly columns?: number | undefined; readonly rows?: number | undefined };

/** Size of the window; one that says less than 20 columns does not know, and counts as 80x24. */
export function windowSize({ columns = 0, rows = 0 }: Window): Size {
  return { columns: columns < 20 ? 80 : columns, rows: rows < 2 ? 24 : rows };
}

/** Tells of each new size. */
export function useResize(resized: (size: Size) => void): void {
  const { stdout } = useStdout();
  useEffect(() => {
    const look = () => resized(windowSize(stdout));
    stdout.on('resize', look);
    return () => {
      stdout.off('resize', look);
    };
  }, [stdout, resized]);
}

/** Has everything painted afresh each time the number of paints grows: terminals leave remains. */
export function useRepaint(paints: number): void {
  const { write } = useStdout();
  const painted = useRef(paints);
  useEffect(() => {
    if (painted.current === paints) return;
    painted.current = paints;
    write('\x1b[2J\x1b[H');
  }, [paints, write]);
}
