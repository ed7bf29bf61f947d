import { encode } from 'uqr';

export interface PrintedCode {
  /** Width and height in modules, the quiet zone with it. */
  size: number;
  /** The dark modules as one SVG path; one unit is one module. */
  path: string;
}

/** ISO/IEC 18004: a QR code keeps four modules free on every side. */
export const quietZone = 4;

/**
 * A QR code of a text (ISO/IEC 18004), error correction level M: it is read with 15 % of it lost, as paper in a
 * workshop loses some.
 */
export function qrCode(text: string): PrintedCode {
  const { size, data } = encode(text, { ecc: 'M', boostEcc: false, border: quietZone });
  return { size, path: data.flatMap(runsOfRow).join('') };
}

/** Neighbouring dark modules are one bar, so that no hair line shows between them. */
function runsOfRow(row: readonly boolean[], y: number): string[] {
  const bars: string[] = [];
  for (let x = 0; x < row.length; x++) {
    if (!row[x]) continue;
    const start = x;
    while (row[x + 1]) x++;
    const width = x + 1 - start;
    bars.push(`M${start} ${y}h${width}v1h-${width}z`);
  }
  return bars;
}
