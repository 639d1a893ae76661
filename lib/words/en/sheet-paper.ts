/** What stands on the printed sheet and the printed range, and on no page. */
export const SHEET_PAPER = {
  kind: "Colour sheet",
  pageOf: (page: number, pages: number) => `${page} of ${pages}`,
  standings: "A filled mark is measured, a ringed one worked out, an open one estimated.",
  evidence: {
    heading: "Evidence in short",
    counts: (parts: readonly string[]) => `Of the figures of this sheet ${parts.join(", ")}.`,
    count: (count: number, standing: string) => `${count} are ${standing}`,
    columns: { figure: "Figure", value: "Value", method: "How" },
    sources: (names: readonly string[]) => `Sources: ${names.join("; ")}.`,
    inFull: "Every figure\u2019s working, in full: ",
  },
  languages: (names: readonly string[]) => `The label in ${names.join(", ")}`,
  painted: "Swatches are printed from Lab values; a painted drawdown rules.",
  range: {
    title: "The range",
    contents: "Contents",
    page: "Page",
    lead: (count: number) =>
      `${count} colour sheet${count === 1 ? "" : "s"}, by family and by name.`,
  },
  downloads: {
    sheet: (size: string) => `this sheet to print, ${size}`,
    range: (size: string) => `every sheet in one file to print, ${size}`,
    kilobytes: (bytes: number) =>
      bytes < 1_000_000
        ? `${Math.max(1, Math.round(bytes / 1000))} kB`
        : `${(bytes / 1_000_000).toFixed(1)} MB`,
  },
} as const;
