import type { COMPARE_PAGES as ENGLISH_PAGES } from "../en/compare-pages.ts";
import type { AnyWords } from "../any-words.ts";
import { listed, of, within } from "./phrases.ts";

/** The pages that set colours side by side; the page's script carries these words too, so nothing else is imported here. */
export const COMPARE_PAGES: AnyWords<typeof ENGLISH_PAGES> = {
  heading: "Couleurs côte à côte",
  lead: "De deux à quatre couleurs, pures et dans chaque blanc\u202f; puis ce qui diffère, ce qui est trop proche pour trancher, et ce qui est pareil.",
  description: (names) =>
    `${listed(names)} côte à côte\u202f: dans les blancs, force, huile, séchage, permanence, précautions et pigments.`,
  pairHeading: (names) => listed(names),
  panelTitle: (names) => `Côte à côte\u202f: ${listed(names)}`,
  missing: "non indiqué",
  swatches: {
    alone: "Pure",
    notRead: "non mesuré",
    notTried: "non essayé",
    notReached: "non atteint",
    differs: undefined,
    "not told": undefined,
    same: "Pareil.",
    "not stated": undefined,
  },
  summary: (differs, notTold) => {
    const different = inShort(differs);
    const close = inShort(notTold).filter((name) => !different.includes(name));
    return [
      different.length === 0
        ? "Rien de ce que nous savons ne les distingue."
        : `Elles diffèrent par\u202f: ${listed(different)}.`,
      close.length === 0 ? "" : `Trop proche pour trancher\u202f: ${listed(close)}.`,
    ]
      .join(" ")
      .trim();
  },
  parts: {
    differs: { id: "differs", heading: "Ce qui diffère" },
    "not told": { id: "not-told", heading: "Trop proche pour trancher" },
    same: { id: "same", heading: "Ce qui est pareil" },
    "not stated": { id: "not-stated", heading: "Inconnu pour l’une d’elles" },
    figures: { id: "in-figures", heading: "Les échantillons en chiffres" },
  },
  foldedFigures: "Notations Munsell, a* et b*, parts de blanc",
  folded: (heads) => heads.map((head, i) => (i === 0 ? head : lowered(head))).join(", "),
  unstated: (heads) => `Inconnu pour toutes\u202f: ${listed(heads.map(lowered))}.`,
  property: "Propriété",
  finding: "Ce que cela veut dire",
  rows: {
    masstone: { head: "Pure", unit: "Munsell" },
    strength: { head: "Force" },
    whitens: { head: "Blanchit" },
    opacity: { head: "Opacité" },
    oilByMass: { head: "Huile", unit: "pour 100 g de pigment" },
    oilByVolume: { head: "Huile en volume", unit: "pour 100 cm\u00b3 de pigment" },
    finish: { head: "Aspect" },
    drying: { head: "Sèche", unit: "au toucher" },
    lightfastness: { head: "Tenue" },
    label: { head: "Avertissement" },
    sale: { head: "Limites à la vente" },
    pigments: { head: "Pigments" },
    vehicle: { head: "Liant" },
    dispersion: { head: "Broyage" },
  },
  white: {
    head: (white) => `Dans ${within(white)}`,
    unit: (level) => `à L*\u00a0${level}`,
  },
  partsOfWhite: {
    head: "Blanc pour un ton moyen",
    unit: (white) => `parts ${of(within(white))} pour 1 part de la couleur, tube pour tube`,
  },
  cells: {
    tint: (a, b) => `a*\u00a0${a}, b*\u00a0${b}`,
    strength: (reference) => `${of(within(reference))}, tube pour tube`,
    isReference: "la référence elle-même",
    gloss: (gloss) => `${gloss} à 60\u00b0`,
    nothingClassified: "Aucun nécessaire",
    noData: "Aucune donnée de danger",
    noLimit: "Aucune consignée",
    limited: (markets) => `Seulement sur base légale\u202f: ${listed(markets)}`,
    asked: (markets) => `Sous conditions\u202f: ${listed(markets)}`,
    share: (name, share) => `${name}, ${share}`,
    dispersion: { mulled: "À la molette", milled: "À la machine" },
    pictograms: (names) => `Pictogrammes\u202f: ${listed(names.map((name) => name.toLowerCase()))}`,
  },
  form: {
    heading: "Choisir deux, trois ou quatre couleurs",
    fold: "Choisir d’autres couleurs",
    result: "Côte à côte",
    without:
      "Pour choisir ici des couleurs, il faut le script de la page et un serveur web. Les comparaisons ci-dessous s’en passent.",
    tooFew: (first) =>
      first === undefined ? "Choisir deux couleurs ou plus." : `${first}, et quelle autre\u202f?`,
    unknown: (slug, near) =>
      `Il n’y a pas ici de couleur «\u202f${slug}\u202f»${near === undefined ? "" : `\u202f; peut-être ${near}`}.`,
    some: (shown, all) =>
      `Voici ${shown} des ${all} couleurs. Toute autre vient de sa propre fiche, par le lien pour comparer.`,
    tooMany: "Quatre tiennent côte à côte\u202f; en retirer une d’abord.",
    leftOut: "Quatre tiennent côte à côte\u202f; les autres sont laissées de côté.",
    failed:
      "Les chiffres n’ont pas pu être chargés. Ouverte depuis un dossier, une page ne peut pas lire d’autres fichiers\u202f: ouvrir le site par un serveur web.",
  },
  pairs: "Souvent demandées",
  more: "Choisir d’autres couleurs",
  besides: "Comparer",
  beside: (name) => `Avec ${within(name)}`,
  besideAny: "Avec une autre couleur",
  fromCatalogue: "En mettre de deux à quatre côte à côte",
};

function lowered(head: string): string {
  return head.charAt(0).toLowerCase() + head.slice(1);
}

/** What rows are about, in a word within a sentence, each once. */
const IN_SHORT: Readonly<Record<string, string>> = {
  masstone: "le ton plein",
  white: "ce qu’elles font dans le blanc",
  strength: "la force",
  whitens: "le pouvoir blanchissant",
  parts: "la force",
  opacity: "l’opacité",
  oilByMass: "l’huile",
  oilByVolume: "l’huile",
  finish: "l’aspect",
  drying: "le séchage",
  lightfastness: "la tenue à la lumière",
  label: "les avertissements",
  sale: "les lieux où la vente est permise",
  pigments: "les pigments",
  vehicle: "le liant",
  dispersion: "le broyage",
};

function inShort(keys: readonly string[]): string[] {
  return [...new Set(keys.map((key) => IN_SHORT[key.split(".")[0] ?? key] ?? key))];
}
