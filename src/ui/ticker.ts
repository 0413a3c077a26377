import { useIsScreenReaderEnabled } from 'ink';
import { useEffect } from 'react';
import { nextTickMs } from './alarms.js';
import { alarms, type Program } from './program.js';

/** The only ticker: sleeps until something changes by itself, and not at all where nothing runs. */
export function useTicker(program: Program, tick: () => void): void {
  const readAloud = useIsScreenReaderEnabled();
  useEffect(() => {
    const waitMs = nextTickMs(alarms(program), program.nowMs, readAloud);
    if (waitMs === undefined) return;
    const timer = setTimeout(tick, waitMs);
    return () => clearTimeout(timer);
  }, [program, readAloud, tick]);
}
