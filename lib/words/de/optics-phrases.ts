import { TINT_RULES } from "../../optics/tints/tint-statement.ts";
import { waysApart, type Way } from "../tint-words.ts";
import { GEOMETRIES, wordOf } from "../closed-sets.ts";
import { decimals, lightnessText, listed, within } from "./phrases.ts";

export const KINDS = { pigment: "trockenes Pigment", paint: "Farbe" } as const;

export function geometry(of: string): string {
  return wordOf(GEOMETRIES, of, "de");
}

export function extended({ colour }: { readonly colour?: string }): string {
  return colour === undefined ? "Farbe" : within(colour);
}

/** In which white the two were held against each other. */
export function comparedIn({ white }: { readonly white?: string }): string {
  return white === undefined ? "" : ` (in ${within(white)})`;
}

/** From the warmer white to the cooler: bluer, and redder or greener where that counts. */
export function apart(changes: { readonly aChange: number; readonly bChange: number }): string {
  return listed(
    waysApart(changes).map(
      ({ by, toward, axis }) => `um ${decimals(by, 1)} in ${axis} ${NEARER[toward]}`,
    ),
  );
}

const NEARER: Readonly<Record<Way["toward"], string>> = {
  blue: "blauer",
  yellow: "gelber",
  green: "grüner",
  red: "röter",
};

type NotJudged = {
  readonly wantedL?: number;
  readonly nearestL?: number;
  readonly contrast?: number;
};

export function whyNotJudged({ wantedL, nearestL, contrast }: NotJudged): string {
  if (contrast !== undefined)
    return `Die Aufhellungen lassen dort den Grund durchscheinen (Kontrastverhältnis ${decimals(contrast, 2)}), und ein deckender Auftrag sieht anders aus`;
  if (wantedL === undefined || nearestL === undefined)
    return "Dazu sind eine Messung des Volltons und eine Aufhellung nahe L* 50 nötig";
  const { masstoneMax, aboveMasstone } = TINT_RULES.lightness;
  if (wantedL > masstoneMax + aboveMasstone)
    return "Die Farbe ist selbst zu hell, um dort viel zu bewirken";
  return `Dazu ist eine Aufhellung nahe ${lightnessText(wantedL)} nötig; die nächste liegt bei ${lightnessText(nearestL)}`;
}
