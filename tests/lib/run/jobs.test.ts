import { describe, expect, it } from "vitest";
import { type ChargerJob, keyOfCharger } from "../../../lib/run/jobs.ts";

describe("the name of a charger's results", () => {
  it("is another for other words of its record, though the file was digested before they were written", () => {
    const job = (text: string): Omit<ChargerJob, "key" | "kind"> => ({
      id: "mole-six",
      record: { value: { name: "Mole Six (invented)" } as ChargerJob["record"]["value"], file: "data/chargers/mole-six.yaml", text },
      evidence: { file: "data/chargers/mole-six.yaml", sha256: "ab".repeat(32) },
      tests: [],
      bench: [],
      prose: undefined,
      called: [],
      published: [],
      language: "en",
    });
    expect(keyOfCharger(job("name: Mole Six\n"), "1")).toBe(keyOfCharger(job("name: Mole Six\n"), "1"));
    expect(keyOfCharger(job("name: Mole Six\n# more\n"), "1")).not.toBe(keyOfCharger(job("name: Mole Six\n"), "1"));
  });
});
