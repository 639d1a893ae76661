import { boundLeaves } from "./bound-leaves.ts";
import { drawFlow } from "./draw-flow.ts";
import type { PaperSize } from "./layout-tree.ts";
import { printDocument, printedBytes } from "./print-document.ts";
import { rangeContents, type FamilySheets } from "./range-contents.ts";
import type { PaperContext } from "./sheet-paper.ts";
import { drawPageNumber, pagesWithFoot } from "./sheet-pdf.ts";

/** All sheets in one file, bound of their leaves: contents that lead to them, bookmarks by family, pages numbered through. */
export function rangePdf(
  families: readonly FamilySheets[],
  context: PaperContext,
  paper: PaperSize,
): Uint8Array {
  const {
    words,
    records: { workshop },
    date,
  } = context;
  const text = words.pages.sheetPaper;
  const sheets = families.flatMap(({ sheets: own }) => own);
  const starts = new Map<string, number>();
  const startOf = (slug: string): number => starts.get(slug) ?? 0;
  const contents = rangeContents(families, (slug) => startOf(slug) + 1, context, paper);
  let total = contents.pages;
  for (const { slug, leaves } of sheets) {
    starts.set(slug, total);
    total += leaves.pages.length;
  }
  const title = words.pages.title(text.range.title, workshop.name);
  const document = printDocument(
    {
      title,
      author: workshop.name,
      subject: text.range.lead(sheets.length),
      language: words.language,
      date,
    },
    new Map(),
    { wholeFonts: true },
  );
  const { pdf } = document;
  const root = pdf.struct("Document");
  pdf.addStructure(root);

  const turn = pagesWithFoot(document, paper, {
    lines: [sheets[0]?.caution ?? words.pages.cautionLine, title],
    pageText: (page) => text.pageOf(page + 1, total),
  });
  turn(0);
  bookmark(pdf.outline, text.range.contents);
  drawFlow(document, root, contents.flow, { placed: contents.placed, turnTo: turn });
  for (const { name, sheets: own } of families) {
    let family: PDFKit.PDFOutline | undefined;
    for (const { slug, listed, leaves, topPt, sideMm } of own)
      boundLeaves(document, root, leaves, (page) => {
        drawPageNumber(document, paper, text.pageOf(startOf(slug) + page + 1, total), sideMm);
        if (page > 0) return;
        pdf.addNamedDestination(slug, "XYZ", 0, topPt, null);
        family ??= bookmark(pdf.outline, name);
        bookmark(family, listed.name);
      });
  }
  root.end();
  return printedBytes(document);
}

/** Leads to the page that is being drawn, the whole of it. */
function bookmark(parent: PDFKit.PDFOutline, title: string): PDFKit.PDFOutline {
  return parent.addItem(title, { expanded: true, fit: true } as { expanded: boolean });
}
