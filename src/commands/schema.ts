import { join } from 'node:path';
import { pipelineSchema, recipeSchema } from '../config/schema.js';
import { formatDiagnostic } from '../diagnostics/format.js';
import { ensureFolder } from '../files/folder.js';
import { writeAtomically } from '../files/write-atomically.js';
import { STEPS } from '../steps/index.js';
import { EXIT, type CommandIo, type ExitCode } from './exit-codes.js';

export interface SchemaArgs {
  /** The folder to write to; default `recipes` in the current folder. */
  readonly out?: string | undefined;
}

/** The editor schemas by file name, as they are written. */
export function schemaFiles(): Readonly<Record<string, string>> {
  const text = (schema: unknown): string => `${JSON.stringify(schema, null, 2)}\n`;
  return { 'pipeline.schema.json': text(pipelineSchema(STEPS)), 'recipe.schema.json': text(recipeSchema(STEPS)) };
}

/** Writes the schemas that code editors complete and check pipelines and recipes with, and says how to use them. */
export async function runSchema(args: SchemaArgs, io: CommandIo): Promise<ExitCode> {
  const folder = args.out ?? 'recipes';
  const files = Object.entries(schemaFiles());
  let result = await ensureFolder(folder);
  for (const [name, text] of files) if (result.ok) result = await writeAtomically(join(folder, name), text);
  if (!result.ok) {
    io.err(`${formatDiagnostic({ ...result.reason, severity: 'error', place: { kind: 'run' } }, { colour: io.colour })}\n`);
    return EXIT.cannotGoOn;
  }
  for (const [name] of files) io.out(`${join(folder, name).replaceAll('\\', '/')}\n`);
  io.err('An editor with YAML support uses them where the first line of a file names one:\n');
  io.err('  # yaml-language-server: $schema=./recipe.schema.json\n');
  return EXIT.done;
}
