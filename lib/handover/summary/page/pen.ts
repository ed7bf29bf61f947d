import type { Face } from '@/lib/handover/fonts';
import { fontBytes, fontNames } from '@/lib/handover/fonts';
import { ink } from './ink';
import type { TextStyle } from './lines';
import type { Picture } from './picture';
import { openType, type Run, type Type } from './type';

/** Draws on the page that is open; x and y in points from its top left corner. */
export interface Pen {
  doc: PDFKit.PDFDocument;
  type: Type;
  /** One line; y is its top. */
  line(text: string, x: number, y: number, style: TextStyle): void;
  lineToRight(text: string, right: number, y: number, style: TextStyle): void;
  rule(x: number, y: number, width: number, color?: string, weight?: number): void;
  picture(picture: Picture, x: number, y: number, width: number, height: number): void;
}

export function penFor(doc: PDFKit.PDFDocument): Pen {
  for (const name of fontNames) doc.registerFont(name, Buffer.from(fontBytes(name)));
  const widthOf = ({ font, text }: Run, size: number) => doc.font(font).fontSize(size).widthOfString(text);
  const type = openType(widthOf);
  const line = (text: string, x: number, y: number, { face, size, leading, color }: TextStyle) => {
    let at = x;
    const baseline = y + leading / 2 + size * 0.34;
    for (const run of type.runs(text, face)) {
      const width = widthOf(run, size);
      doc.fillColor(color).text(run.text, at, baseline, { lineBreak: false, baseline: 'alphabetic' });
      at += width;
    }
  };
  return {
    doc,
    type,
    line,
    lineToRight: (text, right, y, style) =>
      line(text, right - type.width(text.trimEnd(), style.face, style.size), y, style),
    rule: (x, y, width, color = ink.rule, weight = 0.6) => {
      doc
        .moveTo(x, y)
        .lineTo(x + width, y)
        .lineWidth(weight)
        .strokeColor(color)
        .stroke();
    },
    picture: ({ bytes }, x, y, width, height) => {
      doc.image(Buffer.from(bytes), x, y, { fit: [width, height] });
    },
  };
}

/** A style in one of the faces, in a size of `measure`. */
export function styled(
  { size, leading }: { size: number; leading: number },
  color: string = ink.text,
  face: Face = 'text',
): TextStyle {
  return { face, size, leading, color };
}
