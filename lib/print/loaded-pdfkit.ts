import { createRequire } from "node:module";
import type PDFDocument from "pdfkit";

/**
 * pdfkit, loaded when the first document is begun: a build whose papers are drawn in threads, or are as before, needs
 * none. A bundle has it within, where `require` is a function of its script; modules that run as they are have none.
 */
export function loadedPdfkit(): typeof PDFDocument {
  if (typeof require === "undefined")
    return createRequire(import.meta.url)("pdfkit") as typeof PDFDocument;
  // Of what a bundle is to hold within and run late the bundler sees such a call alone.
  // oxlint-disable-next-line typescript/no-require-imports
  return require("pdfkit") as typeof PDFDocument;
}
