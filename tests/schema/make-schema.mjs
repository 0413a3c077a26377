// The published JSON Schema of the plan, made from the type of the file: `npm run schema` after a change
// to the plan. Run by itself it writes the schema; the tests compare.
import { writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { createGenerator } from 'ts-json-schema-generator';

const ROOT = fileURLToPath(new URL('../..', import.meta.url));
export const SCHEMA_FILE = `${ROOT}src/print/plan.schema.json`;

/** The schema as text, as it stands in its file. */
export function planSchemaText() {
  const generator = createGenerator({
    path: `${ROOT}src/print/plan-json.ts`,
    tsconfig: `${ROOT}tsconfig.json`,
    type: 'PlanFile',
    skipTypeCheck: true,
    topRef: false,
  });
  const { $schema, ...schema } = generator.createSchema('PlanFile');
  const head = { $schema, $id: 'urn:notchbook:plan:1', title: 'A plan of Notchbook' };
  return `${JSON.stringify({ ...head, ...schema }, null, 2)}\n`;
}

if (process.argv[1] === fileURLToPath(import.meta.url))
  writeFileSync(SCHEMA_FILE, planSchemaText());
