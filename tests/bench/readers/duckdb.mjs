// Reads a log with DuckDB and adds up its energy by the trapezoidal rule, Wh. Arguments: the package.json beside which it is installed, file, form.
import { createRequire } from "node:module";

const [, , from, file, form] = process.argv;
const require = createRequire(from);
const { DuckDBInstance, version } = require("@duckdb/node-api");
const instance = await DuckDBInstance.create(":memory:");
const connection = await instance.connect();
const [name, kind, time] =
  form === "counted" ? ["elapsed_s", "DOUBLE", "elapsed_s"] : ["time", "TIMESTAMP", "epoch(time)"];
// Layout and types are told, so that nothing is sniffed; the order of rows is kept by default, and lag() needs it.
const reader = await connection.runAndReadAll(`
  SELECT sum((power + lag_power) * (time_s - lag_time_s)) / 7200
  FROM (SELECT power, time_s, lag(power) OVER () AS lag_power, lag(time_s) OVER () AS lag_time_s
        FROM (SELECT voltage_V * current_A AS power, ${time} AS time_s
              FROM read_csv('${file}', auto_detect = false, header = true, delim = ',', quote = '',
                            columns = {'${name}': '${kind}', 'voltage_V': 'DOUBLE', 'current_A': 'DOUBLE'})))`);
console.log(
  JSON.stringify({
    energyWh: reader.getRows()[0][0],
    cpuS: process.cpuUsage().user / 1e6 + process.cpuUsage().system / 1e6, peakMiB: process.resourceUsage().maxRSS / 1024,
    told: `DuckDB ${version()}, types told, lag(), all threads`,
  }),
);
