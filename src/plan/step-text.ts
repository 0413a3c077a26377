import { formatArea } from '../measure/area.js';
import { formatNumber } from '../measure/format-number.js';
import type { Display } from '../measure/quantities.js';
import { evaluate, type Scope } from '../recipe/evaluate.js';
import type { Template } from '../recipe/formula.js';
import type { Value } from '../recipe/values.js';
import { onTheTape } from './on-tape.js';

/**
 * The text of a step with its holes filled: `{seat_slat.length}` becomes `18 in`. A hole that can't be
 * worked out is a mistake that the checks should have refused, so it is thrown.
 */
export function fillTemplate(template: Template, scope: Scope, display: Display): string {
  return template.pieces
    .map(piece => {
      if (typeof piece === 'string') return piece;
      const result = evaluate(piece, scope);
      if (!result.ok) throw new Error(`a hole in a text has no value: {${piece.text}}`);
      return valueText(result.value, display);
    })
    .join('');
}

/** A value as a person reads it: lengths on the tape, plain numbers plain, yes and no in words. */
export function valueText(value: Value, display: Display): string {
  if (value.kind === 'text') return value.value;
  if (value.kind === 'flag') return value.value ? 'yes' : 'no';
  if (value.power === 1) return onTheTape(value.value, display);
  if (value.power === 2) return formatArea(value.value, display);
  return formatNumber(value.value, 2);
}
