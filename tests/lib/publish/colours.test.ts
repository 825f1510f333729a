import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { palette } from "../../../lib/publish/charts/palette.ts";

const css = readFileSync("_site-config/assets/site.css", "utf8");

/** The custom properties of the n-th :root block: 0 is light, 1 is dark, 2 is print. */
function theme(index: number): ReadonlyMap<string, string> {
  const block = [...css.matchAll(/:root \{([^}]*)\}/g)][index]?.[1] ?? "";
  return new Map([...block.matchAll(/(--[a-z]+): (#[0-9a-f]{3,6});/g)].map((match) => [match[1] ?? "", match[2] ?? ""]));
}

/** Relative luminance of an sRGB colour (WCAG 2.2, definition of relative luminance). */
function luminance(hex: string): number {
  const full = hex.length === 4 ? [...hex.slice(1)].map((digit) => digit + digit).join("") : hex.slice(1);
  const [r = 0, g = 0, b = 0] = [0, 2, 4]
    .map((start) => Number.parseInt(full.slice(start, start + 2), 16) / 255)
    .map((channel) => (channel <= 0.04045 ? channel / 12.92 : ((channel + 0.055) / 1.055) ** 2.4));
  return 0.2126 * r + 0.7152 * g + 0.0722 * b;
}

/** Contrast ratio of two colours (WCAG 2.2, definition of contrast ratio). */
function contrast(a: string, b: string): number {
  const [lighter = 0, darker = 0] = [luminance(a), luminance(b)].sort((x, y) => y - x);
  return (lighter + 0.05) / (darker + 0.05);
}

const texts = ["--ink", "--quiet", "--link", "--good", "--bad", "--open", "--voltage", "--current", "--density"];
const grounds = ["--paper", "--sheet", "--warm", "--band"];
const pairs = texts.flatMap((text) => grounds.map((ground) => [text, ground] as const));

describe("contrast", () => {
  it("is known to be 21 between black and white", () => {
    expect(contrast("#000", "#ffffff")).toBeCloseTo(21, 5);
  });

  describe.each([
    ["light", 0],
    ["dark", 1],
    ["print", 2],
  ] as const)("%s", (_, index) => {
    const colours = theme(index);
    it.each(pairs)("%s on %s reaches 4.5:1 (WCAG 1.4.3)", (text, ground) => {
      expect(contrast(colours.get(text) ?? "", colours.get(ground) ?? "")).toBeGreaterThanOrEqual(4.5);
    });

    it("of a recorded stretch against its ground reaches 3:1 (WCAG 1.4.11)", () => {
      expect(contrast(colours.get("--recorded") ?? "", colours.get("--sheet") ?? "")).toBeGreaterThanOrEqual(3);
    });
  });
});

describe("the charts' palette", () => {
  it.each(Object.values(palette))("$placeholder is what the light theme says for $property", ({ placeholder, property }) => {
    expect(theme(0).get(property)).toBe(placeholder);
  });

  it("has no colour twice, since a placeholder must stand for one role", () => {
    const placeholders = Object.values(palette).map((role) => role.placeholder);
    expect(new Set(placeholders).size).toBe(placeholders.length);
  });
});
