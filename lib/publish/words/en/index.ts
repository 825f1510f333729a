import { cautions } from "./cautions.ts";
import { charger } from "./charger.tsx";
import { charts } from "./charts.ts";
import { comparison } from "./comparison.ts";
import { find } from "./find.ts";
import { findPage } from "./find-page.tsx";
import { frame } from "./frame.ts";
import { marks } from "./marks.ts";
import { outward } from "./outward.tsx";
import { parts } from "./parts.ts";
import { reference } from "./reference.tsx";
import { sideBySide } from "./side-by-side.ts";
import { sidePage } from "./side-page.tsx";
import { test } from "./test.tsx";

export const en = {
  cautions,
  charger,
  charts,
  comparison,
  find,
  findPage,
  frame,
  marks,
  outward,
  parts,
  reference,
  sideBySide,
  sidePage,
  test,
};
