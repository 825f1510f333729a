import { renderToString } from "preact-render-to-string";
import { describe, expect, it } from "vitest";
import type { JudgedClaim } from "../../../lib/nouns/finding.ts";
import { CharacteristicDrawing } from "../../../lib/publish/pages/characteristic-drawing.tsx";
import { IntervalBar } from "../../../lib/publish/pages/interval-bar.tsx";
import { SiteProvider, siteContext } from "../../../lib/publish/pages/site-context.tsx";
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

describe("the charge profile, stage by stage", () => {
  const [stage] = (fixture.tests[0] as TestResult).recordings.flatMap(({ stages }) => stages);
  const draw = (count: number) =>
    renderToString(
      <SiteProvider value={siteContext(fixture.index, "", "en")}>
        <CharacteristicDrawing stages={stage === undefined ? [] : Array.from({ length: count }, () => stage)} caption="As recorded." />
      </SiteProvider>,
    );
  /** What a page of 320 px leaves between its margins of 1 rem. */
  const phonePx = 320 - 2 * 16;

  it("is a region that the keyboard reaches where it is wider than a phone, and no stop for it where it fits", () => {
    for (const count of [1, 2, 3, 4, 8]) {
      const html = draw(count);
      const isWider = numberAfter(html, /<svg [^>]*width="(\d+)"/) > phonePx;
      expect(html.includes('tabindex="0"'), `${count} stages`).toBe(isWider);
      expect(html.includes('<section class="scroll" tabindex="0" aria-label="As recorded. (drawing)"'), `${count} stages`).toBe(isWider);
    }
  });
});
