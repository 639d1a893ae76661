import { inflateSync } from "node:zlib";
import { getDocument, VerbosityLevel } from "./pdf-reader.ts";

/** A text as an independent reader finds it, its baseline in points from the page's bottom left corner. */
export interface FoundText {
  readonly text: string;
  readonly x: number;
  readonly y: number;
  readonly sizePt: number;
  readonly width: number;
}

export interface FoundPage {
  readonly widthPt: number;
  readonly heightPt: number;
  readonly texts: readonly FoundText[];
  /** The page's content stream, its operators as written. */
  readonly content: string;
}

export interface FoundPdf {
  readonly title: string | undefined;
  readonly language: string | undefined;
  readonly isTagged: boolean;
  readonly pages: readonly FoundPage[];
}

/** Reads a PDF with pdfjs, and its content streams by the offsets that its own cross-reference table gives. */
export async function readPdf(bytes: Uint8Array): Promise<FoundPdf> {
  const document = await getDocument({
    data: Uint8Array.from(bytes),
    verbosity: VerbosityLevel.ERRORS,
    useSystemFonts: false,
  }).promise;
  const { info } = (await document.getMetadata()) as {
    info: { Title?: string; Language?: string };
  };
  const marks = (await document.getMarkInfo()) as { Marked?: boolean } | null;
  const contents = contentStreams(bytes);
  const pages: FoundPage[] = [];
  for (let number = 1; number <= document.numPages; number++) {
    const page = await document.getPage(number);
    const [left = 0, bottom = 0, right = 0, top = 0] = page.view;
    const { items } = await page.getTextContent();
    pages.push({
      widthPt: right - left,
      heightPt: top - bottom,
      texts: items.flatMap((item) =>
        "str" in item && item.str.trim() !== ""
          ? [
              {
                text: item.str,
                x: Number(item.transform[4]),
                y: Number(item.transform[5]),
                sizePt: Math.hypot(Number(item.transform[0]), Number(item.transform[1])),
                width: item.width,
              },
            ]
          : [],
      ),
      content: contents[number - 1] ?? "",
    });
  }
  await document.loadingTask.destroy();
  return { title: info.Title, language: info.Language, isTagged: marks?.Marked === true, pages };
}

/** Texts of a page in one line, in reading order, spaces joined. */
export function pageText({ texts }: FoundPage): string {
  return texts
    .map(({ text }) => text)
    .join(" ")
    .replace(/\s+/g, " ");
}

/** Texts of a PDF are parted where lines and faces are, and one glyph serves both the micro sign and the Greek letter: compared without spaces, in compatibility form. */
export function solid(text: string): string {
  return text.normalize("NFKC").replace(/\s+/g, "");
}

/** `/CSLab cs L a b sc`, in order. */
export function labFills({
  content,
}: FoundPage): { readonly L: number; readonly a: number; readonly b: number }[] {
  return [...content.matchAll(/\/CSLab cs (\S+) (\S+) (\S+) sc/g)].map(([, L, a, b]) => ({
    L: Number(L),
    a: Number(a),
    b: Number(b),
  }));
}

/** Dictionaries of a kind, as text: `/Type /FontDescriptor`. */
export function dictionaries(bytes: Uint8Array, type: string): string[] {
  return objects(bytes)
    .map(({ head }) => head)
    .filter((head) => head.includes(`/Type /${type}\n`));
}

function contentStreams(bytes: Uint8Array): string[] {
  const all = objects(bytes);
  const byId = new Map(all.map((object) => [object.id, object]));
  return all
    .filter(({ head }) => /\/Type \/Page\n/.test(head))
    .map(({ head }) => {
      const id = Number(/\/Contents (\d+) 0 R/.exec(head)?.[1]);
      const stream = byId.get(id)?.stream;
      return stream === undefined ? "" : inflateSync(stream).toString("latin1");
    });
}

interface PdfObject {
  readonly id: number;
  readonly head: string;
  readonly stream?: Uint8Array;
}

function objects(bytes: Uint8Array): PdfObject[] {
  const text = Buffer.from(bytes).toString("latin1");
  return [...text.matchAll(/^(\d+) 0 obj\n/gm)].map(({ 0: opening, 1: id, index }): PdfObject => {
    const start = index + opening.length;
    const end = text.indexOf("endobj", start);
    const at = text.indexOf("stream\n", start);
    const head = text.slice(start, at >= 0 && at < end ? at : end);
    const length = Number(/\/Length (\d+)/.exec(head)?.[1] ?? 0);
    return {
      id: Number(id),
      head,
      ...(at >= 0 && at < end ? { stream: bytes.subarray(at + 7, at + 7 + length) } : {}),
    };
  });
}
