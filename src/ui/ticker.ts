import { useIsScreenReaderEnabled } from 'ink';
import { useEffect } from 'react';
import { nextTickMs } from './alarms.js';
import type { Page } from './page.js';
import { alarms, type Program } from './program.js';

/** As long as a pause in typing. */
const SETTLE_MS = 120;

/** Does what a screen has put off, once no key has come for a moment. */
export function useSettling(page: Page, settle: (page: Page) => void): void {
  useEffect(() => {
    // A page is a new one after each key, so each key puts it off again.
    const timer = setTimeout(() => settle(page), SETTLE_MS);
    return () => clearTimeout(timer);
  }, [page, settle]);
}

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
