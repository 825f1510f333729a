// Reads a log with polars and adds up its energy by the trapezoidal rule, Wh. Arguments: the package.json beside which polars is installed, file, form.
import { createRequire } from "node:module";

const [, , from, file, form] = process.argv;
const require = createRequire(from);
const { default: polars } = require("nodejs-polars");
const { version } = require("nodejs-polars/package.json");
const column = polars.col;
const time = form === "counted" ? column("elapsed_s") : column("time").str.strptime(polars.Datetime("ms"), "%Y-%m-%d %H:%M:%S").cast(polars.Int64).div(1_000_000);
const power = column("power");
const since = column("timeS");
const sum = polars
  .scanCSV(file)
  .select(column("voltage_V").mul(column("current_A")).alias("power"), time.alias("timeS"))
  .select(power.add(power.shift(1)).mul(since.sub(since.shift(1))).sum().alias("sum"))
  .collectSync();
console.log(
  JSON.stringify({
    energyWh: sum.getColumn("sum").get(0) / 7200,
    cpuS: process.cpuUsage().user / 1e6 + process.cpuUsage().system / 1e6, peakMiB: process.resourceUsage().maxRSS / 1024,
    told: `polars ${version}, lazy scan, all threads`,
  }),
);
