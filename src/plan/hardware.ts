import { SCREW_METALS } from '../materials/screw-metal.js';
import { COMPUTED } from '../measure/figure.js';
import { figure } from '../measure/figure-text.js';
import { listWords } from '../text/list.js';
import { count } from '../text/plural.js';
import { cansFor } from './cans.js';
import type { FastenerRow, GluePlan, HardwareRow, SealerPlan } from './plan.js';
import type { Setting } from './setting.js';

/** Packs that screws and brads are usually sold in; common practice. */
const SCREW_PACKS = [25, 50, 100, 350] as const;
const BRAD_PACKS = [1000, 5000] as const;
/** Some strip, some fall into the grass; common practice. */
const SPARE = 0.05;

/** What to buy besides boards: equal fasteners of all joints together, glue, sealer. */
export function hardware(
  fasteners: readonly FastenerRow[],
  glue: GluePlan,
  sealer: SealerPlan,
  setting: Setting,
): readonly HardwareRow[] {
  const kinds = [...new Set(fasteners.map(row => row.what))];
  return [
    ...kinds.map(what =>
      fastenerLine(
        fasteners.filter(row => row.what === what),
        setting,
      ),
    ),
    {
      what: `Glue: ${glue.kind}`,
      count: glue.amount,
      buy: glue.buy,
      note: 'for both faces of each joint',
    },
    {
      what: `Sealer: ${sealer.kind}`,
      count: sealer.amount,
      buy: sealer.buy,
      note: count(sealer.coats, 'coat'),
    },
  ].filter(row => row.count.value > 0);
}

function fastenerLine(rows: readonly FastenerRow[], { metal }: Setting): HardwareRow {
  const [first] = rows;
  if (!first) throw new Error('a kind of fastener without a row');
  const needed = rows.reduce((sum, row) => sum + row.count, 0);
  const spare = Math.ceil(needed * (1 + SPARE));
  const metalName = SCREW_METALS.find(it => it.id === metal)?.name ?? metal;
  return {
    what: first.what,
    count: figure(needed, 'count', 'counted at every place where the parts touch', COMPUTED),
    buy: packWords(spare, first.kind === 'screw' ? SCREW_PACKS : BRAD_PACKS),
    note: first.kind === 'screw' ? metalName : 'they only hold until the glue has set',
  };
}

/** Packs that hold so many with the least left over, the fewest packs where that is equal. */
function packWords(needed: number, packs: readonly number[]): string {
  const sizes = packs.toReversed().map(holds => ({ name: `box of ${holds}`, holds }));
  const { cans: boxes } = cansFor(needed, sizes, 'left-over');
  return listWords(boxes.map(({ offer, count: times }) => `${times} x ${offer.name}`));
}
