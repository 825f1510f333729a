import { describe, expect, it } from "vitest";
import { typedAddress, wholeAddress } from "../../../../lib/publish/outward/addresses.ts";

describe("whole addresses", () => {
  it("are the same whether the site's address ends in a slash or not", () => {
    expect(wholeAddress("https://a.example/x", "tests/one/")).toBe("https://a.example/x/tests/one/");
    expect(wholeAddress("https://a.example/x/", "tests/one/")).toBe("https://a.example/x/tests/one/");
  });

  it("name the first page by the site's address alone", () => {
    expect(wholeAddress("https://a.example", "")).toBe("https://a.example/");
  });

  it("keep the fragment, and write what is no letter of an address as RFC 3986 asks", () => {
    expect(wholeAddress("https://a.example/", "raw/night one.csv#x")).toBe("https://a.example/raw/night%20one.csv#x");
    expect(wholeAddress("https://Bücher.Example/", "a/")).toBe("https://xn--bcher-kva.example/a/");
  });

  it("lose only their scheme where people type them", () => {
    expect(typedAddress("https://a.example/x/")).toBe("a.example/x/");
  });
});
