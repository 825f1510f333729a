/** The logs that the bench reads: one charge, written in the two ways that recorders write most. */
import { open } from "node:fs/promises";
import { seededRandom } from "../generator/random.ts";

/** "counted": seconds from the start. "dated": date and time of day, to the second. */
export type LogForm = "counted" | "dated";

export const headings: Readonly<Record<LogForm, string>> = {
  counted: "elapsed_s,voltage_V,current_A",
  dated: "time,voltage_V,current_A",
};

/** Midnight of the first row of a dated log, on a clock that keeps UTC. */
const firstMs = Date.UTC(2026, 0, 1);

/**
 * Writes a plain IUoU charge at one sample a second, with noise: constant current, limit with a taper, float.
 *
 * @param rows  rows of data; the charge is stretched over them
 */
export async function writeChargeLog(file: string, rows: number, form: LogForm): Promise<void> {
  const random = seededRandom(20_260_101);
  const handle = await open(file, "w");
  let text = `${headings[form]}\n`;
  for (let i = 0; i < rows; i++) {
    const share = i / rows;
    const inBulk = share < 0.3;
    const inFloat = share > 0.7;
    const voltageV = inBulk ? 12.3 + 2.1 * (share / 0.3) ** 2 : inFloat ? 13.6 : 14.4;
    const currentA = inBulk ? 8 : inFloat ? 0.12 : 0.4 + 7.6 * Math.exp(-(share - 0.3) / 0.08);
    const time = form === "counted" ? String(i) : new Date(firstMs + i * 1000).toISOString().slice(0, 19).replace("T", " ");
    text += `${time},${(voltageV + 0.004 * random.normal()).toFixed(3)},${(currentA + 0.01 * random.normal()).toFixed(3)}\n`;
    if (text.length > 1 << 20) {
      await handle.write(text);
      text = "";
    }
  }
  await handle.write(text);
  await handle.close();
}
