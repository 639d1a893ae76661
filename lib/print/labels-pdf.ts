import type { OwnWords } from "../words/words.ts";
import { cropMarks } from "./crop-marks.ts";
import { drawTagged } from "./draw-tagged.ts";
import { foldMarks } from "./fold-marks.ts";
import type { FoldedStrip, LabelFace, LaidLabel } from "./laid-label.ts";
import { labelSheet } from "./label-sheet.ts";
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
  }: { readonly workshop: string; readonly date: string | undefined; readonly words: OwnWords },
): { readonly bytes: Uint8Array; readonly pages: number } {
  const text = words.pages.packageLabels;
  const document = printDocument({
    title: text.document.title(workshop),
    author: workshop,
    subject: text.document.subject(runs.reduce((sum, { labels }) => sum + labels.length, 0)),
    language: words.language,
    date,
  });
  const root = document.pdf.struct("Document");
  document.pdf.addStructure(root);
  let pages = 0;
  for (const { size, faces, strip } of runs.flatMap(facesAlike)) {
    const { paperMm, perSheet, place, bleedMm, cuts } = labelSheet(
      strip === undefined ? size : unfolded(size, strip),
    );
    faces.forEach(({ name, blocks }, i) => {
      if (i % perSheet === 0) {
        addPage(document, paperMm.width, paperMm.height);
        pages++;
        const outside = [
          ...(cuts === undefined ? [] : [cropMarks({ cuts, folds: [] })]),
          ...(cuts === undefined || strip === undefined
            ? []
            : [foldMarks(strip, cuts, text.foldOut)]),
        ];
        for (const marks of outside) drawTagged(document, root, marks, { xMm: 0, yMm: 0 });
      }
      const section = document.pdf.struct("Sect", { title: text.document.label(name, size.name) });
      root.add(section);
      for (const block of blocks)
        drawTagged(document, section, block, {
          ...place(i % perSheet),
          clipMm: {
            left: -bleedMm,
            top: -bleedMm,
            right: (strip?.widthMm ?? size.widthMm) + bleedMm,
            bottom: (strip?.heightMm ?? size.heightMm) + bleedMm,
          },
        });
      section.end();
    });
  }
  root.end();
  return { bytes: printedBytes(document), pages };
}

interface Faces {
  readonly size: PackageSize;
  readonly strip?: FoldedStrip;
  readonly faces: readonly (LabelFace & { readonly name: string })[];
}

/** Pieces of one run by what shape they have: those of the label's own, then strips of one fold after another. */
function facesAlike({ size, labels }: LabelRun): Faces[] {
  const found = new Map<string, Faces & { readonly faces: (LabelFace & { name: string })[] }>();
  for (const { name, faces } of labels)
    for (const face of faces) {
      const { strip } = face;
      const shape = JSON.stringify(strip ?? null);
      const alike = found.get(shape) ?? {
        size,
        ...(strip !== undefined && { strip }),
        faces: [],
      };
      alike.faces.push({ ...face, name });
      found.set(shape, alike);
    }
  return [...found.values()].sort(
    (one, other) => (one.strip?.widthMm ?? 0) - (other.strip?.widthMm ?? 0),
  );
}

/** A strip lies by itself, whatever sheet of labels cut beforehand the size has. */
function unfolded(
  { sheet: _cutBeforehand, ...size }: PackageSize,
  strip: FoldedStrip,
): PackageSize {
  return { ...size, widthMm: strip.widthMm, heightMm: strip.heightMm };
}
