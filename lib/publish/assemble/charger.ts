import { type BenchTest, benchTestOf } from "../../judge/forecast/battery-tests.ts";
import type { TestContext } from "../../measure/test-context.ts";
import type { Charger, Mode } from "../../nouns/charger.ts";
import type { Evidence } from "../../nouns/evidence.ts";
import type { Figure } from "../../nouns/figure.ts";
import { type JudgedClaim, missedFirst, outcomes } from "../../nouns/finding.ts";
import { formatStated } from "../../units/format.ts";
import { type ChargerResult, schemaVersion, type TestResult } from "../results.ts";
import { methodVersion } from "../version.ts";
import { disclosures } from "./facts.ts";
import { assembleForecast, type Forecaster } from "./forecast.ts";
import { leftOnOf } from "./left-on.ts";
import { assembleRepeats } from "./repeats.ts";
import { makeVerdict } from "./verdict.ts";

/** Figures that stand for a test where it is only mentioned. */
const keyFigures = [
  "connections-to-target",
  "hours-to-target",
  "cost-per-result",
  "cost-first-result",
  "cost-per-ah",
  "cost-per-density",
  "charge-recorded",
  "holding-voltage",
];

export type ChargerInput = {
  readonly id: string;
  readonly charger: Charger;
  readonly evidence: Evidence;
  /** Its published tests, each with the context it was made from. */
  readonly tests: readonly { readonly context: TestContext; readonly result: TestResult }[];
  readonly prose: ChargerResult["prose"];
  /** The tests of the shop from which its batteries are known; the charger's own where left out. */
  readonly bench?: readonly BenchTest[] | undefined;
  /** Makes a mode's forecast, or recalls it; made anew where left out. */
  readonly forecaster?: Forecaster | undefined;
};

/** The published results of a charger, from those of its tests. */
export function assembleCharger({ id, charger, evidence, tests, prose, bench, forecaster }: ChargerInput): ChargerResult {
  const first = tests[0];
  const testsOf = (modeId: string) => tests.filter(({ result }) => result.mode.id === modeId);
  const modes = charger.modes.map((mode) => {
    const ofMode = testsOf(mode.id).map(({ result }) => result);
    const forecast = assembleForecast(
      mode.id,
      testsOf(mode.id).map(({ context }) => context),
      forecaster,
      bench ?? tests.map(({ context }) => benchTestOf(context)),
    );
    return {
      id: mode.id,
      name: mode.name,
      stated: statedBy(mode),
      claims: mergeClaims(ofMode),
      characteristic: widestCharacteristic(ofMode),
      forecast,
      leftOnWarning: leftOnOf(
        ofMode.flatMap((test) => test.findings),
        forecast?.season ?? [],
      ).warning,
      repeats: assembleRepeats(mode.id, ofMode),
      tests: ofMode.map((test) => test.id),
    };
  });
  const findings = mergeFindings(tests.map(({ result }) => result));
  return {
    schemaVersion,
    methodVersion,
    id,
    name: charger.name,
    maker: charger.maker ?? null,
    invented: first?.context.site.invented ?? false,
    inventedNote: first?.context.site.inventedNote ?? null,
    price:
      charger.price === undefined
        ? null
        : {
            amount: charger.price.amount,
            currency: charger.price.currency,
            on: charger.price.on ?? null,
            where: charger.price.where ?? null,
          },
    verdict: makeVerdict(
      modes.map((mode) => ({
        name: mode.name,
        tests: testsOf(mode.id).map(({ result }) => result),
        season: mode.forecast?.season ?? [],
      })),
    ),
    disclosures: first === undefined ? [] : disclosures(first.context),
    makerAnswer:
      charger.makerAnswer === undefined
        ? null
        : {
            toldOn: charger.makerAnswer.toldOn ?? null,
            answeredOn: charger.makerAnswer.answeredOn ?? null,
            answer: charger.makerAnswer.answer ?? null,
          },
    modes,
    figures: [priceFigure(charger, evidence)],
    findings,
    tests: tests.map(({ result }) => ({
      id: result.id,
      title: result.title,
      mode: result.mode.name,
      battery: result.battery.name,
      status: result.status,
      timeline: result.timeline,
      keyFigures: result.figures.filter((figure) => keyFigures.includes(figure.id)),
    })),
    notSeen: notSeen(tests.map(({ result }) => result)),
    prose,
    corrections: charger.corrections.map((correction) => ({ ...correction, noticedBy: correction.noticedBy ?? null })),
  };
}

function priceFigure(charger: Charger, evidence: Evidence): Figure {
  const common = {
    id: "price",
    of: "charger",
    label: "Price",
    low: null,
    high: null,
    basis: "stated" as const,
    method: "price/1",
    evidence: [evidence],
    doubts: [],
  };
  return charger.price === undefined
    ? { ...common, unit: "", value: null, absent: { kind: "not stated", why: "no price is stated in the charger's record" } }
    : { ...common, unit: charger.price.currency, value: charger.price.amount, absent: null };
}

/** All that the maker states of a mode, judged or not. */
function statedBy(mode: Mode): ChargerResult["modes"][number]["stated"] {
  const { currentA, voltageV, floatVoltageV, compensation, characteristic, batteryKinds, capacityAh, temperatureC, holdsForSeason } =
    mode.claims;
  const stated: { label: string; words: string; from: string }[] = [];
  const add = (label: string, words: string, from: string): void => {
    stated.push({ label, words, from });
  };
  if (currentA !== undefined) add("Output current", currentA.words ?? formatStated(currentA.value, "A"), currentA.from);
  if (voltageV !== undefined) add("Voltage limit", voltageV.words ?? formatStated(voltageV.value, "V"), voltageV.from);
  if (floatVoltageV !== undefined) add("Float voltage", floatVoltageV.words ?? formatStated(floatVoltageV.value, "V"), floatVoltageV.from);
  if (compensation !== undefined)
    add("Voltage against temperature", compensation.words ?? `${compensation.mVPerKPerCell} mV for each K and cell`, compensation.from);
  if (characteristic !== undefined) add("Characteristic", characteristic.words ?? characteristic.value, characteristic.from);
  if (batteryKinds !== undefined) add("Batteries", batteryKinds.words ?? batteryKinds.value.join(", "), batteryKinds.from);
  if (capacityAh !== undefined)
    add("Capacity", capacityAh.words ?? `${capacityAh.from} to ${formatStated(capacityAh.to, "Ah")}`, capacityAh.source);
  if (temperatureC !== undefined)
    add("Temperature", temperatureC.words ?? `${temperatureC.from} to ${formatStated(temperatureC.to, "°C")}`, temperatureC.source);
  if (holdsForSeason !== undefined)
    add("Left connected", holdsForSeason.words ?? (holdsForSeason.value ? "may stay connected" : "must be taken off"), holdsForSeason.from);
  return stated;
}

/**
 * Which outcome stands for several tests. A number must be met each time, so the test that says otherwise outweighs the rest; a
 * characteristic that was seen once in full is one that the charger has.
 */
const rankOfCharacteristic: readonly JudgedClaim["outcome"][] = ["meets", "above", "short of", "cannot tell", "not put to the test"];

/** One verdict a claim over all tests of a mode; where tests differ, that is said. */
function mergeClaims(tests: readonly TestResult[]): JudgedClaim[] {
  const ids = [...new Set(tests.flatMap((test) => test.claims.map((claim) => claim.id)))];
  return ids.flatMap((id) => {
    const judged = tests.flatMap((test) => test.claims.filter((claim) => claim.id === id).map((claim) => ({ claim, test })));
    const order = id === "claim-characteristic" ? rankOfCharacteristic : missedFirst;
    const chosen = [...judged].sort((a, b) => order.indexOf(a.claim.outcome) - order.indexOf(b.claim.outcome))[0];
    if (chosen === undefined) return [];
    const others = outcomes.filter((outcome) => outcome !== chosen.claim.outcome && judged.some(({ claim }) => claim.outcome === outcome));
    return [
      {
        ...chosen.claim,
        figure: chosen.claim.figure === null ? null : `${chosen.test.id}/${chosen.claim.figure}`,
        why: judged.length > 1 ? `${chosen.claim.why} (test ${chosen.test.id})` : chosen.claim.why,
        doubts:
          others.length === 0 ? chosen.claim.doubts : [...chosen.claim.doubts, `another test of this mode says: ${others.join(", ")}`],
      },
    ];
  });
}

function widestCharacteristic(tests: readonly TestResult[]): ChargerResult["modes"][number]["characteristic"] {
  const seen = tests
    .flatMap((test) =>
      test.recordings.map((recording) => ({
        ...recording.characteristic,
        test: test.id,
        recording: recording.id,
        stages: recording.stages,
      })),
    )
    .filter((characteristic) => characteristic.letters !== null)
    .sort((a, b) => Number(b.complete) - Number(a.complete) || (b.letters ?? "").length - (a.letters ?? "").length)[0];
  return seen ?? null;
}

/** Findings over several tests: each subject once, the weightiest first. */
function mergeFindings(tests: readonly TestResult[]): ChargerResult["findings"] {
  const order = ["bad", "caution", "unsure", "good", "note", "untested"];
  const ids = [...new Set(tests.flatMap((test) => test.findings.map((finding) => finding.id)))];
  return ids.flatMap((id) => {
    const found = tests.flatMap((test) => test.findings.filter((finding) => finding.id === id).map((finding) => ({ finding, test })));
    const chosen = [...found].sort((a, b) => order.indexOf(a.finding.weight) - order.indexOf(b.finding.weight))[0];
    if (chosen === undefined) return [];
    const others = [...new Set(found.map(({ finding }) => finding.verdict))].filter((verdict) => verdict !== chosen.finding.verdict);
    return [
      {
        ...chosen.finding,
        figures: chosen.finding.figures.map((figure) => `${chosen.test.id}/${figure}`),
        why: tests.length > 1 ? [`in test ${chosen.test.id}`, ...chosen.finding.why] : chosen.finding.why,
        doubts: others.length === 0 ? chosen.finding.doubts : [...chosen.finding.doubts, `another test says: ${others.join(", ")}`],
      },
    ];
  });
}

/** What was not recorded, not measured or cannot be told, each said once. */
function notSeen(tests: readonly TestResult[]): string[] {
  const sentences = tests.flatMap((test) => {
    const inTest = tests.length > 1 ? ` (${test.title})` : "";
    const claims = test.claims
      .filter((claim) => claim.outcome === "not put to the test")
      .map((claim) => `${claim.label}: not put to the test, since ${claim.why}${inTest}.`);
    const endings = test.recordings
      .filter((recording) => recording.ending.by === "recorder" || recording.ending.by === "unknown")
      .map((recording) =>
        recording.ending.by === "unknown"
          ? `${recording.id}: who ended it is ${recording.ending.words}${inTest}.`
          : `${recording.id}: ended by ${recording.ending.words}${inTest}.`,
      );
    const figures = [...test.figures, ...test.connections.flatMap((connection) => connection.figures)]
      .filter((figure) => figure.absent !== null && figure.absent.kind !== "not applicable" && figure.absent.kind !== "not reached")
      .map((figure) => `${figure.label}: ${figure.absent?.kind ?? ""}, ${figure.absent?.why ?? ""}${inTest}.`);
    return [...claims, ...endings, ...figures];
  });
  return [...new Set(sentences)];
}
