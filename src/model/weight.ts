import type { Kilograms } from '../measure/quantities.js';
import type { Model, Part } from './part.js';
import { solidVolume } from './solid.js';

const CUBIC_MM_PER_CUBIC_METER = 1e9;

/** What one part weighs, notches taken out: 1 kg for a liter of wood at 1000 kg per cubic meter. */
export function partWeight(part: Part, kgPerCubicMeter: number): Kilograms {
  return (solidVolume(part.solid) / CUBIC_MM_PER_CUBIC_METER) * kgPerCubicMeter;
}

/** What the whole piece weighs; `density` gives kg per cubic meter for each part. */
export function weightOf(model: Pick<Model, 'parts'>, density: (part: Part) => number): Kilograms {
  return model.parts.reduce((sum, part) => sum + partWeight(part, density(part)), 0);
}
