/** The smallest workspace of which nothing is to be said, and ways to spoil it. Shop, charger, battery and readings are invented. */
import { formatProblem } from "../../../lib/nouns/problem.ts";
import { run } from "../../../lib/run.ts";
import { noForecast } from "../../no-forecast.ts";
import { type Files, withFiles } from "../read/temp-files.ts";

/** Seventy minutes: the voltage climbs from 12.3 V to 14.4 V at 4 A, and in the last ten minutes the current falls to 2 A. */
const logRows = Array.from({ length: 71 }, (_, minute) => {
  const clock = `${String(14 + Math.floor((minute + 5) / 60)).padStart(2, "0")}:${String((minute + 5) % 60).padStart(2, "0")}`;
  const voltageV = Math.min(14.4, 12.3 + 0.03 * minute);
  const currentMA = minute <= 60 ? 4000 : 4000 - 200 * (minute - 60);
  return `03.02.2026 ${clock};${voltageV.toFixed(2).replace(".", ",")};${currentMA}`;
});

export const smallWorkspace: Files = {
  "data/site.yaml": "title: Workshop by the weir (invented)\n",
  "data/chargers/mole-six.yaml": "name: Mole Six (invented)\nmodes:\n  - id: normal\n    name: NORMAL\n",
  "data/batteries/quarry-44.yaml":
    "name: Quarry 44 (invented)\nnominalVoltageV: 12\ncells: 6\nconstruction: flooded\ncapacityAh: 44\nfullDensity: { value: 1.28, convention: kg/l at 25 °C }\n",
  "data/instruments/newt.yaml":
    "name: Newt recorder (invented)\nkind: recorder\nmeasures:\n  voltage: { percentOfReading: 0.2, resolution: 0.01 }\n  current: { percentOfReading: 1, resolution: 0.001 }\ndialect:\n  decimalMark: ','\n",
  "data/instruments/float-glass.yaml":
    "name: Glass hydrometer (invented)\nkind: hydrometer\nmeasures:\n  density: { resolution: 0.005 }\ndensity: { convention: kg/l at 25 °C }\n",
  "data/instruments/bench-meter.yaml": "name: Bench meter (invented)\nkind: voltmeter\nmeasures:\n  voltage: { plusMinus: 0.02 }\n",
  "data/tests/mole-on-quarry/test.yaml":
    "charger: mole-six\nmode: normal\nbattery: quarry-44\ninstruments:\n  recorder: newt\n  hydrometer: float-glass\n  voltmeter: bench-meter\nzone: Europe/Warsaw\ntarget:\n  densityAt25C: 1.265\nconnections:\n  - on: 2026-02-03T14:00:00+01:00\n    off: 2026-02-03T16:00:00+01:00\n    recordings: [logs/pomiar.csv]\n",
  "data/tests/mole-on-quarry/readings.csv": "at;density_1;rest_V\n2026-02-03 13:30;1,160;12,11\n2026-02-04 09:00;1,240;12,70\n",
  "data/tests/mole-on-quarry/logs/pomiar.csv": `Czas;Napięcie [V];Prąd [mA]\n${logRows.join("\n")}\n`,
  "content/about.md": "---\ntitle: About us\n---\nA bench in a shed.\n",
  "content/reviews/mole-six.md": "---\ntitle: Mole Six\n---\nIt hums.\n",
};

const inTest = "data/tests/mole-on-quarry";
/** Paths of the small workspace, for changes. */
export const files = {
  site: "data/site.yaml",
  charger: "data/chargers/mole-six.yaml",
  battery: "data/batteries/quarry-44.yaml",
  recorder: "data/instruments/newt.yaml",
  hydrometer: "data/instruments/float-glass.yaml",
  test: `${inTest}/test.yaml`,
  readings: `${inTest}/readings.csv`,
  log: `${inTest}/logs/pomiar.csv`,
  about: "content/about.md",
  review: "content/reviews/mole-six.md",
} as const;

/** A workspace in which one text of one file was replaced by another, once. Throws where the text is not there: then a test would test nothing. */
export function replaced(file: string, from: string, to: string, workspace: Files = smallWorkspace): Files {
  const text = workspace[file];
  if (typeof text !== "string" || !text.includes(from)) throw new Error(`${file} holds no "${from}"`);
  return { ...workspace, [file]: text.replace(from, to) };
}

/** A workspace with one more file, or another text in one. */
export function written(file: string, content: string | Uint8Array, workspace: Files = smallWorkspace): Files {
  return { ...workspace, [file]: content };
}

/** A workspace in which one file has another name. */
export function renamed(from: string, to: string, workspace: Files = smallWorkspace): Files {
  const { [from]: content, ...rest } = workspace;
  if (content === undefined) throw new Error(`there is no ${from}`);
  return { ...rest, [to]: content };
}

/** Every message of a whole run, as it is printed. `prepare` may do what plain files cannot, such as making a link. */
export function messagesOf(workspace: Files, prepare?: (root: string) => Promise<void>): Promise<string[]> {
  return withFiles(workspace, async (root) => {
    await prepare?.(root);
    return (await run(root, { forecast: noForecast })).problems.map(formatProblem);
  });
}
