import { readFileSync } from 'node:fs';
import { Ajv } from 'ajv';
import { describe, expect, test } from 'vitest';
import { schemaCommand } from '../../src/commands/schema.js';
import { MILLIMETERS, SIXTEENTHS } from '../../src/measure/displays.js';
import { planJson } from '../../src/print/plan-json.js';
import { planSchemaText, SCHEMA_FILE } from '../schema/make-schema.mjs';
import { PROJECT_NAMES, planOf, project } from '../support/projects.js';

// Ajv: a general checker of JSON against JSON Schema (draft-07).
const valid = new Ajv({ allErrors: true }).compile(JSON.parse(schemaCommand().out));

function problems(json: unknown): readonly string[] {
  valid(json);
  return (valid.errors ?? []).map(({ instancePath, message }) => `${instancePath} ${message}`);
}

const DATED = {
  first_day: { kind: 'date', value: '2026-12-04' },
} as const;

describe('the JSON of a plan against its published schema', () => {
  test.each(
    PROJECT_NAMES.flatMap(name => [
      [name, 'inch', SIXTEENTHS] as const,
      [name, 'metric', MILLIMETERS] as const,
    ]),
  )('%s in %s holds to it', (name, _, display) => {
    const plan = planOf(project(name), DATED, display);
    expect(problems(JSON.parse(planJson(plan)))).toEqual([]);
  });

  test.each([
    ['a length as a text', { cutList: [{ length: '48 in' }] }],
    ['a number that no plan has', { luck: 7 }],
    ['another form of the file', { format: 2 }],
  ])('%s does not', (_, change) => {
    const plan = JSON.parse(planJson(planOf(project('planter-bench'))));
    expect(problems({ ...plan, ...change })).not.toEqual([]);
  });

  test('a plan without its steps does not', () => {
    const { steps: _, ...rest } = JSON.parse(planJson(planOf(project('planter-bench'))));
    expect(problems(rest)).toEqual([" must have required property 'steps'"]);
  });

  test('is what the types of the program say now; else run "npm run schema"', () => {
    expect(readFileSync(SCHEMA_FILE, 'utf8')).toBe(planSchemaText());
  }, 60_000);
});
