import type { Reporter, TestModule } from "vitest/node";

/** Ends a run with the seed that it drew from and the line `N passed, N failed`. */
export default class CountReporter implements Reporter {
  onTestRunEnd(modules: readonly TestModule[], errors: readonly unknown[]): void {
    let passed = 0;
    let failed = errors.length;
    for (const module of modules) {
      const states = [...module.children.allTests()].map((test) => test.result().state);
      passed += states.filter((state) => state === "passed").length;
      const inTests = states.filter((state) => state === "failed").length;
      // A file that breaks before its first test is one failure.
      failed += inTests === 0 && module.state() === "failed" ? 1 : inTests;
    }
    console.log(`random seed ${process.env["PV_SEED"]} (PV_SEED=${process.env["PV_SEED"]} repeats the run)`);
    console.log(`${passed} passed, ${failed} failed`);
  }
}
