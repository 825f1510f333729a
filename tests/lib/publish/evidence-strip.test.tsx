import { renderToString } from "preact-render-to-string";
import { describe, expect, it } from "vitest";
import { EvidenceStrip } from "../../../lib/publish/pages/evidence-strip.tsx";
import { SiteProvider, siteContext } from "../../../lib/publish/pages/site-context.tsx";
import { axisTicks, sharedNumbers } from "../../../lib/publish/pages/strip-scale.ts";
import type { TestResult, Timeline } from "../../../lib/publish/results.ts";
import { fixture } from "../../pages/fixture.ts";

const { timeline } = fixture.tests[0] as TestResult;
const draw = (drawn: Timeline, size: "row" | "card" | "page" = "page") =>
  renderToString(
    <SiteProvider value={siteContext(fixture.index, "", "en")}>
      <EvidenceStrip timeline={drawn} size={size} />
    </SiteProvider>,
  );
const count = (html: string, what: string) => html.split(what).length - 1;

describe("the evidence strip", () => {
  it("draws each recorded stretch solid, and nothing solid for a connection that nobody recorded", () => {
    expect(count(draw(timeline), 'class="strip-recorded"')).toBe(2);
  });

  it("leaves open the one end that nobody saw", () => {
    expect(count(draw(timeline), 'class="strip-open"')).toBe(1);
    expect(draw(timeline)).toContain("1 end that nobody saw");
  });

  it("marks every reading in every size", () => {
    for (const size of ["row", "card", "page"] as const) expect(count(draw(timeline, size), 'href="#reading-')).toBe(4);
  });

  it("letters a finding that has a moment, on the page's size only", () => {
    expect(count(draw(timeline), 'class="strip-finding"')).toBe(1);
    expect(count(draw(timeline, "card"), 'class="strip-finding"')).toBe(0);
  });

  it("places things by their share of the span", () => {
    // 38.5 h of 135.5 h.
    expect(draw(timeline)).toContain('x="28.413%"');
  });

  it("survives a span of nothing", () => {
    const empty = { ...timeline, spanH: 0, connections: [], readings: [], findings: [] };
    expect(draw(empty)).toContain("0 connections");
    expect(draw(empty)).not.toContain("NaN");
  });
});

describe("ticks of the time axis", () => {
  it("are few, even and start at zero", () => {
    expect(axisTicks(135.5)).toEqual([0, 24, 48, 72, 96, 120]);
    expect(axisTicks(9)).toEqual([0, 2, 4, 6, 8]);
    expect(axisTicks(0)).toEqual([0]);
  });

  it("never exceed seven, even over years", () => {
    for (const spanH of [0.3, 47, 1000, 9000, 200_000]) expect(axisTicks(spanH).length).toBeLessThanOrEqual(7);
  });
});

describe("numbers over marks", () => {
  it("are shared by marks that stand too near to each other", () => {
    expect(sharedNumbers([0, 50, 98, 99, 100], 100)).toEqual(["1", "2", "3–5", "", ""]);
    expect(sharedNumbers([0, 3, 6], 100)).toEqual(["1", "2", "3"]);
    expect(sharedNumbers([], 100)).toEqual([]);
  });
});
