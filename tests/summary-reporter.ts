import type { Reporter, SerializedError, TestModule } from 'vitest/node';

/** Prints the plain closing line `N passed, N failed[, N skipped]` that CI reads. */
export default class SummaryReporter implements Reporter {
  onTestRunEnd(modules: readonly TestModule[], errors: readonly SerializedError[]): void {
    const n = { passed: 0, failed: errors.length, skipped: 0 };
    for (const m of modules) {
      n.failed += m.errors().length; // a file that could not be imported counts as a failure
      for (const t of m.children.allTests()) {
        const { state } = t.result();
        if (state === 'pending')
          n.failed++; // never ran: not a pass
        else n[state]++;
      }
    }
    process.on('exit', () => {
      process.stdout.write(`\n${n.passed} passed, ${n.failed} failed${n.skipped ? `, ${n.skipped} skipped` : ''}\n`);
    });
  }
}
