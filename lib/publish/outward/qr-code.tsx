/** A QR code as inline SVG: dark on a white ground of its own, in every colour scheme, since readers expect it so. */
import qrcode from "qrcode-generator";

/** Empty modules around the code (ISO/IEC 18004 asks for four, from memory). */
const quietModules = 4;

/** One path for all dark modules of a QR code, with its side in modules, quiet zone included. Error correction M: about 15 % may be soiled. */
export function qrPath(text: string): { path: string; side: number } {
  const code = qrcode(0, "M");
  code.addData(text);
  code.make();
  const count = code.getModuleCount();
  const rows = Array.from({ length: count }, (_, row) => darkRuns(count, (column) => code.isDark(row, column), row));
  return { path: rows.join(""), side: count + 2 * quietModules };
}

/** Dark modules side by side become one rectangle: fewer bytes, and no hairlines between them in print. */
function darkRuns(count: number, isDark: (column: number) => boolean, row: number): string {
  let path = "";
  for (let column = 0; column < count; column++) {
    if (!isDark(column)) continue;
    const start = column;
    while (column + 1 < count && isDark(column + 1)) column++;
    path += `M${start + quietModules} ${row + quietModules}h${column - start + 1}v1h-${column - start + 1}z`;
  }
  return path;
}

/** The code with its text alternative. */
export function QrCode({ address, words }: { address: string; words: string }) {
  const { path, side } = qrPath(address);
  return (
    <svg class="qr" viewBox={`0 0 ${side} ${side}`} role="img" aria-label={words} shape-rendering="crispEdges">
      <rect width={side} height={side} fill="#fff" />
      <path d={path} fill="#000" />
    </svg>
  );
}
