import { type SvgNode, refusal } from "../plots/svg.ts";
import { PANEL_GREY } from "../plots/picture.ts";
import { BLACK, MM_PER_PT, N6, type Ink, type PictureMark } from "./mark.ts";
import type { PrintDocument } from "./print-document.ts";
import { setInk } from "./set-ink.ts";

/** What an element of a picture hands down to those inside it. */
interface Inherited {
  readonly fill: Ink | undefined;
  readonly stroke: Ink | undefined;
  /** What `currentColor` stands for. */
  readonly current: Ink;
  readonly sizePx: number;
}

interface Pen {
  readonly document: PrintDocument;
  readonly paints: PictureMark["paints"];
}

/** A picture of lib/plots as vectors on the page: groups, rectangles, circles, paths and lines of text, all that its pictures are made of. */
export function drawPicture(
  document: PrintDocument,
  { tree, xMm, yMm, widthMm, paints }: PictureMark,
): void {
  const { pdf } = document;
  pdf.save();
  pdf.translate(xMm / MM_PER_PT, yMm / MM_PER_PT);
  pdf.scale(widthMm / MM_PER_PT / viewBox(tree).width);
  drawNode(
    tree,
    { fill: BLACK, stroke: undefined, current: BLACK, sizePx: 12 },
    { document, paints },
  );
  pdf.restore();
}

/** Height that a picture takes at a width. */
export function pictureHeightMm(tree: SvgNode, widthMm: number): number {
  const { width, height } = viewBox(tree);
  return (widthMm * height) / width;
}

/** Its title and its description: what is said in place of it. */
export function pictureWords({ children }: SvgNode): [title: string, description: string] {
  const words = (name: string): string =>
    children
      .flatMap((child) =>
        typeof child !== "string" && child.name === name
          ? child.children.filter((text) => typeof text === "string")
          : [],
      )
      .join("");
  return [words("title"), words("desc")];
}

function viewBox({ attributes }: SvgNode): { readonly width: number; readonly height: number } {
  const [x, y, width = NaN, height = NaN] = String(attributes["viewBox"]).split(" ").map(Number);
  if (x !== 0 || y !== 0 || !(width > 0 && height > 0))
    throw refusal("view box of a picture", String(attributes["viewBox"]), "0 0 width height");
  return { width, height };
}

function drawNode(node: SvgNode, outer: Inherited, pen: Pen): void {
  const inner = inherited(node, outer, pen);
  switch (node.name) {
    case "title":
    case "desc":
      return;
    case "svg":
    case "g":
    case "a":
      for (const child of node.children) if (typeof child !== "string") drawNode(child, inner, pen);
      return;
    case "text":
      return drawText(node, inner, pen);
    case "rect":
      return paint(node, inner, pen, () =>
        pen.document.pdf.rect(
          number(node, "x"),
          number(node, "y"),
          number(node, "width"),
          number(node, "height"),
        ),
      );
    case "circle":
      return paint(node, inner, pen, () =>
        pen.document.pdf.circle(number(node, "cx"), number(node, "cy"), number(node, "r")),
      );
    case "path":
      return paint(node, inner, pen, () => pen.document.pdf.path(String(node.attributes["d"])));
    default:
      throw refusal(
        "element of a picture",
        node.name,
        "svg, g, a, rect, circle, path, text, title or desc",
      );
  }
}

function inherited({ attributes }: SvgNode, outer: Inherited, pen: Pen): Inherited {
  const current =
    attributes["color"] === undefined
      ? outer.current
      : (inkOf(String(attributes["color"]), outer, pen) ?? outer.current);
  const own = { ...outer, current };
  return {
    current,
    fill:
      attributes["fill"] === undefined
        ? outer.fill
        : inkOf(String(attributes["fill"]), own, pen, outer.fill),
    stroke:
      attributes["stroke"] === undefined
        ? outer.stroke
        : inkOf(String(attributes["stroke"]), own, pen, outer.stroke),
    sizePx: attributes["font-size"] === undefined ? outer.sizePx : Number(attributes["font-size"]),
  };
}

/** @param above what an unknown colour falls back to: a Display P3 value stands inside its sRGB one. */
function inkOf(
  value: string,
  { current }: Pick<Inherited, "current">,
  { paints }: Pen,
  above?: Ink,
): Ink | undefined {
  if (value === "none") return undefined;
  if (value === "currentColor") return current;
  if (value.startsWith("color(")) return above;
  if (value === PANEL_GREY) return N6;
  return paints.get(value) ?? { srgb: value };
}

function paint(
  node: SvgNode,
  { fill, stroke }: Inherited,
  { document }: Pen,
  shape: () => void,
): void {
  const { pdf } = document;
  const { attributes } = node;
  const width = Number(attributes["stroke-width"] ?? 1);
  pdf.save();
  if (attributes["fill-opacity"] !== undefined) pdf.fillOpacity(Number(attributes["fill-opacity"]));
  if (attributes["stroke-opacity"] !== undefined)
    pdf.strokeOpacity(Number(attributes["stroke-opacity"]));
  if (fill !== undefined) setInk(document, fill, "fill");
  if (stroke !== undefined) {
    setInk(document, stroke, "stroke");
    pdf.lineWidth(width);
    if (attributes["stroke-linejoin"] === "round") pdf.lineJoin("round");
    const dashes = attributes["stroke-dasharray"];
    if (dashes !== undefined) {
      const [dash = 1, space = dash] = String(dashes).split(/[ ,]+/).map(Number);
      pdf.dash(dash, { space });
    }
  }
  if (fill !== undefined || stroke !== undefined) {
    shape();
    pdf.addContent(fill === undefined ? "S" : stroke === undefined ? "f" : "B");
  }
  pdf.restore();
}

function drawText(node: SvgNode, { fill, stroke, sizePx }: Inherited, { document }: Pen): void {
  const { pdf, runs } = document;
  const { attributes } = node;
  const text = node.children.filter((child) => typeof child === "string").join("");
  const parts = runs(text, attributes["font-weight"] === undefined ? "sans" : "sans bold");
  const widths = parts.map(({ text: part, font }) =>
    pdf.font(font).fontSize(sizePx).widthOfString(part),
  );
  const total = widths.reduce((sum, width) => sum + width, 0);
  const anchor = attributes["text-anchor"];
  const start =
    number(node, "x") - (anchor === "middle" ? total / 2 : anchor === "end" ? total : 0);
  // A rim in the ground's own grey, as the ground itself: text that is stroked would be read twice.
  if (stroke !== undefined) {
    setInk(document, stroke, "fill");
    pdf.rect(start - RIM, number(node, "y") - sizePx * 0.78, total + 2 * RIM, sizePx);
    pdf.addContent("f");
  }
  if (fill === undefined) return;
  setInk(document, fill, "fill");
  let x = start;
  parts.forEach(({ text: part, font }, i) => {
    pdf.font(font).fontSize(sizePx);
    pdf.text(part, x, number(node, "y"), { lineBreak: false, baseline: "alphabetic" });
    x += widths[i] ?? 0;
  });
}

const RIM = 1;

function number({ attributes, name }: SvgNode, key: string): number {
  const value = Number(attributes[key]);
  if (!Number.isFinite(value))
    throw refusal(`${key} of ${name}`, String(attributes[key]), "a finite number");
  return value;
}
