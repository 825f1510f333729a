import { describe, expect, it } from "vitest";
import { judgeClaims } from "../../../../lib/judge/claims/index.ts";
import type { Finding, JudgedClaim, Outcome } from "../../../../lib/nouns/finding.ts";
import { type JudgedMode, type JudgedTest, makeVerdict } from "../../../../lib/publish/assemble/verdict.ts";
import { translatePhrase } from "../../../../lib/publish/phrases/translate.ts";
import { contextOf } from "../../measure/bench.ts";
import { finding, monthAt } from "./judged.ts";

const [plainClaim] = judgeClaims(contextOf({ claims: { currentA: { value: 8, from: "label" } } }));
function currentClaim(outcome: Outcome, measured: number | null): JudgedClaim {
  if (plainClaim === undefined) throw new Error("the claim is missing");
  return { ...plainClaim, outcome, measured };
}
const voltageClaim = (id: string, outcome: Outcome, measured: number, claimed: number): JudgedClaim => ({
  ...currentClaim(outcome, measured),
  id,
  unit: "V",
  claimed,
});
const reached = finding("target-density", "reached", "good");
const notReachable = finding("target-density", "not reachable as it goes", "bad");
const doubt = (id: string) => ({ id, place: "", found: "", expected: "", mend: "" });
const testOf = (claims: readonly JudgedClaim[], findings: readonly Finding[], doubts: readonly string[] = []): JudgedTest => ({
  claims: [...claims],
  findings: [...findings],
  doubts: [],
  recordings: [{ doubts: doubts.map(doubt) }],
});
const modeOf = (name: string, ...tests: readonly JudgedTest[]): JudgedMode => ({ name, tests, season: [] });
const ofTest = (...parts: Parameters<typeof testOf>) => makeVerdict([modeOf("NORMAL", testOf(...parts))]);

describe("the first sentence a buyer reads", () => {
  it.each<[Outcome, number | null, string]>([
    ["meets", 8, "Gives the 8\u202FA on its label."],
    ["short of", 5.04, "Gives 5\u202FA of the 8\u202FA on its label."],
    ["above", 9.9, "Gives 9.9\u202FA, more than the 8\u202FA on its label."],
    ["cannot tell", 7.2, "Whether it gives the 8\u202FA on its label cannot be told."],
    ["not put to the test", null, "The 8\u202FA on its label was not put to the test."],
  ])("says of a current claim that is %s only what was judged", (outcome, measured, sentence) => {
    expect(ofTest([currentClaim(outcome, measured)], []).sentence).toBe(sentence);
  });

  it("tells every claim that is missed, the float voltage and the characteristic too, since each makes the verdict a bad one", () => {
    expect(ofTest([voltageClaim("claim-float-voltage", "above", 14.174, 13.7)], [])).toEqual({
      sentence: "Floats at 14.17\u202FV, above the 13.7\u202FV stated.",
      weight: "bad",
    });
    expect(ofTest([{ ...currentClaim("short of", null), id: "claim-characteristic" }], [])).toEqual({
      sentence: "Does not go through the charge characteristic stated.",
      weight: "bad",
    });
  });

  it("warns of a charger that was not seen to let go, and tells one that did after a day apart from it", () => {
    expect(ofTest([], [finding("letting-go", "no", "bad")]).sentence).toContain("do not leave it connected");
    expect(ofTest([], [finding("letting-go", "only after a day", "caution")]).sentence).toBe(
      "Lets go of a gassing voltage only after a day.",
    );
  });

  it("passes on the warning of a voltmeter, which a reached target and a kept promise do not outweigh", () => {
    const warned = ofTest([currentClaim("meets", 8)], [reached, finding("float-window", "probably not", "caution")]);
    expect(warned.sentence).toContain("By one voltmeter reading it should not stay connected.");
    expect(warned.weight).toBe("caution");
  });

  it("tells that an instrument is doubted: by the checks, or as a hydrometer that the other witnesses contradict", () => {
    expect(ofTest([currentClaim("meets", 8)], [reached], ["log-readings"])).toEqual({
      sentence: "Gives the 8\u202FA on its label. Brought the battery back to full density. What an instrument showed is in doubt.",
      weight: "caution",
    });
    const off = finding("cross-examination", "acid not mixed and hydrometer reads off", "caution");
    expect(ofTest([], [reached, off]).sentence).toContain("The hydrometer probably reads off.");
    expect(ofTest([currentClaim("meets", 8)], [reached], ["log-clock"]).weight).toBe("good");
  });

  it("never says that a charge finished because a recording did", () => {
    const endings = [finding("recording-endings", "the recorder stopped first", "caution")];
    expect(ofTest([currentClaim("meets", 8)], endings)).toEqual({ sentence: "Gives the 8\u202FA on its label.", weight: "caution" });
  });

  it("says nothing of a target that was not put to the test, and does not pass off acid mixed by hand as the charger's doing", () => {
    expect(ofTest([], [finding("target-density", "not put to the test", "untested")]).sentence).toBe(
      "Too little was recorded to say what this charger does.",
    );
    expect(ofTest([], [finding("target-density", "only after mixing", "caution")]).sentence).toContain("only after the acid was mixed");
    expect(ofTest([], [finding("target-density", "reached, after mixing", "good")]).sentence).toContain("read after the acid was mixed");
    expect(ofTest([], [finding("target-density", "read, not settled", "unsure")]).sentence).toContain("had not settled");
  });

  it("is bad with one bad finding, good only with a reached target and claims met, untested where nothing was tested", () => {
    expect(ofTest([currentClaim("meets", 8)], [reached]).weight).toBe("good");
    expect(ofTest([currentClaim("meets", 8)], [reached, finding("float-window", "no", "bad")]).weight).toBe("bad");
    expect(ofTest([currentClaim("short of", 5)], [reached]).weight).toBe("bad");
    expect(ofTest([currentClaim("cannot tell", 7.2)], [reached]).weight).toBe("unsure");
    expect(ofTest([currentClaim("not put to the test", null)], [finding("target-density", "not put to the test", "untested")]).weight).toBe(
      "untested",
    );
  });
});

describe("the first sentence on a charger of several modes or tests", () => {
  const weak = modeOf("6V", testOf([currentClaim("short of", 5)], [reached]));
  const strong = modeOf("12V", testOf([currentClaim("meets", 8)], [reached]));

  it("names the mode that misses its claim, and tells once what all modes do", () => {
    expect(makeVerdict([strong, weak])).toEqual({
      sentence:
        'Brought the battery back to full density. Mode "6V": gives 5\u202FA of the 8\u202FA on its label. Mode "12V": gives the 8\u202FA on its label.',
      weight: "bad",
    });
  });

  it("tells both outcomes where modes ended differently, each under its name", () => {
    const short = modeOf("12V", testOf([currentClaim("meets", 8)], [notReachable]));
    expect(makeVerdict([weak, short]).sentence).toBe(
      'Mode "6V": gives 5\u202FA of the 8\u202FA on its label; brought the battery back to full density. Mode "12V": gives the 8\u202FA on its label; did not bring the battery back to full density, and will not as it goes.',
    );
  });

  it("counts the tests where those of one mode ended differently", () => {
    const mode = modeOf("NORMAL", testOf([currentClaim("short of", 5)], [reached]), testOf([currentClaim("meets", 8)], [notReachable]));
    expect(makeVerdict([mode])).toEqual({
      sentence: "Gives 5\u202FA of the 8\u202FA on its label in 1 of 2 tests. Brought the battery back to full density in 1 of 2 tests.",
      weight: "bad",
    });
    const never = testOf([], [finding("target-density", "not reached", "unsure")]);
    expect(makeVerdict([modeOf("NORMAL", never, never)]).sentence).toContain("in any of 2 tests");
  });

  it("lets a test that could not tell take nothing from one that could", () => {
    const mode = modeOf("NORMAL", testOf([currentClaim("cannot tell", 7.2)], []), testOf([currentClaim("meets", 8)], [reached]));
    expect(makeVerdict([mode])).toEqual({
      sentence: "Gives the 8\u202FA on its label. Brought the battery back to full density.",
      weight: "good",
    });
  });

  it("says how many modes were not tested", () => {
    expect(makeVerdict([strong, modeOf("AGM")]).sentence).toContain("Not tested: 1 of its 2 modes.");
    expect(makeVerdict([modeOf("AGM")]).sentence).toBe("Too little was recorded to say what this charger does.");
  });

  it("carries the forecast of a month connected where it is unsafe and no test has said so", () => {
    const tested = testOf([currentClaim("meets", 8)], [reached, finding("float-window", "yes, by its voltage", "good")]);
    const warm: JudgedMode = { ...modeOf("NORMAL", tested), season: [monthAt(15, "above"), monthAt(30, "above")] };
    expect(makeVerdict([warm])).toEqual({
      sentence:
        "Gives the 8\u202FA on its label. Brought the battery back to full density. May stay connected, by the voltage it holds. By its forecast it should not stay connected at 15 and 30 °C.",
      weight: "caution",
    });
    expect(makeVerdict([{ ...warm, season: [monthAt(15, "partly"), monthAt(30, "partly")] }]).weight).toBe("good");
  });

  it("is said whole in the other languages", () => {
    const short = modeOf("12V", testOf([currentClaim("meets", 8)], [notReachable]));
    const { sentence } = makeVerdict([
      weak,
      { ...short, season: [0, 15, 30].map((temperatureC) => monthAt(temperatureC, "above")) },
      modeOf("AGM"),
    ]);
    expect(translatePhrase(sentence, "de")).toBe(
      "Betriebsart „6V“: liefert 5\u202FA von den 8\u202FA auf dem Typenschild; brachte die Batterie wieder auf volle Säuredichte. Betriebsart „12V“: liefert die 8\u202FA vom Typenschild; brachte die Batterie nicht wieder auf volle Säuredichte und wird es so auch nicht; laut Hochrechnung sollte es bei 0, 15 und 30 °C nicht angeschlossen bleiben. Nicht geprüft: 1 von 3 Betriebsarten.",
    );
    expect(translatePhrase(sentence, "pl")).toMatch(
      /^Tryb „6V”: daje 5\u202FA z 8\u202FA podanych na etykiecie; .*Nie przetestowano: 1 z 3/,
    );
  });
});
