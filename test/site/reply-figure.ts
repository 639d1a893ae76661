/** A figure as sheet.json has it. */
export interface Published {
  readonly figure: string;
  readonly text: string;
  readonly value?: unknown;
  readonly uncertainty?: number;
}

/** What a reply says of it: its text; of a tint at a lightness known to no better than 1 its tenth as the sheet's sentence gives it, and the \u00b1. */
export function replyFigure({ figure, text, value, uncertainty }: Published): string {
  return /^tints\..*\.atL\./.test(figure) &&
    typeof value === "number" &&
    uncertainty !== undefined &&
    uncertainty >= 1
    ? `${value.toFixed(1).replace("-", "\u2212")} \u00b1${uncertainty.toFixed(1)}`
    : text;
}
