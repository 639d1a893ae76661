import { hidingOf } from "../pages/strength-section.ts";
import { ladderOf, trailOf } from "../pages/whites-section.ts";
import { masstoneCurveOf } from "../pages/notations-section.ts";
import type { SheetPage } from "../pages/section-views.ts";
import { hidingCurveDrawing } from "../plots/hiding-curve.ts";
import { spectralCurveDrawing } from "../plots/spectral-curve.ts";
import type { SvgNode } from "../plots/svg.ts";
import { tintTrailDrawing } from "../plots/tint-trail.ts";
import type { ListView, SectionView, TableView } from "../present/views.ts";
import type { PrintedView } from "./sheet-paper.ts";
import { pictureHeightMm, pictureWords } from "./draw-picture.ts";
import type { Ink } from "./mark.ts";
import { ladderFigure } from "./ladder-figure.ts";
import type { Flow, Piece } from "./layout-tree.ts";
import type { PaperRun } from "./paper-run.ts";
import {
  GREY,
  list,
  paragraph,
  prose,
  section,
  sectionHeading,
  smallPt,
  subHeading,
  type PaperStyle,
} from "./paper-style.ts";
import { paintsByHex } from "./paper-swatch.ts";
import { plainTable, propertyTable } from "./paper-table.ts";

/** How much of a sheet goes on paper: all that fits two pages. What is left out stands on its page in the site. */
export interface PaperDetail {
  /** Every list; those that advise (layering, film, sensitivities, contradictions); none. */
  readonly reasons: "all" | "advice" | "none";
  readonly tables: boolean;
  /** Trail, hiding curve and spectral curve; the trail alone; none, only ladders and panel. */
  readonly curves: "all" | "trail" | "none";
}

/** Pictures of a sheet, drawn once whatever is tried with the text around them. */
export interface SheetPictures {
  readonly trail?: SvgNode;
  readonly hiding?: SvgNode;
  readonly curve?: SvgNode;
  readonly paints: ReadonlyMap<string, Ink>;
}

export function sheetPictures(page: SheetPage): SheetPictures {
  const [trail, hiding, curve] = [trailOf(page), hidingOf(page), masstoneCurveOf(page)];
  return {
    ...(trail === undefined ? {} : { trail: tintTrailDrawing({ ...trail, width: TRAIL_UNITS }) }),
    ...(hiding === undefined
      ? {}
      : {
          hiding: hidingCurveDrawing({ ...hiding, width: CURVE_UNITS, areaHeight: CURVE_HEIGHT }),
        }),
    ...(curve === undefined
      ? {}
      : {
          curve: spectralCurveDrawing({ ...curve, width: CURVE_UNITS, areaHeight: CURVE_HEIGHT }),
        }),
    paints: paintsByHex(page.worded.sheet),
  };
}

/** The trail and the curves are drawn in these user units, so that their text comes out between 7 and 9 point. */
const TRAIL_UNITS = 280;
const CURVE_UNITS = 420;
const CURVE_HEIGHT = 112;
const TRAIL_MM = 60;

interface Body {
  readonly view: PrintedView;
  readonly page: SheetPage;
  readonly pictures: SheetPictures;
  readonly style: PaperStyle;
  readonly detail: PaperDetail;
}

/** Sections of a sheet before handling, in the order of its page. */
export function sheetSections(body: Body): Flow[] {
  const { view, pictures, style, detail } = body;
  const { oil, drying, permanence } = view;
  return [
    whites(body),
    propertySection(view.strength, body, {
      pictures:
        pictures.hiding === undefined || detail.curves !== "all"
          ? []
          : captioned(pictures.hiding, style.widthMm, body),
    }),
    propertySection(drying, body, {
      tables: drying.tables.slice(-1).filter(({ columns }) => columns.length === 3),
    }),
    propertySection(permanence, body, {}),
    propertySection(oil, body, { remarks: oil.fillRemarks ?? [] }),
    notations(body),
  ].flatMap((flow) => flow ?? []);
}

function whites(body: Body): Flow {
  const {
    view: { whites: own },
    page,
    style,
    detail,
    pictures: { trail },
  } = body;
  const { tints } = page.worded.sheet;
  return section([
    sectionHeading(own.heading, style),
    ...own.summary.map((text) => paragraph(prose(text), style)),
    ...own.whites.flatMap((white, i): Flow[] => {
      const tint = tints[i];
      const words = tint === undefined ? undefined : ladderOf(tint, page.words);
      return [
        subHeading(white.heading, style),
        ...(tint === undefined || words === undefined
          ? []
          : [ladderFigure(tint, words, style.widthMm)]),
        paragraph(prose(white.sentence), style, { beforeMm: 1.2 }),
        ...white.remarks.map((remark) =>
          paragraph([{ text: remark, face: "sans", ink: GREY }], style, { sizePt: smallPt(style) }),
        ),
      ];
    }),
    ...(trail === undefined || detail.curves === "none"
      ? []
      : captioned(trail, Math.min(style.widthMm, TRAIL_MM), body)),
  ]);
}

/** A picture of the page, in the paints' own Lab, under its title. */
function captioned(tree: SvgNode, widthMm: number, { pictures: { paints }, style }: Body): Piece[] {
  const [title] = pictureWords(tree);
  return [
    paragraph([{ text: title, face: "sans", ink: GREY }], style, {
      tag: "Caption",
      sizePt: smallPt(style),
      beforeMm: 2.5,
      keepWithNext: true,
    }),
    {
      kind: "piece",
      heightMm: pictureHeightMm(tree, widthMm),
      beforeMm: 1,
      content: {
        tag: "Figure",
        alt: pictureWords(tree).join(". "),
        marks: [{ kind: "picture", tree, xMm: 0, yMm: 0, widthMm, paints }],
      },
    },
  ];
}

interface Further {
  readonly pictures?: readonly Piece[];
  readonly tables?: readonly TableView[];
  readonly remarks?: readonly string[];
}

function propertySection(
  own: SectionView,
  { style, detail, page }: Body,
  { pictures = [], tables = [], remarks = [] }: Further,
): Flow {
  const wanted = listsWanted(page, detail);
  const hasTable = own.properties !== undefined && own.properties.rows.length > 0;
  return section([
    sectionHeading(own.heading, style),
    ...own.summary.map((text, i) =>
      paragraph(prose(text), style, { keepWithNext: hasTable && i === own.summary.length - 1 }),
    ),
    ...(own.properties === undefined || !hasTable
      ? []
      : [propertyTable({ ...own.properties, caption: "" }, style)]),
    ...remarks.map((text) => paragraph(prose(text), style)),
    ...pictures,
    ...(detail.tables ? tables.map((table) => plainTable(table, style)) : []),
    ...own.lists.filter(({ heading }) => wanted(heading)).flatMap((one) => headedList(one, style)),
  ]);
}

/** Grounds of the days stand on the page alone: they are the evidence's. */
function listsWanted(
  { words: { pages } }: SheetPage,
  { reasons }: PaperDetail,
): (heading: string) => boolean {
  const { drying, permanence, oil, paint } = pages;
  const advice = new Set<string>([
    drying.contradictions,
    drying.layering,
    drying.film,
    permanence.sensitivities,
    paint.permanence.contradictions,
    oil.contradictions,
  ]);
  return (heading) =>
    heading !== paint.drying.grounds &&
    (reasons === "all" || (reasons === "advice" && advice.has(heading)));
}

function headedList({ heading, items }: ListView, style: PaperStyle): Flow[] {
  const runs = items.map(({ text, standing }): PaperRun[] => [
    { text, face: "serif" },
    ...(standing === undefined
      ? []
      : [{ text: ` ${standing.word}`, face: "sans" as const, ink: GREY }]),
  ]);
  return [...(heading === "" ? [] : [subHeading(heading, style)]), list(runs, style)];
}

function notations(body: Body): Flow | undefined {
  const {
    view: { notations: own },
    page,
    style,
    detail,
    pictures: { curve },
  } = body;
  if (page.worded.sheet.notations.masstone === undefined) return undefined;
  const rows = own.properties?.rows.slice(0, 2) ?? [];
  return section([
    sectionHeading(own.heading, style),
    ...own.summary.slice(0, 1).map((text) => paragraph(prose(text), style)),
    propertyTable({ caption: "", rows }, style),
    ...(detail.tables ? own.tables.map((table) => plainTable(table, style)) : []),
    ...(curve === undefined || detail.curves !== "all"
      ? []
      : captioned(curve, style.widthMm, body)),
  ]);
}
