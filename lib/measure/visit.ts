import type { MeasuredReading, TestContext } from "./test-context.ts";

/** One visit, with the test it belongs to. */
export type Visit = { readonly context: TestContext; readonly reading: MeasuredReading };
