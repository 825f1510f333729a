import { describe, expect, it } from "vitest";
import { licenceAddress, spdxLike } from "../../../../lib/publish/outward/licence.ts";

describe("a licence", () => {
  it("can be an SPDX identifier only if it is one word", () => {
    expect([spdxLike("CC-BY-4.0"), spdxLike("all rights reserved"), spdxLike(null)]).toEqual(["CC-BY-4.0", null, null]);
  });

  it("of Creative Commons has its page; of others none is made up", () => {
    expect(licenceAddress("CC-BY-4.0")).toBe("https://creativecommons.org/licenses/by/4.0/");
    expect(licenceAddress("CC-BY-NC-SA-4.0")).toBe("https://creativecommons.org/licenses/by-nc-sa/4.0/");
    expect(licenceAddress("CC0-1.0")).toBe("https://creativecommons.org/publicdomain/zero/1.0/");
    expect(licenceAddress("MIT")).toBeUndefined();
  });
});
