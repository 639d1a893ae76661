import type { PaintStatement } from "../../optics/statements.ts";
import { TINT_RULES } from "../../optics/tints/tint-statement.ts";
import { tintSentences } from "../tint-sentence.ts";
import { waysApart, type Way } from "../tint-words.ts";
import { TINT_WORDS } from "./tint-words.ts";
import type { WordingsOf } from "../../quantities/statement.ts";
import { GEOMETRIES, wordOf } from "./closed-words.ts";
import {
  decimals,
  lightnessText,
  listed,
  micrometres,
  namesWithin,
  of,
  percent,
  sentence,
  significant,
  within,
} from "./phrases.ts";

const KINDS = { pigment: "en pigment sec", paint: "en peinture" } as const;

/** Colours in whites, strength, hiding, gloss, mulled against milled. */
export const OPTICS_RULINGS: WordingsOf<PaintStatement> = {
  ...tintSentences(TINT_WORDS),
  "no-tint-to-judge": (v) =>
    sentence(
      `nous ne pouvons dire ce qu’elle fait dans ${within(v.white)}\u202f: ${whyNotJudged(v)}`,
    ),
  "differs-by-white": (v) =>
    `À ${lightnessText(v.L)} elle est ${apart(v)} dans ${within(v.to)} que dans ${within(v.from)}.`,
  "alike-in-whites": (v) =>
    `À ${lightnessText(v.L)} sa teinte est la même dans tous les blancs, à ${decimals(v.distance, 1)} près en a*, b*.`,
  "whites-not-told-apart": (v) =>
    `À ${lightnessText(v.L)} aucun blanc ne se distingue d’un autre\u202f: le plus grand écart, ${decimals(v.distance, 1)} en a*, b*, reste dans les \u00b1\u00a0${decimals(v.uncertainty ?? 0, 1)} des dégradés.`,
  "one-white-only": (v) =>
    `À ${lightnessText(v.L)} nous ne la connaissons pas dans deux blancs, et les blancs ne sont pas comparés.`,

  "geometries-differ": (v) =>
    `Ils ne peuvent être calculés ensemble\u202f: l’un a été mesuré en ${wordOf(GEOMETRIES, v.sample)}, l’autre en ${wordOf(GEOMETRIES, v.reference)}.`,
  "not-let-down-in": (v) => `Non essayée dans ${namesWithin(v.whites, "or")}.`,

  "whites-differ": (v) =>
    `La force n’est pas comparée\u202f: l’une a été dégradée dans ${within(v.sample)}, l’autre dans ${within(v.reference)}.`,
  "ratio-kinds-differ": (v) =>
    `La force n’est pas comparée\u202f: l’un des dégradés a été pesé ${KINDS[v.sample]}, l’autre ${KINDS[v.reference]}.`,
  "grey-beside-colour": () =>
    "La force n’est pas comparée\u202f: dans le blanc, l’une des deux donne un gris et l’autre une couleur.",
  "hues-not-comparable": (v) =>
    `La force n’est pas comparée\u202f: les deux absorbent le plus à des endroits différents (${decimals(v.sampleNm, 0)} et ${decimals(v.referenceNm, 0)}\u00a0nm).`,
  "milled-stronger": (v) =>
    `Broyée à la molette, elle a ${percent(v.strength)} de sa force broyée à la machine${comparedIn(v)}.`,
  "mulled-stronger": (v) =>
    `Broyée à la molette, elle est la plus forte\u202f: ${percent(v.strength)} de sa force broyée à la machine${comparedIn(v)}.`,
  "alike-mulled-and-milled": (v) =>
    `À la molette ou à la machine, sa force est la même\u202f: ${percent(v.strength)} de la force broyée à la machine${comparedIn(v)}.`,
  "mulled-weaker": () =>
    "Broyée à la molette, il faut l’attendre plus faible qu’à la machine\u202f: des amas gardent pour eux une part de la couleur.",
  "mulled-weaker-paler-bluer": (v) =>
    `Broyée à la molette, il faut en attendre ${percent(v.kept)} de sa force (amas de ${micrometres(v.lumpsUm)}), avec des dégradés plus pâles et plus bleus qu’à la machine.`,

  "films-hid-their-grounds": (v) =>
    `Les films mesurés (${micrometres(v.filmsUm)}) couvraient déjà la carte à la plupart des longueurs d’onde\u202f: un film plus mince que celui qui est donné peut suffire.`,
  "strength-by-absorption": (v) =>
    `La force est mesurée par rapport à ${v.reference} d’après ce que les deux absorbent dans ${within(v.white)}\u202f; à force égale elles diffèrent encore de \u0394E00 ${decimals(v.residualDeltaE00, 1)}.`,
  "strength-by-equal-depth": (v) =>
    `La force est mesurée par rapport à ${v.reference} d’après ce qu’il faut de chacune pour mener ${within(v.white)} à une même clarté, puisque ses dégradés n’atteignent pas ceux de l’autre\u202f; à cette clarté elles diffèrent encore de \u0394E00 ${decimals(v.residualDeltaE00, 1)}.`,
  "contrast-without-gloss": (v) =>
    `Reflet compris\u202f: sans lui, un film de ${micrometres(v.filmUm)} a un rapport de contraste de ${decimals(v.excluded, 2)}\u202f; avec lui, de ${decimals(v.included, 2)}.`,
  "masstone-by-both-grounds": (v) =>
    `Le ton plein a été mesuré sur un film qui laisse voir son fond (rapport de contraste ${decimals(v.contrast, 2)}). Les dégradés et les mélanges sont calculés d’après ce que les deux fonds disent d’une couche qui couvre.`,
  "masstone-is-a-film": (v) =>
    `Ce qui est montré comme ton plein est un film sur du blanc qui laisse voir son fond (rapport de contraste ${decimals(v.contrast, 2)}). Une couche plus épaisse paraît plus sombre, et ce que nous en calculons est moins certain.`,
  "does-not-hide": (v) =>
    `Même un film de ${decimals(v.filmUm / 1000, 0)}\u00a0mm ne couvre pas\u202f: son rapport de contraste est de ${decimals(v.contrastRatio, 2)}, et il faudrait ${decimals(v.target, 2)}.`,
  "gloss-deepens": (v) =>
    `Un film brillant paraît plus sombre qu’un film mat (clarté L* ${decimals(v.glossyL, 0)} contre ${decimals(v.matteL, 0)}).`,
  "gloss-hardly-deepens": (v) =>
    `Le brillant l’assombrit à peine (clarté L* ${decimals(v.glossyL, 0)} contre ${decimals(v.matteL, 0)} mat).`,
  "extender-hardly-lightens": (v) =>
    `Une charge, non un blanc\u202f: ${significant(v.volumes, 2)} volumes du médium pour un ${extended(v)} ne relèvent son L* que de ${decimals(v.change, 1)}, depuis ${decimals(v.fromL, 0)} (reflet inclus).`,
  "extender-lightens": (v) =>
    `${significant(v.volumes, 2)} volumes du médium pour un ${extended(v)} relèvent son L* de ${decimals(v.fromL, 0)} à ${decimals(v.toL, 0)} (reflet inclus).`,
};

function extended({ colour }: { readonly colour?: string }): string {
  return colour === undefined ? "de la couleur" : of(within(colour));
}

/** In which white the two were held against each other. */
function comparedIn({ white }: { readonly white?: string }): string {
  return white === undefined ? "" : ` (dans ${within(white)})`;
}

/** From the warmer white to the cooler: bluer, and redder or greener where that counts. */
function apart(changes: { readonly aChange: number; readonly bChange: number }): string {
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

function whyNotJudged({ wantedL, nearestL, contrast }: NotJudged): string {
  if (contrast !== undefined)
    return `ses dégradés y laissent voir leur fond (rapport de contraste ${decimals(contrast, 2)}), et une couche qui couvre a un autre aspect`;
  if (wantedL === undefined || nearestL === undefined)
    return "il faut une mesure du ton plein et un dégradé près de L* 50";
  const { masstoneMax, aboveMasstone } = TINT_RULES.lightness;
  if (wantedL > masstoneMax + aboveMasstone)
    return "elle est elle-même trop pâle pour y faire beaucoup";
  return `il faut un dégradé près de ${lightnessText(wantedL)}\u202f; le plus proche est à ${lightnessText(nearestL)}`;
}
