import { describe, expect, it } from "vitest";
import { columnOfField } from "../../../lib/read/field-place.ts";

describe("place of a field", () => {
  it.each([
    ["a;b;c", ";", 0, 1],
    ["a;b;c", ";", 1, 3],
    ["a;;c", ";", 2, 4],
    ["a;b", ";", 1, 3],
    ['"a;b";c', ";", 1, 7],
    ['"a""b";c', ";", 1, 8],
    ["a\tb", "\t", 1, 3],
    ["", ";", 0, 1],
  ])("%j parted by %j: field %d starts at column %d", (text, delimiter, field, column) =>
    expect(columnOfField(text, delimiter, field)).toBe(column),
  );

  it("is one past the end where the line has too few fields", () => expect(columnOfField("a;b", ";", 5)).toBe(4));
});
