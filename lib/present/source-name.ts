import type { Source } from "../sources/source.ts";

/**
 * How a page cites a text in passing: "Kubelka & Munk 1931", "ASTM D4303", or for
 * what has no text "memory" and "common practice". Worked out of the citation, so
 * that there is one place where a text is named.
 */
export function sourceName(
  key: string,
  source: Source | undefined,
  standings: Readonly<Record<string, string>>,
): string {
  if (source === undefined) return key;
  const { citation, short, standing } = source;
  if (short !== undefined) return short;
  const dated = /^([^.(]{0,200}?[^(]{0,200}?)\s\((\d{4})[^)]*\)/.exec(citation);
  if (dated?.[1] !== undefined && /^\p{Lu}[\p{L}'-]+, \p{Lu}\./u.test(citation))
    return `${authors(dated[1])} ${dated[2] ?? ""}`;
  if (/recalled without the text|no text\.?$/i.test(citation))
    return standings[standing] ?? standing;
  const first = citation.split(/\.\s|:\s|;\s|,\s(?=\D)/)[0] ?? key;
  return first.replace(/[-(]\d{0,2}\(?\d{4}\)?\)?$/, "").replace(/\.$/, "");
}

/** Surnames alone: two joined, of more the first. */
function authors(text: string): string {
  const surnames = text
    .split(/(?<=\.),\s|\s&\s/)
    .map((author) => author.split(",")[0]?.trim() ?? "");
  if (surnames.length > 2) return `${surnames[0] ?? ""} et al.`;
  return surnames.join(" & ");
}
