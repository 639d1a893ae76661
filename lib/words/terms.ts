import type { Standing, StandingKind } from "../quantities/figure.ts";
import type { Language } from "../quantities/languages.ts";
import type { Family } from "../records/schema/terms.ts";
import { BOUNDS, SIGNAL_WORDS } from "./closed-sets.ts";
import { textsIn, type InEach } from "./in-each.ts";
import { saidIn } from "./texts.ts";
import type { Words } from "./words.ts";
import { WEIGHING_AND_MULLING } from "./shared-rows.ts";

/** Heading of each family of colours; `other` of those that have none. */
const FAMILIES: Readonly<Record<Family | "other", InEach>> = {
  white: { en: "Whites", de: "Weiß", fr: "Blancs", es: "Blancos" },
  black: { en: "Blacks", de: "Schwarz", fr: "Noirs", es: "Negros" },
  grey: { en: "Greys", de: "Grau", fr: "Gris", es: "Grises" },
  earth: { en: "Earths", de: "Erdfarben", fr: "Terres", es: "Tierras" },
  brown: { en: "Browns", de: "Braun", fr: "Bruns", es: "Pardos" },
  red: { en: "Reds", de: "Rot", fr: "Rouges", es: "Rojos" },
  orange: { en: "Oranges", de: "Orange", fr: "Oranges", es: "Naranjas" },
  yellow: { en: "Yellows", de: "Gelb", fr: "Jaunes", es: "Amarillos" },
  green: { en: "Greens", de: "Grün", fr: "Verts", es: "Verdes" },
  blue: { en: "Blues", de: "Blau", fr: "Bleus", es: "Azules" },
  violet: { en: "Violets", de: "Violett", fr: "Violets", es: "Violetas" },
  extender: {
    en: "Extender mediums",
    de: "Streckmedien",
    fr: "Médiums de charge",
    es: "Médiums de carga",
  },
  other: { en: "Others", de: "Übrige", fr: "Autres", es: "Otros" },
};

/** Headings of the studio's operations, by the hazard room's key. */
const OPERATIONS: Readonly<Record<string, InEach>> = {
  "weighing and mulling": WEIGHING_AND_MULLING,
  painting: { en: "Painting", de: "Malen", fr: "Peinture", es: "Pintar" },
  sanding: { en: "Sanding", de: "Schleifen", fr: "Ponçage", es: "Lijar" },
  "heating or spraying": {
    en: "Heating or spraying",
    de: "Erhitzen oder Sprühen",
    fr: "Chauffage ou pulvérisation",
    es: "Calentar o pulverizar",
  },
  cleaning: { en: "Cleaning up", de: "Reinigen", fr: "Nettoyage", es: "Limpiar" },
  disposal: { en: "Disposal", de: "Entsorgung", fr: "Élimination", es: "Eliminar" },
};

/** How a figure is known, in a word and in a few. */
const STANDINGS: Readonly<Record<StandingKind, { readonly word: InEach; readonly gloss: InEach }>> =
  {
    measured: {
      word: { en: "measured", de: "gemessen", fr: "mesuré", es: "medido" },
      gloss: {
        en: "our own reading",
        de: "unsere eigene Messung",
        fr: "notre propre mesure",
        es: "nuestra propia medición",
      },
    },
    derived: {
      word: { en: "worked out", de: "errechnet", fr: "calculé", es: "calculado" },
      gloss: {
        en: "from other figures of the sheet",
        de: "aus anderen Werten des Blatts",
        fr: "d’après d’autres chiffres de la fiche",
        es: "a partir de otras cifras de la ficha",
      },
    },
    estimated: {
      word: { en: "estimated", de: "geschätzt", fr: "estimé", es: "estimado" },
      gloss: {
        en: "from a handbook or a rule of thumb: a range or a class",
        de: "aus einem Handbuch oder nach Faustregel: ein Bereich oder eine Klasse",
        fr: "d’après un manuel ou une règle empirique\u202f: un intervalle ou une classe",
        es: "de un manual o una regla práctica: un intervalo o una clase",
      },
    },
    stated: {
      word: { en: "stated", de: "angegeben", fr: "déclaré", es: "declarado" },
      gloss: {
        en: "somebody’s word, as a supplier’s",
        de: "die Angabe eines anderen, etwa eines Lieferanten",
        fr: "sur la parole d’autrui, d’un fournisseur par exemple",
        es: "según la palabra de otros, por ejemplo un proveedor",
      },
    },
    "not stated": {
      word: { en: "not stated", de: "keine Angabe", fr: "non indiqué", es: "no indicado" },
      gloss: {
        en: "we do not know yet; the sheet says what it would take",
        de: "noch nicht bekannt; das Blatt sagt, was dazu nötig wäre",
        fr: "nous ne le savons pas encore\u202f; la fiche dit ce qu’il faudrait pour le savoir",
        es: "aún no lo sabemos; la ficha dice qué haría falta para saberlo",
      },
    },
  };

/** What the weakest of the figures behind a figure is. */
const ROOTS: Readonly<Record<Exclude<Standing, "measured">, InEach>> = {
  stated: {
    en: "partly from a supplier’s figure",
    de: "zum Teil aus Angaben eines Lieferanten",
    fr: "en partie d’après un chiffre du fournisseur",
    es: "en parte de una cifra del proveedor",
  },
  estimated: {
    en: "partly from an estimate",
    de: "zum Teil aus einer Schätzung",
    fr: "en partie d’après une estimation",
    es: "en parte de una estimación",
  },
  derived: {
    en: "from figures worked out",
    de: "aus errechneten Werten",
    fr: "d’après des chiffres calculés",
    es: "de cifras calculadas",
  },
};

/** What each pictogram is called: as Annex V of Regulation (EC) No 1272/2008 has them, the French and the Spanish from memory. @source clp-1272-2008 */
const PICTOGRAMS: Readonly<Record<string, InEach>> = {
  GHS01: {
    en: "Exploding bomb",
    de: "Explodierende Bombe",
    fr: "Bombe explosant",
    es: "Bomba explotando",
  },
  GHS02: { en: "Flame", de: "Flamme", fr: "Flamme", es: "Llama" },
  GHS03: {
    en: "Flame over circle",
    de: "Flamme über einem Kreis",
    fr: "Flamme au-dessus d’un cercle",
    es: "Llama sobre círculo",
  },
  GHS04: { en: "Gas cylinder", de: "Gasflasche", fr: "Bouteille à gaz", es: "Bombona de gas" },
  GHS05: { en: "Corrosion", de: "Ätzwirkung", fr: "Corrosion", es: "Corrosión" },
  GHS06: {
    en: "Skull and crossbones",
    de: "Totenkopf mit gekreuzten Knochen",
    fr: "Tête de mort sur deux tibias",
    es: "Calavera y tibias cruzadas",
  },
  GHS07: {
    en: "Exclamation mark",
    de: "Ausrufezeichen",
    fr: "Point d’exclamation",
    es: "Signo de exclamación",
  },
  GHS08: {
    en: "Health hazard",
    de: "Gesundheitsgefahr",
    fr: "Danger pour la santé",
    es: "Peligro para la salud",
  },
  GHS09: { en: "Environment", de: "Umwelt", fr: "Environnement", es: "Medio ambiente" },
};

/** Words of closed sets that stand by themselves on a page, in one language. */
export function termsIn(
  language: Language,
): Pick<
  Words,
  "bounds" | "families" | "operations" | "standings" | "restsOn" | "pictograms" | "signalWords"
> {
  return {
    bounds: textsIn(language, BOUNDS),
    signalWords: textsIn(language, SIGNAL_WORDS),
    families: textsIn<Language, string, Family | "other">(language, FAMILIES),
    operations: textsIn(language, OPERATIONS),
    standings: saidIn(language, STANDINGS),
    restsOn: (root) => ROOTS[root][language],
    pictograms: textsIn(language, PICTOGRAMS),
  };
}
