import { renderToString } from "preact-render-to-string";
import { describe, expect, it } from "vitest";
import { batteryClasses, flatnesses } from "../../../lib/project/index.ts";
import { type Answer, answerOf, drawsFor, isCellOfMatrix, mostPromisingFirst } from "../../../lib/publish/find/answer.ts";
import type { AskedMode } from "../../../lib/publish/find/asked-and-apart.ts";
import { defaultQuestion, type Question } from "../../../lib/publish/find/question.ts";
import { energyShown, hoursShown, moneyShown, percentShown, sureShown } from "../../../lib/publish/find/shown.ts";
import { isComplaint, type StartOfCharge, startOfCharge } from "../../../lib/publish/find/start-of-charge.ts";
import { ReadyBySection } from "../../../lib/publish/pages/forecast-sections.tsx";
import { SiteProvider, siteContext } from "../../../lib/publish/pages/site-context.tsx";
import { fixture } from "../../pages/fixture.ts";
import { englishFind as english } from "./english-find.ts";
import { publishedForecast, threeStage } from "./find-chargers.ts";

const asked = (behaviour: AskedMode["behaviour"], name = "one"): AskedMode => ({
  name,
  charger: { id: name, name },
  mode: { id: "only", name: "ONLY" },
  price: null,
  behaviour,
  told: [],
  unknowns: [],
  leftOnWarning: null,
  nominalVoltageV: 12,
  claimedAh: null,
  kindWords: null,
  temperatureWords: null,
  families: ["vented"],
  testedOn: [],
});

function startOf(question: Question): StartOfCharge {
  const start = startOfCharge(question, english);
  if (isComplaint(start)) throw new Error(start.words);
  return start;
}
const answerTo = (question: Question, hoursLeft: number, behaviour: AskedMode["behaviour"]): Answer =>
  answerOf({ question, start: startOf(question), hoursLeft }, asked(behaviour));

/** Eighty cells forecast by two ways take two seconds; a busy machine needs room. */
const patienceMs = 60_000;

describe("a question that is a cell of a charger page's matrix", () => {
  // 22 A is too much for a motorcycle's battery, 2 A too little for a van's by tomorrow: every verdict occurs.
  it.each([
    ["flooded", 22],
    ["flooded", 2],
    ["AGM", 8],
  ] as const)(
    "has the verdict, the reasons and the digits of that page: %s, %d A",
    (kind, currentA) => {
      const behaviour = threeStage(currentA);
      const forecast = publishedForecast(behaviour, [kind]);
      const page = renderToString(
        <SiteProvider value={siteContext(fixture.index, "chargers/one/", "en")}>
          <ReadyBySection mode="ONLY" forecast={forecast} leftOnWarning={null} />
        </SiteProvider>,
      );
      const shownOnPage = [...page.matchAll(/<span>(will|may|will not|not advised) (?:<span class="quiet">([^<]*)<\/span>)?<\/span>/g)].map(
        ([, verdict, percent = ""]) => `${verdict} ${percent}`,
      );
      const cells = forecast.readyBy[0]?.cells ?? [];
      const answers = batteryClasses.flatMap(({ typicalAh }) =>
        flatnesses.flatMap(({ id: flat }) =>
          [12, 24, 48].map((hours) => answerTo({ ...defaultQuestion, ratedAh: typicalAh, kind, flat, by: `${hours}h` }, hours, behaviour)),
        ),
      );
      expect(answers).toHaveLength(60);
      expect(answers.map(({ probability, verdict }) => ({ probability, verdict }))).toEqual(
        cells.flatMap(({ deadlines }) => deadlines.map(({ probability, verdict }) => ({ probability, verdict }))),
      );
      expect(answers.map(({ because }) => because.map((reason) => english.words.against(reason, english.formats)))).toEqual(
        cells.flatMap(({ because, deadlines }) => deadlines.map(() => because)),
      );
      expect(answers.map((answer) => `${answer.verdict} ${sureShown(answer, english.formats)}`)).toEqual(shownOnPage);
      expect(new Set(answers.map(({ verdict }) => verdict)).size).toBeGreaterThan(1);
    },
    patienceMs,
  );

  it("is answered with that matrix' draws, and any other question with twice as many", () => {
    const cell: Question = { ...defaultQuestion, ratedAh: 44, by: "24h" };
    expect(isCellOfMatrix(cell)).toBe(true);
    expect(answerTo(cell, 24, threeStage(4)).inTime).toHaveLength(32);
    for (const other of [{ ratedAh: 45 }, { airC: 19 }, { kind: "EFB" }, { condition: "new" }, { by: "tomorrow-morning" }] as const)
      expect(drawsFor({ ...cell, ...other })).toBe(64);
  });
});

describe("an answer", () => {
  it("is the same each time, and never less likely with more hours", () => {
    const question: Question = { ...defaultQuestion, flat: "flat", ratedAh: 60 };
    const [early, late] = [answerTo(question, 9, threeStage(5)), answerTo(question, 14, threeStage(5))];
    expect(answerTo(question, 9, threeStage(5))).toEqual(early);
    expect(late.probability).toBeGreaterThanOrEqual(early.probability);
    expect(early.probability).toBeGreaterThan(0);
  });

  it("takes from the mains what the missing charge needs at the least: Ah times the battery's lowest voltage over the best efficiency", () => {
    const { mainsKWh } = answerTo({ ...defaultQuestion, flat: "half", ratedAh: 60 }, 40, threeStage(6));
    // Half of at least 0.8 of the print goes in at 12 V or more through a charger of at most 90 %.
    expect(mainsKWh.low).toBeGreaterThan((0.35 * 0.8 * 60 * 12) / 0.9 / 1000);
    expect(mainsKWh.high).toBeLessThan(3);
  });

  it("tells the hours of a charger that comes too late, and says never for one that cannot", () => {
    const late = answerTo({ ...defaultQuestion, ratedAh: 60 }, 2, threeStage(6));
    expect(late.verdict).toBe("will not");
    expect(late.hoursToReady.value).toBeGreaterThan(2);
    const never = answerTo({ ...defaultQuestion, ratedAh: 200, flat: "very-flat" }, 2, threeStage(0.5));
    expect(hoursShown(never, english)).toBe("not within 48 h");
  });

  it("works the most promising out first, and those whose current is too high for the battery last", () => {
    const question: Question = { ...defaultQuestion, ratedAh: 44 };
    const order = mostPromisingFirst({ question, start: startOf(question), hoursLeft: 12 }, [
      asked(threeStage(1), "slow"),
      asked(threeStage(40), "too strong"),
      asked(threeStage(10), "strong"),
    ]);
    expect(order.map(({ name }) => name)).toEqual(["strong", "slow", "too strong"]);
  });
});

describe("numbers shown", () => {
  const energy = { value: 0.8, low: 0.7, high: 1.1 };
  it("keeps the ends of an interval, and says where it has none", () => {
    expect(energyShown(energy, english.formats)).toBe("0.80\u202FkWh (0.70 to 1.10)");
    const ready = (value: number, low: number, neverReady: number) =>
      hoursShown(
        { hoursToReady: { value, low, high: Number.POSITIVE_INFINITY }, neverReady, horizonH: 48, inTime: Array(64).fill(true) },
        english,
      );
    expect(ready(10, 8, 3)).toBe("10\u202Fh (8 or more); not within 48 h in 3 of 64 draws");
    expect(ready(Number.POSITIVE_INFINITY, 30, 40)).toBe("30\u202Fh at best; not within 48 h in 40 of 64 draws");
    expect(ready(Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY, 64)).toBe("not within 48 h");
  });
  it("turns energy into money only at a stated price", () => {
    expect(moneyShown(energy, 0.3, "EUR", english)).toBe("0.24\u202FEUR (0.21 to 0.33)");
    expect(moneyShown(energy, 0.3, null, english)).toBe("0.24 (0.21 to 0.33)");
    expect(moneyShown(energy, Number.NaN, "EUR", english)).toBeUndefined();
  });
  it("never shows a certainty", () => {
    expect(percentShown(1, english.formats)).toBe("more than 98\u202F%");
    expect(percentShown(0, english.formats)).toBe("less than 2\u202F%");
  });
});
