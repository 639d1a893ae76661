import { typesetText } from "../words/typeset-text.ts";

/** Elements whose text is not a reader's prose, or is copied as it stands. */
const AS_IT_STANDS = /<(script|style|pre|textarea|code)\b[\s\S]*?<\/\1>/g;
/** From the end of a tag to the next. */
const TEXT = />[^<]+/g;

/** The dash of a range: past it a browser would break the line, "8–" and "10 days" in the next. */
const RANGE_DASH = /(?<=\d)\u2013(?=\d)/g;

/** A finished page, its text typeset, its ranges each in one line, and its markup as it was. */
export function typeset(page: string): string {
  const kept: string[] = [];
  const masked = page.replace(AS_IT_STANDS, (element) => `<!--kept ${kept.push(element) - 1}-->`);
  return masked
    .replace(TEXT, (text) => typesetText(text).replace(RANGE_DASH, "\u2013\u2060"))
    .replace(/<!--kept (\d+)-->/g, (_, index: string) => kept[Number(index)] ?? "");
}
