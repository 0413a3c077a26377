import { expect, test } from 'vitest';
import { squareFeet } from '../../src/measure/area.js';
import { MILLIMETERS, SIXTEENTHS } from '../../src/measure/displays.js';
import {
  ANSWERED,
  COMMON_PRACTICE,
  COMPUTED,
  type Source,
  type Unit,
} from '../../src/measure/figure.js';
import { figure, formatFigure, sourceText } from '../../src/measure/figure-text.js';
import { inches } from '../../src/measure/inch.js';
import { cubicFeet, fluidOunces } from '../../src/measure/volume.js';

test('a figure keeps its value, unit, rule and source', () => {
  const rule = '48 in less two posts of 3-1/2 in';
  expect(figure(inches(41), 'mm', rule, COMPUTED)).toEqual({
    value: 1041.4,
    unit: 'mm',
    because: rule,
    source: COMPUTED,
  });
});

const rows: readonly (readonly [number, Unit, string, string])[] = [
  [inches(41), 'mm', '41 in', '1041.4 mm'],
  [inches(6 / 13), 'mm', '0.4615 in', '11.72 mm'],
  [squareFeet(38), 'mm2', '38 sq ft', '3.5 m2'],
  [cubicFeet(2.5), 'mm3', '2.5 cu ft', '71 l'],
  [11, 'kg', '24 lb', '11 kg'],
  [23, 'g', '0.8 oz', '23 g'],
  [fluidOunces(8), 'ml', '8 fl oz', '237 ml'],
  [20, 'C', '68 °F', '20 °C'],
  [90, 'min', '1 h 30 min', '1 h 30 min'],
  [748, 'cents', '7.48', '7.48'],
  [12, 'count', '12', '12'],
  [12.34, 'percent', '12.3%', '12.3%'],
  [0.6667, 'ratio', '0.667', '0.667'],
];

test.each(rows)('%d %s is written %s or %s', (value, unit, inch, metric) => {
  const shown = figure(value, unit, 'a row of the table', COMPUTED);
  expect(formatFigure(shown, SIXTEENTHS)).toBe(inch);
  expect(formatFigure(shown, MILLIMETERS)).toBe(metric);
});

const handbook = { publication: 'Wood Handbook FPL-GTR-190', place: 'Table 4-3' };
const sources: readonly (readonly [Source, string])[] = [
  [{ ...handbook, standing: 'checked' }, 'Wood Handbook FPL-GTR-190, Table 4-3'],
  [{ ...handbook, standing: 'memory' }, 'Wood Handbook FPL-GTR-190, Table 4-3, not re-checked'],
  [{ publication: 'product label', standing: 'checked' }, 'product label'],
  [{ publication: 'boat builders', standing: 'practice' }, 'boat builders, common practice'],
  [COMMON_PRACTICE, 'common practice'],
  [COMPUTED, 'arithmetic on this plan'],
  [ANSWERED, 'your answer'],
];

test.each(sources)('%j is named %s', (source, text) => {
  expect(sourceText(source)).toBe(text);
});
