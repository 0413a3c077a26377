import { createContext, useContext } from 'react';
import type { Key } from './screen.js';

const PressContext = createContext<(key: Key) => void>(() => undefined);

export const PressProvider = PressContext.Provider;

/** How a widget in a view hands the screen what was chosen or typed in it. */
export function usePress(): (key: Key) => void {
  return useContext(PressContext);
}
