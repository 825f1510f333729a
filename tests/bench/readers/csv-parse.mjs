// Reads a log with csv-parse and adds up its energy by the trapezoidal rule, Wh. Arguments: file, form.
import { createReadStream } from "node:fs";
import { parse } from "csv-parse";

const [, , file, form] = process.argv;
let sum = 0;
let before;
const secondsOf = form === "counted" ? Number : (text) => Date.parse(`${text.replace(" ", "T")}Z`) / 1000;
const parser = createReadStream(file, { highWaterMark: 1 << 18 }).pipe(
  parse({
    from_line: 2,
    on_record: ([time, voltage, current]) => {
      const sample = { timeS: secondsOf(time), powerW: Number(voltage) * Number(current) };
      if (before !== undefined) sum += (sample.powerW + before.powerW) * (sample.timeS - before.timeS);
      before = sample;
      return null;
    },
  }),
);
parser.resume();
await new Promise((resolve, reject) => parser.on("end", resolve).on("error", reject));
console.log(
  JSON.stringify({ energyWh: sum / 7200, cpuS: process.cpuUsage().user / 1e6 + process.cpuUsage().system / 1e6, peakMiB: process.resourceUsage().maxRSS / 1024, told: "csv-parse, streamed" }),
);
