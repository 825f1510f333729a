/** Every claim that is judged, in the order in which a buyer asks. */
import type { TestContext } from "../../measure/test-context.ts";
import type { JudgedClaim } from "../../nouns/finding.ts";
import { judgeCharacteristic } from "./claim-characteristic.ts";
import { judgeCurrent } from "./claim-current.ts";
import { judgeSeason } from "./claim-season.ts";
import { judgeFloatVoltage, judgeVoltage } from "./claim-voltage.ts";

const judges = [judgeCurrent, judgeVoltage, judgeFloatVoltage, judgeCharacteristic, judgeSeason];

/** Judges all that a mode claims over one test. */
export function judgeClaims(context: TestContext): JudgedClaim[] {
  return judges.map((judge) => judge(context)).filter((claim) => claim !== undefined);
}

/** How each claim is judged, for its method page. */
export const claimMethods = [
  {
    id: "claim-current",
    label: "Output current",
    unit: "A",
    explain:
      "The highest current held for the site's window while the charger, not the battery, limited it, against the rated current. IEC 60335-2-29 wants the rated DC output current marked, and no other.",
    source: "IEC 60335-2-29, 7.1; JCGM 106:2012; ILAC-G8:09/2019.",
    checkedBy: ["W087, W088 and W093 to W098"],
  },
  {
    id: "claim-voltage",
    label: "Voltage limit",
    unit: "V",
    explain:
      "The highest voltage held, at the end of its stage, against the voltage that the maker names for this mode, at the temperature that the battery had: moved by the compensation the maker states; where none is stated, a voltage that compensation would explain cannot be told.",
    source: "JCGM 106:2012; ILAC-G8:09/2019; compensation as the site's rules have it.",
    checkedBy: ["W087, W088 and W093 to W098"],
  },
  {
    id: "claim-float-voltage",
    label: "Float voltage",
    unit: "V",
    explain: "The voltage held after the limit, against the one the maker names, at the temperature that the battery had.",
    source: "JCGM 106:2012; ILAC-G8:09/2019; compensation as the site's rules have it.",
    checkedBy: ["W087, W088 and W093 to W098"],
  },
  {
    id: "claim-characteristic",
    label: "Charge characteristic",
    unit: "",
    explain: "The letters that the recording shows against those the maker names. A recording that ends early shows only a beginning.",
    source: "DIN 41772 (letters I, U, W, o, a).",
    checkedBy: ["Stages of an open field log (17 Ah battery)", "Demo logs against the generator's truth"],
  },
  {
    id: "claim-season",
    label: "May stay connected",
    unit: "V",
    explain: "The voltage held for long against the float window of this kind of battery, at the temperature that it had.",
    source: "Makers' figures and common practice, as the float-window finding lists them.",
    checkedBy: ["Published float windows"],
  },
] as const;
