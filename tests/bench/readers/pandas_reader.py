"""Reads a log with pandas and adds up its energy by the trapezoidal rule, Wh. Arguments: file, form ("counted" or "dated")."""
import json
import resource
import sys

import numpy
import pandas

file, form = sys.argv[1], sys.argv[2]
kinds = {"voltage_V": "float64", "current_A": "float64"}
if form == "counted":
    log = pandas.read_csv(file, dtype={**kinds, "elapsed_s": "float64"}, engine="c")
    times_s = log["elapsed_s"].to_numpy()
else:
    log = pandas.read_csv(file, dtype={**kinds, "time": str}, engine="c")
    # The form is told, which is much faster than having it found out.
    stamps = pandas.to_datetime(log["time"], format="%Y-%m-%d %H:%M:%S", cache=False)
    times_s = stamps.to_numpy().astype("datetime64[ns]").astype("int64") / 1e9
powers_w = (log["voltage_V"] * log["current_A"]).to_numpy()
energy_wh = float(((powers_w[1:] + powers_w[:-1]) * numpy.diff(times_s)).sum() / 7200)
usage = resource.getrusage(resource.RUSAGE_SELF)
print(
    json.dumps(
        {
            "energyWh": energy_wh,
            "cpuS": usage.ru_utime + usage.ru_stime,
            "peakMiB": usage.ru_maxrss / 1024,
            "told": f"pandas {pandas.__version__}, engine c, types told",
        }
    )
)
