import { renderToString } from "preact-render-to-string";
import { describe, expect, it } from "vitest";
import type { Outcome } from "../../../../lib/nouns/finding.ts";
import { renderChargerPage } from "../../../../lib/publish/pages/charger-page.tsx";
import { claimOutcomes } from "../../../../lib/publish/pages/comparison/claim-outcomes.ts";
import { MissingFigure } from "../../../../lib/publish/pages/comparison/missing-figure.tsx";
import { renderComparisonPage } from "../../../../lib/publish/pages/comparison-page.tsx";
import { SiteProvider, siteContext } from "../../../../lib/publish/pages/site-context.tsx";
import type { ChargerResult, SiteIndex } from "../../../../lib/publish/results.ts";
import type { ResultsFolder } from "../../../../lib/publish/results-folder.ts";
import { figureOf, fixture } from "../../../pages/fixture.ts";
import { findResults, resultsFolderOf } from "../find-chargers.ts";

function first<T>(of: readonly T[]): T {
  const [one] = of;
  if (one === undefined) throw new Error("the fixture lacks what this test asks for");
  return one;
}

const lantern = first(fixture.chargers);
const mode = first(lantern.modes);
const claim = first(mode.claims);

const folderOf = (index: SiteIndex, charger: ChargerResult): ResultsFolder =>
  resultsFolderOf({ index, tests: fixture.tests, chargers: fixture.chargers.map((one) => (one.id === charger.id ? charger : one)) });

/** The charger with two tests, of which the one that reached its target is shown. */
const shown = first(fixture.index.rows.filter((row) => row.charger.id === lantern.id));
const index: SiteIndex = {
  ...fixture.index,
  rows: [
    { ...shown, status: "reached", verdict: { sentence: "Brought the battery back to full density.", weight: "good" } },
    { ...shown, test: first(fixture.index.rows.filter((row) => row.test.id !== shown.test.id)).test, status: "not reached" },
  ],
};
const charger: ChargerResult = { ...lantern, verdict: { sentence: "It depends on the mode.", weight: "bad" } };
const shownCell = (html: string): string => /<td class="seen">(.*?)<div/s.exec(html)?.[1] ?? "";

describe("a charger's row in the comparison", () => {
  const html = renderComparisonPage(folderOf(index, charger), "en");

  it("has the verdict over all its tests, though its strip is of the better one", () => {
    expect(shownCell(html)).toContain("It depends on the mode.");
    expect(shownCell(html)).not.toContain("Brought the battery back");
  });

  it("says in the fold's own line what came of the other tests, where it is something else", () => {
    expect(html).toContain("<summary>1 more test: target not reached</summary>");
    const [one, other] = index.rows;
    const mixed = { ...index, rows: [one, one, other].flatMap((row) => row ?? []) };
    expect(renderComparisonPage(folderOf(mixed, charger), "en")).toContain("<summary>2 more tests: target not reached (1)</summary>");
    const alike = { ...index, rows: index.rows.map((row) => ({ ...row, status: "reached" as const })) };
    expect(renderComparisonPage(folderOf(alike, charger), "en")).toContain("<summary>1 more test</summary>");
  });

  it("stands at a glance on the charger's own page, with the same line", () => {
    expect(renderChargerPage(folderOf(index, charger), charger, new Map(), "en")).toContain(
      "<summary>1 more test: target not reached</summary>",
    );
  });
});

describe("a mode that should not stay connected", () => {
  const warning = "It holds 14.10 V, above the float window: left connected it costs water and life.";
  const withForecast = findResults();
  const warned: ChargerResult = {
    ...withForecast.charger(lantern.id),
    modes: withForecast.charger(lantern.id).modes.map((one) => ({ ...one, leftOnWarning: one.id === mode.id ? warning : null })),
  };
  const html = renderChargerPage(withForecast, warned, new Map(), "en");

  it("has its warning at a glance and before the batteries that it makes ready, not in the season's table alone", () => {
    const told = `<strong>Take it off when the battery is full:</strong> ${warning}`;
    const [top = "", battery = ""] = html.split('id="battery"');
    expect(top.split('id="claims"')[0]).toContain(told);
    expect(battery.split('class="ready-by')[0]).toContain(told);
    expect(html.split(told)).toHaveLength(3);
  });
});

describe("a figure that a row has not", () => {
  const withForecast = findResults();
  const forecast = first(withForecast.charger(lantern.id).modes).forecast;
  const shownWith = (figureId: string, ofMode: typeof forecast) => {
    const modes = lantern.modes.map((one) => (one.id === mode.id ? { ...one, forecast: ofMode } : one));
    return renderToString(
      <SiteProvider value={siteContext(fixture.index, "", "en")}>
        <MissingFigure charger={{ id: lantern.id, modes }} row={{ ...shown, mode: { id: mode.id, name: mode.name } }} figureId={figureId} />
      </SiteProvider>,
    );
  };

  it("is told by its own kind of absence, and leads to where the reason stands: never as something that nobody stated", () => {
    const otherVoltage = shownWith("reference-hours-95", forecast && { ...forecast, nominalVoltageV: 6, reference: null });
    expect(otherVoltage).toContain("not applicable");
    expect(otherVoltage).toContain("is for 6 V, so it cannot be held against others");
    expect(otherVoltage).toContain(`href="chargers/${lantern.id}/index.html#time"`);
    expect(shownWith("reference-hours-95", null)).toContain("not recorded");
    expect(shownWith("hours-to-target", forecast)).toContain("not measured");
  });

  it("stands so in the comparison, of a charger that lacks what another has", () => {
    const hours = figureOf({ id: "reference-hours-95", of: `mode/${mode.id}`, label: "Hours to 95 %", unit: "h", basis: "projected" }, 14);
    const rows = fixture.index.rows.map((row) => (row.charger.id === lantern.id ? { ...row, figures: [...row.figures, hours] } : row));
    const html = renderComparisonPage(folderOf({ ...fixture.index, rows }, lantern), "en");
    const cells = [...html.matchAll(/<td class="number"[^>]*data-column="reference-hours-95">(.*?)<\/td>/gs)].map(([, cell = ""]) => cell);
    expect(cells.length).toBeGreaterThan(1);
    expect(cells.filter((cell) => cell.includes("not recorded"))).toHaveLength(cells.length - 1);
  });
});

describe("what came of a charger's claims", () => {
  const modesOf = (...outcomes: readonly Outcome[]) =>
    outcomes.map((outcome, place) => ({ ...mode, name: `M${place}`, claims: [{ ...claim, outcome }] }));
  const short = (modes: ChargerResult["modes"]) => claimOutcomes({ modes }).map(({ outcome, modes }) => [outcome, ...modes].join(" "));

  it("names no mode where all came out alike, and every mode, the missed first, where they did not", () => {
    expect(short(modesOf("meets", "meets"))).toEqual(["meets"]);
    expect(short(modesOf("meets", "short of", "meets"))).toEqual(["short of M1", "meets M0 M2"]);
    expect(short([])).toEqual([]);
  });
});
