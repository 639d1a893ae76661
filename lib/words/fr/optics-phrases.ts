import { TINT_RULES } from "../../optics/tints/tint-statement.ts";
import { waysApart, type Way } from "../tint-words.ts";
import { decimals, lightnessText, listed, of, within } from "./phrases.ts";

export const KINDS = { pigment: "en pigment sec", paint: "en peinture" } as const;

export function extended({ colour }: { readonly colour?: string }): string {
  return colour === undefined ? "de la couleur" : of(within(colour));
}

/** In which white the two were held against each other. */
export function comparedIn({ white }: { readonly white?: string }): string {
  return white === undefined ? "" : ` (dans ${within(white)})`;
}

/** From the warmer white to the cooler: bluer, and redder or greener where that counts. */
export function apart(changes: { readonly aChange: number; readonly bChange: number }): string {
  return listed(
    waysApart(changes).map(
      ({ by, toward, axis }) => `plus ${NEARER[toward]} de ${decimals(by, 1)} en ${axis}`,
    ),
  );
}

const NEARER: Readonly<Record<Way["toward"], string>> = {
  blue: "bleue",
  yellow: "jaune",
  green: "verte",
  red: "rouge",
};

type NotJudged = {
  readonly wantedL?: number;
  readonly nearestL?: number;
  readonly contrast?: number;
};

export function whyNotJudged({ wantedL, nearestL, contrast }: NotJudged): string {
  if (contrast !== undefined)
    return `ses dégradés y laissent voir leur fond (rapport de contraste ${decimals(contrast, 2)}), et une couche qui couvre a un autre aspect`;
  if (wantedL === undefined || nearestL === undefined)
    return "il faut une mesure du ton plein et un dégradé près de L* 50";
  const { masstoneMax, aboveMasstone } = TINT_RULES.lightness;
  if (wantedL > masstoneMax + aboveMasstone)
    return "elle est elle-même trop pâle pour y avoir beaucoup d’effet";
  return `il faut un dégradé près de ${lightnessText(wantedL)}\u202f; le plus proche est à ${lightnessText(nearestL)}`;
}
