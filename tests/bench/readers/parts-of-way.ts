/** Goes the way from a log's file to its figures, and prints how long each part of it takes, s, in JSON. Arguments: file. */
import { measureRecording } from "../../../lib/measure/recording.ts";
import { readLog } from "../../../lib/read/log.ts";
import { facts, figuresOf, requestOfBench } from "./bench-recording.ts";

const startedMs = performance.now();
const [, , file = ""] = process.argv;
const { value: log, problems } = await readLog(requestOfBench(file));
if (log === undefined) throw new Error(JSON.stringify(problems));
const readMs = performance.now();
const recording = measureRecording(facts, log);
const measuredMs = performance.now();
figuresOf(recording);
const doneMs = performance.now();
process.stdout.write(
  `${JSON.stringify({
    "Node and code started": startedMs / 1000,
    "read into columns": (readMs - startedMs) / 1000,
    "trace and stages": (measuredMs - readMs) / 1000,
    figures: (doneMs - measuredMs) / 1000,
  })}\n`,
);
