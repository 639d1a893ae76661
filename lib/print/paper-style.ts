import { BLACK, type Ink, type LineMark, type TextMark } from "./mark.ts";
import type { Group, PaperTag, Piece, Tagged } from "./layout-tree.ts";
import { setRuns, type PaperRun } from "./paper-run.ts";

/** Labels, standings and notes: grey, dark enough to be read at 7 point. */
export const GREY: Ink = { grey: 0.35 };
export const HAIRLINE_PT = 0.4;

/** Width of a column and size of the text in it. */
export interface PaperStyle {
  readonly widthMm: number;
  readonly sizePt: number;
}

/** Nothing on a sheet is smaller: what a reader with glasses still reads, and what cautions ask for. */
export const LEAST_PT = 7;

export function smallPt({ sizePt }: PaperStyle): number {
  return Math.max(LEAST_PT, sizePt - 1);
}

export interface ParagraphLook {
  readonly tag?: PaperTag;
  readonly sizePt?: number;
  readonly leading?: number;
  readonly beforeMm?: number;
  readonly indentMm?: number;
  readonly keepWithNext?: boolean;
  readonly anchor?: string;
  readonly language?: string;
}

/** Runs as one paragraph of a column. */
export function paragraph(
  runs: readonly PaperRun[],
  style: PaperStyle,
  look: ParagraphLook = {},
): Piece {
  const {
    tag = "P",
    sizePt = style.sizePt,
    leading = 1.32,
    beforeMm = 1,
    indentMm = 0,
    keepWithNext,
    anchor,
    language,
  } = look;
  const set = setRuns(runs, {
    widthMm: style.widthMm - indentMm,
    sizePt,
    leadingPt: sizePt * leading,
  });
  return {
    kind: "piece",
    heightMm: set.heightMm,
    beforeMm,
    ...(keepWithNext === true ? { keepWithNext } : {}),
    ...(anchor === undefined ? {} : { anchor }),
    content: {
      tag,
      ...(language === undefined ? {} : { language }),
      marks: set.marks.map((mark) => shifted(mark, indentMm)),
      links: set.links.map((link) => ({ ...link, xMm: link.xMm + indentMm })),
    },
  };
}

export function shifted(mark: TextMark, xMm: number, yMm = 0): TextMark {
  return { ...mark, xMm: mark.xMm + xMm, yMm: mark.yMm + yMm };
}

export function prose(text: string): PaperRun[] {
  return [{ text, face: "serif" }];
}

/** A section's heading under a hairline. */
export function sectionHeading(text: string, style: PaperStyle): Piece {
  const own = paragraph([{ text, face: "sans bold" }], style, {
    tag: "H2",
    sizePt: style.sizePt + 2.5,
    leading: 1.2,
  });
  const rule: LineMark = {
    kind: "line",
    fromMm: [0, 0],
    toMm: [style.widthMm, 0],
    widthPt: HAIRLINE_PT,
    ink: BLACK,
  };
  const gap = 1.2;
  return {
    ...own,
    heightMm: own.heightMm + gap,
    beforeMm: 4.5,
    keepWithNext: true,
    content: {
      ...own.content,
      marks: [
        rule,
        ...(own.content.marks ?? []).map((mark) =>
          mark.kind === "text" ? shifted(mark, 0, gap) : mark,
        ),
      ],
    },
  };
}

export function subHeading(text: string, style: PaperStyle): Piece {
  return paragraph([{ text, face: "sans bold" }], style, {
    tag: "H3",
    sizePt: style.sizePt,
    leading: 1.25,
    beforeMm: 2,
    keepWithNext: true,
  });
}

/** Items one under another, each with a dash before it. */
export function list(
  items: readonly (readonly PaperRun[])[],
  style: PaperStyle,
  look: { readonly sizePt?: number; readonly language?: string; readonly marker?: string } = {},
): Group {
  const { sizePt = style.sizePt, language, marker = "–" } = look;
  const indentMm = marker === "" ? 0 : sizePt * 0.4;
  return {
    kind: "group",
    tag: "L",
    ...(language === undefined ? {} : { language }),
    children: items.map((runs): Piece => {
      const body = paragraph(runs, style, { tag: "LBody", sizePt, indentMm, leading: 1.3 });
      const label: Tagged[] =
        marker === ""
          ? []
          : [
              {
                tag: "Lbl",
                marks: setRuns([{ text: marker, face: "sans", ink: GREY }], {
                  widthMm: style.widthMm,
                  sizePt,
                  leadingPt: sizePt * 1.3,
                }).marks,
              },
            ];
      return { ...body, beforeMm: 0.5, content: { tag: "LI", children: [...label, body.content] } };
    }),
  };
}

/** The same as one piece, whatever the pieces: side by side or under each other as their places say. */
export function section(children: Group["children"]): Group {
  return { kind: "group", tag: "Sect", children };
}
