import { worded } from "../by-rule.ts";
import type { WordingsOf } from "../../quantities/statement.ts";
import type { MixingStatement } from "../en/statements-mixing.ts";
import { listed, of, within } from "./phrases.ts";

/** Why a mix is not predicted, not shown as a film, or not understood; the pages' scripts carry these too. */
export const MIXING_STATEMENTS: WordingsOf<MixingStatement> = {
  "nothing-mixed": () => "Rien n’est encore mélangé\u202f: donner à une peinture une part ou plus.",
  "paint-not-fitted": ({ paint, reason }) =>
    `${paint} ne peut être prévu dans un mélange.${reason === "" ? "" : ` ${reason}`}`,
  "paint-not-let-down-in": ({ paint, white }) =>
    `${paint} n’a pas été essayé dans ${within(white)}, et l’on n’en sait rien là. Choisir un autre blanc.`,
  "white-not-read": ({ white }) => `${white} n’a pas été mesuré, et ne peut être montré seul.`,
  "paints-read-unlike": ({ first, other }) =>
    `${first} et ${within(other)} ont été mesurés par des instruments de géométrie différente, et ne peuvent être additionnés.`,
  "density-not-recorded": ({ paints }) =>
    `Ce que pèse un millilitre ${of(listed(paints.map(within)))} n’est pas consigné. Mélanger plutôt au poids.`,
  "pigment-share-not-recorded": ({ paint }) =>
    `Combien de pigment contient ${within(paint)} n’est pas consigné, et cela ne peut être mélangé comme peinture.`,
  "white-films-not-read": ({ white }) =>
    `Aucun film mince ${of(within(white))} n’a été mesuré\u202f: seule une couche qui couvre peut être montrée.`,
  "medium-films-not-read": ({ medium }) =>
    `Aucun film mince ${of(within(medium))} n’a été mesuré, et ce qu’il fait à la couleur n’est pas connu.`,
  "grounds-not-read": () =>
    "Aucune carte de contraste n’est consignée\u202f: seule une couche qui couvre peut être montrée.",
  "film-needs-let-downs": () =>
    "L’une de ces peintures n’a jamais été dégradée dans ce blanc\u202f: seule une couche qui couvre peut être montrée.",
  "no-such-paint": ({ slug, near }) =>
    `Il n’y a pas ici de peinture «\u202f${slug}\u202f»${near === undefined ? "" : `\u202f; peut-être ${near}`}.`,
  "no-such-parts": ({ paint, parts }) =>
    `«\u202f${parts}\u202f» n’est pas un nombre de parts\u202f; ${within(paint)} compte pour une part.`,
  "too-many-colours": ({ most }) =>
    `On ne mélange pas plus de ${most} couleurs\u202f; les autres sont laissées de côté.`,
  "no-such-choice": ({ key, value }) =>
    `«\u202f${value}\u202f» n’est pas un choix pour «\u202f${key}\u202f»\u202f; le choix ordinaire est montré.`,
  "no-colour-notation": ({ text }) =>
    text === ""
      ? "Écrire une couleur\u202f: une notation Munsell (5PB 4/2), L*a*b* (42 \u22121 \u22127) ou une couleur d’écran (#6b6f76)."
      : `«\u202f${text}\u202f» n’est pas une couleur que cette page sache lire\u202f: essayer 5PB 4/2, 42 \u22121 \u22127 ou #6b6f76.`,
  "no-surface-colour": ({ text }) =>
    `Aucune peinture ne peut avoir la couleur ${text}\u202f: elle sort de ce qu’une surface peut renvoyer.`,
};

export const mixingSentence = (statement: MixingStatement): string =>
  worded(MIXING_STATEMENTS, statement);
