/** What leaves the site: the card, the embed, quotations, versions and corrections of a result. */
import type { ComponentChildren } from "preact";
import { oneOrMany } from "../plural.ts";
import type { Wrap } from "../slot.ts";

export const outward = {
  headlines: {
    promises: "What the label promises",
    way: "The way to full density",
    current: "Output current",
    voltage: "Voltage limit",
    leftConnected: "Left connected",
    connections: "Connections to full",
    hours: "Hours to full",
    cost: "Cost of one battery brought to full",
    /** Outcomes stand alone on a card, so they say of what. */
    outcomes: {
      meets: "meets the claim",
      "short of": "short of the claim",
      above: "above the claim",
      "cannot tell": "cannot tell",
      "not put to the test": "not put to the test",
    },
    statuses: {
      reached: "full density reached",
      "not reached": "full density not reached",
      "not known": "not known whether full density was reached",
      abandoned: "given up before full density",
      "no target": "no density to reach",
    },
    claimed: (claim: string) => `claimed ${claim}`,
    holds: (voltage: string) => `holds ${voltage}`,
    mode: (mode: string) => `mode “${mode}”`,
    modeOn: (mode: string, battery: string) => `mode “${mode}”, on ${battery}`,
    modeOutcome: (mode: string, outcome: string) => `mode “${mode}”: ${outcome}`,
    battery: (name: string, capacity: string, construction: string) => `${name}, ${capacity}, ${construction}`,
    constructions: {
      "flooded-antimony": "flooded antimony",
      "flooded-calcium": "flooded calcium",
      flooded: "flooded",
      EFB: "EFB",
      AGM: "AGM",
      gel: "gel",
    },
    toTarget: (density: string, temperature: string) => `, to ${density} at ${temperature}`,
    asTested: "as tested",
    allModes: "all modes",
    noClaim: "the maker states none that could be judged",
    notLeftOn: "no test tells what it does when left connected",
    noTest: "no test is published",
    noTestOfCharger: "no test of this charger is published",
    noFigure: "this test gives no such figure",
    hardest: (tests: number, others: readonly string[]) => `The hardest of ${tests} tests is shown. The others: ${others.join(", ")}.`,
    counted: (status: string, count: number) => `${status} (${count})`,
  },
  notice: {
    withdrawn: (on: string) => `Withdrawn on ${on}: this result no longer stands.`,
    concern: (on: string, what: string) => `In doubt since ${on}: ${what}`,
    turned: (on: string, what: string) => `Verdict changed on ${on}: ${what}`,
  },
  ofDay: (day: string | null) => (day === null ? "of a day not stated" : `of ${day}`),
  resultLine: (version: string, method: string, fingerprint: ComponentChildren) => (
    <>
      Result {version} · method {method} · fingerprint {fingerprint}
    </>
  ),
  warnings: {
    invented: (lead: Wrap) => <>{lead("Invented data")}: no real product is judged here.</>,
    sells: "The publisher sells chargers or batteries.",
  },

  card: {
    title: (charger: string) => `Card: ${charger}`,
    away: "Away from the card",
    results: "All results of this charger",
    prints: "Prints on A6 paper, at 100 %",
    noAddress: "This site does not state its address, so no code can lead to it.",
    caution:
      "Charging gives off hydrogen, and the acid burns: air, eye protection, no sparks, never a frozen battery. The battery maker's sheet and your local code hold.",
    qrCode: (address: string) => `QR code of ${address}`,
  },
  embed: {
    title: (charger: string, site: string) => `${charger}: results of ${site}`,
    evidence: "Evidence for every figure",
    versions: "Versions and corrections",
  },

  quotation: {
    notStated: "not stated",
    absent: (kind: string, why: string) => `${kind}, ${why}`,
    claimed: (claim: string) => `, claimed ${claim}`,
    invented: "[Invented data] ",
    source: (site: string, version: string, method: string, figure: string) =>
      `${site}, result ${version}, method ${method}, figure ${figure}`,
    blockInvented: "Invented data: no real product is judged here.",
    blockSells: "The publisher of these results sells chargers or batteries.",
    fullDensity: (condition: string) => `Full density: ${condition}.`,
    blockSource: (site: string, version: string, method: string, fingerprint: string) =>
      `${site}, result ${version}, method ${method}, fingerprint ${fingerprint}.`,
    newest: "Is this still the newest result? Evidence for every figure",
  },

  quote: {
    title: "How to quote these results",
    description: "What belongs to a quoted figure, what must not be left out, and text, code and citations to copy.",
    lead: "Anybody may quote these results, a shop and a maker too. A figure is worth as much as what stands beside it.",
    chargers: "Figures, cards and code for each charger",
    noCharger: "No charger has been published yet.",
    toCopy: "figures and code to copy",
    toPrint: "card to print",
    versions: "versions",
    citeSite: "To cite the whole site",
    toPrograms: (file: ComponentChildren) => <>{file} says the same to programs.</>,
    feed: (link: Wrap) => <>{link("The Atom feed")} tells of every result, revision and correction.</>,
    noFeed: "There is no feed: a feed needs the site's address and dated results, and the records do not state both.",
    rules: "Rules",
    rule: {
      whole: {
        lead: "A figure goes with its unit, its interval, its condition, its date, its id and a link.",
        more: "The lines on each charger's page have all six.",
      },
      verdict: {
        lead: "No verdict is cropped.",
        more: "What cannot be told, what was not put to the test and what speaks against the charger belong to it as much as the rest.",
      },
      version: {
        lead: "Figures are compared only within one method version.",
        more: (version: string, methods: Wrap) => (
          <>
            This is version {version}; {methods("what each method does")}. Conditions that differ, such as battery or temperature, are
            named.
          </>
        ),
      },
      ended: {
        lead: "“The recording ended” is not “the charger finished”.",
        more: "Nor is “not recorded” the same as zero.",
      },
      endorsement: {
        lead: "A quotation is no endorsement.",
        more: "There is no seal and no score, and none may be made from these results.",
      },
      corrected: {
        lead: "A corrected result is corrected wherever it is quoted.",
        more: (hasFeed: boolean) =>
          `The embed does so by itself; for text and code, look at the page of versions now and then${hasFeed ? " or follow its feed." : "."}`,
      },
      invented: {
        lead: "These data are invented.",
        more: "They may be quoted to show how the site works, never as results of a product.",
      },
    },
    licence: (licence: string | null) => `Licence of data and words: ${licence ?? "not stated; ask the publisher"}.`,
    ofCharger: (charger: string) => `Quote: ${charger}`,
    ofChargerDescription: (charger: string) => `Figures of ${charger} with unit, condition, date, id and link, and code for other pages.`,
    result: (version: string, method: string, fingerprint: ComponentChildren) => (
      <>
        Result {version}, method version {method}, fingerprint {fingerprint}.
      </>
    ),
    allResults: "All results",
    versionsLink: "Versions",
    rulesLink: "Rules for quoting",
    verdict: "The verdict, whole",
    figures: "Single figures",
    evidence: "Evidence",
    method: "Method",
    inPage: "In another page",
    onPaper: "On paper",
    counterCard: "Card for the counter, A6",
    citations: "Citations",
    noCode: "This site does not state its address, so there is no code that would work elsewhere.",
    wouldShow: "The page that it would show",
    frame: (newest: Wrap) => (
      <>A frame always shows the {newest("newest")} result. It runs no script, sets no cookie and asks nobody else for anything.</>
    ),
    seeFrame: "See what it shows",
    frameCode: "Code of the frame",
    block:
      "A block of text stays as it is on the day it was copied, so it says which version it quotes and links to the page that tells whether there is a newer one. Please copy it whole.",
    blockCode: "Code of the block",
  },

  versions: {
    title: (charger: string) => `Versions of the result: ${charger}`,
    description: (charger: string) => `Which result of ${charger} is the newest, and what changed since an earlier one.`,
    undated: "The records state no date for this result, so its versions can be told by their fingerprint only.",
    newest: (version: ComponentChildren) => <>The newest result is of {version}.</>,
    madeBy: (method: string, fingerprint: ComponentChildren) => (
      <>
        It was made by method version {method}, and its fingerprint is {fingerprint}.
      </>
    ),
    asItStands: (charger: string) => `${charger}, as it stands`,
    fromCopy:
      "You come from a copy with another date, method version or fingerprint? Then it shows an older result. The table says what changed since its date; a change that is not in the table, such as a better wording, changes the fingerprint alone.",
    undatedCopy: "A copy that names no date was made before any date was stated: compare its fingerprint.",
    fingerprint: "The fingerprint",
    fingerprintNote: (sums: ComponentChildren, print: ComponentChildren, check: ComponentChildren) => (
      <>
        It is the beginning of the SHA-256 digest of {sums}, the list of digests of all results and raw files of this charger: {print}{" "}
        prints it, and {check} tries the files. It shows that files are the same, not that a reading was right.
      </>
    ),
    howToQuote: "How to quote this result",
    feed: "Feed of changes to this result, Atom",
    nothingDated: "No publication, revision or correction is dated in the records.",
    caption: "Versions, newest first",
    columns: { version: "Version", holds: "Does it still hold?", happened: "What happened that day" },
    isNewest: "This is the newest.",
    superseded: (changes: number) =>
      `A newer result exists: ${changes === 1 ? "one" : changes} ${oneOrMany(changes, "change", "changes")} since.`,
    verdictChanged: "The verdict changed.",
    verdictStands: "The verdict stands.",
    noChangeNoted: "No change to the verdict was noted.",
    published: (test: string) => `Results of the test “${test}” published.`,
  },

  corrections: {
    title: "Corrections",
    description: "What was changed after publication, why, and whether a verdict changed.",
    noPolicy: "This site states no policy on corrections.",
    none: "Nothing has been corrected so far.",
    caption: "Corrections, newest first",
    columns: { date: "Date", charger: "Charger", kind: "Kind", what: "What changed", why: "Why", verdict: "Verdict" },
    changed: "changed",
    stands: "stands",
    kindsHeading: "Kinds",
    kinds: {
      clarification: "clarification",
      revision: "revision",
      correction: "correction",
      concern: "concern",
      withdrawal: "withdrawal",
    },
    meanings: {
      clarification: "the words were unclear; no value changes",
      revision: "better data or a better method; the old value was right by what was known",
      correction: "a mistake was made and is mended",
      concern: "a doubt is being looked into",
      withdrawal: "the result no longer stands; its page stays, marked",
    },
  },
};
