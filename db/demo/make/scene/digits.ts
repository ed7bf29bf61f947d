import { apart, type Pen } from './ink';
import { palette } from './palette';

/** Which of the seven segments (a…g) a character lights. */
const lit: Record<string, string> = {
  '0': 'abcdef',
  '1': 'bc',
  '2': 'abdeg',
  '3': 'abcdg',
  '4': 'bcfg',
  '5': 'acdfg',
  '6': 'acdefg',
  '7': 'abc',
  '8': 'abcdefg',
  '9': 'abcdfg',
  O: 'abcdef',
  L: 'def',
  '-': 'g',
  ' ': '',
};

/** Segments in a cell one unit wide and two high: two ends each. */
const segments: Record<string, [number, number, number, number]> = {
  a: [0.12, 0, 0.88, 0],
  b: [1, 0.12, 1, 0.88],
  c: [1, 1.12, 1, 1.88],
  d: [0.12, 2, 0.88, 2],
  e: [0, 1.12, 0, 1.88],
  f: [0, 0.12, 0, 0.88],
  g: [0.12, 1, 0.88, 1],
};

function drawCharacter(pen: Pen, character: string, x: number, y: number, size: number): void {
  for (const [name, [x1, y1, x2, y2]] of Object.entries(segments)) {
    pen.globalAlpha = lit[character]?.includes(name) ? 0.95 : 0.05;
    pen.beginPath();
    pen.moveTo(x + x1 * size, y + y1 * size);
    pen.lineTo(x + x2 * size, y + y2 * size);
    pen.stroke();
  }
}

/** Writes digits ending at `right`, top at `y`; `size` is the width of one character. */
export function drawDigits(pen: Pen, digits: string, right: number, y: number, size: number): void {
  apart(pen, () => {
    pen.strokeStyle = palette.segment;
    pen.fillStyle = palette.segment;
    pen.lineCap = 'round';
    pen.lineWidth = size * 0.2;
    pen.transform(1, 0, -0.09, 1, 0, 0);
    let x = right - size + 0.09 * y;
    for (const character of [...digits].reverse()) {
      if (character === '.') {
        pen.globalAlpha = 0.95;
        pen.fillRect(x + size * 1.2, y + size * 1.9, size * 0.24, size * 0.24);
        continue;
      }
      drawCharacter(pen, character, x, y, size);
      x -= size * 1.6;
    }
  });
}
