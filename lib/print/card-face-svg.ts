import { inOwnColour } from "../plots/screen-colour.ts";
import { element, writtenSvg, type Attributes, type SvgNode } from "../plots/svg.ts";
import { asMarkup, type Markup } from "../present/views.ts";
import { marksOf, MM_PER_PT, type Ink, type Mark, type Tagged } from "./mark.ts";
import type { Face } from "./print-font.ts";
import { printable } from "./printable-letters.ts";

const FONTS: Readonly<Record<Face, Attributes>> = {
  serif: { "font-family": "'Source Serif 4', serif" },
  "serif italic": { "font-family": "'Source Serif 4', serif", "font-style": "italic" },
  sans: { "font-family": "'Source Sans 3', sans-serif" },
  "sans bold": { "font-family": "'Source Sans 3', sans-serif", "font-weight": 600 },
};

/** A face as it will be cut, from the same marks that the PDF is drawn from; `title` says which, and its text is its description. */
export function faceSvg(
  elements: readonly Tagged[],
  { widthMm, heightMm }: { readonly widthMm: number; readonly heightMm: number },
  { idPrefix, title }: { readonly idPrefix: string; readonly title: string },
): Markup {
  const said = elements.flatMap(textsOf);
  return asMarkup(
    writtenSvg(
      element(
        "svg",
        {
          xmlns: "http://www.w3.org/2000/svg",
          class: "card-face",
          viewBox: `0 0 ${widthMm} ${heightMm}`,
          width: `${widthMm}mm`,
          height: `${heightMm}mm`,
          role: "img",
          "aria-labelledby": `${idPrefix}-title ${idPrefix}-desc`,
        },
        [
          element("title", { id: `${idPrefix}-title` }, [title]),
          element("desc", { id: `${idPrefix}-desc` }, [said.join(" ")]),
          element("rect", { width: widthMm, height: heightMm, fill: "#ffffff" }),
          ...elements.flatMap((element_) => marksOf(element_).flatMap(drawnMark)),
        ],
      ),
    ),
  );
}

function textsOf({ tag, alt, marks = [], children = [] }: Tagged): string[] {
  if (alt !== undefined) return [alt];
  if (tag === "Artifact") return [];
  return [
    ...marks.flatMap((mark) => (mark.kind === "text" ? [mark.text] : [])),
    ...children.flatMap(textsOf),
  ];
}

/** A mark in SVG, in millimetres; pictures and photographs are not drawn. */
export function drawnMark(mark: Mark): SvgNode | [] {
  switch (mark.kind) {
    case "text":
      return inked(mark.ink ?? { grey: 0 }, "fill", (ink) =>
        element(
          "text",
          {
            x: mark.xMm,
            y: mark.yMm,
            "font-size": mark.sizePt * MM_PER_PT,
            ...FONTS[mark.face],
            ...ink,
          },
          [printable(mark.text, mark.face)],
        ),
      );
    case "box":
      return inked(mark.ink, "fill", (ink) =>
        element("rect", {
          x: mark.xMm,
          y: mark.yMm,
          width: mark.widthMm,
          height: mark.heightMm,
          ...ink,
        }),
      );
    case "line":
      return inked(mark.ink, "stroke", (ink) =>
        element("line", {
          x1: mark.fromMm[0],
          y1: mark.fromMm[1],
          x2: mark.toMm[0],
          y2: mark.toMm[1],
          "stroke-width": mark.widthPt * MM_PER_PT,
          "stroke-dasharray": mark.dashMm?.join(" "),
          ...ink,
        }),
      );
    case "picture":
    case "photograph":
      return [];
    case "path": {
      const shape: Attributes = {
        d: mark.d,
        transform: `translate(${rounded(mark.xMm)} ${rounded(mark.yMm)}) scale(${rounded(mark.scale)})`,
        ...(mark.evenOdd === true && { "fill-rule": "evenodd" }),
      };
      return mark.strokeWidth === undefined
        ? inked(mark.ink, "fill", (ink) => element("path", { ...shape, ...ink }))
        : inked(mark.ink, "stroke", (ink) =>
            element("path", { ...shape, fill: "none", "stroke-width": mark.strokeWidth, ...ink }),
          );
    }
  }
}

function inked(
  ink: Ink,
  paint: "fill" | "stroke",
  shape: (attributes: Attributes) => SvgNode,
): SvgNode {
  if ("lab" in ink) return inOwnColour(ink.screen, paint, shape);
  return shape({ [paint]: "srgb" in ink ? ink.srgb : greyHex(ink.grey) });
}

function greyHex(grey: number): string {
  const channel = Math.round(grey * 255)
    .toString(16)
    .padStart(2, "0");
  return `#${channel}${channel}${channel}`;
}

function rounded(value: number): string {
  return String(Math.round(value * 1e4) / 1e4);
}
