import type { DrawdownStatement } from "../../optics/statements.ts";
import type { WordingsOf } from "../../quantities/statement.ts";
import { GEOMETRIES, wordOf } from "./closed-words.ts";
import {
  decimals,
  deltaE00Text,
  listed,
  percent,
  significant,
  surfaceConstants,
  within,
} from "./phrases.ts";

/** Why drawdowns carry no fit, or less than one would like; which are doubtful; how far a ladder reaches. */
export const DRAWDOWN_RULINGS: WordingsOf<DrawdownStatement> = {
  "no-masstone": () =>
    "Le ton plein n’a pas été mesuré\u202f; les dégradés seuls ne disent pas ce qu’une couleur absorbe et ce qu’elle diffuse.",
  "no-tint": () =>
    "Aucun dégradé dans un blanc n’a été mesuré, et un ton plein seul n’en prévoit aucun.",
  "masstone-without-spectrum": () =>
    "Rien n’est ajusté\u202f: le ton plein a été mesuré sans spectre, et il en faut un pour l’absorption et la diffusion.",
  "tint-without-spectrum": (v) => `${letDown(v)} n’est pas ajusté\u202f: mesuré sans spectre.`,
  "white-without-masstone": (v) =>
    `${letDown(v)} n’est pas ajusté\u202f: aucun spectre de son blanc seul n’est consigné.`,
  "ratio-kind-missing": (v) =>
    `${letDown(v)} n’est pas ajusté\u202f: on n’a pas consigné si l’on a pesé du pigment sec ou de la peinture.`,
  "ratio-kinds-mixed": (v) =>
    `${letDown(v)} n’est pas ajusté\u202f: des dégradés dans ce blanc, les uns ont été pesés en pigment sec et les autres en peinture.`,
  "ratio-not-positive": (v) =>
    `${letDown(v)} n’est pas ajusté\u202f: son rapport de couleur à blanc n’est pas supérieur à 0.`,
  "masstone-lighter-than-tint": (v) =>
    `${letDown(v)} n’est pas ajusté\u202f: il est, à la mesure, plus sombre que le ton plein (${luminances(v.tintY, v.masstoneY)}), ce que ne peut aucun dégradé dans un blanc.`,
  "tint-lighter-than-white": (v) =>
    `${letDown(v)} n’est pas ajusté\u202f: il est, à la mesure, plus clair que son blanc (${luminances(v.tintY, v.whiteY)}), ce que ne peut aucun dégradé dans ce blanc.`,
  "white-lighter-than-tint": (v) =>
    `${letDown(v)} n’est pas ajusté\u202f: il est, à la mesure, plus sombre que son blanc (${luminances(v.tintY, v.whiteY)}), alors que la couleur est la plus claire des deux.`,
  "tint-lighter-than-masstone": (v) =>
    `${letDown(v)} n’est pas ajusté\u202f: il est, à la mesure, plus clair que le ton plein (${luminances(v.tintY, v.masstoneY)}), alors que son blanc est le plus sombre des deux.`,
  "geometry-mixed": (v) =>
    `Les applications ont été mesurées dans des géométries différentes (${listed(v.geometries.map((one) => wordOf(GEOMETRIES, one)))}), et les constantes de surface consignées ne les ramènent pas l’une à l’autre.`,
  "geometry-needs-surface": (v) =>
    `Sans les constantes de sa surface, une mesure (${wordOf(GEOMETRIES, v.from)}) ne dit pas ce que le brillant y ajoute.`,
  "surfaces-differ": () =>
    "Les applications sont consignées avec des constantes de surface différentes, et ne sont pas ajustées ensemble.",
  "reflectance-not-above-surface": (v) =>
    `Rien n’est ajusté\u202f: ${drawdown(v.drawdown)} ne renvoie pas plus que sa surface (${percent(v.reflectance)} à ${decimals(v.wavelengthNm, 0)}\u00a0nm, k1 ${decimals(v.k1, 3)})\u202f; sa géométrie ou sa surface n’est donc pas celle qui est consignée.`,
  "masstone-not-told-from-surface": (v) =>
    `À ${wavelengths(v.wavelengths)} le ton plein ne renvoie pas plus que sa surface (k1 ${decimals(v.k1, 3)}), et nous ne pouvons dire ce qu’il y a dessous.`,
  "masstone-near-its-surface": (v) =>
    `Mesuré avec son reflet, le ton plein est si près de ce que la surface seule renvoie (k1 ${decimals(v.k1, 3)}) que nous ne pouvons dire combien il est profond sans reflet.`,

  "suspect-drawdown": (v) =>
    `${letDown(v)} est douteux\u202f: les autres s’en écartent de ${deltaE00Text(v.leaveOneOutDeltaE00)} (la limite est ${decimals(v.limit, 1)})${v.othersDeltaE00 === undefined ? "" : ` et s’accordent entre eux à ${decimals(v.othersDeltaE00, 1)} près`}\u202f; il est montré et n’est pas employé.`,
  "drawdowns-disagree": (v) =>
    `${letDown(v)} et l’autre dans ce blanc se contredisent (${deltaE00Text(v.leaveOneOutDeltaE00)}\u202f; la limite est ${decimals(v.limit, 1)}), et rien ne dit lequel est faux.`,
  "fit-needs-masstone": () =>
    "Le ton plein ne peut être écarté, puisque l’ajustement repose sur lui.",
  "only-let-down-in-its-white": (v) =>
    `Le seul dégradé dans ${within(v.white)}\u202f: si on l’écarte, rien ne le prévoit.`,
  "surface-stated": (v) =>
    `Surface ôtée d’après les constantes consignées avec les mesures (${surfaceConstants(v)}).`,
  "surface-by-leave-one-out": (v) =>
    `Surface ôtée comme celle d’un film d’huile (${surfaceConstants(v)})\u202f: avec ces constantes, les dégradés écartés tour à tour, de toutes les couleurs mesurées de même, sont mieux prévus que sans.`,
  "surface-by-default": (v) =>
    `Surface ôtée comme celle d’un film d’huile (${surfaceConstants(v)}), comme il est d’usage dans cette géométrie.`,
  "surface-under-darkest": (v) =>
    `Surface ôtée comme celle d’un film d’huile, sa part de lumière extérieure tenue au-dessous de la mesure la plus sombre de l’atelier (${surfaceConstants(v)}).`,
  "no-surface-by-leave-one-out": (v) =>
    `Aucune surface ôtée (${surfaceConstants(v)})\u202f: ainsi les dégradés écartés tour à tour, de toutes les couleurs mesurées de même, sont mieux prévus qu’avec les constantes d’un film d’huile.`,
  "no-surface-by-default": (v) =>
    `Aucune surface ôtée (${surfaceConstants(v)}), comme il est d’usage reflet exclu\u202f; aucun dégradé ne pouvait être écarté pour en essayer d’autres.`,
  "fit-has-none-to-spare": () =>
    "Chaque blanc n’a qu’un dégradé\u202f: l’ajustement passe par tous, et rien ne dit ce qu’il vaut.",
  "fit-within-noise": (v) =>
    `L’ajustement rejoint les applications aussi bien que le permettent la mesure et la pesée (résidu pondéré ${significant(v.weightedResidual, 2)}).`,
  "fit-misses-more-than-noise": (v) =>
    `L’ajustement s’écarte des applications plus que ne l’expliquent la mesure et la pesée (résidu pondéré ${significant(v.weightedResidual, 2)}\u202f; près de 1, elles seules seraient en cause).`,
  "scattering-known": (v) =>
    `Ce qu’elle diffuse par rapport à ses blancs est connu à environ ${percent(v.relativeUncertainty, 1)} près.`,
  "scattering-is-bound": (v) =>
    `Nous ne connaissons qu’une borne de ce qu’elle diffuse\u202f: le ton plein renvoie ${percent(v.masstoneY)}, et l’ajustement laisse \u00b1\u00a0${percent(v.relativeUncertainty, 1)}.`,

  "ladder-does-not-reach": (v) =>
    "palest" in v
      ? `Aucun dégradé n’atteint L* ${decimals(v.L, 0)}\u202f: l’échelle va de L* ${decimals(v.darkest, 0)} à ${decimals(v.palest, 0)}.`
      : `Aucun dégradé n’atteint L* ${decimals(v.L, 0)}\u202f: aucun n’est consigné.`,
  "neighbours-too-far-apart": (v) =>
    `L* ${decimals(v.L, 0)} tombe entre deux dégradés distants de ${decimals(v.gap, 0)} en L*\u202f; au-delà de ${decimals(v.limit, 0)} on ne comble pas l’intervalle sans ajustement.`,
  "film-needs-masstone-or-two-grounds": () =>
    "Un film seul ne dit pas ce qu’il absorbe et ce qu’il diffuse\u202f: un ton plein, ou des films sur deux fonds, le diraient.",
  "film-tells-nothing": (v) =>
    `À ${wavelengths(v.wavelengths)} le film change trop peu son fond pour dire ce qu’il absorbe et ce qu’il diffuse.`,
  "no-such-white": (v) => `Rien n’a été dégradé dans ${within(v.white)}.`,
};

type NamedTint = { readonly tint: string; readonly white: string };

/** "titanium-white 1:20" as "Le dégradé 1:20 dans titanium white". */
function letDown({ tint, white }: NamedTint): string {
  return tint.startsWith(`${white} `)
    ? `Le dégradé ${tint.slice(white.length + 1)} dans ${within(white)}`
    : `Le dégradé ${tint}`;
}

function drawdown(name: string): string {
  const [, white, ratio] = /^(\S+) (\S+)$/.exec(name) ?? [];
  return white === undefined || ratio === undefined
    ? name === "masstone"
      ? "le ton plein"
      : `l’application ${within(name)}`
    : `le dégradé ${ratio} dans ${within(white)}`;
}

function wavelengths(count: number): string {
  return `${count} longueur${count === 1 ? "" : "s"} d’onde`;
}

function luminances(one: number, other: number): string {
  return `Y ${percent(one)} contre ${significant(other * 100, 2)}`;
}
