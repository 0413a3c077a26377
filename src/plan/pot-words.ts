import type { Display } from '../measure/quantities.js';
import { onTheTape } from './on-tape.js';
import type { Step } from './plan.js';
import type { PlanterRow, PotRow } from './planter.js';

/** What a pot stands on and where its rim comes to, for the step that sets it. */
export function potLines({ pots }: PlanterRow, display: Display): Step['settings'] {
  return pots.map(pot => ({
    name: potName(pot, pots.length),
    text: `${potSize(pot, display)}, on ${pot.blocks}: ${rimWords(pot, display)}`,
  }));
}

/** "Pot", or "Pot 2" where there are several. */
export function potName({ number }: PotRow, among: number): string {
  return among > 1 ? `Pot ${number}` : 'Pot';
}

/** "11-1/2 in high, 10-3/4 in across". */
export function potSize({ height, across }: PotRow, display: Display): string {
  return `${onTheTape(height.value, display)} high, ${onTheTape(across.value, display)} across`;
}

/** "rim 1/4 in below the edge (1/2 in was wished)". */
export function rimWords({ rim, wished, near }: PotRow, display: Display): string {
  const length = (value: number) => onTheTape(value, display);
  const place =
    rim.value < 0
      ? `rim ${length(-rim.value)} over the edge`
      : `rim ${length(rim.value)} below the edge`;
  if (length(rim.value) === length(wished.value)) return place;
  const wish = `${length(wished.value)} was wished`;
  if (near) return `${place} (${wish})`;
  return `${place}, but ${wish}: add ${length(rim.value - wished.value)} of scrap`;
}
