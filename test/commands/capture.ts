import type { CommandIo, ExitCode } from '../../src/commands/exit-codes.js';

export interface Captured {
  readonly exitCode: ExitCode;
  readonly out: string;
  readonly err: string;
}

/** Runs a command without a process and gives what it wrote. */
export async function capture(command: (io: CommandIo) => Promise<ExitCode>): Promise<Captured> {
  let out = '';
  let err = '';
  const io: CommandIo = { out: (text) => void (out += text), err: (text) => void (err += text), colour: false };
  const exitCode = await command(io);
  return { exitCode, out, err };
}
