import { describe, expect, it } from "vitest";
import { earliestTopUp } from "../../../lib/publish/pages/earliest-top-up.ts";

describe("the earliest time to top up", () => {
  it("is told in days up to two months, then in months of 365.25 / 12 days, rounded down", () => {
    const told = [0.9, 45.9, 60.8, 60.9, 100, 730].map((days) => earliestTopUp(days).replace("\u202f", " "));
    expect(told).toEqual(["0 days", "45 days", "60 days", "2 months", "3 months", "23 months"]);
  });

  it("goes no further than two years, for a battery that loses next to nothing as for one that loses none", () => {
    expect(earliestTopUp(731)).toBe(earliestTopUp(null));
    expect(earliestTopUp(null).replace("\u202f", " ")).toBe("more than 24 months");
  });
});
