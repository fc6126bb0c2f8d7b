import { writeFileSync } from 'node:fs';
import type { Reporter, TestModule } from 'vitest/node';

/**
 * Says at the end which checks were skipped, by name, and how many: a skip must not look like a pass. With SLIPYARD_RESULTS
 * it also writes the counts to that file, as JSON.
 */
export default class SkipReporter implements Reporter {
  onTestRunEnd(modules: readonly TestModule[], errors: readonly unknown[]): void {
    const count = { passed: 0, failed: errors.length, skipped: 0 };
    const skipped: string[] = [];
    for (const module of modules) {
      // A file that can't be loaded, or a group that can't be set up, has no tests to fail, and still is a failure.
      const groups = [module, ...module.children.allSuites()];
      count.failed += groups.filter((group) => group.errors().length > 0).length;
      for (const test of module.children.allTests()) {
        const { state } = test.result();
        if (state === 'passed') count.passed++;
        else if (state === 'failed') count.failed++;
        else {
          count.skipped++;
          skipped.push(`  ${module.relativeModuleId}: ${test.fullName}`);
        }
      }
    }
    if (skipped.length > 0) process.stderr.write(`Skipped checks: ${skipped.length}\n${skipped.join('\n')}\n`);
    const file = process.env['SLIPYARD_RESULTS'];
    if (file !== undefined) writeFileSync(file, `${JSON.stringify(count)}\n`);
  }
}
