/** As much of JSON Schema draft 7 as the editor schemas use. */
export interface JsonSchema {
  readonly $schema?: string;
  readonly title?: string;
  readonly description?: string;
  readonly type?: string | readonly string[];
  readonly const?: unknown;
  readonly enum?: readonly unknown[];
  readonly pattern?: string;
  readonly minLength?: number;
  readonly maxLength?: number;
  readonly minimum?: number;
  readonly maximum?: number;
  readonly default?: unknown;
  readonly examples?: readonly unknown[];
  readonly anyOf?: readonly JsonSchema[];
  readonly items?: JsonSchema | readonly JsonSchema[];
  readonly additionalItems?: boolean;
  readonly minItems?: number;
  readonly maxItems?: number;
  readonly uniqueItems?: boolean;
  readonly properties?: Readonly<Record<string, JsonSchema>>;
  readonly additionalProperties?: boolean | JsonSchema;
  readonly minProperties?: number;
  readonly maxProperties?: number;
  readonly required?: readonly string[];
  readonly definitions?: Readonly<Record<string, JsonSchema>>;
  readonly $ref?: string;
}

export const DRAFT_7 = 'http://json-schema.org/draft-07/schema#';
