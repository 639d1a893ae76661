import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { loadedPdfkit } from "./loaded-pdfkit.ts";
import { fontBytes, type Face, type Subset } from "./print-font.ts";
import { printable, subsetOf } from "./printable-letters.ts";
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

/** A PDF being drawn. */
export interface PrintDocument {
  readonly pdf: PDFKit.PDFDocument;
  readonly labSpace: PDFKit.PDFKitReference;
  /** Where paints are drawn in process inks. */
  readonly proof?: Proof;
  readonly inkSpace?: PDFKit.PDFKitReference;
  /** JPEGs by their hash. */
  readonly photographs: ReadonlyMap<string, Uint8Array>;
  /** A text in runs that one embedded file each can set; a letter that none has is replaced. */
  readonly runs: (text: string, face: Face) => readonly TextRun[];
}

export interface TextRun {
  readonly text: string;
  readonly font: string;
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
  proof?: Proof,
): PrintDocument {
  const day = new Date(`${date ?? UNDATED}T00:00:00Z`);
  const PDFDocument = loadedPdfkit();
  const pdf = new PDFDocument({
    autoFirstPage: false,
    pdfVersion: "1.7",
    tagged: true,
    displayTitle: true,
    lang: language,
    compress: true,
    info: {
      Title: title,
      Author: author,
      ...(subject === undefined ? {} : { Subject: subject }),
      Producer: "Mullstone",
      Creator: "Mullstone",
      CreationDate: day,
      ModDate: day,
    },
  });
  const labSpace = pdf.ref(["Lab", LAB_SPACE]);
  labSpace.end(undefined);
  outputIntent(pdf);
  return {
    pdf,
    labSpace,
    ...(proof === undefined ? {} : { proof, inkSpace: inkSpaceOf(pdf, proof.profile) }),
    photographs,
    runs: textRuns(pdf),
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
export function printedBytes({ pdf }: PrintDocument): Uint8Array {
  pdf.end();
  const bytes = pdf.read() as Buffer | null;
  // A part that was begun and never ended keeps pdfkit from writing the table that readers start from.
  if (bytes === null || !bytes.subarray(-8).toString("latin1").includes("%%EOF"))
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
  readonly _root: { readonly data: Record<string, unknown> };
  readonly _font: EmbeddedFont;
  readonly page: { readonly colorSpaces: Record<string, unknown>; readonly content: PageContent };
}

interface PageContent {
  write: (operators: string | Uint8Array) => void;
  end: () => void;
}

interface EmbeddedFont {
  readonly font: ReadFont;
  readonly layoutRun: (text: string) => ShapedWord;
  layoutCache: Record<string, ShapedWord>;
}

/** Glyphs of a word and where each goes on to, in thousandths of the size. */
interface ShapedWord {
  readonly glyphs: readonly unknown[];
  readonly positions: readonly { readonly xAdvance: number }[];
  readonly advanceWidth: number;
}

/** Parts of fontkit that are used of a font that it has read. */
interface ReadFont {
  readonly characterSet: readonly number[];
  readonly glyphForCodePoint: (codePoint: number) => unknown;
}

/** Spacing modifier letters, some of which are drawn as a quotation mark is. */
const MODIFIERS = { first: 0x2b0, last: 0x2ff } as const;

/**
 * A glyph is of the letter that fontkit first looks it up for, in all documents of a run, and of none
 * where it was first embedded as a part of another: the apostrophe of a closing quotation mark. Looked
 * up all at once, glyphs are of the same letters whatever is printed first, and can be read back.
 */
function nameGlyphs(font: ReadFont): void {
  const isModifier = (code: number): boolean => code >= MODIFIERS.first && code <= MODIFIERS.last;
  const inOrder = font.characterSet.toSorted(
    (one, other) => Number(isModifier(one)) - Number(isModifier(other)) || one - other,
  );
  for (const code of inOrder) font.glyphForCodePoint(code);
}

function inside(pdf: PDFKit.PDFDocument): PdfInside {
  return pdf as unknown as PdfInside;
}

/** What untagged colour means: the sRGB profile that comes with pdfkit. */
function outputIntent(pdf: PDFKit.PDFDocument): void {
  const main = createRequire(import.meta.url).resolve("pdfkit");
  const icc = readFileSync(new URL("data/sRGB_IEC61966_2_1.icc", `file://${main}`));
  const profile = pdf.ref({ N: 3 });
  profile.write(icc);
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

const READ = new Map<string, ReadFont>();

interface ShapedWords {
  readonly words: Record<string, ShapedWord>;
  /** How many they are. */
  readonly count: () => number;
}

const SHAPED = new Map<string, ShapedWords>();
/** Past so many words of a font the next document begins anew. */
const MOST_SHAPED = 10_000;

/** Words of a font as they are shaped, each once for many documents. */
function shapedWords(name: string, font: EmbeddedFont): Record<string, ShapedWord> {
  const known = SHAPED.get(name);
  const shaped = known === undefined || known.count() > MOST_SHAPED ? withSpacesAdded(font) : known;
  SHAPED.set(name, shaped);
  return shaped.words;
}

/**
 * A word is measured without the space behind it and drawn with it: shaped once, it is put together
 * with the space, unless the font moves its last letter before a space.
 */
function withSpacesAdded(font: EmbeddedFont): ShapedWords {
  const shaped = Object.create(null) as Record<string, ShapedWord>;
  let count = 0;
  const keep = (text: string, word: ShapedWord): ShapedWord => {
    count++;
    return (shaped[text] = word);
  };
  const of = (text: string): ShapedWord => shaped[text] ?? keep(text, font.layoutRun(text));
  const apart = (text: string): ShapedWord => {
    const [word, space] = [of(text.slice(0, -1)), of(" ")];
    return {
      glyphs: [...word.glyphs, ...space.glyphs],
      positions: [...word.positions, ...space.positions],
      advanceWidth: word.advanceWidth + space.advanceWidth,
    };
  };
  const kerned = new Map<string, boolean>();
  const isKerned = (last: string): boolean => {
    const known =
      kerned.get(last) ?? of(`${last} `).advanceWidth !== apart(`${last} `).advanceWidth;
    kerned.set(last, known);
    return known;
  };
  const words = new Proxy(shaped, {
    get: (_, text: string) =>
      shaped[text] ??
      (/[^ ] $/.test(text) && !isKerned(text.slice(-2, -1)) ? keep(text, apart(text)) : undefined),
    set: (_, text: string, word: ShapedWord) => keep(text, word) === word,
  });
  return { words, count: () => count };
}

function textRuns(pdf: PDFKit.PDFDocument): PrintDocument["runs"] {
  const registered = new Set<string>();
  const fontOpened = (face: Face, subset: Subset): string => {
    const name = `${face} ${subset}`;
    if (registered.has(name)) return name;
    registered.add(name);
    // pdfkit takes what fontkit has read of a font as well as its bytes; each document embeds its own part of it.
    pdf.registerFont(name, (READ.get(name) ?? fontBytes(face, subset)) as Uint8Array);
    const font = inside(pdf.font(name))._font;
    if (!READ.has(name)) nameGlyphs(font.font);
    READ.set(name, font.font);
    // Ligatures and kerning of a word are the same in every document: shaped once a run, not once a document.
    font.layoutCache = shapedWords(name, font);
    return name;
  };
  return (text, face) =>
    subsetRuns(text, face).map((run) => ({ text: run.text, font: fontOpened(face, run.subset) }));
}

interface SubsetRun {
  readonly text: string;
  readonly subset: Subset;
}

/** Texts parted by the file that sets them, the same in every document; past so many they are parted anew. */
const PARTED = new Map<string, readonly SubsetRun[]>();
const MOST_PARTED = 20_000;

function subsetRuns(text: string, face: Face): readonly SubsetRun[] {
  const key = `${face} ${text}`;
  const known = PARTED.get(key);
  if (known !== undefined) return known;
  if (PARTED.size >= MOST_PARTED) PARTED.clear();
  const runs: { text: string; subset: Subset }[] = [];
  for (const character of printable(text, face)) {
    const subset = subsetOf(face, character.codePointAt(0) ?? 0) ?? "latin";
    const last = runs.at(-1);
    if (last?.subset === subset) last.text += character;
    else runs.push({ text: character, subset });
  }
  PARTED.set(key, runs);
  return runs;
}

let measuring: PrintDocument | undefined;
const widthsAtOnePt = new Map<string, number>();
/** Past so many texts they are measured anew. */
const MOST_WIDTHS = 50_000;

/** One that is never written: its fonts are asked, and end up nowhere. */
export function measuringDocument(): PrintDocument {
  return (measuring ??= printDocument({ title: "", author: "", language: "en", date: undefined }));
}

/** Width of a text at a size [mm], as the embedded fonts set it, kerning included. */
export function measureText(text: string, face: Face, sizePt: number): number {
  const key = `${face} ${text}`;
  const known = widthsAtOnePt.get(key);
  if (known !== undefined) return known * sizePt;
  const { pdf, runs } = measuringDocument();
  const width = runs(text, face).reduce(
    (sum, run) => sum + pdf.font(run.font).fontSize(1).widthOfString(run.text) * MM_PER_PT,
    0,
  );
  if (widthsAtOnePt.size >= MOST_WIDTHS) widthsAtOnePt.clear();
  widthsAtOnePt.set(key, width);
  return width * sizePt;
}
