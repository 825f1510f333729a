import { renderToString } from "preact-render-to-string";
import { describe, expect, it } from "vitest";
import type { JudgedClaim } from "../../../lib/nouns/finding.ts";
import { IntervalBar } from "../../../lib/publish/pages/interval-bar.tsx";
import { SmallProfile } from "../../../lib/publish/pages/small-profile.tsx";
import type { TestResult } from "../../../lib/publish/results.ts";
import { fixture } from "../../pages/fixture.ts";

const [current, , float, characteristic] = (fixture.tests[0] as TestResult).claims as [JudgedClaim, JudgedClaim, JudgedClaim, JudgedClaim];
const numberAfter = (html: string, pattern: RegExp) => Number(pattern.exec(html)?.[1]);

describe("a claim against its measurement", () => {
  it("shows a measurement short of the claim outside the band, to its left", () => {
    const html = renderToString(<IntervalBar claim={current} />);
    expect(numberAfter(html, /cx="([\d.]+)"/)).toBeLessThan(numberAfter(html, /<rect x="([\d.]+)"/));
  });

  it("runs the band to the edge on the side that has no limit", () => {
    expect(renderToString(<IntervalBar claim={float} />)).toContain('<rect x="0"');
  });

  it("draws neither dot nor whiskers where nothing was measured", () => {
    const html = renderToString(<IntervalBar claim={{ ...current, measured: null, low: null, high: null }} />);
    expect(html).toContain("interval-claim");
    expect(html).not.toMatch(/interval-dot|interval-whisker/);
  });

  it("draws nothing for a claim that is not a number", () => {
    expect(renderToString(<IntervalBar claim={characteristic} />)).toBe("");
  });
});

describe("the small profile", () => {
  const draw = (voltageV: (number | null)[], currentA: (number | null)[]) =>
    renderToString(<SmallProfile profile={{ elapsedH: [0, 1, 2, 3, 4], voltageV, currentA }} words="w" />);
  const paths = (html: string) => [...html.matchAll(/ d="([^"]*)"/g)].map((match) => match[1] ?? "");

  it("lifts the pen where a sample is missing", () => {
    const [voltage = "", amperes = ""] = paths(draw([12, 13, null, 14, 14], [5, 5, 5, 2, 1]));
    expect(voltage.match(/M/g)).toHaveLength(2);
    expect(amperes.match(/M/g)).toHaveLength(1);
  });

  it("draws no curve for a quantity that was not recorded, and stays free of NaN for a constant one", () => {
    const html = draw([12, 12, 12, 12, 12], [null, null, null, null, null]);
    expect(paths(html)).toHaveLength(1);
    expect(html).not.toContain("NaN");
  });
});
