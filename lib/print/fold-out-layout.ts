import { labelSizes } from "../hazard/label/label-sizes.ts";
import { at, certain } from "../quantities/at.ts";
import { imposesOn, longestOn } from "./imposition.ts";
import type { FoldedStrip, LabelFace, LaidLabel } from "./laid-label.ts";
import { cornerSymbol, labelSymbol } from "./label-symbol.ts";
import { BLACK, movedTo, type Tagged } from "./mark.ts";
import { flowed, flowHeightMm, type FlowItem } from "./package-flow.ts";
import { insidePages, type InsideAttempt } from "./fold-out-inside.ts";
import type { LabelLine, PackageLabelContent } from "./package-label-content.ts";
import {
  band,
  bandHeightMm,
  BETWEEN_MM,
  LEAST_BAND_MM,
  lineSetter,
  nameItem,
  PARAGRAPH_MM,
  SAFE_MM,
  sizeOfXHeightPt,
  SUBJECT_MM,
} from "./package-label-parts.ts";
import type { PackageSize } from "./package-size.ts";

/** How a fold-out label is tried, from roomy to tight. */
interface Attempt extends InsideAttempt, OuterAttempt {
  readonly pages: number;
}

/** What front and back page are tried in. */
interface OuterAttempt {
  readonly pictogramMm: number;
  readonly xHeightMm: number;
  /** Largest name [pt]. */
  readonly namePt: number;
  /** Of the paint [mm]. */
  readonly bandMm: number;
  /** Whether the front says in words that there is more inside, or by its arrow and the languages alone. */
  readonly isInsideTold: boolean;
  /** Of the label once round a tube, what a page takes. */
  readonly share: number;
  readonly areFactsInside: boolean;
}

/** Pages between front and back: an odd number, so that both lie with their print outwards. */
const INSIDE_PAGES = [1, 3, 5] as const;
const SHARES = [0.5, 0.6] as const;
/** No page is narrower, so that a longer word finds room [mm]. */
const LEAST_PAGE_MM = 24;
/** The arrow at the edge that is pulled, and what stands beside it [mm]. */
const ARROW = { sideMm: 2.2, besideMm: 3.2 };

/**
 * A label as a strip of pages that are folded in turn: the front page, all statements by language,
 * and the back page, on the label proper, which is stuck on the package. Of a tube the label
 * proper goes round it, the pages cover its left part, and beside them it bears what is no label
 * element; of a jar all pages are of the back label's size, one below the other.
 * @param mostXHeightMm letters no larger.
 * @param jarFront the label of a jar's front, which stays as it is.
 * @returns undefined where no strip that the paper bears holds it.
 * @source clp-fold-out
 */
export function foldOutLabel(
  content: PackageLabelContent,
  size: PackageSize,
  mostXHeightMm: number,
  jarFront: (
    content: PackageLabelContent,
    attempt: Pick<Attempt, "xHeightMm" | "namePt">,
  ) => LabelFace | undefined,
): LaidLabel | undefined {
  const outer = onceEach((attempt: OuterAttempt) => outerPages(content, size, attempt));
  for (const attempt of attempts(size)) {
    if (attempt.xHeightMm > mostXHeightMm) continue;
    const { pages: _pages, areWhole: _areWhole, columns: _columns, ...tried } = attempt;
    const pair = outer(tried);
    const strip = pair && stripFace(content, size, attempt, pair);
    const front =
      size.kind === "jar" && strip !== undefined
        ? jarFront(outsideOf(content, attempt), attempt)
        : undefined;
    if (strip === undefined || (size.kind === "jar" && front === undefined)) continue;
    return {
      slug: content.slug,
      name: content.name,
      faces: [...(front === undefined ? [] : [front]), strip],
      leftOut: [],
      ...(content.pictograms.length > 0 && { pictogramMm: attempt.pictogramMm }),
      xHeightMm: attempt.xHeightMm,
    };
  }
  return undefined;
}

/** A result for each of what it is asked for, worked out once. */
function onceEach<In, Out>(work: (asked: In) => Out): (asked: In) => Out {
  const known = new Map<string, Out>();
  return (asked) => {
    const key = JSON.stringify(asked);
    const found = known.has(key) ? (known.get(key) as Out) : work(asked);
    known.set(key, found);
    return found;
  };
}

/** No language parted before one that goes on over, few pages before many, roomy letters before the least. */
function attempts({ ml, heightMm, xHeightMm, kind, paper, ...size }: PackageSize): Attempt[] {
  const { pictogramMm, leastPictogramMm } = labelSizes(ml);
  const bandMm = bandHeightMm(heightMm);
  const types = [
    { pictogramMm, xHeightMm: 1.2 * xHeightMm, namePt: 13, bandMm },
    { pictogramMm, xHeightMm, namePt: 12, bandMm },
    { pictogramMm: leastPictogramMm, xHeightMm, namePt: 10, bandMm },
    { pictogramMm: leastPictogramMm, xHeightMm, namePt: 9, bandMm: LEAST_BAND_MM },
  ];
  const shapes = INSIDE_PAGES.flatMap((pages) =>
    (kind === "jar" ? [1] : [...SHARES, ...narrowShare({ paper, ...size }, pages)]).map(
      (share) => ({ pages, share }),
    ),
  ).filter((shape) => {
    const strip = stripOf({ ...size, kind, heightMm }, shape);
    return imposesOn(paper, strip.widthMm, strip.heightMm);
  });
  const both = [true, false];
  return both.flatMap((isInsideTold) =>
    both.flatMap((areWhole) =>
      shapes.flatMap((shape) =>
        [false, true].flatMap((areFactsInside) =>
          (kind === "jar" ? [1, 2] : [1]).flatMap((columns) =>
            types.map((type) => ({
              ...type,
              ...shape,
              isInsideTold,
              areWhole,
              columns,
              areFactsInside,
            })),
          ),
        ),
      ),
    ),
  );
}

/** Of a tube so wide that the paper does not bear so many halves of its label: what it bears. */
function narrowShare(
  { paper, widthMm, overlapMm }: Pick<PackageSize, "paper" | "widthMm" | "overlapMm">,
  pages: number,
): number[] {
  const pageMm = Math.floor((10 * (longestOn(paper) - widthMm)) / (pages + 1)) / 10;
  const share = pageMm / (widthMm - overlapMm);
  return pageMm >= LEAST_PAGE_MM && share < at(SHARES, 0) ? [share] : [];
}

/** The strip of so many pages inside, and where its pages lie. */
function stripOf(
  {
    kind,
    widthMm,
    heightMm,
    overlapMm,
  }: Pick<PackageSize, "kind" | "widthMm" | "heightMm" | "overlapMm">,
  { pages, share }: Pick<Attempt, "pages" | "share">,
): FoldedStrip {
  const isDown = kind === "jar";
  const pageMm = isDown ? heightMm : share * (widthMm - overlapMm);
  const foldsMm = Array.from({ length: pages + 1 }, (_, i) => (i + 1) * pageMm);
  const baseMm = (pages + 1) * pageMm;
  return {
    runs: isDown ? "down" : "across",
    widthMm: isDown ? widthMm : baseMm + widthMm,
    heightMm: isDown ? baseMm + heightMm : heightMm,
    foldsMm,
  };
}

function stripFace(
  content: PackageLabelContent,
  size: PackageSize,
  attempt: Attempt,
  { front, back }: OuterPages,
): LabelFace | undefined {
  const strip = stripOf(size, attempt);
  const { xMm, widthMm } = pageArea(size, attempt);
  const starts = strip.foldsMm.map((fold) =>
    strip.runs === "down" ? { x: 0, y: fold } : { x: fold, y: 0 },
  );
  const inside = insidePages(
    content,
    attempt,
    starts.slice(0, -1).map(({ x, y }) => ({
      xMm: x + xMm,
      topMm: y + SAFE_MM,
      widthMm,
      bottomMm: y + size.heightMm - SAFE_MM,
    })),
  );
  const base = certain(starts.at(-1));
  return (
    inside && {
      strip,
      blocks: [...front, ...inside, ...back.map((block) => movedTo(block, base.x, base.y))],
    }
  );
}

/** Front page and label proper, each from its own corner. */
interface OuterPages {
  readonly front: readonly Tagged[];
  readonly back: readonly Tagged[];
}

function outerPages(
  content: PackageLabelContent,
  size: PackageSize,
  attempt: OuterAttempt,
): OuterPages | undefined {
  const { widthMm, overlapMm, kind } = size;
  const { bandMm } = attempt;
  const area = { ...pageArea(size, attempt), topMm: bandMm + SAFE_MM };
  const pageMm = area.widthMm + 2 * SAFE_MM;
  // A jar's symbol is to be seen while the label is closed; a tube's stands beside the pages.
  const symbol = kind === "jar" ? labelSymbol(content, size) : undefined;
  const frontMm = area.widthMm - (symbol === undefined ? 0 : symbol.widthMm + BETWEEN_MM);
  if (frontMm < area.widthMm / 3) return undefined;
  const front = frontPage(
    content,
    attempt,
    { ...area, widthMm: frontMm },
    kind === "jar" ? "up" : "left",
  );
  const back = outerPage(content, attempt, area);
  const beside =
    kind === "jar"
      ? []
      : besidePages(content, size, attempt, {
          ...area,
          xMm: pageMm + SAFE_MM,
          widthMm: widthMm - overlapMm - pageMm - 2 * SAFE_MM,
        });
  if (front === undefined || back === undefined || beside === undefined) return undefined;
  const bleeds = kind === "jar" ? "both" : undefined;
  return {
    front: [
      ...band(content, { rightMm: pageMm, heightMm: bandMm, bleeds: bleeds ?? "left" }),
      ...front,
      ...(symbol?.blocksAt(
        area.xMm + area.widthMm - symbol.widthMm,
        area.bottomMm - symbol.heightMm,
      ) ?? []),
    ],
    back: [
      ...band(content, {
        rightMm: widthMm,
        heightMm: bandMm,
        bleeds: bleeds ?? "right",
        isBelowFold: kind === "jar",
      }),
      ...back,
      ...beside,
    ],
  };
}

/** Where text stands on a page without a band. */
function pageArea(
  { kind, widthMm, heightMm, overlapMm }: PackageSize,
  { share }: Pick<Attempt, "share">,
): Area {
  const pageMm = kind === "jar" ? widthMm : share * (widthMm - overlapMm);
  return {
    xMm: SAFE_MM,
    topMm: SAFE_MM,
    widthMm: pageMm - 2 * SAFE_MM,
    bottomMm: heightMm - SAFE_MM,
  };
}

interface Area {
  readonly xMm: number;
  readonly topMm: number;
  readonly widthMm: number;
  readonly bottomMm: number;
}

/** What front and back page have alike: who made what, how much of it, and that it is hazardous. */
function outerItems(
  { name, contents, pictograms, cautions, supplier, ufi }: PackageLabelContent,
  { xHeightMm, pictogramMm, namePt }: OuterAttempt,
  widthMm: number,
): FlowItem[] {
  const line = lineSetter(xHeightMm);
  const words = cautions.flatMap(({ signalWord }) => signalWord ?? []);
  return [
    nameItem(name, namePt, widthMm),
    line(contents, PARAGRAPH_MM, "sans bold"),
    ...(pictograms.length === 0
      ? []
      : [{ kind: "pictograms" as const, pictograms, sideMm: pictogramMm, gapMm: PARAGRAPH_MM }]),
    ...(words.length === 0
      ? []
      : [line([...new Set(words)].join(" / "), PARAGRAPH_MM, "sans bold")]),
    line(supplier, SUBJECT_MM),
    ...(ufi === undefined ? [] : [line(ufi, PARAGRAPH_MM)]),
  ];
}

function outerPage(
  content: PackageLabelContent,
  attempt: OuterAttempt,
  area: Area,
): Tagged[] | undefined {
  const items = outerItems(content, attempt, area.widthMm);
  return flowed(items, [area]);
}

/** The same, with the languages that there are inside, at the edge that is pulled. */
function frontPage(
  content: PackageLabelContent,
  attempt: OuterAttempt,
  area: Area,
  pulled: keyof typeof ARROWS,
): Tagged[] | undefined {
  const sizePt = sizeOfXHeightPt(attempt.xHeightMm);
  const told: FlowItem[] = (
    attempt.isInsideTold
      ? content.inside.map(({ language, text }) => ({
          text: `${language.toUpperCase()}\u2002${text}`,
          language,
        }))
      : [{ text: content.inside.map(({ language }) => language.toUpperCase()).join("  \u00b7  ") }]
  ).map((line, i) => ({
    kind: "text",
    ...line,
    face: "sans",
    sizePt,
    gapMm: i === 0 ? 0 : PARAGRAPH_MM,
    isProse: true,
  }));
  const widthMm = area.widthMm - ARROW.besideMm;
  const highMm = flowHeightMm(told, widthMm);
  const toldArea = {
    ...area,
    xMm: area.xMm + ARROW.besideMm,
    topMm: area.bottomMm - highMm,
    widthMm,
  };
  const page = outerPage(content, attempt, { ...area, bottomMm: toldArea.topMm - SAFE_MM });
  const lines = flowed(told, [toldArea]);
  if (page === undefined || lines === undefined) return undefined;
  return [
    ...page,
    arrow(ARROWS[pulled], area.xMm, (toldArea.topMm + toldArea.bottomMm) / 2),
    ...lines,
  ];
}

/** In a square of 1, towards the edge that is pulled. */
const ARROWS = { left: "M0 .5L.85 0V1Z", up: "M.5 0L1 .85H0Z" } as const;

function arrow(d: string, xMm: number, middleMm: number): Tagged {
  return {
    tag: "Artifact",
    marks: [
      {
        kind: "path",
        d,
        xMm,
        yMm: middleMm - ARROW.sideMm / 2,
        scale: ARROW.sideMm,
        ink: BLACK,
      },
    ],
  };
}

/** With what is no label element in the leading language alone, where the inside bears it in each. */
function outsideOf(
  content: PackageLabelContent,
  { areFactsInside }: Pick<OuterAttempt, "areFactsInside">,
): PackageLabelContent {
  if (!areFactsInside) return content;
  const [leading] = content.inside;
  const isLeading = ({ language }: LabelLine): boolean => language === leading?.language;
  return {
    ...content,
    facts: content.facts.filter(isLeading),
    demonstration: content.demonstration.filter(isLeading),
  };
}

/** Beside the folded pages: what the paint is, lot, price and symbol, which no law asks for. */
function besidePages(
  content: PackageLabelContent,
  size: PackageSize,
  attempt: OuterAttempt,
  area: Area,
): Tagged[] | undefined {
  const sizePt = sizeOfXHeightPt(attempt.xHeightMm);
  const symbol = labelSymbol(content, size);
  if (symbol !== undefined && symbol.widthMm > area.widthMm) return undefined;
  const outside = outsideOf(content, attempt);
  const lines = [
    ...outside.facts,
    { text: content.lot },
    ...(content.price === undefined ? [] : [{ text: content.price }]),
    ...outside.demonstration,
  ];
  const items = lines.map((line, i): FlowItem => ({
    kind: "text",
    ...line,
    face: "sans",
    sizePt,
    gapMm: i === 0 ? 0 : PARAGRAPH_MM,
  }));
  const corner = cornerSymbol(symbol, "right", area);
  const blocks = flowed(items, [corner.above(area)]);
  return blocks && [...blocks, ...corner.blocks];
}
