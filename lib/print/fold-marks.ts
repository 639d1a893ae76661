import { BLEED_MM } from "./card-plan.ts";
import type { Imposition } from "./imposition.ts";
import type { FoldedStrip } from "./laid-label.ts";
import { BLACK, GREY, type Mark, type Tagged } from "./mark.ts";
import { measureText } from "./print-document.ts";

/** Clear of what is printed, as long as a crop mark, and the words beside them [mm]. */
const FOLD = {
  clearMm: BLEED_MM + 0.5,
  lengthMm: 4,
  besideMm: 0.8,
  lineMm: 2.6,
  sizePt: 5.5,
} as const;

function longMm(text: string): number {
  return measureText(text, "sans", FOLD.sizePt);
}

/** What pages and folds of a strip are called in its margin. */
export interface FoldWords {
  readonly front: string;
  readonly page: (page: number) => string;
  readonly back: string;
  /** The print outwards, and the print inwards. */
  readonly away: string;
  readonly over: string;
}

/** Where strips are folded, broken, outside all that is printed; on one side of it, which way, and what each page is. */
export function foldMarks(
  { runs, foldsMm }: FoldedStrip,
  { x, y }: Imposition["cuts"],
  words: FoldWords,
): Tagged {
  const [along, beside] = runs === "across" ? [x, y] : [y, x];
  const start = Math.min(...along);
  const [before, behind] = [Math.min(...beside) - FOLD.clearMm, Math.max(...beside) + FOLD.clearMm];
  const point = (alongMm: number, besideMm: number): [number, number] =>
    runs === "across" ? [alongMm, besideMm] : [besideMm, alongMm];
  const broken = (fold: number, fromMm: number, toMm: number): Mark => ({
    kind: "line",
    fromMm: point(start + fold, fromMm),
    toMm: point(start + fold, toMm),
    widthPt: 0.25,
    ink: BLACK,
    dashMm: [0.8, 0.8],
  });
  const said = (text: string, xMm: number, yMm: number): Mark => ({
    kind: "text",
    text,
    xMm,
    yMm,
    face: "sans",
    sizePt: FOLD.sizePt,
    ink: GREY,
  });
  const pages = [0, ...foldsMm];
  const ofPage = (i: number): string =>
    i === 0 ? words.front : i === pages.length - 1 ? words.back : words.page(i + 1);
  const ofFold = (i: number): string => (i % 2 === 0 ? words.away : words.over);
  /** Each page's name and each fold's way above them. */
  const besidePages = (): Mark[] => {
    const yMm = before - FOLD.besideMm;
    return [
      ...pages.map((fromMm, i) => said(ofPage(i), start + fromMm + FOLD.besideMm, yMm)),
      ...foldsMm.map((fold, i) =>
        said(ofFold(i), start + fold - FOLD.besideMm - longMm(ofFold(i)), yMm),
      ),
    ];
  };
  /** The margin beside strips that run down is too narrow for words: it has numbers, which a line above tells. */
  const byNumber = (): Mark[] => {
    const isInside = (i: number): boolean => i > 0 && i < pages.length - 1;
    const told = pages.flatMap((_, i) => [
      isInside(i) ? ofPage(i) : `${i + 1} ${ofPage(i)}`,
      ...(i < foldsMm.length ? [ofFold(i)] : []),
    ]);
    return [
      said(
        told.join(" \u00b7 "),
        Math.min(...beside) + FOLD.besideMm,
        start - FOLD.clearMm - FOLD.besideMm,
      ),
      ...pages.map((fromMm, i) =>
        said(String(i + 1), before - longMm(String(i + 1)), start + fromMm + FOLD.lineMm),
      ),
    ];
  };
  return {
    tag: "Artifact",
    marks: [
      ...foldsMm.flatMap((fold) => [
        broken(fold, before - FOLD.lengthMm, before),
        broken(fold, behind, behind + FOLD.lengthMm),
      ]),
      ...(runs === "across" ? besidePages() : byNumber()),
    ],
  };
}
