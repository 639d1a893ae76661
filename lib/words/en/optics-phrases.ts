import { TINT_RULES } from "../../optics/tints/tint-statement.ts";
import { waysApart, type Way } from "../tint-words.ts";
import { decimals, lightnessText, listed, within } from "./phrases.ts";

export const KINDS = { pigment: "dry pigment", paint: "paint" } as const;

export function extended({ colour }: { readonly colour?: string }): string {
  return colour === undefined ? "the colour" : within(colour);
}

/** In which white the two were held against each other. */
export function comparedIn({ white }: { readonly white?: string }): string {
  return white === undefined ? "" : ` (in ${within(white)})`;
}

/** From the warmer white to the cooler: bluer, and redder or greener where that counts. */
export function apart(changes: { readonly aChange: number; readonly bChange: number }): string {
  return listed(
    waysApart(changes).map(
      ({ by, toward, axis }) => `${NEARER[toward]} by ${decimals(by, 1)} of ${axis}`,
    ),
  );
}

const NEARER: Readonly<Record<Way["toward"], string>> = {
  blue: "bluer",
  yellow: "yellower",
  green: "greener",
  red: "redder",
};

type NotJudged = {
  readonly wantedL?: number;
  readonly nearestL?: number;
  readonly contrast?: number;
};

export function whyNotJudged({ wantedL, nearestL, contrast }: NotJudged): string {
  if (contrast !== undefined)
    return `its let-downs show their ground there (contrast ratio ${decimals(contrast, 2)}), and a coat that hides looks otherwise`;
  if (wantedL === undefined || nearestL === undefined)
    return "it takes a reading of the masstone and a let-down near L* 50";
  const { masstoneMax, aboveMasstone } = TINT_RULES.lightness;
  if (wantedL > masstoneMax + aboveMasstone) return "it is too pale itself to do much there";
  return `it takes a let-down near ${lightnessText(wantedL)}; the nearest is at ${lightnessText(nearestL)}`;
}
