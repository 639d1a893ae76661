import { TINT_RULES } from "../../optics/tints/tint-statement.ts";
import { waysApart, type Way } from "../tint-words.ts";
import { decimals, lightnessText, listed, within } from "./phrases.ts";

export const KINDS = { pigment: "como pigmento seco", paint: "como pintura" } as const;

export function extended({ colour }: { readonly colour?: string }): string {
  return colour === undefined ? "del color" : `de ${within(colour)}`;
}

/** In which white the two were held against each other. */
export function comparedIn({ white }: { readonly white?: string }): string {
  return white === undefined ? "" : ` (en ${within(white)})`;
}

/** From the warmer white to the cooler: bluer, and redder or greener where that counts. */
export function apart(changes: { readonly aChange: number; readonly bChange: number }): string {
  return listed(
    waysApart(changes).map(
      ({ by, toward, axis }) => `más ${NEARER[toward]} (${decimals(by, 1)} en ${axis})`,
    ),
  );
}

const NEARER: Readonly<Record<Way["toward"], string>> = {
  blue: "azul",
  yellow: "amarillo",
  green: "verde",
  red: "rojo",
};

type NotJudged = {
  readonly wantedL?: number;
  readonly nearestL?: number;
  readonly contrast?: number;
};

export function whyNotJudged({ wantedL, nearestL, contrast }: NotJudged): string {
  if (contrast !== undefined)
    return `sus rebajes dejan ver allí su fondo (relación de contraste ${decimals(contrast, 2)}), y una capa que cubre tiene otro aspecto`;
  if (wantedL === undefined || nearestL === undefined)
    return "hace falta una medición del tono pleno y un rebaje cerca de L* 50";
  const { masstoneMax, aboveMasstone } = TINT_RULES.lightness;
  if (wantedL > masstoneMax + aboveMasstone)
    return "es ya demasiado pálido para tener mucho efecto en él";
  return `hace falta un rebaje cerca de ${lightnessText(wantedL)}; el más próximo está en ${lightnessText(nearestL)}`;
}
