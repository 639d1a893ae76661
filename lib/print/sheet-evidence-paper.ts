import type { SheetPage } from "../pages/section-views.ts";
import { sourceName } from "../present/source-name.ts";
import type { StandingKind } from "../quantities/figure.ts";
import type { PrintedView } from "./sheet-paper.ts";
import type { Words } from "../words/words.ts";
import { figureEntries } from "../sheet/figure-entries.ts";
import type { Flow } from "./layout-tree.ts";
import {
  GREY,
  paragraph,
  prose,
  section,
  sectionHeading,
  smallPt,
  type PaperStyle,
} from "./paper-style.ts";

const KINDS: readonly StandingKind[] = ["measured", "derived", "estimated", "stated", "not stated"];

/** What the evidence of a sheet comes to. */
export interface ShortEvidence {
  /** "15 are measured", for each standing that occurs. */
  readonly counts: readonly string[];
  readonly sources: readonly string[];
}

export function shortEvidence({ worded, words, context: { records } }: SheetPage): ShortEvidence {
  const all = figureEntries(worded.sheet);
  const counts = KINDS.flatMap((kind) => {
    const count = all.filter(({ figure }) => figure.standing === kind).length;
    return count === 0
      ? []
      : [words.pages.sheetPaper.evidence.count(count, words.standings[kind].word)];
  });
  const keys = new Set(
    worded.plain.evidence
      .map(({ source }) => source)
      .filter((source) => typeof source === "string"),
  );
  return {
    counts,
    sources: [
      ...new Set(
        [...keys].map((key) =>
          sourceName(key, records.sources.get(key), words.pages.sources.standings),
        ),
      ),
    ].sort(),
  };
}

/** How many figures stand how, what they were worked out from, and where all of it is. */
export function evidenceOnPaper(
  view: PrintedView,
  { counts, sources }: ShortEvidence,
  words: Words,
  style: PaperStyle,
): Flow {
  const text = words.pages.sheetPaper;
  const small = { sizePt: smallPt(style) };
  return section([
    sectionHeading(text.evidence.heading, style),
    paragraph(prose(text.evidence.counts(counts)), style),
    ...(sources.length === 0
      ? []
      : [paragraph([{ text: text.evidence.sources(sources), face: "sans" }], style, small)]),
    paragraph(
      [{ text: `${text.standings} ${text.painted}`, face: "sans", ink: GREY }],
      style,
      small,
    ),
    ...(view.canonical === undefined
      ? []
      : [
          paragraph(
            [
              { text: text.evidence.inFull, face: "sans" },
              { text: view.canonical, face: "sans bold", href: view.canonical },
            ],
            style,
            small,
          ),
        ]),
  ]);
}
