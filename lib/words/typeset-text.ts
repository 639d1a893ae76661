/**
 * A text with a typesetter's apostrophes, multiplication signs and rho, and no line break between a symbol and its
 * figure ("b* \u22127.3", "\u0394E00 1.3", "category II"), whoever wrote it: records are typed on a keyboard. HTML's
 * entity of an apostrophe counts as one.
 */
export function typesetText(text: string): string {
  return TYPED.test(text)
    ? text
        .replace(/(?<=\p{L})(?:&#39;|')(?=\p{L})/gu, "\u2019")
        .replace(/(?<=s)(?:&#39;|')(?=\s)/g, "\u2019")
        .replace(/(?<= )x(?= )/g, "\u00d7")
        .replace(/\brho\b/g, "\u03c1")
        .replace(/(?<=\b[LabC]\*(?:ab)?) (?=[\u2212\d]|$)/g, "\u00a0")
        .replace(
          /(?<=\u0394E(?:00|\*ab)|\bPVC|\bPVK|\bCPV|\b[Cc]ategory|\bKategorie|\bcatégorie|\bcategoría) (?=\d|[IV]+\b)/g,
          "\u00a0",
        )
    : text;
}

/** A telephone number whose groups stay in one line, whatever stands between them. */
export function unbrokenNumber(telephone: string): string {
  return telephone.replace(/(?<=[\d)/\u2013-]) (?=[\d/\u2013-]|\(\d)/g, "\u00a0");
}

const TYPED = /['*\u0394]|&#39;|PVC|PVK|CPV|ategor|atégorie| x |\brho\b/;
