/** Shares of a run, for machines that measure side by side. */
import { createHash } from "node:crypto";

/** The third of eight is `{ number: 3, of: 8 }`. */
export type Shard = { readonly number: number; readonly of: number };

/** Reads "3/8". Undefined where the text is no share. */
export function parseShard(text: string): Shard | undefined {
  const [, number, of] = /^(\d{1,6})\/(\d{1,6})$/.exec(text) ?? [];
  const shard = { number: Number(number), of: Number(of) };
  return number !== undefined && shard.number >= 1 && shard.number <= shard.of ? shard : undefined;
}

/** Whether a charger falls into a share: decided by its name alone, so that it stays in its share when others come and go. */
export function ofShard({ number, of }: Shard, charger: string): boolean {
  return createHash("sha256").update(charger).digest().readUInt32BE(0) % of === number - 1;
}
