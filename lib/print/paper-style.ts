import type { LinkView } from "../present/views.ts";
import type { Words } from "../words/words.ts";
import type { Flow, Group, Piece } from "./layout-tree.ts";
import {
  BLACK,
  GREY,
  shifted,
  type Ink,
  type LineMark,
  type PaperTag,
  type Tagged,
} from "./mark.ts";
import { setRuns, type Run, type SetLine, type SetRuns } from "./set-runs.ts";

/** Width of a column, size of the text in it, and what its links start from. */
export interface PaperStyle {
  readonly widthMm: number;
  readonly sizePt: number;
  /** Paints by the sRGB that a page shows them in, for the pictures. */
  readonly paints: ReadonlyMap<string, Ink>;
  readonly words: Words["pages"]["sheetPaper"];
  /** Of the page that is printed, where the site has one. */
  readonly address?: string;
  /** Labels in the page's language alone: of what is not sold. */
  readonly isOneLanguage?: boolean;
  /** Languages that have a sheet of their own, whose label this one need not repeat. */
  readonly ownSheets?: readonly string[];
  /** Statements of further languages, and of what is not sold, one behind another: where room is scarce. */
  readonly isRunIn?: boolean;
  /** Swatches lower, and the statements of what is sold run in as well: where room is scarcest. */
  readonly isDense?: boolean;
  /** Figures one behind another, and all text in the face that takes less room: where cautions leave none for tables. */
  readonly isSpare?: boolean;
  /** Between its lines, in sizes of the type, where not as usual. */
  readonly leading?: number;
  /** Space above sections, headings, paragraphs and items, as a share of the usual. */
  readonly spacing?: number;
  /** Above and below the text of a table's row [mm], where not as usual. */
  readonly rowPadMm?: number;
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
  readonly keepWithNext?: boolean;
  readonly anchor?: string;
  readonly language?: string;
}

const LEADING = 1.3;
const BEFORE_MM = 1;

/** Runs as a paragraph; a long one may go on over, two lines at least on either side. */
export function paragraph(runs: readonly Run[], style: PaperStyle, look: ParagraphLook = {}): Flow {
  const { tag = "P", sizePt = style.sizePt, leading = style.leading ?? LEADING, language } = look;
  const set = setRuns(inFace(runs, style), { widthMm: style.widthMm, sizePt, leading });
  const { beforeMm = BEFORE_MM * (style.spacing ?? 1), keepWithNext } = look;
  if (set.lines.length < 4) return linesPiece(set, set.lines, { tag, ...look, beforeMm });
  return {
    kind: "group",
    tag,
    ...(language !== undefined && { language }),
    children: partedLines(set, { beforeMm, ...(keepWithNext === true && { keepWithNext }) }),
  };
}

/** Lines of a long text, two at least on either side of where it goes on over. */
function partedLines(
  set: SetRuns,
  { beforeMm, keepWithNext }: { readonly beforeMm: number; readonly keepWithNext?: boolean },
): Piece[] {
  const { lines } = set;
  const parts = [lines.slice(0, 2), ...lines.slice(2, -2).map((line) => [line]), lines.slice(-2)];
  return parts.map((part, i) =>
    linesPiece(set, part, {
      tag: "Span",
      beforeMm: i === 0 ? beforeMm : 0,
      ...(i === parts.length - 1 && keepWithNext === true && { keepWithNext }),
    }),
  );
}

/** The face without serifs takes a twelfth less of a line, and is the clearer of the two at the least size. */
function inFace(runs: readonly Run[], { isSpare = false }: PaperStyle): readonly Run[] {
  return isSpare
    ? runs.map((run) => (run.face === "serif" ? { ...run, face: "sans" as const } : run))
    : runs;
}

/** Runs as one piece, however long. */
export function wholeParagraph(
  runs: readonly Run[],
  style: PaperStyle,
  look: ParagraphLook = {},
): Piece {
  const { sizePt = style.sizePt, leading = style.leading ?? LEADING } = look;
  const { beforeMm = BEFORE_MM * (style.spacing ?? 1) } = look;
  const set = setRuns(runs, { widthMm: style.widthMm, sizePt, leading });
  return linesPiece(set, set.lines, { ...look, beforeMm });
}

/** A text that is set already, as one piece. */
export function setPiece(set: SetRuns, look: ParagraphLook): Piece {
  return linesPiece(set, set.lines, look);
}

function linesPiece(
  { lines, lineMm }: SetRuns,
  own: readonly SetLine[],
  { tag = "P", beforeMm = BEFORE_MM, keepWithNext, anchor, language }: ParagraphLook,
): Piece {
  const [first] = own;
  const up = first === undefined ? 0 : -lines.indexOf(first) * lineMm;
  const links = own.flatMap((line) => line.links.map((link) => ({ ...link, yMm: link.yMm + up })));
  return {
    kind: "piece",
    heightMm: own.length * lineMm,
    beforeMm,
    ...(keepWithNext === true && { keepWithNext }),
    ...(anchor !== undefined && { anchor }),
    content: {
      tag,
      ...(language !== undefined && { language }),
      marks: own.flatMap(({ marks }) => marks.map((mark) => shifted(mark, 0, up))),
      ...(links.length > 0 && { links }),
    },
  };
}

/** A drawing across a column, said in words where it is not seen. */
export function figurePiece(
  alt: string,
  heightMm: number,
  marks: Tagged["marks"],
  look: Pick<ParagraphLook, "beforeMm" | "keepWithNext"> = {},
): Piece {
  return {
    kind: "piece",
    heightMm,
    beforeMm: 1.2,
    ...look,
    content: { tag: "Figure", alt, ...(marks !== undefined && { marks }) },
  };
}

export function prose(text: string): Run[] {
  return [{ text, face: "serif" }];
}

export function sans(text: string): Run[] {
  return [{ text, face: "sans" }];
}

export function quiet(text: string): Run[] {
  return [{ text, face: "sans", ink: GREY }];
}

export function bold(text: string): Run[] {
  return [{ text, face: "sans bold" }];
}

/** What a page's link becomes on paper: a whole address, where the site has one. */
export function linkRun(
  { text, href }: Pick<LinkView, "text"> & { readonly href?: string | undefined },
  { address }: Pick<PaperStyle, "address">,
  face: Run["face"],
): Run {
  const whole =
    href === undefined || (address === undefined && !URL.canParse(href))
      ? undefined
      : new URL(href, address).href;
  return { text, face, ...(whole !== undefined && { href: whole }) };
}

/** A section: its heading under a hairline, said again in small where it goes on over to another page. */
export function section(heading: string, style: PaperStyle, blocks: readonly Flow[]): Group {
  const gap = 1.2;
  const own = wholeParagraph(bold(heading), style, {
    tag: "H2",
    sizePt: style.sizePt + 2.5,
    leading: 1.2,
  });
  const rule: LineMark = {
    kind: "line",
    fromMm: [0, 0],
    toMm: [style.widthMm, 0],
    widthPt: 0.4,
    ink: BLACK,
  };
  const head: Piece = {
    ...own,
    heightMm: own.heightMm + gap,
    beforeMm: 4.5 * (style.spacing ?? 1),
    keepWithNext: true,
    content: {
      ...own.content,
      marks: [rule, ...(own.content.marks ?? []).map((mark) => shifted(mark, 0, gap))],
    },
  };
  return {
    kind: "group",
    tag: "Sect",
    runningHead: { piece: runningHead(heading, style), at: "page" },
    children: [head, ...blocks],
  };
}

/** What goes on from the page before, in small. */
export function runningHead(text: string, style: PaperStyle): Piece {
  const own = wholeParagraph(quiet(text), style, { sizePt: smallPt(style) });
  return { ...own, heightMm: own.heightMm + 0.8 };
}

export function subHeading(text: string | readonly Run[], style: PaperStyle): Piece {
  return wholeParagraph(typeof text === "string" ? bold(text) : text, style, {
    tag: "H3",
    leading: 1.25,
    beforeMm: 2 * (style.spacing ?? 1),
    keepWithNext: true,
  });
}

/** An item without a marker that is no shorter may go on over to another column. */
const PARTED_LINES = 8;

/** Items one under another, each behind a dash or a word of its own. */
export function list(
  items: readonly { readonly runs: readonly Run[]; readonly language?: string }[],
  style: PaperStyle,
  look: { readonly sizePt?: number; readonly marker?: string } = {},
): Group {
  const { sizePt = style.sizePt, marker = "\u2013" } = look;
  const { leading = LEADING, spacing = 1 } = style;
  const indentMm = marker === "" ? 0 : sizePt * 0.4;
  return {
    kind: "group",
    tag: "L",
    children: items.map(({ runs, language }): Flow => {
      const body = setRuns(inFace(runs, style), {
        widthMm: style.widthMm - indentMm,
        sizePt,
        leading,
      });
      const own = language !== undefined && { language };
      const beforeMm = 0.5 * spacing;
      if (marker === "" && body.lines.length >= PARTED_LINES) {
        const text: Group = {
          kind: "group",
          tag: "LBody",
          children: partedLines(body, { beforeMm }),
        };
        return { kind: "group", tag: "LI", ...own, children: [text] };
      }
      const label: Tagged[] =
        marker === ""
          ? []
          : [
              {
                tag: "Lbl",
                marks: setRuns(quiet(marker), { widthMm: indentMm, sizePt, leading }).marks,
              },
            ];
      return {
        kind: "piece",
        heightMm: body.heightMm,
        beforeMm,
        content: {
          tag: "LI",
          ...own,
          children: [
            ...label,
            {
              tag: "LBody",
              marks: body.marks.map((mark) => shifted(mark, indentMm)),
              links: body.links.map((link) => ({ ...link, xMm: link.xMm + indentMm })),
            },
          ],
        },
      };
    }),
  };
}
