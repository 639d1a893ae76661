import type { SHEET_PAGE as ENGLISH_PAGE } from "../en/sheet-page.ts";
import type { AnyWords } from "../any-words.ts";
import { MEASURES, wordOf } from "./closed-words.ts";
import { listed, of } from "./phrases.ts";

/** What a colour's page says to a painter, and its bench page to whoever makes the paint. */
export const SHEET_PAGE: AnyWords<typeof ENGLISH_PAGE> = {
  asOf: (date) => `État au ${date}.`,
  alone: "pur",
  levels: { "70": "pâle", "50": "moyen", "30": "sombre" },
  notReached: "non atteint",
  tintsDescription: (name, parts) =>
    `${name} avec du blanc, par clarté\u202f: ${parts.join("\u202f; ")}.`,
  tintCell: (level, white, munsell) => `${level} dans ${white}, ${munsell}`,
  whiteSentence: (count) =>
    count === 0
      ? "Un blanc. Aucune de nos couleurs n’y a encore été essayée."
      : count === 1
        ? "Un blanc. Une couleur de la gamme y a été essayée."
        : `Un blanc. ${count} couleurs de la gamme y ont été essayées.`,
  extenderSentence: "Un médium pour les glacis et pour le corps, non un blanc.",
  notTried: "Pas encore essayée dans le blanc.",
  noPrice: (markets) =>
    `Pas de prix ici\u202f: la vente n’en est pas libre en tout lieu (${listed(markets)}).`,
  notForSale: "Pas encore en vente.",
  discontinued: (date) => `Fabrication arrêtée au ${date}.`,
  unknownHazard: "Pas encore classé\u202f: à traiter comme dangereux.",
  print: "Fiche à imprimer",
  compare: "Comparer",
  facts: {
    lasts: "Tenue",
    hides: "Opacité",
    dries: "Sèche",
    strength: "Force",
    whitens: "Blanchit",
    middleTone: "Au ton moyen",
    oil: "Huile",
    safety: "Sécurité",
  },
  asDrawn: {
    "coat-hides-as-drawn": "Couvre tel qu’appliqué",
    "masstone-by-both-grounds": "Ne couvre pas tel qu’appliqué",
    "masstone-is-a-film": "Ne couvre pas tel qu’appliqué",
  },
  dries: {
    fast: "Vite",
    medium: "Moyennement",
    slow: "Lentement",
    "very slow": "Très lentement",
  },
  oil: {
    "very low": "Très peu",
    low: "Peu",
    medium: "Moyen",
    high: "Beaucoup",
    "very high": "Énormément",
  },
  /** In place of a class, where an estimate reaches over several. */
  estimatedOil: "Non pesée",
  detail: {
    stated: {
      paint: (category) =>
        `catégorie\u00a0${category}, déclarée pour la peinture\u202f; non testée ici`,
      pigment: (category) =>
        `catégorie\u00a0${category}, déclarée par le fournisseur pour son pigment\u202f; non testée ici`,
      mixture: (category) =>
        `catégorie\u00a0${category}, déduite de ses pigments\u202f; le mélange n’a pas été testé ici`,
    },
    exposed: (category) => `catégorie\u00a0${category}, testée selon la norme`,
    own: (category) =>
      `notre propre essai à la fenêtre\u202f: a changé comme le permet la catégorie\u00a0${category}\u202f; vaut plus que la parole d’un fournisseur, moins que l’essai de la norme`,
    expected: "ce que fait prévoir son pigment\u202f; non testée ici",
    film: (film) => `${film} de film sec couvrent le noir et le blanc`,
    filmUnknown: "un film épais couvre le noir et le blanc",
    byDarkness: (hides) => `${hides}, parce qu’elle est sombre`,
    contrast: (ratio) => `rapport de contraste ${ratio}`,
    asDrawn: "sur une carte noire et blanche\u202f; l’épaisseur du film n’est pas consignée",
    days: (touch, through) =>
      through === undefined ? `${touch} au toucher` : `${touch} au toucher, ${through} à cœur`,
    trial: (days) => `${days}\u202f; notre essai`,
    trialInDoubt: (days) => `${days}\u202f; notre essai, mais un autre film a mis plus longtemps`,
    parts: (parts, white, by) =>
      `${parts} parts ${of(white)} jusqu’à un ton moyen, en ${wordOf(MEASURES, by)}`,
    reference: "les autres lui sont comparés",
    oil: (grams) => `${grams} de pigment`,
    unknown: "pas encore connu",
    noStrength: "aucune par lui-même\u202f: il allonge la peinture",
    lighter: "plus clair qu’un ton moyen par lui-même",
    never: "aucun film usuel ne couvre le noir et le blanc",
    noWarning: "tenir le pigment sec hors de l’air\u202f; les chiffons gras peuvent prendre feu",
    noWarningDryOil: "tenir le pigment sec hors de l’air",
    seeLabel: "toute l’étiquette sous Sécurité",
    unknownHazard: (names) => `aucune donnée de danger pour ${listed(names)}`,
  },
  brief: {
    stated: "déclarée, non testée",
    fromPigments: "d’après ses pigments, non testée",
    exposed: "testée selon la norme",
    own: "notre propre essai",
  },
  white: {
    names: { use: "Bon pour", whitens: "Blanchit", bright: "Clarté", yellow: "Jaune" },
    uses: {
      strongest:
        "Le plus fort de nos blancs\u202f: pour les tons pâles et pour couvrir. Un peu noie une couleur faible.",
      weakest:
        "Le plus doux de nos blancs\u202f: pour les voiles minces, et pour les tons qu’un blanc fort noierait.",
      fastest: "Le premier de nos blancs à sécher\u202f: pour les couches du dessous.",
      slowest:
        "Le dernier de nos blancs à sécher\u202f: pour les couches du dessus, et pour travailler dans le frais.",
    },
    whitens: (parts, reference, by) =>
      `${parts} parts mènent une part ${of(reference)} à un ton moyen, en ${wordOf(MEASURES, by)}\u202f; moins il en faut, plus il est fort.`,
    bright: (L) => `Clarté L*\u00a0${L} sur 100.`,
    yellow: (b) => `b*\u00a0${b}\u202f: 0 est neutre, au-dessus c’est jaune.`,
    others: (parts) => `Les autres\u202f: ${parts}.`,
    other: (white, value) => `${white} ${value}`,
    tints:
      "Chaque couleur telle qu’elle sort du tube, puis sa teinte foncée, moyenne et pâle dans ce blanc.",
    tintsMissing: "Un cadre vide\u202f: aucune mesure n’approche cette clarté.",
  },
  strengthOf: (percent, reference) => `${percent} ${of(reference)}`,
  strengthByWeight: (percent, reference) => `${percent} ${of(reference)} en poids`,
  whitens: (parts) => `${parts} parts`,
  whitensDetail: (reference, by) =>
    `mènent une part ${of(reference)} à un ton moyen, en ${wordOf(MEASURES, by)}`,
  partsOfWhite: (parts) => `${parts} parts de blanc`,
  toMiddle: (white, by) => `${of(white)} pour une de la couleur, en ${wordOf(MEASURES, by)}`,
  safe: {
    Danger: "Danger",
    Warning: "Attention",
    care: "Prendre soin",
    none: "Sans avertissement",
    unknown: "À traiter comme dangereux",
  },
  sections: {
    whites: "Coupé de blanc",
    ofWhite: "Comme blanc",
    painting: "Peindre avec",
    permanence: "Sa tenue",
    handling: "Sécurité",
    range: "À côté des autres",
    questions: "Ce qu’on en demande",
    unknown: "Pas encore connu, et ce qu’il y faudrait",
    bench: "Pour l’établi",
  },
  ladder: {
    key: "Couleur pour blanc, en poids de peinture. Un point marque ce que nous avons peint et mesuré\u202f; les degrés intermédiaires sont calculés.",
    keyPigment:
      "Couleur pour blanc, en poids de pigment sec. Un point marque ce que nous avons peint et mesuré\u202f; les degrés intermédiaires sont calculés.",
    noSentence: "Essayée dans le blanc\u202f; la mesure ne suffit pas pour en dire plus.",
    notDrawn: (whites) => `Non essayée dans ${listed(whites)}.`,
    expected: (whites) => `Ce qu’il faut prévoir dans ${listed(whites)}, non peint`,
    expectedIn: (white) => `${white}, non peint`,
  },
  lines: {
    dries: "Sèche",
    layers: "Couches",
    hides: "Couvre",
    finish: "Aspect",
    age: "Avec l’âge",
    whites: "Dans le blanc",
    mixing: "Mélange",
    oil: "Huile",
  },
  /** Where it would take more paint than anybody lays. */
  hidesNever: "Elle ne couvre jamais d’elle-même\u202f: pas même en couche d’un demi-millimètre.",
  hidesLine: (film) => `Il faut un film sec ${of(film)} pour couvrir une carte noire et blanche.`,
  hidesByDarkness: (film) =>
    `Un film sec ${of(film)} couvre une carte noire et blanche, mais parce qu’il est sombre, non par son corps\u202f: étalé plus mince, il glace.`,
  covers: (area) => `Un millilitre sorti du tube couvre ${area.replace(/\/ml$/, "")}.`,
  finishLine: (finish) => `${finish} une fois sec.`,
  inWhite: (white, days, isTried) =>
    `${days} au toucher dans ${white}${isTried ? ", à l’essai" : ""}`,
  inWhiteParts: (parts) => `Calculé pour une part dans ${parts} de blanc.`,
  oilLine: {
    weighed: (grams) => `${grams} de pigment, telle que nous la faisons.`,
    recorded: (grams) =>
      `${grams} de pigment selon notre relevé, qui ne dit pas d’où nous le savons.`,
    told: (grams) => `${grams} de pigment selon d’autres\u202f; non pesé ici.`,
    expected: (grams) => `${grams} de pigment sont à prévoir\u202f; non pesé ici.`,
  },
  unknown: {
    colour: [
      "Sa couleur",
      "Une application mesurée à l’instrument, ou comparée à un échantillon Munsell.",
    ],
    whites: ["Dans le blanc", "Trois mélanges avec un blanc, 1:1, 1:5 et 1:20, peints et mesurés."],
    opacity: [
      "Comment elle couvre",
      "Un film d’épaisseur connue sur une carte noire et blanche, mesuré.",
    ],
    filmSpectra: [
      "Comment elle couvre",
      "Les spectres de ses films sur une carte noire et blanche\u202f: ils ont été mesurés sans spectre.",
    ],
    oil: ["Son huile", "Une prise d’huile, ou l’huile pesée pour une fabrication."],
    drying: [
      "Quand elle sèche",
      "Un film d’épaisseur connue, et les jours jusqu’à ce qu’il soit sec au toucher.",
    ],
    permanence: [
      "Si elle tient",
      "Une exposition à la fenêtre, une moitié gardée à l’obscurité, ou l’indication du fournisseur.",
    ],
    hazard: [
      "Ses dangers",
      "La fiche de données de sécurité du fournisseur, rubriques 2 et 3. D’ici là, à traiter comme dangereux.",
    ],
  },
  standingsFold: "Ce que veulent dire les marques",
  benchLead:
    "Huile et compacité, pigment, notations, spectres, et d’où nous tenons chaque chiffre.",
  benchLink: (name) => `${name} à l’établi`,
  dryPigment: "Pesée, broyage et pigment sec sont sur la page de l’établi.",
  bench: {
    heading: (name) => `${name} à l’établi`,
    description: (name) =>
      `${name} pour qui fait une telle peinture\u202f: huile, compacité, pigment, notations et spectres.`,
    back: (name) => `${name}, pour le peintre`,
    evidenceLead:
      "Chaque chiffre, d’où nous le tenons, de quoi il est calculé, et les sources\u202f:",
    evidenceLink: (name) => `les preuves pour ${name}`,
    sections: {
      ladders: "Dans les blancs, en chiffres",
      strength: "Force, opacité, glacis",
      drying: "Le séchage en chiffres",
      permanence: "La permanence en chiffres",
      mixture: "Comme mélange",
      oil: "Huile et compacité",
      dry: "Pigment sec et ajouts",
      pigment: "Le pigment",
      range: "Dans la gamme",
      notations: "Notations",
      evidence: "Preuves",
      downloads: "Données",
    },
    weighing: "Pesée et broyage",
  },
  evidence: {
    heading: (name) => `Preuves pour ${name}`,
    description: (name) =>
      `Chaque chiffre de la fiche ${of(name)}, comment il a été trouvé et de quoi il est calculé.`,
    back: (name) => `${name} à l’établi`,
  },
};
