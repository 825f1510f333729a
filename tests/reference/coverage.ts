/** Every outside number that we hold, beside ours; and the page that shows them. */
import { checkAcidDensities } from "./acid-density/checks.ts";
import type { Check } from "./check.ts";
import { checkNistFits } from "./nist-nonlinear/checks.ts";
import { checkRestVoltages } from "./open-circuit-voltage/checks.ts";
import { checkWorkedExamples } from "./worked-examples/checks.ts";

export type Coverage = {
  readonly workedExamples: readonly Check[];
  readonly acidDensities: readonly Check[];
  readonly restVoltages: readonly Check[];
  readonly nistFits: readonly Check[];
};

/** Computes all checks; a second or so. Throws where a table is absent or a row is neither computed nor listed. */
export function findCoverage(): Coverage {
  return {
    workedExamples: checkWorkedExamples(),
    acidDensities: checkAcidDensities(),
    restVoltages: checkRestVoltages(),
    nistFits: checkNistFits(),
  };
}

/** The checks as a page of docs/, the same on every run. */
export function renderCoverage(coverage: Coverage): string {
  return `# Reference checks

Every outside number that the repository holds, beside what our functions give. Made by \`npx tsx tests/reference/write-coverage.ts\`; a test
fails when this page is out of date. The tables and where they are from: \`tests/reference/*/SOURCE.md\`. What the functions do:
[electrochemistry.md](electrochemistry.md).

${countSentence(Object.values(coverage).flat())}

## Worked examples

Trust as the table gives it: *read* was seen in the source, *derived* follows by arithmetic, *memory* was recalled.

${renderRows(coverage.workedExamples)}

## Density of acid

${renderGroups(coverage.acidDensities)}

## Rest voltage

${renderGroups(coverage.restVoltages)}

## Non-linear fits against certified results

Each set from both of NIST's starting points: parameters, their standard errors, residual standard deviation. The difference is relative.

${renderFits(coverage.nistFits)}
`;
}

function countSentence(checks: readonly Check[]): string {
  const count = (verdict: Check["verdict"]): number => checks.filter((check) => check.verdict === verdict).length;
  return `${checks.length} numbers: ${count("ok")} within tolerance, ${count("off")} off, ${count("not computed")} not computed (each with its reason).`;
}

function renderRows(checks: readonly Check[]): string {
  const rows = checks.map((check) => {
    const unit = check.unit === "" ? "" : ` ${check.unit}`;
    const ours = check.ours === null ? "–" : formatLike(check.ours, check);
    const tolerance = check.tolerance === 0 ? "" : `±${formatTolerance(check.tolerance)}`;
    return `| ${check.id} | ${check.quantity} | ${check.expected}${unit} | ${ours} | ${tolerance} | ${check.verdict} | ${check.reason} |`;
  });
  return ["| row | quantity | expected | ours | tolerance | verdict | why |", "|---|---|---|---|---|---|---|", ...rows].join("\n");
}

function renderGroups(checks: readonly Check[]): string {
  const rows = groupChecks(checks).map(([group, members]) => {
    const computed = members.filter((check) => check.verdict !== "not computed");
    const worst = findWorst(computed, (check) => difference(check) / check.tolerance);
    const left = members.length - computed.length;
    const leftWhy = members.find((check) => check.verdict === "not computed")?.reason ?? "";
    const off = computed.filter((check) => check.verdict === "off").length;
    return `| ${group} | ${members.length} | ${off} | ${left === 0 ? "0" : `${left}: ${leftWhy}`} | ${worst.quantity}: ${formatDifference(difference(worst))} ${worst.unit} | ±${formatTolerance(worst.tolerance)} | ${worst.reason} |`;
  });
  return [
    "| source | rows | off | not computed | nearest to its tolerance | tolerance there | why that much |",
    "|---|---|---|---|---|---|---|",
    ...rows,
  ].join("\n");
}

function renderFits(checks: readonly Check[]): string {
  const rows = groupChecks(checks).map(([group, members]) => {
    const worst = findWorst(members, (check) => difference(check) / Math.abs(Number(check.expected)));
    // Only the power of ten: the last digits of a fit differ between processors.
    const holds = difference(worst) <= worst.tolerance ? "under 1e-6" : "over 1e-6";
    return `| ${group} | ${members.length} | ${members.filter((check) => check.verdict === "off").length} | ${holds} |`;
  });
  return ["| set | numbers | off | largest relative difference |", "|---|---|---|---|", ...rows].join("\n");
}

function groupChecks(checks: readonly Check[]): [string, Check[]][] {
  const groups = new Map<string, Check[]>();
  for (const check of checks) groups.set(check.group, [...(groups.get(check.group) ?? []), check]);
  return [...groups];
}

function findWorst(checks: readonly Check[], badness: (check: Check) => number): Check {
  const [first, ...others] = checks;
  if (first === undefined) throw new Error("a group without a computed row shows nothing");
  return others.reduce((worst, check) => (badness(check) > badness(worst) ? check : worst), first);
}

function difference(check: Check): number {
  return Math.abs(Number(check.ours) - Number(check.expected));
}

/** Our value, rounded one place beyond what the tolerance can tell. */
function formatLike(value: number | string, { tolerance }: Check): string {
  if (typeof value === "string") return value;
  const places = Math.min(15, Math.max(0, 1 - Math.floor(Math.log10(tolerance))));
  return Math.abs(value) < 1e-3 ? value.toExponential(7) : value.toFixed(Math.min(places, 8));
}

function formatTolerance(tolerance: number): string {
  return Number(tolerance.toPrecision(2)).toString();
}

function formatDifference(value: number): string {
  return value < 1e-6 ? "under 0.000001" : value.toFixed(6);
}
