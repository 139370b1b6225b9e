import type { Reporter, TestModule } from 'vitest/node';

/** Ends a run with one plain line, `2930 passed, 0 failed`, that any log reader understands, whatever colours come before it. */
export class ClosingLine implements Reporter {
  onTestRunEnd(modules: readonly TestModule[]): void {
    const count = { passed: 0, failed: 0, skipped: 0, pending: 0 };
    for (const module of modules) for (const test of module.children.allTests()) count[test.result().state] += 1;
    const skipped = count.skipped + count.pending;
    console.log(`${count.passed} passed, ${count.failed} failed${skipped > 0 ? `, ${skipped} skipped` : ''}`);
  }
}
