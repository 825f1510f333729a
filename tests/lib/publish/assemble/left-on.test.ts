import { describe, expect, it } from "vitest";
import { leftOnOf } from "../../../../lib/publish/assemble/left-on.ts";
import { finding, type Month, monthAt } from "./judged.ts";

const inside = finding("float-window", "yes, by its voltage");

describe("the warning of a mode that should not stay connected", () => {
  it("is the finding's own sentence, a voltage that never lets go before one above the float window before one voltmeter reading", () => {
    const once = finding("float-window", "probably not");
    const above = finding("float-window", "no");
    const never = finding("letting-go", "no");
    expect(leftOnOf([inside, once], []).warning).toBe(once.sentence);
    expect(leftOnOf([once, above], []).warning).toBe(above.sentence);
    expect(leftOnOf([above, never], []).warning).toBe(never.sentence);
  });

  it("is the forecast's where the findings do not say no, with the temperatures at which it lies above", () => {
    const warning = (...season: readonly Month[]) => leftOnOf([inside], season).warning;
    expect(warning(monthAt(0, "inside"), monthAt(30, "above"))).toBe(
      "By its forecast a month connected at 30 °C keeps the battery above the float window: it costs water and life.",
    );
    expect(warning(monthAt(0, "above"), monthAt(15, "above"), monthAt(30, "above"))).toContain("at 0, 15 and 30 °C");
    for (const inWindow of ["inside", "below", "partly", "holds no voltage", "not known"] as const)
      expect(warning(monthAt(15, inWindow)), inWindow).toBeNull();
  });

  it("is none where a voltage is too low or cannot be told, nor where nobody saw", () => {
    for (const verdict of ["too low to keep it full", "cannot tell", "not put to the test"])
      expect(leftOnOf([finding("float-window", verdict)], []).warning, verdict).toBeNull();
    expect(leftOnOf([], [])).toEqual({ clauses: [], warning: null });
  });

  it("lets no test that says yes outweigh one that cannot tell", () => {
    expect(leftOnOf([inside], []).clauses).toEqual(["may stay connected, by the voltage it holds"]);
    expect(leftOnOf([inside, finding("float-window", "cannot tell")], []).clauses).toEqual([]);
  });
});
