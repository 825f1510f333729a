/** A charger as a schema.org Product with a Review: the verdict and findings in the words of the page, and no stars, since nobody gave any. */
import type { ItemList, Product } from "schema-dts";
import type { Finding } from "../../../nouns/finding.ts";
import { chargerPath } from "../../links.ts";
import type { ChargerResult, SiteIndex, TestResult } from "../../results.ts";
import { chargerPicturePath, wholeAddress } from "../addresses.ts";
import { eventsOfCharger, publishedOn, undated, versionOf } from "../history.ts";
import { outwardSpeechIn } from "../outward-speech.ts";
import { standingNotice } from "../standing.ts";

/**
 * The product and its review; undefined where there must be none:
 * invented data, which a machine could take for a judgement of a real product; nobody named who judges; nothing tested; a result that
 * was withdrawn or is in doubt.
 */
export function chargerReview(index: SiteIndex, charger: ChargerResult, tests: readonly TestResult[], base: string): Product | undefined {
  const author = index.site.operator.find((fact) => fact.label === "Publisher")?.value ?? null;
  const isShaken = charger.corrections.some(({ kind }) => kind === "withdrawal" || kind === "concern");
  if (index.site.invented || charger.invented || author === null || tests.length === 0 || isShaken) return undefined;
  const version = versionOf(eventsOfCharger(charger, tests));
  const published = tests
    .map(publishedOn)
    .filter((day) => day !== null)
    .sort()[0];
  const address = wholeAddress(base, chargerPath(charger.id));
  return {
    "@type": "Product",
    "@id": `${address}#product`,
    name: charger.name,
    url: address,
    image: wholeAddress(base, chargerPicturePath(charger.id)),
    ...(charger.maker === null ? {} : { manufacturer: { "@type": "Organization", name: charger.maker } }),
    review: {
      "@type": "Review",
      author: { "@type": "Organization", name: author },
      reviewBody: [standingNotice(charger, outwardSpeechIn("en"))?.words, charger.verdict.sentence]
        .filter((part) => part !== undefined)
        .join(" "),
      ...(published === undefined ? {} : { datePublished: published }),
      ...(version === undated ? {} : { dateModified: version }),
      ...notesFor(index, charger.findings),
    },
  };
}

/**
 * What speaks for and against, each in the sentence that stands on the page. Search engines allow such notes on editorial pages only, so a
 * site gives them where its record says that the publisher does not sell; and they ask for two at least (from memory).
 */
function notesFor(index: SiteIndex, findings: readonly Finding[]): { positiveNotes?: ItemList; negativeNotes?: ItemList } {
  const positive = findings.filter(({ weight }) => weight === "good");
  const negative = findings.filter(({ weight }) => weight === "bad" || weight === "caution");
  if (index.site.sells !== false || positive.length + negative.length < 2) return {};
  return {
    ...(positive.length === 0 ? {} : { positiveNotes: listOf(positive) }),
    ...(negative.length === 0 ? {} : { negativeNotes: listOf(negative) }),
  };
}

const listOf = (findings: readonly Finding[]): ItemList => ({
  "@type": "ItemList",
  itemListElement: findings.map(({ sentence }, index) => ({ "@type": "ListItem", position: index + 1, name: sentence })),
});
