import { measuringDocument } from "./print-document.ts";
import { MM_PER_PT, type PathMark, type TextMark } from "./mark.ts";

/** Parts of fontkit, as pdfkit has a font opened, that no types tell of. */
interface OpenedFont {
  readonly unitsPerEm: number;
  layout(text: string): {
    readonly glyphs: readonly { readonly path: { readonly commands: readonly PathCommand[] } }[];
    readonly positions: readonly {
      readonly xAdvance: number;
      readonly xOffset: number;
      readonly yOffset: number;
    }[];
  };
}

interface PathCommand {
  readonly command: keyof typeof LETTERS;
  /** x, y after x, y, in units of the font, y upwards. */
  readonly args: readonly number[];
}

const LETTERS = {
  moveTo: "M",
  lineTo: "L",
  quadraticCurveTo: "Q",
  bezierCurveTo: "C",
  closePath: "Z",
} as const;

/** Set texts as the outlines of their letters, so that a picture shows the project's fonts wherever it is drawn. */
export function outlinedText({
  text,
  xMm,
  yMm,
  face,
  sizePt,
  ink = { grey: 0 },
}: TextMark): PathMark[] {
  const { pdf, runs } = measuringDocument();
  let x = xMm;
  return runs(text, face).flatMap((run): PathMark[] => {
    const { _font } = pdf.font(run.font) as unknown as {
      readonly _font: { readonly font: OpenedFont };
    };
    const { unitsPerEm } = _font.font;
    const { glyphs, positions } = _font.font.layout(run.text);
    const scale = (sizePt * MM_PER_PT) / unitsPerEm;
    let [d, pen] = ["", 0];
    positions.forEach(({ xAdvance, xOffset, yOffset }, i) => {
      d += outline(glyphs[i]?.path.commands ?? [], pen + xOffset, yOffset);
      pen += xAdvance;
    });
    const own = { kind: "path", d, xMm: x, yMm, scale, ink } as const;
    x += pen * scale;
    return d === "" ? [] : [own];
  });
}

function outline(commands: readonly PathCommand[], right: number, up: number): string {
  return commands
    .map(
      ({ command, args }) =>
        LETTERS[command] +
        args.map((value, i) => Math.round(i % 2 === 0 ? value + right : -(value + up))).join(" "),
    )
    .join("");
}
