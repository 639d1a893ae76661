import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { sfntOfWoff } from "./sfnt-of-woff.ts";

/** The four cuts that paper is set in, the same that pages are. */
export const FACES = ["serif", "serif italic", "sans", "sans bold"] as const;
export type Face = (typeof FACES)[number];

const CUTS: Readonly<Record<Face, readonly [family: string, cut: string]>> = {
  serif: ["source-serif-4", "400-normal"],
  "serif italic": ["source-serif-4", "400-italic"],
  sans: ["source-sans-3", "400-normal"],
  "sans bold": ["source-sans-3", "600-normal"],
};

/** Scripts that the packages cut the fonts into, in the order in which a character is looked for. */
export const SUBSETS = [
  "latin",
  "latin-ext",
  "greek",
  "cyrillic",
  "cyrillic-ext",
  "vietnamese",
] as const;
export type Subset = (typeof SUBSETS)[number];

/**
 * Height of a capital, of an ascender and of a descender, as a share of the size:
 * what lines are aligned by. Read from the fonts (OS/2 sCapHeight; ink of "d" and "p").
 */
export const FACE_HEIGHTS: Readonly<
  Record<Face, { readonly capital: number; readonly ascender: number; readonly descender: number }>
> = {
  serif: { capital: 0.67, ascender: 0.73, descender: 0.24 },
  "serif italic": { capital: 0.67, ascender: 0.73, descender: 0.24 },
  sans: { capital: 0.66, ascender: 0.72, descender: 0.21 },
  "sans bold": { capital: 0.66, ascender: 0.72, descender: 0.21 },
};

/** Height of a lower-case x as a share of the size: OS/2 sxHeight of the sans and of its bold cut, the smaller. */
export const SANS_X_HEIGHT = 0.486;

const require = createRequire(import.meta.url);

const opened = new Map<string, Uint8Array>();

/**
 * The font of a cut, unpacked once a run. The packages carry WOFF and WOFF2; of WOFF2
 * fontkit loses the composite glyphs when it embeds a subset.
 */
export function fontBytes(face: Face, subset: Subset): Uint8Array {
  const name = `${face} ${subset}`;
  const bytes = opened.get(name) ?? sfntOfWoff(fontFile(face, subset));
  opened.set(name, bytes);
  return bytes;
}

/** The same as its package carries it. */
export function fontFile(face: Face, subset: Subset): Buffer {
  const [family, cut] = CUTS[face];
  return readFileSync(
    require.resolve(`@fontsource/${family}/files/${family}-${subset}-${cut}.woff`),
  );
}
