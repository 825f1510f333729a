/** Evidence: the file, and the rows or the cell in it, that a figure rests on. */
import { z } from "zod";

export const evidence = z
  .strictObject({
    file: z.string().describe("Path from the workspace's root"),
    sha256: z.string().regex(/^[0-9a-f]{64}$/),
    lines: z.tuple([z.int().positive(), z.int().positive()]).optional().describe("First and last line of the file, counted from 1"),
    column: z.int().positive().optional().describe("Character column of a single cell, counted from 1"),
  })
  .meta({ id: "evidence", title: "Evidence" });

export type Evidence = z.infer<typeof evidence>;
