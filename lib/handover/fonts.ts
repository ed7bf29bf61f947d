import { readFileSync } from 'node:fs';
import { join } from 'node:path';

/** Faces of the papers: the text face of the pages, a bold one, and figures of one width. */
export const faces = ['text', 'strong', 'figures'] as const;
export type Face = (typeof faces)[number];

/**
 * Fonts by name, as files of the packages that bring them (SIL Open Font License 1.1). They are complete and static,
 * so that whatever is used of them can be embedded.
 */
const files = {
  Sofia: 'sofia-sans/400Regular/SofiaSans_400Regular.ttf',
  'Sofia bold': 'sofia-sans/700Bold/SofiaSans_700Bold.ttf',
  Spline: 'spline-sans-mono/400Regular/SplineSansMono_400Regular.ttf',
  Noto: 'noto-sans/400Regular/NotoSans_400Regular.ttf',
  'Noto bold': 'noto-sans/700Bold/NotoSans_700Bold.ttf',
  Signs: 'noto-sans-math/400Regular/NotoSansMath_400Regular.ttf',
} as const;
export type FontName = keyof typeof files;
export const fontNames = Object.keys(files).filter((name): name is FontName => name in files);

/** Where a face lacks a letter, the next font is asked: Noto has all of Latin, Greek and Cyrillic, Signs has ✓ ♯ ♭. */
export const fontsOf: Readonly<Record<Face, readonly FontName[]>> = {
  text: ['Sofia', 'Noto', 'Signs'],
  strong: ['Sofia bold', 'Noto bold', 'Signs'],
  figures: ['Spline', 'Sofia', 'Noto', 'Signs'],
};

/** The bytes of a font. They lie beside the other packages of the program, wherever its code was bundled to. */
export function fontBytes(name: FontName): Uint8Array {
  return readFileSync(
    join(/*turbopackIgnore: true*/ process.cwd(), 'node_modules', '@expo-google-fonts', files[name]),
  );
}
