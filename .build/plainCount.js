/**
 * A vitest reporter that ends the output with one plain line: "12 passed, 0 failed". A test file that could not
 * run at all counts as a failure.
 */
export default class PlainCount {
  /** @param {readonly import("vitest/node").TestModule[]} modules */
  onTestRunEnd(modules) {
    const states = modules.flatMap((module) => [...module.children.allTests()].map((test) => test.result().state));
    const passed = states.filter((state) => state === "passed").length;
    const failed = states.filter((state) => state === "failed").length;
    const unread = modules.filter((module) => module.errors().length > 0).length;
    console.log(`\n${passed} passed, ${failed + unread} failed`);
  }
}
