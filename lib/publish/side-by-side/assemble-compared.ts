/** Cuts what the page side by side needs out of a charger's published results. */
import type { Figure } from "../../nouns/figure.ts";
import type { JudgedClaim } from "../../nouns/finding.ts";
import type { Language } from "../../nouns/site.ts";
import type { Formats } from "../../units/formats.ts";
import { figureFinder } from "../figure-finder.ts";
import { addressPart, chargerPath, testPath } from "../links.ts";
import { chargerGroups, firstFigures } from "../pages/comparison/groups.ts";
import type { ChargerResult, ComparisonRow, ModeForecastResult, RecordingResult, TestResult } from "../results.ts";
import { fill } from "../words/fill.ts";
import { type Words, wordsIn } from "../words/index.ts";
import { formatsIn, sayIn } from "../words/speech-in.ts";
import { wordFor } from "../words/word-for.ts";
import { chargeShare } from "./charge-share.ts";
import type {
  Aspect,
  ComparedCharger,
  ComparedClaim,
  ComparedFigure,
  ComparedMode,
  ComparedProfile,
  ComparedRun,
  ComparedSeason,
} from "./compared.ts";

type Find = (reference: string) => string | undefined;
type ModeResult = ChargerResult["modes"][number];

/** What the texts that are made here need of a language; those of the results stay as they are. */
type Tongue = { readonly formats: Formats; readonly words: Words; tell(text: string): string };

const tongueOf = (language: Language): Tongue => ({
  formats: formatsIn(language),
  words: wordsIn(language),
  tell: (text) => sayIn(language, text) ?? text,
});

/**
 * What the page knows of a charger.
 * @param rows the comparison's rows; those of other chargers are passed over
 * @param tests all tests of the charger, in any order
 * @param language of the texts that are made here: figures and claims as written, words for outcomes, prices, batteries, places.
 *   What is published is in English; in another language it serves to tell what those texts mean (compared-phrases.ts)
 * @returns modes and tests with the most telling first, as the comparison ranks them; a mode without tests stands last, with no runs
 */
export function assembleCompared(
  charger: ChargerResult,
  rows: readonly ComparisonRow[],
  tests: readonly TestResult[],
  language: Language = "en",
): ComparedCharger {
  const tongue = tongueOf(language);
  const find = figureFinder(tests, charger);
  const ranked = chargerGroups(rows.filter((row) => row.charger.id === charger.id)).flatMap(({ shown, others }) => [shown, ...others]);
  const rankOf = (mode: ModeResult): number => {
    const rank = ranked.findIndex((row) => row.mode.id === mode.id);
    return rank < 0 ? ranked.length : rank;
  };
  return {
    id: charger.id,
    name: charger.name,
    maker: charger.maker,
    invented: charger.invented,
    priced: pricedWords(charger.price, tongue),
    verdict: charger.verdict,
    figures: charger.figures.map((figure) => compared(figure, [], find, chargerPath(charger.id), tongue)),
    modes: [...charger.modes].sort((a, b) => rankOf(a) - rankOf(b)).map((mode) => comparedMode(charger, mode, ranked, tests, find, tongue)),
    notSeen: charger.notSeen,
  };
}

function pricedWords(price: ChargerResult["price"], { formats, words: { sideBySide } }: Tongue): string | null {
  if (price === null) return null;
  const { where, on } = price;
  return [where, on === null ? sideBySide.onNoDay : fill(sideBySide.onDay, { day: formats.formatDay(on) })]
    .filter((word) => word !== null)
    .join(", ");
}

function comparedMode(
  charger: ChargerResult,
  mode: ModeResult,
  ranked: readonly ComparisonRow[],
  tests: readonly TestResult[],
  find: Find,
  tongue: Tongue,
): ComparedMode {
  const { forecast } = mode;
  const page = chargerPath(charger.id);
  return {
    id: mode.id,
    name: mode.name,
    claims: mode.claims.map((claim) => comparedClaim(claim, find, page, tongue)),
    season: forecast?.season.map((season) => comparedSeason(season, tongue)) ?? [],
    figures: forecast?.reference?.figures.map((figure) => compared(figure, [], find, page, tongue)) ?? [],
    reference: referenceOf(forecast),
    unknowns: forecast?.unknowns ?? [],
    runs: ranked
      .filter((row) => row.mode.id === mode.id)
      .flatMap((row) => tests.filter((test) => test.id === row.test.id).map((test) => comparedRun(row, test, tongue))),
  };
}

function referenceOf(forecast: ModeForecastResult | null): ComparedMode["reference"] {
  if (forecast === null) return { because: "no recording shows what the mode does" };
  if (forecast.reference === null) return { because: `the mode is for ${formatsIn("en").formatStated(forecast.nominalVoltageV, "V")}` };
  const { words, drawsH, drawsKWh, pricePerKWh } = forecast.reference;
  return { words, drawsH: drawsH.map(short), drawsKWh: drawsKWh.map(short), pricePerKWh };
}

function comparedRun(row: ComparisonRow, test: TestResult, tongue: Tongue): ComparedRun {
  const { formats, words } = tongue;
  const targetAt25C = test.target?.densityAt25C ?? null;
  const { id, name, ...conditions } = row.battery;
  const telling = tellingRecording(test);
  const find = figureFinder([test]);
  return {
    test: row.test,
    batteryName: name,
    battery: `${name}: ${formats.formatStated(conditions.nominalVoltageV, "V")}, ${formats.formatStated(conditions.capacityAh, "Ah")}, ${wordFor(words.marks.constructions, conditions.construction)}`,
    target: targetAt25C === null ? null : formats.formatStated(targetAt25C, "kg/l"),
    conditions: { ...conditions, targetAt25C },
    discharged: test.facts.find(({ label }) => label === "Battery discharged")?.value ?? null,
    status: wordFor(words.marks.statuses, row.status),
    verdict: row.verdict,
    characteristic: row.characteristic,
    figures: row.figures
      .filter((figure) => figure.of === "test")
      .sort((a, b) => rankOfFigure(a) - rankOfFigure(b))
      .map((figure) => compared(figure, aspectsOf(figure.id), find, testPath(test.id), tongue)),
    profile: row.profile === null ? null : comparedProfile(row.profile, conditions.capacityAh),
    recording:
      telling === undefined
        ? null
        : {
            id: telling.id,
            endedBy: telling.ending.by,
            endedWords: telling.ending.words,
            to: `${testPath(test.id)}#recording-${addressPart(telling.id)}`,
          },
  };
}

const rankOfFigure = ({ id }: Figure): number => (firstFigures.includes(id) ? firstFigures.indexOf(id) : firstFigures.length);

/** The row's profile is of the recording with the most ampere-hours in its stages, the first of equals; undefined for none. */
export function tellingRecording(test: TestResult): RecordingResult | undefined {
  const chargeAh = ({ stages }: RecordingResult): number => stages.reduce((sum, stage) => sum + Math.max(0, stage.chargeAh ?? 0), 0);
  return [...test.recordings].sort((a, b) => chargeAh(b) - chargeAh(a))[0];
}

/** The voltage that a charger holds does not ask how large the battery is, nor how far it was charged; all else of a test does. */
function aspectsOf(figureId: string): readonly Aspect[] {
  const kind: readonly Aspect[] = ["nominalVoltageV", "construction"];
  return figureId === "holding-voltage" ? kind : [...kind, "capacityAh", "targetAt25C"];
}

function compared(figure: Figure, heldOn: readonly Aspect[], find: Find, page: string, { formats }: Tongue): ComparedFigure {
  const written = figure.value === null ? null : formats.figureText(figure);
  const { id, label, unit, value, low, high, basis, absent, doubts } = figure;
  const to = find(`${figure.of}#${id}`) ?? page;
  return { id, label, unit, value: short(value), low: short(low), high: short(high), basis, absent, written, doubts, heldOn, to };
}

function comparedClaim(claim: JudgedClaim, find: Find, page: string, { formats, words: { marks }, tell }: Tongue): ComparedClaim {
  const number = claim.claimed === null ? null : formats.formatStated(claim.claimed, claim.unit);
  const words = claim.claimedWords === null || number === null ? claim.claimedWords : marks.quoted(claim.claimedWords);
  return {
    id: claim.id,
    label: claim.label,
    claimed: [number, words].filter((part) => part !== null).join(", ") || marks.absences["not stated"],
    measured:
      claim.measured !== null
        ? formats.formatFigure({ ...claim, value: claim.measured, absent: null })
        : claim.measuredWords === null
          ? null
          : tell(claim.measuredWords),
    outcome: wordFor(marks.outcomes, claim.outcome),
    to: (claim.figure === null ? undefined : find(claim.figure)) ?? `${page}#claims`,
  };
}

const windows = {
  inside: ["meets", "inside the float window"],
  below: ["short of", "below the float window"],
  above: ["above", "above the float window"],
  partly: ["cannot tell", "partly inside the float window"],
  "holds no voltage": ["note", "holds no voltage"],
  "not known": ["cannot tell", "nobody recorded what it does with a full battery"],
} as const;

function comparedSeason(
  { place, temperatureC, heldV, inWindow }: ModeForecastResult["season"][number],
  { formats, words: { marks } }: Tongue,
): ComparedSeason {
  const [mark, told] = windows[inWindow];
  return {
    place: `${wordFor(marks.places, place)}, ${formats.formatStated(temperatureC, "")} °C`,
    mark,
    words: told,
    held: heldV === null ? null : formats.formatInterval(heldV.low, heldV.high, "V"),
  };
}

function comparedProfile(profile: NonNullable<ComparisonRow["profile"]>, capacityAh: number): ComparedProfile {
  const { elapsedH, voltageV, currentA } = profile;
  return {
    elapsedH: elapsedH.map((hours) => short(hours)),
    voltageV: voltageV.map(short),
    currentA: currentA.map(short),
    chargeShare: chargeShare(elapsedH, currentA, capacityAh).map(short),
  };
}

/** Six digits draw, and hold one interval against another, as well as seventeen. */
function short(value: number): number;
function short(value: number | null): number | null;
function short(value: number | null): number | null {
  return value === null ? null : Number(value.toPrecision(6));
}
