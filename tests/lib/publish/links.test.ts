import { describe, expect, it } from "vitest";
import {
  addressPart,
  chargerPath,
  figureAnchor,
  findingAnchor,
  methodId,
  methodPath,
  relativeLink,
  testPath,
} from "../../../lib/publish/links.ts";

describe("a relative link", () => {
  it("climbs to the root and names index.html, so that a folder opens without a server", () => {
    expect(relativeLink("", "tests/a/")).toBe("tests/a/index.html");
    expect(relativeLink("tests/a/", "")).toBe("../../index.html");
    expect(relativeLink("tests/a/", "method/#rules")).toBe("../../method/index.html#rules");
    expect(relativeLink("404.html", "data/index.json")).toBe("data/index.json");
  });

  it("encodes what an address may not hold", () => {
    expect(relativeLink("tests/a/", "raw/logs/night one#1.csv".replace("#", "%"))).toBe("../../raw/logs/night%20one%251.csv");
  });
});

describe("addresses and anchors", () => {
  it("hold safe characters only", () => {
    expect(addressPart('a "b" <c>/ü')).toBe("a-b-c");
    expect(figureAnchor({ of: "recording/day 1.csv", id: "span" })).toBe("figure-recording-day-1.csv-span");
    expect(findingAnchor("float-window")).toBe("finding-float-window");
  });

  it("cannot leave the site, whatever an id says", () => {
    expect(testPath("../../etc")).toBe("tests/..-..-etc/");
    expect(chargerPath("a/b")).toBe("chargers/a-b/");
    expect(methodPath(methodId("charge-recorded/12"))).toBe("method/charge-recorded/");
  });
});
