import { TINT_RULES } from "../../optics/tints/tint-statement.ts";
import type { Language } from "../../quantities/languages.ts";
import type { InEach } from "../in-each.ts";
import { de, en, es, fr, inEach } from "../phrases-in-each.ts";
import { waysApart, type Way } from "../tint-words.ts";

type NotJudged = {
  readonly wantedL?: number;
  readonly nearestL?: number;
  readonly contrast?: number;
};

export const KINDS = {
  pigment: {
    en: "dry pigment",
    de: "trockenes Pigment",
    fr: "en pigment sec",
    es: "como pigmento seco",
  },
  paint: { en: "paint", de: "Farbe", fr: "en peinture", es: "como pintura" },
} as const satisfies Readonly<Record<string, InEach>>;

export function extended({ colour }: { readonly colour?: string }): InEach {
  return {
    en: colour === undefined ? "the colour" : en.within(colour),
    de: colour === undefined ? "Farbe" : de.within(colour),
    fr: colour === undefined ? "de la couleur" : fr.of(fr.within(colour)),
    es: colour === undefined ? "del color" : `de ${es.within(colour)}`,
  };
}

/** In which white the two were held against each other. */
export function comparedIn({ white }: { readonly white?: string }): InEach {
  return inEach((p, language) =>
    white === undefined ? "" : ` (${IN[language]} ${p.within(white)})`,
  );
}

const IN: InEach = { en: "in", de: "in", fr: "dans", es: "en" };

/** From the warmer white to the cooler: bluer, and redder or greener where that counts. */
export function apart(changes: { readonly aChange: number; readonly bChange: number }): InEach {
  const ways = waysApart(changes);
  const eachWay = (
    language: Language,
    text: (nearer: string, by: number, axis: string) => string,
  ) => ways.map(({ toward, by, axis }) => text(NEARER[toward][language], by, axis));
  return {
    en: en.listed(
      eachWay("en", (nearer, by, axis) => `${nearer} by ${en.decimals(by, 1)} of ${axis}`),
    ),
    de: de.listed(
      eachWay("de", (nearer, by, axis) => `um ${de.decimals(by, 1)} in ${axis} ${nearer}`),
    ),
    fr: fr.listed(
      eachWay("fr", (nearer, by, axis) => `plus ${nearer} de ${fr.decimals(by, 1)} en ${axis}`),
    ),
    es: es.listed(
      eachWay("es", (nearer, by, axis) => `más ${nearer} (${es.decimals(by, 1)} en ${axis})`),
    ),
  };
}

const NEARER: Readonly<Record<Way["toward"], InEach>> = {
  blue: { en: "bluer", de: "blauer", fr: "bleue", es: "azul" },
  yellow: { en: "yellower", de: "gelber", fr: "jaune", es: "amarillo" },
  green: { en: "greener", de: "grüner", fr: "verte", es: "verde" },
  red: { en: "redder", de: "röter", fr: "rouge", es: "rojo" },
};

/** Why it is not told what a colour does in a white. */
export function whyNotJudged({ wantedL, nearestL, contrast }: NotJudged): InEach {
  if (contrast !== undefined)
    return {
      en: `its let-downs show their ground there (contrast ratio ${en.decimals(contrast, 2)}), and a coat that hides looks otherwise`,
      de: `Die Aufhellungen lassen dort den Grund durchscheinen (Kontrastverhältnis ${de.decimals(contrast, 2)}), und ein deckender Auftrag sieht anders aus`,
      fr: `ses dégradés y laissent voir leur fond (rapport de contraste ${fr.decimals(contrast, 2)}), et une couche qui couvre a un autre aspect`,
      es: `sus rebajes dejan ver allí su fondo (relación de contraste ${es.decimals(contrast, 2)}), y una capa que cubre tiene otro aspecto`,
    };
  if (wantedL === undefined || nearestL === undefined)
    return {
      en: "it takes a reading of the masstone and a let-down near L* 50",
      de: "Dazu sind eine Messung des Volltons und eine Aufhellung nahe L* 50 nötig",
      fr: "il faut une mesure du ton plein et un dégradé près de L* 50",
      es: "hace falta una medición del tono pleno y un rebaje cerca de L* 50",
    };
  const { masstoneMax, aboveMasstone } = TINT_RULES.lightness;
  if (wantedL > masstoneMax + aboveMasstone)
    return {
      en: "it is too pale itself to do much there",
      de: "Die Farbe ist selbst zu hell, um dort viel zu bewirken",
      fr: "elle est elle-même trop pâle pour y avoir beaucoup d’effet",
      es: "es ya demasiado pálido para tener mucho efecto en él",
    };
  return {
    en: `it takes a let-down near ${en.lightnessText(wantedL)}; the nearest is at ${en.lightnessText(nearestL)}`,
    de: `Dazu ist eine Aufhellung nahe ${de.lightnessText(wantedL)} nötig; die nächste liegt bei ${de.lightnessText(nearestL)}`,
    fr: `il faut un dégradé près de ${fr.lightnessText(wantedL)}\u202f; le plus proche est à ${fr.lightnessText(nearestL)}`,
    es: `hace falta un rebaje cerca de ${es.lightnessText(wantedL)}; el más próximo está en ${es.lightnessText(nearestL)}`,
  };
}
