import { briefingOf } from '../materials/briefings.js';
import {
  CAUTIONS,
  dustCaution,
  glueCaution,
  isCautionId,
  type Caution as TradeCaution,
} from '../materials/cautions.js';
import { ragsCaution, sealerCaution } from '../materials/sealer-care.js';
import { cautionsFor, type Tool, toolNamed } from '../materials/tools.js';
import { sourceText } from '../measure/figure-text.js';
import { GLUE } from './glue-plan.js';
import type { Caution, Step, ToolRow } from './plan.js';
import { SEALER } from './sealer-plan.js';
import type { Setting } from './setting.js';

/** Every tool of the build once, in the order in which it is first picked up. */
export function toolsOf(steps: readonly Step[]): readonly ToolRow[] {
  const ids = [...new Set(steps.flatMap(step => step.tools))];
  return ids.flatMap(id => {
    const tool = toolNamed(id);
    return tool ? [toolRow(tool)] : [];
  });
}

function toolRow({ id, name, use, who, plainly }: Tool): ToolRow {
  const told = briefingOf(id);
  if (told === undefined) return { id, name, use, who, plainly };
  const { tool: _, ...briefing } = told;
  return { id, name, use, who, plainly, briefing };
}

/** Cautions of a step: its own, then those of its tools, each once. */
export function careOf(step: Pick<Step, 'care' | 'tools'>): readonly string[] {
  return [...new Set([...step.care, ...cautionsFor(step.tools)])];
}

/** Every caution that the build needs, in the order in which it is needed. */
export function cautionsOf(steps: readonly Step[], setting: Setting): readonly Caution[] {
  const ids = [...new Set(steps.flatMap(careOf))];
  return ids.flatMap(id => {
    const known = isCautionId(id) ? cautionText(id, setting) : undefined;
    return known
      ? [{ id, title: known.title, lines: known.lines, source: sourceText(known.source) }]
      : [];
  });
}

/** Dust is told of the very wood that is cut, glue and sealer of the very ones that are brushed. */
function cautionText(id: keyof typeof CAUTIONS, { species }: Setting): TradeCaution {
  if (id === 'glue') return glueCaution(GLUE);
  if (id === 'sealer') return sealerCaution(SEALER);
  if (id === 'rags') return ragsCaution(SEALER);
  return id === 'dust' ? dustCaution(species) : CAUTIONS[id];
}
