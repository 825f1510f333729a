/** A worker thread of a crew: takes a job, does it, and leaves what comes of it among the entries. */
import { workerData } from "piscina";
import { diskEntries } from "../cache/entries.ts";
import { rememberForecasts } from "../cache/forecasts.ts";
import type { Done } from "./crew.ts";
import { doCharger, doTest, EntryLost, type Job } from "./jobs.ts";

const entries = diskEntries(String(workerData));
const forecaster = rememberForecasts(entries);

export default async function work(job: Job): Promise<Done> {
  try {
    const head = job.kind === "test" ? await doTest(job, entries) : doCharger(job, entries, forecaster);
    return { head, unwritten: entries.takeUnwritten() };
  } catch (error) {
    if (error instanceof EntryLost) return { lost: error.key };
    throw error;
  }
}
