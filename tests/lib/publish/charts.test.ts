import { describe, expect, it } from "vitest";
import { chartSpeechIn } from "../../../lib/publish/charts/chart-speech.ts";
import { densitySentence, densitySeries, densitySpec } from "../../../lib/publish/charts/density-over-time.ts";
import { drawChargerCharts, drawTestCharts } from "../../../lib/publish/charts/index.ts";
import { followTheme, palette } from "../../../lib/publish/charts/palette.ts";
import { profileSentence, profileSpec } from "../../../lib/publish/charts/profile.ts";
import { renderChart } from "../../../lib/publish/charts/render.ts";
import type { RecordingResult, TestResult } from "../../../lib/publish/results.ts";
import { fixture } from "../../pages/fixture.ts";

const [flooded, sealed] = fixture.tests as [TestResult, TestResult];
const [night, short] = flooded.recordings as [RecordingResult, RecordingResult];

const english = chartSpeechIn("en");
const drawable = <T>(spec: T | undefined): T => {
  if (spec === undefined) throw new Error("the fixture should give a chart here");
  return spec;
};
const profileOf = (recording: RecordingResult) => drawable(profileSpec(recording, english));
const densityOf = (test: TestResult) => drawable(densitySpec(test, english));

describe("the profile", () => {
  it("is not drawn where there are no samples", () => {
    expect(profileSpec(short, english)).toBeUndefined();
  });

  it("lifts the pen over a gap: two pieces of line for each quantity", async () => {
    const svg = await renderChart(profileOf(night), "p");
    const lines = [...svg.matchAll(/aria-roledescription="line mark"|class="mark-line role-mark[^>]*>(<path[^>]*d="([^"]*)")/g)];
    const paths = lines.map((match) => match[2] ?? "").filter((path) => path !== "");
    expect(paths).toHaveLength(2);
    for (const path of paths) expect(path.match(/M/g)).toHaveLength(2);
  });

  it("tells its stages, its gaps and how it ended, in words", () => {
    const words = profileSentence(night, english);
    expect(words).toContain("1 constant current for 5\u202Fh 12\u202Fmin");
    expect(words).toContain("1 gap");
    expect(words).toContain(night.ending.words);
  });

  it("has the same bytes whatever was drawn before it", async () => {
    const first = await renderChart(profileOf(night), "p");
    await renderChart(densityOf(flooded), "d");
    expect(await renderChart(profileOf(night), "p")).toBe(first);
  });
});

describe("density over time", () => {
  it("is not drawn for a sealed battery", () => {
    expect(densitySpec(sealed, english)).toBeUndefined();
  });

  it("leaves out the visit at which nothing was read, rather than drawing a zero", () => {
    expect(
      densitySeries(flooded)
        .get("density-25")
        ?.map((point) => point.hour),
    ).toEqual([0, 38.2, 135.5]);
  });

  it("names the first and last density and the target", () => {
    expect(densitySentence(flooded, english)).toContain("1.1420 ± 0.0048\u202Fkg/l");
    expect(densitySentence(flooded, english)).toContain("The target is 1.26 kg/l.");
  });
});

describe("drawings", () => {
  it("carry no style attribute, which the page's policy would refuse, and no label on marks", async () => {
    const { density, profiles } = await drawTestCharts(flooded, "en");
    const drawings = [density?.svg ?? "", ...[...profiles.values()].map((chart) => chart.svg)];
    expect(drawings).toHaveLength(2);
    for (const svg of drawings) {
      expect(svg).toMatch(/^<svg aria-hidden="true"/);
      expect(svg).not.toContain("style=");
      expect(svg).not.toContain("aria-label=");
    }
  });

  it("swap every placeholder for the theme's property", async () => {
    const { density } = await drawTestCharts(flooded, "en");
    const coloured = [...(density?.svg ?? "").matchAll(/(?:fill|stroke)="(#[0-9a-f]{6})"/g)].map((match) => match[1]);
    expect(coloured).toEqual([]);
    expect(followTheme(`<path fill="${palette.gap.placeholder}"/>`)).toBe(`<path fill="var(--gap,${palette.gap.placeholder})"/>`);
  });

  it("have ids of their own, so that two on a page never meet", async () => {
    const clipped = {
      data: { values: [{ a: 1 }] },
      mark: { type: "point" as const, clip: true },
      encoding: { x: { field: "a", type: "quantitative" as const } },
    };
    const [one, two] = [await renderChart(clipped, "one"), await renderChart(clipped, "two")];
    expect(one).toMatch(/id="one-clip\d+"/);
    expect(one).toMatch(/url\(#one-clip\d+\)/);
    expect(two).not.toContain("one-");
  });

  it("stand for each test on a charger's page by its longest recording", async () => {
    const charts = await drawChargerCharts(fixture.tests, "en");
    expect(charts.get("lantern-first")?.recording.id).toBe("night one.csv");
    expect([...charts.keys()]).toEqual(["lantern-first", "pebble-agm"]);
  });
});
