/** A run that has read no font yet draws one document after another, one for each text that it is given, and writes them as base64, a line each. */
import { addPage, printDocument, printedBytes } from "../../lib/print/print-document.ts";

for (const given of process.argv.slice(2)) {
  const document = printDocument({ title: "", author: "", language: "en", date: undefined });
  addPage(document, 100, 100);
  for (const { text, font } of document.runs(given, "serif"))
    document.pdf.font(font).fontSize(10).text(text, 10, 10);
  process.stdout.write(`${Buffer.from(printedBytes(document)).toString("base64")}\n`);
}
