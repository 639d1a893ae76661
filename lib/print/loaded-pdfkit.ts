import { createRequire } from "node:module";
import type PDFDocument from "pdfkit";

const require = createRequire(import.meta.url);

/** pdfkit, loaded when the first document is begun: a build whose papers are drawn in threads, or are as before, needs none. */
export function loadedPdfkit(): typeof PDFDocument {
  return require("pdfkit") as typeof PDFDocument;
}
