import { renderToString } from "preact-render-to-string";
import qrcode from "qrcode-generator";
import { describe, expect, it } from "vitest";
import { QrCode, qrPath } from "../../../../lib/publish/outward/qr-code.tsx";

const address = "https://bench.example/chargers/chargers/lantern-eight/";

/** The dark modules of a path made of rectangles "M x y h w v1 h -w z". */
function modulesOf(path: string, side: number): boolean[][] {
  const grid = Array.from({ length: side }, () => Array<boolean>(side).fill(false));
  for (const [, x, y, width] of path.matchAll(/M(\d+) (\d+)h(\d+)v1h-\d+z/g))
    for (let column = Number(x); column < Number(x) + Number(width); column++) (grid[Number(y)] ?? [])[column] = true;
  return grid;
}

describe("the QR code", () => {
  const { path, side } = qrPath(address);
  const grid = modulesOf(path, side);

  it("is dark where the code is dark, module by module", () => {
    const code = qrcode(0, "M");
    code.addData(address);
    code.make();
    expect(side).toBe(code.getModuleCount() + 8);
    for (let row = 0; row < code.getModuleCount(); row++)
      for (let column = 0; column < code.getModuleCount(); column++) expect(grid[row + 4]?.[column + 4]).toBe(code.isDark(row, column));
  });

  it("has four empty modules on every side (ISO/IEC 18004, from memory)", () => {
    const edge = [0, 1, 2, 3, side - 4, side - 3, side - 2, side - 1];
    for (const at of edge)
      for (let other = 0; other < side; other++) expect([grid[at]?.[other], grid[other]?.[at]]).toEqual([false, false]);
  });

  it("has the square of seven modules in three corners by which a scanner finds it", () => {
    const far = side - 4 - 7;
    for (const [row, column] of [
      [4, 4],
      [4, far],
      [far, 4],
    ] as const)
      expect(grid[row]?.slice(column, column + 7)).toEqual(Array(7).fill(true));
  });

  it("says its address to those who cannot see it", () => {
    expect(renderToString(<QrCode address={address} words={`QR code of ${address}`} />)).toContain(`aria-label="QR code of ${address}"`);
  });
});
