/** A test as a schema.org Dataset, and the site's data as a DataCatalog. */
import type { DataCatalog, Dataset, PropertyValue } from "schema-dts";
import type { Figure } from "../../../nouns/figure.ts";
import { methodId, methodPath, testPath } from "../../links.ts";
import type { SiteIndex, TestResult } from "../../results.ts";
import type { ResultsFolder } from "../../results-folder.ts";
import { packagePath, sitePackagePath, wholeAddress } from "../addresses.ts";
import { publisherOf } from "../citation.ts";
import { eventsOfSite, eventsOfTest, publishedOn, undated, versionOf } from "../history.ts";
import { licenceAddress } from "../licence.ts";
import { unitCode } from "./unit-codes.ts";

/** What every description of ours starts with where data are invented, so that no collection of data sets takes them for measurements. */
const inventedMark = "Invented demonstration data, no real product was tested. ";

/** The catalog's name for others to refer to. */
const catalogId = (base: string): string => `${wholeAddress(base, "data/")}#catalog`;

/** A test of a site whose address is known. */
export function testDataset(index: SiteIndex, test: TestResult, base: string): Dataset {
  const invented = index.site.invented || test.invented;
  const version = versionOf(eventsOfTest(test));
  const published = publishedOn(test);
  const at = (path: string) => wholeAddress(base, path);
  return {
    "@type": "Dataset",
    "@id": `${at(testPath(test.id))}#dataset`,
    name: `${invented ? "Invented data: " : ""}${test.title}`,
    description: `${invented ? inventedMark : ""}${datasetWords(test)}`,
    url: at(testPath(test.id)),
    identifier: test.id,
    version: `${version}, method ${test.methodVersion}`,
    isAccessibleForFree: true,
    creator: { "@type": "Organization", name: publisherOf(index) },
    includedInDataCatalog: { "@id": catalogId(base) },
    measurementTechnique: at("method/"),
    ...(published === null ? {} : { datePublished: published }),
    ...(version === undated ? {} : { dateModified: version }),
    ...(index.site.licence === null ? {} : { license: licenceAddress(index.site.licence) ?? index.site.licence }),
    ...(invented ? { keywords: ["invented data"] } : {}),
    distribution: [
      { "@type": "DataDownload", name: "All results", contentUrl: at(`data/tests/${test.id}.json`), encodingFormat: "application/json" },
      { "@type": "DataDownload", name: "All figures", contentUrl: at(`data/tests/${test.id}.figures.csv`), encodingFormat: "text/csv" },
      {
        "@type": "DataDownload",
        name: "Everything, raw files included",
        contentUrl: at(packagePath(test.id)),
        encodingFormat: "application/zip",
      },
    ],
    variableMeasured: test.figures.map((figure) => variable(index, figure, base)),
  };
}

/** The site's data. */
export function siteCatalog(results: ResultsFolder, base: string): DataCatalog {
  const { index } = results;
  const version = versionOf(eventsOfSite(results));
  const at = (path: string) => wholeAddress(base, path);
  return {
    "@type": "DataCatalog",
    "@id": catalogId(base),
    name: `${index.site.invented ? "Invented data: " : ""}${index.site.title}`,
    description: `${index.site.invented ? inventedMark : ""}${index.site.tagline ?? "Results of battery-charger tests with the evidence for every figure."}`,
    url: at("data/"),
    publisher: { "@type": "Organization", name: publisherOf(index) },
    version: `${version}, method ${index.methodVersion}`,
    ...(version === undated ? {} : { dateModified: version }),
    ...(index.site.licence === null ? {} : { license: licenceAddress(index.site.licence) ?? index.site.licence }),
    hasPart: [at(sitePackagePath), at("data/index.json"), at("data/comparison.csv")].map((url) => ({
      "@type": "DataDownload" as const,
      contentUrl: url,
    })),
    dataset: index.tests.map(({ id }) => ({ "@type": "Dataset" as const, "@id": `${at(testPath(id))}#dataset`, url: at(testPath(id)) })),
  };
}

/**
 * A figure as a variable: the value of the results JSON, the ends of its interval, and the page of its method. schema.org has no settled
 * word for uncertainty, so the interval stands as least and greatest value. An absent figure has no value, and its description says why.
 */
function variable(index: SiteIndex, figure: Figure, base: string): PropertyValue {
  const code = unitCode(figure.unit);
  const known = index.methods.some((entry) => entry.id === methodId(figure.method));
  const told = [
    figure.absent === null ? "" : `${figure.absent.kind}: ${figure.absent.why}`,
    figure.basis === "measured" ? "" : figure.basis,
    ...figure.doubts,
  ].filter((part) => part !== "");
  return {
    "@type": "PropertyValue",
    name: figure.label,
    propertyID: `${figure.of}#${figure.id}`,
    ...(figure.value === null ? {} : { value: figure.value }),
    ...(figure.low === null ? {} : { minValue: figure.low }),
    ...(figure.high === null ? {} : { maxValue: figure.high }),
    ...(figure.unit === "" ? {} : { unitText: figure.unit }),
    ...(code === undefined ? {} : { unitCode: code }),
    ...(told.length === 0 ? {} : { description: told.join("; ") }),
    measurementTechnique: known ? wholeAddress(base, methodPath(methodId(figure.method))) : figure.method,
  };
}

/** 50 characters at least are asked for by indexes of data sets (from memory); this always has more. */
function datasetWords(test: TestResult): string {
  return (
    `${test.charger.name}, mode “${test.mode.name}”, on ${test.battery.name}: raw recordings, readings, and every figure with unit, interval, method and evidence. ` +
    `${test.recordings.length} recordings, ${test.readings.length} readings, ${test.connections.length} connections. ${test.timeline.words}`
  ).slice(0, 5000);
}
