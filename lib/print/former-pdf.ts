import type { FormerTexts } from "../pages/former-page.ts";
import type { PageContext } from "../pages/page-context.ts";
import { drawTagged } from "./draw-tagged.ts";
import type { PaperSize } from "./layout-tree.ts";
import type { PaperTag } from "./mark.ts";
import { addPage, printDocument, printedBytes } from "./print-document.ts";
import { setRuns, type Run } from "./set-runs.ts";
import { MARGIN } from "./sheet-paper.ts";

const HEADING_PT = 18;
const TEXT_PT = 11;
const GAP_MM = 4;

/** One page at the address of a sheet that is gone: what it was of, since when, and what took its place. */
export function formerPdf(
  { heading, gone, inItsPlace }: FormerTexts,
  { records: { workshop }, words, date }: PageContext,
  paper: PaperSize,
): Uint8Array {
  const document = printDocument({
    title: words.pages.title(heading, workshop.name),
    author: workshop.name,
    subject: gone,
    language: words.language,
    date,
  });
  const root = document.pdf.struct("Document");
  document.pdf.addStructure(root);
  addPage(document, paper.widthMm, paper.heightMm);
  const text = (run: string, href?: string): Run => ({
    text: run,
    face: "sans",
    ...(href !== undefined && { href }),
  });
  const line = (tag: PaperTag, sizePt: number, run: Run) => ({ tag, sizePt, run });
  const lines = [
    line("H1", HEADING_PT, text(heading)),
    line("P", TEXT_PT, text(gone)),
    ...(inItsPlace === undefined
      ? []
      : [line("P", TEXT_PT, text(inItsPlace.text, inItsPlace.href))]),
    ...(inItsPlace?.href === undefined
      ? []
      : [line("P", TEXT_PT, text(inItsPlace.href, inItsPlace.href))]),
  ];
  let yMm: number = MARGIN.top;
  for (const { tag, sizePt, run } of lines) {
    const set = setRuns([run], { widthMm: paper.widthMm - 2 * MARGIN.side, sizePt });
    drawTagged(
      document,
      root,
      { tag, marks: set.marks, links: set.links },
      { xMm: MARGIN.side, yMm },
    );
    yMm += set.heightMm + GAP_MM;
  }
  root.end();
  return printedBytes(document);
}
