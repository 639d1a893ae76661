import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { loadedPdfkit } from "./loaded-pdfkit.ts";
import { documentFonts, type DocumentFonts } from "./document-fonts.ts";
import type { Face } from "./print-font.ts";
import { MM_PER_PT } from "./mark.ts";
import type { Proof } from "./proof-inks.ts";

/** What a document says of itself. */
export interface PrintTitle {
  readonly title: string;
  readonly author: string;
  readonly subject?: string;
  /** BCP 47. */
  readonly language: string;
  /** The site's date, YYYY-MM-DD: the clock has no say, so that the same records give the same bytes. */
  readonly date: string | undefined;
}

/** How a document is drawn. */
export interface PrintManner {
  readonly proof?: Proof;
  /** Whether its fonts are embedded whole, so that what is drawn in one such document can be bound into another. */
  readonly wholeFonts?: boolean;
}

/** A PDF being drawn. */
export interface PrintDocument {
  readonly pdf: PDFKit.PDFDocument;
  readonly labSpace: PDFKit.PDFKitReference;
  /** Where paints are drawn in process inks. */
  readonly proof?: Proof;
  readonly inkSpace?: PDFKit.PDFKitReference;
  /** JPEGs by their hash. */
  readonly photographs: ReadonlyMap<string, Uint8Array>;
  readonly fonts: DocumentFonts;
  readonly runs: DocumentFonts["runs"];
  /** All that was written by now. */
  readonly written: () => Uint8Array;
}

/** Undated records are of no day: the first that PDF knows. */
const UNDATED = "1970-01-01";

/** White of D50 in XYZ, as PDF 32000-1 8.6.5.4 writes a Lab space; a* and b* go as far as its default allows and more. */
const LAB_SPACE = { WhitePoint: [0.9642, 1, 0.8249], Range: [-128, 127, -128, 127] };

/**
 * Opens a document: tagged, titled, its language set, sRGB as output intent for
 * whatever is not given in Lab, fonts from the packages that the site takes them from.
 */
export function printDocument(
  { title, author, subject, language, date }: PrintTitle,
  photographs: PrintDocument["photographs"] = new Map(),
  { proof, wholeFonts = false }: PrintManner = {},
): PrintDocument {
  const day = new Date(`${date ?? UNDATED}T00:00:00Z`);
  const PDFDocument = loadedPdfkit();
  const pdf = new PDFDocument({
    autoFirstPage: false,
    // None of its own, whose widths and kerning it would read for each document.
    font: "",
    pdfVersion: "1.7",
    tagged: true,
    displayTitle: true,
    lang: language,
    compress: true,
    info: {
      Title: title,
      Author: author,
      ...(subject !== undefined && { Subject: subject }),
      Producer: "Mullstone",
      Creator: "Mullstone",
      CreationDate: day,
      ModDate: day,
    },
  });
  const written = gatherWritten(pdf);
  // Fonts are called F2 and on.
  inside(pdf)._fontCount = 1;
  const labSpace = pdf.ref(["Lab", LAB_SPACE]);
  labSpace.end(undefined);
  outputIntent(pdf);
  const fonts = documentFonts(pdf, wholeFonts);
  return {
    pdf,
    labSpace,
    ...(proof !== undefined && { proof, inkSpace: inkSpaceOf(pdf, proof.profile) }),
    photographs,
    fonts,
    runs: fonts.runs,
    written,
  };
}

/** What pdfkit writes, line by line, put together here: its stream would hold each line as a buffer of its own, of a large document a hundred thousand. */
function gatherWritten(pdf: PDFKit.PDFDocument): PrintDocument["written"] {
  const own = inside(pdf);
  const parts = [pdf.read() as Uint8Array];
  let text = "";
  const textEnds = (): void => {
    parts.push(Buffer.from(text, "latin1"));
    text = "";
  };
  own._write = (data) => {
    if (typeof data === "string") {
      text += `${data}\n`;
      own._offset += data.length + 1;
    } else {
      textEnds();
      parts.push(data);
      own._offset += data.length;
    }
  };
  return () => {
    textEnds();
    return Buffer.concat(parts);
  };
}

/** A new page of a size [mm], coordinates in points from its top left corner. */
export function addPage(document: PrintDocument, widthMm: number, heightMm: number): void {
  const { pdf, labSpace, inkSpace } = document;
  pdf.addPage({ size: [widthMm / MM_PER_PT, heightMm / MM_PER_PT], margin: 0 });
  inside(pdf).page.colorSpaces["CSLab"] = labSpace;
  if (inkSpace !== undefined) inside(pdf).page.colorSpaces["CSInks"] = inkSpace;
  gatherContent(inside(pdf).page.content);
  drawProofNotice(document, widthMm);
}

/** A page's operators as they come, put together when it ends: pdfkit would make a buffer of each. */
function gatherContent(content: PageContent): void {
  const { write, end } = content;
  const gathered: (string | Uint8Array)[] = [];
  content.write = (operators) => void gathered.push(operators);
  content.end = () => {
    // Let go: pages are held until their document has ended.
    write.call(content, Buffer.from(`${gathered.splice(0).join("\n")}\n`, "latin1"));
    end.call(content);
  };
}

/** Ends a document. @returns its bytes, which depend on what was drawn and on nothing else. */
export function printedBytes({ pdf, fonts, written }: PrintDocument): Uint8Array {
  fonts.close();
  pdf.end();
  const bytes = written();
  // A part that was begun and never ended keeps pdfkit from writing the table that readers start from.
  if (!Buffer.from(bytes.subarray(-8)).toString("latin1").includes("%%EOF"))
    throw new Error("A PDF ended with a part of it still open");
  return bytes;
}

const NOTICE_PT = 8;
const NOTICE_TOP_MM = 2.5;

/** What a proof is not, at the head of a page; a page of any other document has none. */
function drawProofNotice({ pdf, proof, runs }: PrintDocument, widthMm: number): void {
  if (proof === undefined) return;
  const width = measureText(proof.notice, "sans bold", NOTICE_PT) / MM_PER_PT;
  pdf.markContent("Artifact", { type: "Pagination" });
  pdf.addContent("0 g");
  let x = (widthMm / MM_PER_PT - width) / 2;
  for (const { text, font } of runs(proof.notice, "sans bold")) {
    pdf.font(font).fontSize(NOTICE_PT);
    pdf.text(text, x, NOTICE_TOP_MM / MM_PER_PT, { lineBreak: false });
    x += pdf.widthOfString(text);
  }
  pdf.endMarkedContent();
}

/** Colour by the profile of some inks, so that the shares of each keep their meaning wherever the document is shown. */
function inkSpaceOf(pdf: PDFKit.PDFDocument, profile: Uint8Array): PDFKit.PDFKitReference {
  const icc = pdf.ref({ N: 4, Alternate: "DeviceCMYK" });
  icc.write(Buffer.from(profile));
  icc.end(undefined);
  const space = pdf.ref(["ICCBased", icc]);
  space.end(undefined);
  return space;
}

/** Parts of pdfkit that its types leave out. */
interface PdfInside {
  _fontCount: number;
  _offset: number;
  _write: (data: string | Uint8Array) => void;
  readonly _root: { readonly data: Record<string, unknown> };
  readonly page: { readonly colorSpaces: Record<string, unknown>; readonly content: PageContent };
}

interface PageContent {
  write: (operators: string | Uint8Array) => void;
  end: () => void;
}

function inside(pdf: PDFKit.PDFDocument): PdfInside {
  return pdf as unknown as PdfInside;
}

let srgb: Buffer | undefined;

/** Found and read once for all documents. */
function srgbProfile(): Buffer {
  if (srgb !== undefined) return srgb;
  const main = createRequire(import.meta.url).resolve("pdfkit");
  srgb = readFileSync(new URL("data/sRGB_IEC61966_2_1.icc", `file://${main}`));
  return srgb;
}

/** What untagged colour means: the sRGB profile that comes with pdfkit. */
function outputIntent(pdf: PDFKit.PDFDocument): void {
  const profile = pdf.ref({ N: 3 });
  profile.write(srgbProfile());
  profile.end(undefined);
  const name = "sRGB IEC61966-2.1";
  // A String object is what pdfkit writes as a string; a bare one becomes a name.
  const intent = pdf.ref({
    Type: "OutputIntent",
    S: "GTS_PDFA1",
    Info: pdfString(name),
    OutputConditionIdentifier: pdfString(name),
    DestOutputProfile: profile,
  });
  intent.end(undefined);
  inside(pdf)._root.data["OutputIntents"] = [intent];
}

function pdfString(text: string): object {
  return Object(text) as object;
}

let measuring: PrintDocument | undefined;
const widthsAtOnePt = new Map<Face, Map<string, number>>();
/** Past so many texts of a face they are measured anew. */
const MOST_WIDTHS = 25_000;

/** One that is never written: its fonts are asked, and end up nowhere. */
export function measuringDocument(): PrintDocument {
  return (measuring ??= printDocument({ title: "", author: "", language: "en", date: undefined }));
}

/** Width of a text at a size [mm], as the embedded fonts set it, kerning included. */
export function measureText(text: string, face: Face, sizePt: number): number {
  const widths = widthsAtOnePt.get(face) ?? new Map<string, number>();
  widthsAtOnePt.set(face, widths);
  const known = widths.get(text);
  if (known !== undefined) return known * sizePt;
  const { pdf, runs } = measuringDocument();
  const width = runs(text, face).reduce(
    (sum, run) => sum + pdf.font(run.font).fontSize(1).widthOfString(run.text) * MM_PER_PT,
    0,
  );
  if (widths.size >= MOST_WIDTHS) widths.clear();
  widths.set(text, width);
  return width * sizePt;
}
