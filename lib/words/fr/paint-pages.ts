import type { PAINT_PAGES as ENGLISH_PAGES } from "../en/paint-pages.ts";
import type { AnyWords } from "../any-words.ts";
import { listed } from "./phrases.ts";

/** What the sheet says of the paint as made: batch, fill, drying in figures, lightfastness by what it rests on, label text. */
export const PAINT_PAGES: AnyWords<typeof ENGLISH_PAGES> = {
  oilLists: {
    paste: "La pâte, telle qu’on la voit",
    slab: "Au marbre et à la broyeuse",
    range: "Dans la gamme",
  },
  places: (name, byMass, byVolume, of) =>
    `En comptant depuis la plus maigre, ${name} est ${ordinal(byMass)} sur ${of} couleurs en poids, et ${ordinal(byVolume)} en volume.`,
  batch: {
    caption: "Ce qu’il faut peser, et ce qui en sort",
    columns: {
      what: "Pigment",
      size: (pigmentG) => (pigmentG >= 1000 ? `${pigmentG / 1000}\u00a0kg` : `${pigmentG}\u00a0g`),
    },
    rows: {
      pigment: (name) => `${name}, g`,
      oil: (name) => `${name}, g`,
      atFirst: "Huile pour commencer, g",
      heldBack: "Huile à garder en réserve, g",
      addition: (name) => `${name}, g`,
      paintG: "Peinture, g",
      paintMl: "Peinture, ml",
      loss: "Perte au marbre ou à la broyeuse, ml",
      yield: "À conditionner, ml",
      tubes: (ml) => `Tubes de ${ml}\u00a0ml`,
      cost: (currency) => `Coût, ${currency}`,
      tubesAny: "Tubes",
    },
    ofTubes: (parts) =>
      `Sa fiche la pèse à partir de tubes\u202f: pour 100\u00a0g, ${listed(parts)}, sans rien broyer. Les poids donnés ici sont ceux de la même couleur faite de pigment sec.`,
    unpriced: (names) =>
      `Le coût ne compte pas ${names.join(", ")}\u202f: nous n’en avons pas le prix.`,
    noTubes: "Aucune taille de tube n’est consignée\u202f; les tubes ne sont donc pas comptés.",
    none: (because) => `Aucune fabrication ne peut être calculée. ${because}`,
    any: {
      heading: "Toute quantité",
      amount: "Quantité",
      by: "Unité",
      tube: "Tube, ml",
      caption: "Cette fabrication",
      fault: "Donner une quantité supérieure à 0.",
      sizes: {
        pigmentG: "g de pigment",
        paintG: "g de peinture",
        paintMl: "ml de peinture",
        tubes: "tubes",
      },
      figure: "À peser, et ce qui en sort",
      value: "Quantité",
    },
  },
  fill: {
    caption: "Ce que contiennent pots et tubes, en grammes",
    columns: {
      filling: "Contenu",
      takes: "100 g occupent, ml",
      container: (ml) => `${ml}\u00a0ml`,
    },
    fillings: {
      paint: "Peinture",
      poured: (name) => `${name}, sec, non tassé`,
      tapped: (name) => `${name}, sec, tassé`,
    },
    note: "118\u00a0ml font un pot de 4 onces liquides américaines. Un pigment sec se tasse\u202f: un pot rempli en versant n’est plus plein une semaine après.",
  },
  drying: {
    contributions: "Ce qui l’accélère ou le ralentit",
    columns: { what: "Quoi", effect: "Effet", times: "Facteur", standing: "Origine" },
    signs: {
      faster: "plus vite",
      none: "sans\u00a0effet",
      slower: "plus lent",
      "either way": "l’un\u00a0ou\u00a0l’autre",
    },
    base: "Huile de lin seule",
    baseValue: (days) => `${days} au toucher`,
    note: "En multipliant, on obtient les jours à prévoir.",
    trials: {
      caption: "Nos propres essais",
      alone: "La couleur seule",
      inWhite: (white) => `Dans ${white}`,
      columns: {
        of: "Film de",
        touch: "Sec au toucher",
        through: "Sec à cœur",
        film: "Film humide",
        temperature: "Température",
        humidity: "Humidité",
        date: "Date",
      },
      none: "\u2013",
    },
    inWhites: {
      caption: "Mélangée à du blanc",
      columns: { white: "Blanc", class: "Séchage", days: "Sec au toucher" },
      note: (parts) =>
        `Calculé pour 1 part de la couleur et ${parts} de blanc en poids de peinture, les huiles et le siccatif en proportion. Notre propre essai remplace l’estimation.`,
    },
    grounds: "Préparations",
  },
  permanence: {
    ownExposure: (category) =>
      `Elle a changé comme le permet la catégorie\u00a0${category}, dans notre propre exposition\u202f; ce n’est pas tout l’essai de la norme.`,
    names: { "own exposure": "Changement de couleur comme en catégorie" },
    orders: {
      own: (category) => `Comme catégorie\u00a0${category}, dans notre propre essai`,
      stated: (category) => `Catégorie\u00a0${category}, déclarée\u202f; non testée ici`,
    },
    cell: "essai de l’atelier",
    forms: {
      caption: "La couleur seule et en dégradé",
      columns: {
        form: "Forme",
        change: "Changement, \u0394E*ab",
        category: "Comme en catégorie",
        standard: "Norme",
        exposure: "Exposition",
      },
      names: { masstone: "Seule", tint: "En dégradé" },
      stated: "déclarée",
      notExposed: "non exposée",
      note: "Une note vaut pour ce qui a été exposé\u202f; l’autre forme peut différer d’une catégorie ou plus.",
    },
    contradictions: "Où notre exposition et l’indication du fournisseur se contredisent",
  },
  labelText: {
    lead: "À recopier sur une étiquette\u202f: vérifier que le lot est bien celui qu’on remplit. Calculé d’après ces relevés\u202f: le fabricant répond de l’étiquette, la loi de chaque marché décide de ce qu’elle doit porter.",
    vehicle: "Liant\u202f: ",
    pigment: "Pigment\u202f: ",
    pigments: "Pigments\u202f: ",
    with: ", ",
    contents: "Contenu\u202f: ",
    ml: " ml",
    blank: "______",
    lot: "Lot\u202f: ",
    notForSale: "Pas encore classé, donc pas encore en vente.",
    pictograms: "Pictogrammes\u202f: ",
    frame: (frame) => `Éléments d’étiquetage selon ${frame}.`,
  },
  byOil: {
    mass: "Par masse de pigment",
    volume: "Par volume de pigment",
    lead: "La plus maigre d’abord. En poids, les pigments légers paraissent gourmands\u202f; en volume, ils se ressemblent beaucoup.",
    columns: { place: "Rang", colour: "Couleur", oilIndex: "En masse", byVolume: "En volume" },
    notStated: "Huile pas encore connue",
  },
};

function ordinal(place: number): string {
  return place === 1 ? "1re" : `${place}e`;
}
