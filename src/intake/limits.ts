/** What a source of documents may ask for, so that no single file can use up the machine. */
export interface IntakeLimits {
  /** Bytes of one document, from the folder or unpacked from a ZIP. */
  readonly documentBytes: number;
  /** Files in one ZIP, folders counted too. */
  readonly zipEntries: number;
  /** Bytes that one ZIP unpacks to in all. */
  readonly zipBytes: number;
  /** How many times its packed size a file in a ZIP may have; small files may have more. */
  readonly zipRatio: number;
}

export const INTAKE_LIMITS: IntakeLimits = {
  documentBytes: 256_000_000,
  zipEntries: 2_000,
  zipBytes: 1_000_000_000,
  zipRatio: 200,
};

/** A file in a ZIP that unpacks to less than this (bytes) may be packed by any ratio: white pages pack well. */
export const RATIO_MATTERS_FROM = 10_000_000;
