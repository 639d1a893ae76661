import type { Words } from "../words/words.ts";
import { cropMarks } from "./crop-marks.ts";
import { drawTagged } from "./draw-tagged.ts";
import { labelSheet } from "./label-sheet.ts";
import type { LaidLabel } from "./package-label-layout.ts";
import type { PackageSize } from "./package-size.ts";
import { addPage, printDocument, printedBytes } from "./print-document.ts";

/** Labels of one size, in the order in which they lie on their sheets. */
export interface LabelRun {
  readonly size: PackageSize;
  readonly labels: readonly LaidLabel[];
}

/** Sheets of labels at real size, each size on sheets of its own. */
export function labelsPdf(
  runs: readonly LabelRun[],
  {
    workshop,
    date,
    words,
  }: { readonly workshop: string; readonly date: string | undefined; readonly words: Words },
): { readonly bytes: Uint8Array; readonly pages: number } {
  const text = words.pages.packageLabels.document;
  const document = printDocument({
    title: text.title(workshop),
    author: workshop,
    subject: text.subject(runs.reduce((sum, { labels }) => sum + labels.length, 0)),
    language: words.language,
    date,
  });
  const root = document.pdf.struct("Document");
  document.pdf.addStructure(root);
  let pages = 0;
  for (const { size, labels } of runs) {
    const { paperMm, perSheet, place, bleedMm, cuts } = labelSheet(size);
    const faces = labels.flatMap((label) =>
      label.faces.map((face) => ({ name: label.name, blocks: face.blocks })),
    );
    faces.forEach(({ name, blocks }, i) => {
      if (i % perSheet === 0) {
        addPage(document, paperMm.width, paperMm.height);
        pages++;
        if (cuts !== undefined)
          drawTagged(document, root, cropMarks({ cuts, folds: [] }), { xMm: 0, yMm: 0 });
      }
      const section = document.pdf.struct("Sect", { title: text.label(name, size.name) });
      root.add(section);
      for (const block of blocks)
        drawTagged(document, section, block, {
          ...place(i % perSheet),
          clipMm: {
            left: -bleedMm,
            top: -bleedMm,
            right: size.widthMm + bleedMm,
            bottom: size.heightMm + bleedMm,
          },
        });
      section.end();
    });
  }
  root.end();
  return { bytes: printedBytes(document), pages };
}
