/** Elements whose text is not a reader's prose, or is copied as it stands. */
const AS_IT_STANDS = /<(script|style|pre|textarea|code)\b[\s\S]*?<\/\1>/g;
const TAG = /(<[^>]*>)/;

/**
 * A finished page with a typesetter's apostrophes, and no line break between a coordinate and its
 * figure ("b* \u22127.3"), whoever wrote the text: records are typed on a keyboard.
 */
export function typeset(page: string): string {
  const kept: string[] = [];
  const masked = page.replace(AS_IT_STANDS, (element) => `<!--kept ${kept.push(element) - 1}-->`);
  return masked
    .split(TAG)
    .map((piece, i) => (i % 2 === 1 ? piece : typesetText(piece)))
    .join("")
    .replace(/<!--kept (\d+)-->/g, (_, index: string) => kept[Number(index)] ?? "");
}

function typesetText(text: string): string {
  return text
    .replace(/(?<=\p{L})(?:&#39;|')(?=\p{L})/gu, "\u2019")
    .replace(/(?<=s)(?:&#39;|')(?=\s)/g, "\u2019")
    .replace(/(?<=\b[LabC]\*(?:ab)?) (?=[\u2212\d]|$)/g, "\u00a0");
}
