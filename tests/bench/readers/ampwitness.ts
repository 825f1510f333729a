/** Reads a log as the tool does, from the file to every figure of the recording, stages included. Arguments: file. */
import { measureRecording } from "../../../lib/measure/recording.ts";
import { readLog } from "../../../lib/read/log.ts";
import { facts, figuresOf, requestOfBench } from "./bench-recording.ts";

const [, , file = ""] = process.argv;
const { value: log, problems } = await readLog(requestOfBench(file));
if (log === undefined) throw new Error(JSON.stringify(problems));
const figures = figuresOf(measureRecording(facts, log));
const energyWh = figures.find(({ id }) => id === "energy-recorded")?.value;
const peakMiB = process.resourceUsage().maxRSS / 1024;
const { user, system } = process.cpuUsage();
process.stdout.write(
  `${JSON.stringify({ energyWh, cpuS: (user + system) / 1e6, peakMiB, told: `${figures.length} figures of the recording` })}\n`,
);
