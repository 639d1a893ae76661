import { OPTICS } from "./optics.ts";
import { PAINT } from "./paint.ts";
import { alike, type Texts } from "../texts.ts";
import { LIGHTFASTNESS, NOT_KNOWN_YET, NOT_READ_YET } from "../shared-rows.ts";

/** The pages of all colours. */
export const CATALOGUE = {
  heading: { en: "Colours", de: "Farben", fr: "Couleurs", es: "Colores" },
  filters: {
    label: {
      en: "Narrow the range",
      de: "Das Sortiment eingrenzen",
      fr: "Restreindre la gamme",
      es: "Reducir la gama",
    },
    families: { en: "Only", de: "Nur", fr: "Seulement", es: "Solo" },
    heading: { en: "that", de: "die", fr: "qui", es: "que" },
    found: {
      en: "{count} of {all} colours",
      de: "{count} von {all} Farben",
      fr: "{count} couleurs sur {all}",
      es: "{count} de {all} colores",
    },
    nothing: {
      en: "No colour is all of that.",
      de: "Keine Farbe erfüllt all das.",
      fr: "Aucune couleur ne remplit toutes ces conditions.",
      es: "Ningún color cumple todo eso.",
    },
  },
  filterNames: {
    opaque: { en: "hide", de: "decken", fr: "couvrent", es: "cubren" },
    transparent: {
      en: "are transparent",
      de: "lasieren",
      fr: "sont transparentes",
      es: "son transparentes",
    },
    fast: { en: "dry fast", de: "schnell trocknen", fr: "sèchent vite", es: "secan deprisa" },
    slow: {
      en: "dry slowly",
      de: "langsam trocknen",
      fr: "sèchent lentement",
      es: "secan despacio",
    },
    lightfast: {
      en: "last (category I or II)",
      de: "lichtecht sind (Kategorie I oder II)",
      fr: "tiennent (catégorie I ou II)",
      es: "duran (categoría I o II)",
    },
    unwarned: {
      en: "need no warning",
      de: "keinen Warnhinweis brauchen",
      fr: "ne demandent aucun avertissement",
      es: "no necesitan advertencia",
    },
  },
  inThisWhite: (white: string) => ({
    en: `were tried in ${white}`,
    de: `in ${white} erprobt sind`,
    fr: `ont été essayées dans ${white}`,
    es: `se probaron en ${white}`,
  }),
  gridLead: {
    en: "Every colour, alone above and with white below, brought to a middle tone.",
    de: "Jede Farbe: oben allein, unten mit Weiß auf einen Mittelton gebracht.",
    fr: "Chaque couleur, pure en haut et avec du blanc dessous, menée à un ton moyen.",
    es: "Cada color, puro arriba y con blanco debajo, llevado a un tono medio.",
  },
  orders: {
    grid: {
      en: "Swatches by family",
      de: "Farbfelder nach Familie",
      fr: "Échantillons par famille",
      es: "Muestras por familia",
    },
    family: {
      en: "Table by family",
      de: "Tabelle nach Familie",
      fr: "Tableau par famille",
      es: "Tabla por familia",
    },
    value: { en: "By value", de: "Nach Helligkeit", fr: "Par valeur", es: "Por valor" },
    hue: { en: "By hue", de: "Nach Buntton", fr: "Par teinte", es: "Por matiz" },
    drying: { en: "By drying", de: "Nach Trocknung", fr: "Par séchage", es: "Por secado" },
    permanence: {
      en: "By permanence",
      de: "Nach Beständigkeit",
      fr: "Par permanence",
      es: "Por permanencia",
    },
    oil: { en: "By oil", de: "Nach Öl", fr: "Par huile", es: "Por aceite" },
    strength: { en: "By strength", de: "Nach Farbstärke", fr: "Par force", es: "Por fuerza" },
    whites: OPTICS.inTheWhites.orders,
  },
  leads: {
    family: {
      en: "By family, then by name.",
      de: "Nach Familie, dann nach Name.",
      fr: "Par famille, puis par nom.",
      es: "Por familia, luego por nombre.",
    },
    value: {
      en: "From the darkest to the lightest, as they come from the tube.",
      de: "Von der dunkelsten zur hellsten, so wie sie aus der Tube kommen.",
      fr: "De la plus sombre à la plus claire, telles qu’elles sortent du tube.",
      es: "Del más oscuro al más claro, tal como salen del tubo.",
    },
    hue: {
      en: "Neutrals first, then round the hue circle.",
      de: "Unbunte zuerst, dann um den Farbkreis.",
      fr: "Les neutres d’abord, puis autour du cercle des teintes.",
      es: "Primero los neutros, luego alrededor del círculo de matices.",
    },
    drying: {
      en: "The fastest first. Where the days are a range, its middle decides the order; count on the later day.",
      de: "Die schnellste zuerst. Wo die Tage ein Bereich sind, entscheidet dessen Mitte; rechnen Sie mit dem späteren Tag.",
      fr: "Les plus rapides d’abord. Là où les jours sont un intervalle, son milieu règle l’ordre\u202f; mieux vaut compter sur le dernier jour.",
      es: "Los más rápidos primero. Donde los días son un intervalo, el orden lo decide su centro; más vale contar con el último día.",
    },
    permanence: {
      en: "Most lightfast first. Of one category what was tested stands first: our own test counts for more than a supplier\u2019s word, and that for more than what is only expected.",
      de: "Die lichtechteste zuerst. In einer Kategorie steht das Geprüfte voran: Unsere eigene Prüfung zählt mehr als die Angabe eines Lieferanten und diese mehr als das, was nur zu erwarten ist.",
      fr: "Les plus solides à la lumière d’abord. Dans une catégorie, ce qui a été testé vient en tête\u202f: notre propre essai vaut plus que la parole d’un fournisseur, et celle-ci plus que ce qui est seulement à prévoir.",
      es: "Los más sólidos a la luz primero. En una misma categoría va delante lo ensayado: nuestro propio ensayo vale más que la palabra de un proveedor, y esta más que lo que solo es previsible.",
    },
    oil: PAINT.byOil.lead,
    strength: OPTICS.byStrength.lead,
  },
  columns: {
    colour: { en: "Colour", de: "Farbe", fr: "Couleur", es: "Color" },
    pigments: { en: "Pigments", de: "Pigmente", fr: "Pigments", es: "Pigmentos" },
    munsell: alike("Munsell"),
    lightfastness: LIGHTFASTNESS,
    opacity: { en: "Opacity", de: "Deckvermögen", fr: "Opacité", es: "Opacidad" },
    drying: { en: "Drying", de: "Trocknung", fr: "Séchage", es: "Secado" },
    oil: { en: "Oil index", de: "Ölindex", fr: "Indice d’huile", es: "Índice de aceite" },
  },
  notRead: { en: "not read", de: "nicht gemessen", fr: "non mesuré", es: "no medido" },
  count: (count: number) => ({
    en: `${count} colour${count === 1 ? "" : "s"}`,
    de: `${count} Farbe${count === 1 ? "" : "n"}`,
    fr: `${count} couleur${count === 1 ? "" : "s"}`,
    es: `${count} ${count === 1 ? "color" : "colores"}`,
  }),
  groups: {
    neutral: { en: "Neutrals", de: "Unbunte", fr: "Neutres", es: "Neutros" },
    notStated: NOT_KNOWN_YET,
  },
  noSwatch: NOT_READ_YET,
  madeNoMore: {
    en: "discontinued",
    de: "nicht mehr hergestellt",
    fr: "fabrication arrêtée",
    es: "descatalogado",
  },
  /** Under a tint that stands in for a colour which has not been read by itself. */
  tintAlone: {
    en: "shown mixed with white",
    de: "mit Weiß gemischt gezeigt",
    fr: "montré mêlé de blanc",
    es: "mostrado con blanco",
  },
  caption: (heading: string) => ({
    en: `Colours: ${heading}`,
    de: `Farben: ${heading}`,
    fr: `Couleurs\u202f: ${heading}`,
    es: `Colores: ${heading}`,
  }),
  value: (from: number) => ({
    en: `Value ${from} to ${from + 1}`,
    de: `Helligkeit ${from} bis ${from + 1}`,
    fr: `Valeur ${from} à ${from + 1}`,
    es: `Valor ${from} a ${from + 1}`,
  }),
} satisfies Texts;
