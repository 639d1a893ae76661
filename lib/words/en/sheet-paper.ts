import { COLON, NUMBERS } from "./phrases.ts";
/** What stands on the printed sheet and the printed range, and on no page. */
export const SHEET_PAPER = {
  colon: COLON,
  kind: "Colour sheet",
  proof: "Preview of process inks, not a colour to match",
  pageOf: (page: number, pages: number) => `${page} of ${pages}`,
  absent: (names: readonly string[]) => `Not stated: ${names.join("; ")}.`,
  painted: "Swatches are printed from Lab values; a painted drawdown rules.",
  inFull: "Every figure and its working: ",
  range: {
    title: "The range",
    contents: "Contents",
    continued: (family: string) => `${family}, continued`,
    lead: (count: number) =>
      `${count} colour sheet${count === 1 ? "" : "s"}, by family and by name.`,
  },
  downloads: {
    sheet: (size: string) => `this sheet to print, ${size}`,
    range: (size: string) => `every sheet in one file to print, ${size}`,
    rangePart: (size: string) => `some of the sheets in one file to print, by family, ${size}`,
    kilobytes: (bytes: number) =>
      bytes < 1_000_000
        ? `${Math.max(1, Math.round(bytes / 1000))} kB`
        : `${NUMBERS.decimal(bytes / 1_000_000, 1)} MB`,
  },
} as const;
