import schema from '../print/plan.schema.json' with { type: 'json' };
import { fine, type Outcome } from './outcome.js';

/** `notchbook schema`: the JSON Schema (draft-07) of what `plan --as json` and `print` write. */
export function schemaCommand(): Outcome {
  return fine(`${JSON.stringify(schema, null, 2)}\n`);
}
