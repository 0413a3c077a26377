export const SCHEMA_FILE: string;
export function planSchemaText(): string;
