/** What may be said of a recorder's file on the command line. */
import type { Command } from "commander";
import type { DialectOptions } from "./dialect.ts";

/** Adds the command to the program. */
export function addDialectCommand(program: Command): void {
  program
    .command("dialect")
    .description("show how a recorder's file is read and why; --write puts it into the recorder's record")
    .argument("<log>", "a recorder's file")
    .option("--record <file>", "a recorder's record whose dialect is taken as it stands")
    .option("--write <file>", "the recorder's record to add the dialect to, such as data/instruments/bench.yaml")
    .option("--date <order>", "day-month-year, month-day-year or year-month-day")
    .option("--time <how>", "s, ms, min, h or d from the start; elapsed, time-of-day, serial, h:mm or mm:ss")
    .option("--voltage <column>", "heading or number of the column")
    .option("--current <column>", "heading or number of the column")
    .option("--temperature <column>", "heading or number of the column")
    .option("--decimal <mark>", "point or comma")
    .option("--thousands <mark>", "point, comma, blank or apostrophe")
    .option("--sign <sign>", "positive or negative: the sign of current into the battery")
    .option("--sheet <name>", "the sheet of a spreadsheet")
    .option("--encoding <label>", "such as utf-8, utf-16le or windows-1250")
    .option("--delimiter <mark>", "comma, semicolon, tab, bar or space")
    .option("--zone <zone>", "time zone of the bench, for clocks on the wall", "UTC")
    .option("--started-at <instant>", "when the first row was written, for a log that counts")
    .option("--part <number>", "which recording, where the file holds several")
    .action(async (log: string, options: Omit<DialectOptions, "log">) => {
      const { dialect } = await import("./dialect.ts");
      process.exitCode = await dialect({ ...options, log });
    });
}
