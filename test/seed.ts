import fc from 'fast-check';

/**
 * Property tests draw the same cases on every run, so that a run says what a change did, not what chance did. SLIPYARD_SEED (a whole
 * number) draws others: DEVELOPERS.md says how to look for faults with it.
 */
const { SLIPYARD_SEED: given = '20261130' } = process.env;
const seed = Number(given);
if (!Number.isSafeInteger(seed)) throw new Error(`SLIPYARD_SEED is '${given}'; set it to a whole number, or leave it out`);
fc.configureGlobal({ seed });
