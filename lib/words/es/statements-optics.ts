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
  percent,
  sentence,
  significant,
  within,
} from "./phrases.ts";

const KINDS = { pigment: "como pigmento seco", paint: "como pintura" } as const;

/** Colours in whites, strength, hiding, gloss, mulled against milled. */
export const OPTICS_RULINGS: WordingsOf<PaintStatement> = {
  ...tintSentences(TINT_WORDS),
  "no-tint-to-judge": (v) =>
    sentence(`no podemos decir qué hace en ${within(v.white)}: ${whyNotJudged(v)}`),
  "differs-by-white": (v) =>
    `A ${lightnessText(v.L)} es ${apart(v)} en ${within(v.to)} que en ${within(v.from)}.`,
  "alike-in-whites": (v) =>
    `A ${lightnessText(v.L)} su matiz es el mismo en todos los blancos, dentro de ${decimals(v.distance, 1)} en a*, b*.`,
  "whites-not-told-apart": (v) =>
    `A ${lightnessText(v.L)} ningún blanco se distingue de otro: la mayor diferencia, ${decimals(v.distance, 1)} en a*, b*, queda dentro de los \u00b1\u00a0${decimals(v.uncertainty ?? 0, 1)} de los rebajes.`,
  "one-white-only": (v) =>
    `A ${lightnessText(v.L)} no lo conocemos en dos blancos, y los blancos no se comparan.`,

  "geometries-differ": (v) =>
    `No pueden calcularse juntos: uno se midió en ${wordOf(GEOMETRIES, v.sample)}, el otro en ${wordOf(GEOMETRIES, v.reference)}.`,
  "not-let-down-in": (v) => `No probado en ${namesWithin(v.whites, "or")}.`,

  "whites-differ": (v) =>
    `La fuerza no se compara: uno se rebajó en ${within(v.sample)}, el otro en ${within(v.reference)}.`,
  "ratio-kinds-differ": (v) =>
    `La fuerza no se compara: un rebaje se pesó ${KINDS[v.sample]}, el otro ${KINDS[v.reference]}.`,
  "grey-beside-colour": () =>
    "La fuerza no se compara: en el blanco uno de los dos da un gris y el otro un color.",
  "hues-not-comparable": (v) =>
    `La fuerza no se compara: los dos absorben más en lugares distintos (${decimals(v.sampleNm, 0)} y ${decimals(v.referenceNm, 0)}\u00a0nm).`,
  "milled-stronger": (v) =>
    `Molido con moleta, tiene el ${percent(v.strength)} de su fuerza molido a máquina${comparedIn(v)}.`,
  "mulled-stronger": (v) =>
    `Molido con moleta, es el más fuerte: el ${percent(v.strength)} de su fuerza molido a máquina${comparedIn(v)}.`,
  "alike-mulled-and-milled": (v) =>
    `Con moleta o a máquina, su fuerza es la misma: el ${percent(v.strength)} de la de máquina${comparedIn(v)}.`,
  "mulled-weaker": () =>
    "Molido con moleta, cabe esperarlo más débil que a máquina: los grumos se guardan parte del color.",
  "mulled-weaker-paler-bluer": (v) =>
    `Molido con moleta, cabe esperar que conserve el ${percent(v.kept)} de su fuerza (grumos de ${micrometres(v.lumpsUm)}), con rebajes más pálidos y más azules que a máquina.`,

  "films-hid-their-grounds": (v) =>
    `Las películas medidas (${micrometres(v.filmsUm)}) ya cubrían la carta en la mayoría de las longitudes de onda: puede bastar una película más fina que la indicada.`,
  "strength-by-absorption": (v) =>
    `La fuerza se mide frente a ${v.reference} por lo que ambos absorben en ${within(v.white)}; a igual fuerza aún difieren en \u0394E00 ${decimals(v.residualDeltaE00, 1)}.`,
  "strength-by-equal-depth": (v) =>
    `La fuerza se mide frente a ${v.reference} por cuánto de cada uno lleva ${within(v.white)} a una misma claridad, ya que sus rebajes no alcanzan los del otro; a esa claridad aún difieren en \u0394E00 ${decimals(v.residualDeltaE00, 1)}.`,
  "contrast-without-gloss": (v) =>
    `Eso incluye el brillo: sin él, una película de ${micrometres(v.filmUm)} tiene una relación de contraste de ${decimals(v.excluded, 2)}; con él, de ${decimals(v.included, 2)}.`,
  "masstone-by-both-grounds": (v) =>
    `El tono pleno se midió en una película que deja ver su fondo (relación de contraste ${decimals(v.contrast, 2)}). Los rebajes y las mezclas se calculan por lo que ambos fondos dicen de una capa que cubre.`,
  "masstone-is-a-film": (v) =>
    `Lo que se muestra como tono pleno es una película sobre blanco que deja ver su fondo (relación de contraste ${decimals(v.contrast, 2)}). Una capa más gruesa parece más oscura, y lo que calculamos de ella es más incierto.`,
  "does-not-hide": (v) =>
    `Ni una película de ${decimals(v.filmUm / 1000, 0)}\u00a0mm cubre: su relación de contraste es ${decimals(v.contrastRatio, 2)}, y haría falta ${decimals(v.target, 2)}.`,
  "gloss-deepens": (v) =>
    `Una película brillante parece más oscura que una mate (claridad L* ${decimals(v.glossyL, 0)} frente a ${decimals(v.matteL, 0)}).`,
  "gloss-hardly-deepens": (v) =>
    `El brillo apenas lo oscurece (claridad L* ${decimals(v.glossyL, 0)} frente a ${decimals(v.matteL, 0)} mate).`,
  "extender-hardly-lightens": (v) =>
    `Una carga, no un blanco: ${significant(v.volumes, 2)} volúmenes del médium por uno de ${extended(v)} solo suben su L* en ${decimals(v.change, 1)}, desde ${decimals(v.fromL, 0)} (brillo incluido).`,
  "extender-lightens": (v) =>
    `${significant(v.volumes, 2)} volúmenes del médium por uno de ${extended(v)} suben su L* de ${decimals(v.fromL, 0)} a ${decimals(v.toL, 0)} (brillo incluido).`,
};

function extended({ colour }: { readonly colour?: string }): string {
  return colour === undefined ? "color" : within(colour);
}

/** In which white the two were held against each other. */
function comparedIn({ white }: { readonly white?: string }): string {
  return white === undefined ? "" : ` (en ${within(white)})`;
}

/** From the warmer white to the cooler: bluer, and redder or greener where that counts. */
function apart(changes: { readonly aChange: number; readonly bChange: number }): string {
  return listed(
    waysApart(changes).map(
      ({ by, toward, axis }) => `más ${NEARER[toward]} en ${decimals(by, 1)} de ${axis}`,
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

function whyNotJudged({ wantedL, nearestL, contrast }: NotJudged): string {
  if (contrast !== undefined)
    return `sus rebajes dejan ver allí su fondo (relación de contraste ${decimals(contrast, 2)}), y una capa que cubre tiene otro aspecto`;
  if (wantedL === undefined || nearestL === undefined)
    return "hace falta una medición del tono pleno y un rebaje cerca de L* 50";
  const { masstoneMax, aboveMasstone } = TINT_RULES.lightness;
  if (wantedL > masstoneMax + aboveMasstone)
    return "es por sí mismo demasiado pálido para hacer mucho en él";
  return `hace falta un rebaje cerca de ${lightnessText(wantedL)}; el más próximo está en ${lightnessText(nearestL)}`;
}
