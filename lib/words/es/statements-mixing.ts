import { worded } from "../by-rule.ts";
import type { WordingsOf } from "../../quantities/statement.ts";
import type { MixingStatement } from "../en/statements-mixing.ts";
import { listed, within } from "./phrases.ts";

/** Why a mix is not predicted, not shown as a film, or not understood; the pages' scripts carry these too. */
export const MIXING_STATEMENTS: WordingsOf<MixingStatement> = {
  "nothing-mixed": () => "Aún no se ha mezclado nada: dé a una pintura una parte o más.",
  "paint-not-fitted": ({ paint, reason }) =>
    `${paint} no puede preverse en una mezcla.${reason === "" ? "" : ` ${reason}`}`,
  "paint-not-let-down-in": ({ paint, white }) =>
    `${paint} no se probó en ${within(white)}, así que allí no se sabe nada. Elija otro blanco.`,
  "white-not-read": ({ white }) => `${white} no se midió, así que no puede mostrarse solo.`,
  "paints-read-unlike": ({ first, other }) =>
    `${first} y ${within(other)} se midieron con instrumentos de distinta geometría, así que no pueden sumarse.`,
  "density-not-recorded": ({ paints }) =>
    `Cuánto pesa un mililitro de ${listed(paints.map(within))} no está registrado. Mezcle mejor por peso.`,
  "pigment-share-not-recorded": ({ paint }) =>
    `Cuánto pigmento hay en ${within(paint)} no está registrado, así que no puede mezclarse como pintura.`,
  "white-films-not-read": ({ white }) =>
    `No se midieron películas finas de ${within(white)}: solo puede mostrarse una capa que cubre.`,
  "medium-films-not-read": ({ medium }) =>
    `No se midieron películas finas de ${within(medium)}, así que no se sabe qué hace al color.`,
  "grounds-not-read": () =>
    "No hay ninguna carta de contraste registrada: solo puede mostrarse una capa que cubre.",
  "film-needs-let-downs": () =>
    "Una de estas pinturas no se rebajó nunca en este blanco: solo puede mostrarse una capa que cubre.",
  "no-such-paint": ({ slug, near }) =>
    `Aquí no hay ninguna pintura «${slug}»${near === undefined ? "" : `; quizá ${near}`}.`,
  "no-such-parts": ({ paint, parts }) =>
    `«${parts}» no es un número de partes; ${within(paint)} cuenta como una parte.`,
  "too-many-colours": ({ most }) =>
    `No se mezclan más de ${most} colores; los demás se dejan fuera.`,
  "no-such-choice": ({ key, value }) =>
    `«${value}» no es una opción para «${key}»; se muestra la usual.`,
  "no-colour-notation": ({ text }) =>
    text === ""
      ? "Escriba un color: una notación Munsell (5PB 4/2), L*a*b* (42 \u22121 \u22127) o un color de pantalla (#6b6f76)."
      : `«${text}» no es un color que esta página sepa leer: pruebe con 5PB 4/2, 42 \u22121 \u22127 o #6b6f76.`,
  "no-surface-colour": ({ text }) =>
    `Ninguna pintura puede tener el color ${text}: queda fuera de lo que una superficie devuelve.`,
};

export const mixingSentence = (statement: MixingStatement): string =>
  worded(MIXING_STATEMENTS, statement);
