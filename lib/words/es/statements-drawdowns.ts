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
    "El tono pleno no se ha medido; los rebajes solos no dicen qué absorbe un color y qué dispersa.",
  "no-tint": () =>
    "No se ha medido ningún rebaje en un blanco, y un tono pleno solo no prevé ninguno.",
  "masstone-without-spectrum": () =>
    "No se ajusta nada: el tono pleno se midió sin espectro, y la absorción y la dispersión necesitan uno.",
  "tint-without-spectrum": (v) => `${letDown(v)} no se ajusta: se midió sin espectro.`,
  "white-without-masstone": (v) =>
    `${letDown(v)} no se ajusta: no hay registrado ningún espectro de su blanco solo.`,
  "ratio-kind-missing": (v) =>
    `${letDown(v)} no se ajusta: no está registrado si se pesó pigmento seco o pintura.`,
  "ratio-kinds-mixed": (v) =>
    `${letDown(v)} no se ajusta: de los rebajes en ese blanco, unos se pesaron como pigmento seco y otros como pintura.`,
  "ratio-not-positive": (v) =>
    `${letDown(v)} no se ajusta: su proporción de color a blanco no es mayor que 0.`,
  "masstone-lighter-than-tint": (v) =>
    `${letDown(v)} no se ajusta: resulta más oscuro que el tono pleno (${luminances(v.tintY, v.masstoneY)}), lo que nada rebajado en un blanco puede.`,
  "tint-lighter-than-white": (v) =>
    `${letDown(v)} no se ajusta: resulta más claro que su blanco (${luminances(v.tintY, v.whiteY)}), lo que nada rebajado en él puede.`,
  "white-lighter-than-tint": (v) =>
    `${letDown(v)} no se ajusta: resulta más oscuro que su blanco (${luminances(v.tintY, v.whiteY)}), aunque el color es el más claro de los dos.`,
  "tint-lighter-than-masstone": (v) =>
    `${letDown(v)} no se ajusta: resulta más claro que el tono pleno (${luminances(v.tintY, v.masstoneY)}), aunque su blanco es el más oscuro de los dos.`,
  "geometry-mixed": (v) =>
    `Las aplicaciones se midieron en geometrías distintas (${listed(v.geometries.map((one) => wordOf(GEOMETRIES, one)))}), y las constantes de superficie registradas no las concilian.`,
  "geometry-needs-surface": (v) =>
    `Sin las constantes de su superficie, una medición (${wordOf(GEOMETRIES, v.from)}) no dice lo que el brillo le añade.`,
  "surfaces-differ": () =>
    "Las aplicaciones están registradas con constantes de superficie distintas, y no se ajustan juntas.",
  "reflectance-not-above-surface": (v) =>
    `No se ajusta nada: ${drawdown(v.drawdown)} no devuelve más que su superficie (${percent(v.reflectance)} a ${decimals(v.wavelengthNm, 0)}\u00a0nm, k1 ${decimals(v.k1, 3)}), así que su geometría o su superficie no es la registrada.`,
  "masstone-not-told-from-surface": (v) =>
    `En ${wavelengths(v.wavelengths)} el tono pleno no devuelve más que su superficie (k1 ${decimals(v.k1, 3)}), y no podemos decir qué hay debajo.`,
  "masstone-near-its-surface": (v) =>
    `Medido con su brillo, el tono pleno está tan cerca de lo que devuelve la sola superficie (k1 ${decimals(v.k1, 3)}) que no podemos decir cuán profundo es sin brillo.`,

  "suspect-drawdown": (v) =>
    `${letDown(v)} es dudoso: los demás se apartan de él en ${deltaE00Text(v.leaveOneOutDeltaE00)} (el límite es ${decimals(v.limit, 1)})${v.othersDeltaE00 === undefined ? "" : ` y concuerdan entre sí dentro de ${decimals(v.othersDeltaE00, 1)}`}; se muestra y no se usa.`,
  "drawdowns-disagree": (v) =>
    `${letDown(v)} y el otro en ese blanco se contradicen (${deltaE00Text(v.leaveOneOutDeltaE00)}; el límite es ${decimals(v.limit, 1)}), y nada dice cuál es el falso.`,
  "fit-needs-masstone": () =>
    "El tono pleno no puede dejarse fuera, puesto que el ajuste descansa en él.",
  "only-let-down-in-its-white": (v) =>
    `El único rebaje en ${within(v.white)}: si se deja fuera, nada lo prevé.`,
  "surface-stated": (v) =>
    `Superficie descontada según las constantes registradas con las mediciones (${surfaceConstants(v)}).`,
  "surface-by-leave-one-out": (v) =>
    `Superficie descontada como la de una película de aceite (${surfaceConstants(v)}): con estas constantes los rebajes que se dejan fuera, de todos los colores medidos igual, se prevén mejor que sin ninguna.`,
  "surface-by-default": (v) =>
    `Superficie descontada como la de una película de aceite (${surfaceConstants(v)}), como es usual en esta geometría.`,
  "surface-under-darkest": (v) =>
    `Superficie descontada como la de una película de aceite, con su parte de luz exterior por debajo de la medición más oscura del taller (${surfaceConstants(v)}).`,
  "no-surface-by-leave-one-out": (v) =>
    `Ninguna superficie descontada (${surfaceConstants(v)}): así los rebajes que se dejan fuera, de todos los colores medidos igual, se prevén mejor que con las constantes de una película de aceite.`,
  "no-surface-by-default": (v) =>
    `Ninguna superficie descontada (${surfaceConstants(v)}), como es usual con el brillo excluido; ningún rebaje podía dejarse fuera para probar otras.`,
  "fit-has-none-to-spare": () =>
    "Cada blanco tiene un solo rebaje: el ajuste pasa por todos, y nada dice cuánto vale.",
  "fit-within-noise": (v) =>
    `El ajuste alcanza las aplicaciones tan bien como permiten la medición y la pesada (residuo ponderado ${significant(v.weightedResidual, 2)}).`,
  "fit-misses-more-than-noise": (v) =>
    `El ajuste se aparta de las aplicaciones más de lo que explican la medición y la pesada (residuo ponderado ${significant(v.weightedResidual, 2)}; cerca de 1 sería solo de ellas).`,
  "scattering-known": (v) =>
    `Lo que dispersa junto a sus blancos se conoce con un error de alrededor del ${percent(v.relativeUncertainty, 1)}.`,
  "scattering-is-bound": (v) =>
    `Solo conocemos una cota de lo que dispersa: el tono pleno devuelve el ${percent(v.masstoneY)}, y el ajuste lo deja abierto en \u00b1\u00a0${percent(v.relativeUncertainty, 1)}.`,

  "ladder-does-not-reach": (v) =>
    "palest" in v
      ? `Ningún rebaje llega a L* ${decimals(v.L, 0)}: la escala va de L* ${decimals(v.darkest, 0)} a ${decimals(v.palest, 0)}.`
      : `Ningún rebaje llega a L* ${decimals(v.L, 0)}: no hay ninguno registrado.`,
  "neighbours-too-far-apart": (v) =>
    `L* ${decimals(v.L, 0)} cae entre rebajes que distan ${decimals(v.gap, 0)} de L*; más de ${decimals(v.limit, 0)} no se salva sin un ajuste.`,
  "film-needs-masstone-or-two-grounds": () =>
    "Una película sola no dice qué absorbe y qué dispersa: lo diría un tono pleno, o películas sobre dos fondos.",
  "film-tells-nothing": (v) =>
    `En ${wavelengths(v.wavelengths)} la película cambia su fondo demasiado poco para decir qué absorbe y qué dispersa.`,
  "no-such-white": (v) => `No se rebajó nada en ${within(v.white)}.`,
};

type NamedTint = { readonly tint: string; readonly white: string };

/** "titanium-white 1:20" as "El rebaje 1:20 en titanium white". */
function letDown({ tint, white }: NamedTint): string {
  return tint.startsWith(`${white} `)
    ? `El rebaje ${tint.slice(white.length + 1)} en ${within(white)}`
    : `El rebaje ${tint}`;
}

function drawdown(name: string): string {
  const [, white, ratio] = /^(\S+) (\S+)$/.exec(name) ?? [];
  return white === undefined || ratio === undefined
    ? name === "masstone"
      ? "el tono pleno"
      : `la aplicación ${within(name)}`
    : `el rebaje ${ratio} en ${within(white)}`;
}

function wavelengths(count: number): string {
  return `${count} ${count === 1 ? "longitud" : "longitudes"} de onda`;
}

function luminances(one: number, other: number): string {
  return `Y ${percent(one)} frente a ${significant(other * 100, 2)}`;
}
