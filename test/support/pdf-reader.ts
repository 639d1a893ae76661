/**
 * pdfjs, which reads what we print as another program would. For older engines it puts its own `push` of lists and
 * `JSON.parse` in the place of sound ones, for the whole process: these are put back, since its `push` takes seven
 * times as long.
 */
const { push } = Array.prototype;
const { parse } = JSON;
export const { getDocument, VerbosityLevel } = await import("pdfjs-dist/legacy/build/pdf.mjs");
// What pdfjs would load once it reads, and with it the same again; it comes without types.
const reads: string = "pdfjs-dist/legacy/build/pdf.worker.mjs";
await import(reads);
Array.prototype.push = push;
JSON.parse = parse;
