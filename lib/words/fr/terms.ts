import type { SeenChange } from "../../permanence/grey-scale.ts";
import { EXPECTATIONS } from "../../permanence/expected-lightfastness.ts";
import { DRYING_CLASSES, EXPECTED, FINISHES, OIL_CLASSES, OPACITIES } from "./closed-words.ts";

/** Gloss of a trade term, where a page first meets it. */
export const TRADE = {
  "ton plein":
    "la couleur telle qu’elle sort du tube, en un film assez épais pour couvrir son fond",
  "sous-ton": "la couleur d’un film mince sur du blanc",
  dégradé: "la peinture mélangée à du blanc",
  "L* a* b*":
    "clarté de 0 à 100, puis du vert au rouge et du bleu au jaune\u202f; C* est la distance au gris",
  Munsell: "teinte, valeur de 0 (noir) à 10 (blanc), chroma\u202f; N est un neutre",
  "indice d’huile":
    "grammes d’huile pour 100 g de pigment, dans la peinture telle que nous la faisons",
  "pouvoir colorant": "jusqu’où un peu de couleur porte dans un blanc",
  reflet:
    "la part spéculaire\u202f: un noir brillant paraît plus profond, et un instrument peut compter le reflet ou le laisser de côté",
  "d/8": "éclairée de tous côtés et lue à 8° de la verticale, le reflet compté ou laissé de côté",
  "catégories I\u2013V":
    "solidité à la lumière, selon le changement d’une couleur dans un essai normalisé\u202f; I est la meilleure",
  "laine bleue": "huit laines teintes qui passent l’une après l’autre, la 8 en dernier",
  "gras sur maigre": "plus d’huile dans chaque couche que dans celle du dessous",
} as const satisfies Record<string, string>;

/** Words of closed sets as a page prints them; a word that is not here is its own. An expectation never reads like a category. */
/** What an eye that saw both halves would say of a change. */
const CHANGES: Readonly<Record<SeenChange, string>> = {
  unchanged: "inchangé",
  "hardly changed": "à peine changé",
  "changed slightly": "légèrement changé",
  changed: "changé",
  "changed much": "très changé",
  "changed greatly": "complètement changé",
};

export const TERMS: Readonly<Record<string, string>> = {
  ...CHANGES,
  ...DRYING_CLASSES,
  ...OIL_CLASSES,
  ...OPACITIES,
  ...FINISHES,
  short: "court",
  long: "long",
  stiff: "ferme",
  ropy: "filant",
  none: "aucune",
  slight: "légère",
  marked: "marquée",
  ...Object.fromEntries(
    EXPECTATIONS.map(({ expectation }) => [
      expectation,
      `à prévoir\u202f: ${EXPECTED[expectation]}`,
    ]),
  ),
};
