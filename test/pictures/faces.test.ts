import sharp from "sharp";
import { describe, expect, test } from "vitest";
import type { PaintColour, SwatchesBlock } from "../../lib/blocks/block.ts";
import {
  squareFace,
  SQUARE,
  stripFace,
  STRIP,
  wideFace,
  WIDE,
  type ShownPaint,
} from "../../lib/pictures/colour-faces.ts";
import { drawnPicture } from "../../lib/pictures/drawn-picture.ts";
import type { PictureFace } from "../../lib/pictures/picture-face.ts";
import { besideFace, rangeFace } from "../../lib/pictures/range-faces.ts";
import { MM_PER_PT, type TextMark } from "../../lib/print/mark.ts";
import { measureText } from "../../lib/print/print-document.ts";

const paint = (hex: string): PaintColour => ({ hex, lab: { L: 40, a: 10, b: -20 } });
const IMPRINT = {
  workshop: "Saltreach Colourworks",
  demonstration: "Demonstration: everything here is invented.",
};
const TINTS: SwatchesBlock = {
  kind: "swatches",
  description: "",
  rows: ["light", "middle", "dark"],
  columns: ["Titanium White", "Lead White", "Zinc White, ground in walnut oil"].map((head, i) => ({
    head,
    cells: [
      { colour: paint(`#a0a${i}b0`) },
      { colour: paint(`#707${i}80`) },
      i === 2 ? { missing: "not reached" } : { colour: paint(`#404${i}50`) },
    ],
  })),
};
const shown = (name: string, more: Partial<ShownPaint> = {}): ShownPaint => ({
  name,
  index: "PB\u00a029, PBk\u00a09",
  masstone: paint("#123456"),
  tints: TINTS,
  ladder: {
    kind: "ladder",
    id: "in-titanium-white",
    name: "Titanium White",
    sentence: "",
    description: "",
    remarks: [],
    steps: ["10:1", "1:1", "1:100"].map((label, i) => ({
      label,
      measured: false,
      colour: paint(`#${i + 4}0${i + 4}0${i + 4}0`),
    })),
  },
  ...more,
});

const bare = ({ name, index, masstone }: ShownPaint): ShownPaint => ({ name, index, masstone });
const facesOf = (one: ShownPaint): (readonly [string, PictureFace])[] => [
  ["wide", wideFace(one, IMPRINT)],
  ["wide, alone", wideFace(bare(one), IMPRINT)],
  ["square", squareFace(one, IMPRINT)],
  ["square, alone", squareFace(bare(one), IMPRINT)],
  ["strip", stripFace(one, IMPRINT)],
  ["strip, alone", stripFace(bare(one), IMPRINT)],
  ...[WIDE, SQUARE, STRIP].flatMap((size) =>
    [2, 3, 4].map(
      (count) =>
        [
          `${count} beside each other, ${size.widthMm} x ${size.heightMm}`,
          besideFace(Array<ShownPaint>(count).fill(one), IMPRINT, size),
        ] as const,
    ),
  ),
  [
    "range",
    rangeFace(
      Array.from({ length: 41 }, (_, i) => paint(`#0000${(i + 16).toString(16)}`)),
      { name: one.name, lead: "41 oil colours" },
      IMPRINT,
    ),
  ],
];

interface Extent {
  readonly text: string;
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

function textsOf({ marks }: PictureFace): Extent[] {
  return marks
    .filter((mark): mark is TextMark => mark.kind === "text")
    .map(({ text, xMm, yMm, face, sizePt }) => ({
      text,
      left: xMm,
      right: xMm + measureText(text.trimEnd(), face, sizePt),
      top: yMm - 0.72 * sizePt * MM_PER_PT,
      bottom: yMm + 0.2 * sizePt * MM_PER_PT,
    }));
}

const NAMES: readonly (readonly [string, string])[] = [
  ["two letters", "Aa"],
  [
    "eighty letters",
    "Umber-Ultramarine Black, twice milled in walnut oil and left to ripen for years",
  ],
  ["one long word", "Viridian-Quinacridoneschwarzzubereitungsmischung hell"],
  ["wide letters", "WWWWWWW WWWWWWW WWWWWWW WWWWWWW WWWWWWW WWWWWWW WWWWWWW WWWWWWW WWWWWWW W"],
];

describe.each(NAMES)("a name of %s", (_, name) => {
  test.each(facesOf(shown(name)))(
    "%s: every word inside the picture, none over another",
    (__, face) => {
      const texts = textsOf(face);
      expect(texts.map(({ text }) => text).join(" ")).toContain(name.slice(0, 2));
      for (const { text, left, top, right, bottom } of texts) {
        expect(left, text).toBeGreaterThanOrEqual(0.5);
        expect(right, text).toBeLessThanOrEqual(face.widthMm - 0.5);
        expect(top, text).toBeGreaterThanOrEqual(0);
        expect(bottom, text).toBeLessThanOrEqual(face.heightMm);
      }
      const overlapping = texts.flatMap((one, i) =>
        texts
          .slice(i + 1)
          .filter(
            (other) =>
              one.left < other.right &&
              other.left < one.right &&
              one.top < other.bottom &&
              other.top < one.bottom,
          )
          .map((other) => `${one.text} | ${other.text}`),
      );
      expect(overlapping).toEqual([]);
    },
  );
});

test("a workshop that is invented is said to be on every picture, and a real one is not", () => {
  const said = (face: PictureFace): string =>
    textsOf(face)
      .map(({ text }) => text.trim())
      .join(" ");
  for (const [, face] of facesOf(shown("Bone Black")))
    expect(said(face)).toContain(IMPRINT.demonstration);
  expect(said(wideFace(shown("Bone Black"), { workshop: "Saltreach" }))).not.toContain("invented");
});

test.each([
  ["wide", wideFace, 1200, 630, [300, 200]],
  ["square", squareFace, 1080, 1080, [500, 200]],
  ["strip", stripFace, 1200, 300, [100, 60]],
] as const)(
  "%s: of its size in both formats, and a flat swatch is the very sRGB of its paint",
  async (_, face, width, height, [x, y]) => {
    const own = face(shown("Bone Black"), IMPRINT);
    for (const type of ["png", "avif"] as const) {
      const bytes = await drawnPicture({ face: own, type });
      const found = await sharp(bytes).metadata();
      expect([found.width, found.height, found.hasAlpha]).toEqual([width, height, false]);
      const { data, info } = await sharp(bytes).raw().toBuffer({ resolveWithObject: true });
      const pixel = [...data.subarray((y * info.width + x) * 3, (y * info.width + x) * 3 + 3)];
      const wanted = [0x12, 0x34, 0x56];
      const off = Math.max(...wanted.map((channel, i) => Math.abs(channel - (pixel[i] ?? NaN))));
      // AVIF rounds on its way through luma and chroma.
      expect(off, type).toBeLessThanOrEqual(type === "png" ? 0 : 2);
    }
  },
);

test("letters are drawn: the ground below the paint is not even", async () => {
  const bytes = await drawnPicture({ face: wideFace(shown("Bone Black"), IMPRINT), type: "png" });
  const part = await sharp(bytes)
    .extract({ left: 40, top: 450, width: 300, height: 120 })
    .png()
    .toBuffer();
  const { channels } = await sharp(part).stats();
  expect(channels[0]?.min).toBeLessThan(40);
  expect(channels[0]?.max).toBe(0x93);
});

test("four names beside each other are of one size, and no word of them is broken", () => {
  const names = ["Viridian", "Alizarin Crimson", "Ultramarine Blue", "Phthalocyanine Blue"];
  const { marks } = besideFace(
    names.map((name) => shown(name)),
    IMPRINT,
    WIDE,
  );
  const texts = marks.filter(
    (mark): mark is TextMark => mark.kind === "text" && mark.face === "serif",
  );
  expect(texts.map(({ text }) => text.trim())).toEqual(
    expect.arrayContaining(["Viridian", "Alizarin", "Ultramarine", "Phthalocyanine"]),
  );
  expect(new Set(texts.map(({ sizePt }) => sizePt)).size).toBe(1);
});
