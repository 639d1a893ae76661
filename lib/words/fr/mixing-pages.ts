/** The tint bench, and what the pages that mix have in common; their scripts carry these words too. */
import type { Lamp } from "../../colorimetry/lamps.ts";
import type { MixingWords } from "../en/mixing-pages.ts";
import type { AnyWords } from "../any-words.ts";
import { METALS, OPACITIES, wordOf } from "./closed-words.ts";
import { SIGNAL_WORDS } from "./label-words.ts";
import {
  COLON,
  SEMICOLON,
  dayCount,
  decimals,
  listed,
  micrometres,
  of,
  within,
} from "./phrases.ts";

const LAMP_NAMES: Readonly<Record<Lamp, string>> = {
  incandescent: "lumière de lampe",
  led: "lumière de LED blanche",
  fluorescent: "lumière de tube fluorescent",
};

export const MIXING_PAGES: AnyWords<MixingWords> = {
  ways: {
    bench: "Banc de mélange",
    recipes: "Trouver une recette",
    map: "Carte de la gamme",
    palette: "Palette",
    label: "Mélanger",
  },
  offered: (offered, all) =>
    `Sur ${all} couleurs, ${offered} se choisissent ici, les plus éloignées entre elles\u202f; toute autre vient de sa propre fiche.`,
  notPredicted: (names) =>
    `Absentes d’ici, car ni les pigments fluorescents ni les paillettes ne se prévoient\u202f: ${listed(names)}.`,
  without:
    "Pour mélanger ici, il faut le script de la page. Ce que nous avons calculé d’avance est dans le tableau ci-dessous.",
  olderData:
    "Les chiffres d’ici viennent d’une autre version de la page que son script. Recharger la page\u202f; si cela ne suffit pas, seul le tableau ci-dessous vaut.",
  noData:
    "Les chiffres ne se sont pas chargés. Recharger la page\u202f; le tableau ci-dessous n’a pas besoin de script.",
  demonstration: "Chiffres inventés, pour montrer comment cela marche.",
  lamps: LAMP_NAMES,
  bench: {
    heading: "Banc de mélange",
    lead: "Mélanger jusqu’à trois de nos couleurs à un blanc, et voir ce qu’on obtiendrait, et avec quelle certitude.",
    description:
      "Mélanger des couleurs de la gamme à un blanc, et voir la couleur, ses notations et jusqu’où s’y fier.",
    swatch: (what) => `Le mélange\u202f: ${what}`,
    colourHeads: ["Première couleur", "Deuxième couleur", "Troisième couleur", "Quatrième couleur"],
    partHeads: [
      "Parts de la première couleur",
      "Parts de la deuxième couleur",
      "Parts de la troisième couleur",
      "Parts de la quatrième couleur",
    ],
    whiteHead: "Parts de blanc",
    noPaint: "aucune",
    partsShort: "parts",
    white: "Blanc",
    by: { legend: "Parts en", volume: "volume, tube pour tube", mass: "poids" },
    medium: "Médium de charge",
    volumes: "Parts de médium pour une du mélange",
    film: "Épaisseur du film en \u00b5m (vide\u202f: une couche qui couvre)",
    finish: { legend: "Surface", glossy: "brillante", matte: "mate" },
    light: {
      legend: "Lumière",
      daylight: "lumière du jour",
      incandescent: "lampe",
      led: "LED blanche",
      fluorescent: "tube fluorescent",
    },
    controls: "Le mélange",
    view: "Comment on le regarde",
    halo: "Ou ce pourrait être",
    ways: {
      paler: "plus pâle",
      darker: "plus sombre",
      redder: "plus rouge",
      greener: "plus vert",
      yellower: "plus jaune",
      bluer: "plus bleu",
    },
    read: (p68) => `Tel que nous l’avons mesuré, à \u0394E00\u00a0${p68} près.`,
    predicted: (p68, p90) =>
      `Une prévision. Deux fois sur trois elle est juste à \u0394E00\u00a0${p68} près, neuf fois sur dix à \u0394E00\u00a0${p90} près.`,
    beyond:
      "Bien plus pâle que tous les mélanges que nous avons essayés\u202f; personne n’a regardé si cela se prévoit bien.",
    outOfGamut:
      "Votre écran ne peut pas montrer cette couleur\u202f; l’échantillon en est le plus proche.",
    lampNote: (lamp) => `Montré comme le voit un œil adapté à cette lumière\u202f: ${lamp}.`,
    matteNote: "Un film mat renvoie la lumière de sa surface de tous côtés et paraît plus pâle.",
    overBlack: "sur noir",
    overWhite: "sur blanc",
    filmSentence: (um, ratio, p68) =>
      `${um} de peinture sèche\u202f: rapport de contraste ${ratio}, couleur à \u0394E00\u00a0${p68} près deux fois sur trois.`,
    asCoat: "Montré comme une couche qui couvre.",
    notations: {
      munsell: "Munsell",
      lab: "L*a*b* (D65, 10\u00b0)",
      name: "En mots",
      lasts: "Tenue",
      dries: "Sèche au toucher",
      hides: "Couvre",
      warning: "Avertissement",
      price: "Prix de 10 ml",
    },
    munsellNone: "hors de la notation",
    munsellUncertain: (value, chroma) => `\u00b1${value} de valeur, \u00b1${chroma} de chroma`,
    lab: (L, a, b) => `${L}, ${a}, ${b}`,
    spectrumTitle: "Réflectance du mélange",
    wavelength: "longueur d’onde, nm",
    reflectance: "réflectance",
    reflectanceTo: (end) => `réflectance, 0 à ${end}`,
    find: "D’autres mélanges de cette couleur",
    copy: "Copier son adresse",
    copied: "L’adresse est copiée.",
    copyFailed:
      "L’adresse n’a pas pu être copiée\u202f: elle est dans la barre d’adresse du navigateur.",
    print: "Imprimer en carte de recette",
    keep: "Ajouter à la palette",
    card: {
      heading: "Carte de recette",
      byVolume: "en volume",
      byMass: "en poids",
      share: (text) => `${text}\u00a0%`,
      part: "Peinture",
      madeOn: "Mélangé le",
      notes: "Notes",
      from: (workshop, revision) => `${workshop}, chiffres de la révision ${revision}`,
      paperNote: "L’échantillon n’est juste qu’autant que votre imprimante.",
    },
    static: {
      heading: (white) => `Calculé d’avance\u202f: chaque couleur dans ${within(white)}`,
      note: (white) =>
        `Parts en poids de couleur pour ${within(white)}. Prévu d’après ce que nous avons mesuré\u202f; à côté de chaque ligne, de combien le plus pâle peut s’écarter.`,
      caption: (white) => `Chaque couleur dégradée dans ${within(white)}`,
      colour: "Couleur",
      said: "À 1:20, et avec quelle certitude",
      finding: (munsell, p68) => `${munsell}, à \u0394E00 ${p68} près`,
    },
    fromSheet: "La dégrader au banc de mélange",
  },
  facts: {
    semicolon: SEMICOLON,
    weakest: (word, by) => `${word} (d’après ${within(by)})`,
    unknown: (names) => `inconnu pour ${listed(names.map(within))}`,
    notKnown: "inconnu",
    days: (days) => dayCount(days),
    daysEstimate: "estimé d’après ses tubes",
    /** @param ratio of the film, from the least to the most that it may be. */
    hiding: {
      hides: (ratio, um) => `couvre une carte à ${um} (rapport de contraste ${ratio})`,
      "may hide": (ratio, um) =>
        `couvre peut-être une carte à ${um} (rapport de contraste ${ratio})`,
      "does not hide": (ratio, um) =>
        `ne couvre pas une carte à ${um} (rapport de contraste ${ratio})`,
    },
    dark: (word, um, hides) =>
      `${OPACITIES[word]} à ${um}${hides ? ", même si son obscurité couvre une carte" : ""}`,
    warning: (signal, metals) =>
      signal === null && metals.length === 0
        ? "aucun nécessaire"
        : [
            ...(signal === null ? [] : [wordOf(SIGNAL_WORDS, signal)]),
            ...(metals.length === 0
              ? []
              : [`contient\u202f: ${listed(metals.map((metal) => wordOf(METALS, metal)))}`]),
          ].join("\u202f; "),
    restricted: (names) => `${listed(names)}\u202f: pas en vente pour tous`,
    price: (text) => `environ ${text}`,
    lampsPart: (worst, shifts, p68) =>
      shifts[worst] < 2
        ? "s’accorde aussi sous les lampes"
        : `s’en écarte de \u0394E00\u00a0${decimals(shifts[worst], 1)} \u00b1${decimals(p68, 1)} en ${LAMP_NAMES[worst]}`,
    lampsShift: (worst, shifts, p68) =>
      shifts[worst] < 2
        ? "garde sa couleur sous les lampes"
        : `change de \u0394E00\u00a0${decimals(shifts[worst], 1)} \u00b1${decimals(p68, 1)} en ${LAMP_NAMES[worst]}`,
  },
  micrometres,
  recipes: {
    colon: COLON,
    heading: "Trouver une recette",
    lead: "Nommer une couleur\u202f; nous cherchons dans tous les mélanges de nos peintures ceux qui en approchent.",
    description:
      "Tous les mélanges de quelques couleurs de la gamme qui approchent d’une couleur, avec leur tenue, leur séchage et leur opacité.",
    without:
      "Pour chercher des recettes, il faut le script de la page. Ce que nous avons cherché d’avance est dans les tableaux ci-dessous.",
    target: "La couleur voulue",
    text: "Une notation\u202f: 5PB 4/2, ou L*a*b* 42 \u22121 \u22127, ou une couleur d’écran #6b6f76",
    colour: "Ou une couleur de la gamme",
    file: "Ou une mesure à vous (.csv, .cgats, .txt, .cxf)",
    column: "Quelle mesure du fichier",
    percent: "Le fichier donne des pour-cent",
    choose: "choisir",
    origin: {
      range: "telle que nous l’avons mesurée",
      reading: "telle que la donne votre fichier",
      munsell: "un échantillon, à l’œil",
      lab: "D65, 10\u00b0",
      screen: "une couleur d’écran\u202f: approchante seulement",
    },
    targetName: (name, origin) => `${name} (${origin})`,
    limits: "Ce qu’elle doit être",
    white: "Blanc",
    anyWhite: "l’un de nos blancs",
    withoutMetals: "Sans",
    metals: { lead: "plomb", cadmium: "cadmium", cobalt: "cobalt", nickel: "nickel" },
    unlabelled: "aucune peinture qui porte un avertissement de danger",
    lightfastness: "Tenue au moins",
    lightfastnessChoices: ["", "excellente", "très bonne", "moyenne", "faible"],
    any: "sans condition",
    days: "Sèche au toucher en (jours)",
    opacity: "Couvre au moins",
    opacityChoices: ["", "opaque", "semi-opaque", "semi-transparent"],
    price: "Au plus, pour 10 ml",
    four: "jusqu’à quatre couleurs (plus lent)",
    whiteFree: "aussi sans blanc",
    leaveOut: "Laisser de côté",
    mustHold: "Doit contenir",
    order: "D’abord",
    orders: {
      fewest: "le moins de peintures",
      nearest: "les plus proches",
      drying: "les plus rapides à sécher",
      lightfastness: "les plus solides à la lumière",
      lamps: "celles qui tiennent sous les lampes",
      price: "les moins chères",
    },
    find: "Chercher des recettes",
    looking: (tried) => `Recherche\u2026 ${tried} mélanges examinés.`,
    found: (matching, near, tried, isAtLeast) =>
      matching > 0
        ? `${matching === 1 ? "Un mélange peut" : `${isAtLeast ? "Au moins " : ""}${matching} mélanges peuvent`} être cette couleur, autant que nous puissions dire\u202f; ${near === 1 ? "un de plus en approche" : `${near} de plus en approchent`}. ${tried} ont été examinés.`
        : near > 0
          ? `Aucun n’est cette couleur\u202f; ${near === 1 ? "un seul en approche" : `${near} en approchent`}. ${tried} ont été examinés.`
          : `Aucun n’en approche. ${tried} ont été examinés.`,
    quickest: (days) =>
      `La plus rapide de celles qui approchent et respectent vos autres souhaits est sèche au toucher en ${dayCount(days)}, estimés.`,
    shown: (shown) => `Les ${shown} premiers sont donnés.`,
    nothingMixes: "Avec ces souhaits, il ne reste aucune couleur à mélanger.",
    within: "Ceux-ci peuvent l’être\u202f: plus proches que nous ne pouvons distinguer",
    near: "Ceux-ci en approchent",
    none: "Aucun mélange de nos peintures n’approche de cette couleur avec ces souhaits.",
    tryIt: "Au banc de mélange",
    failed: "La recherche s’est arrêtée par une erreur de notre part. Recharger la page.",
    more: "En montrer plus",
    lamps: "Lampes",
    lightfast: "Tenue",
    parts: "Parts en volume",
    partsMass: "Parts en poids",
    replaces: {
      heading: "Ce qui la remplace",
      onRecipes: (name) => `À la place ${of(within(name))}`,
      because: (name, metals, isNone) =>
        `${name} contient\u202f: ${listed(metals.map((metal) => wordOf(METALS, metal)))}.${isNone ? "" : " Au plus près parmi nos peintures sans plomb ni cadmium\u202f:"}`,
      discontinued: (name, date, isNone) =>
        `${name}\u202f: fabrication arrêtée au ${date}.${isNone ? "" : " Au plus près parmi nos peintures\u202f:"}`,
      caption: (name) => `À la place ${of(within(name))}, et ce qui change`,
      columns: {
        what: "À la place",
        difference: "À quel écart",
        lasts: "Tenue",
        dries: "Sèche au toucher",
        hides: "Opacité",
      },
      itself: "elle-même",
      single: "seule",
      none: "Aucune de nos couleurs n’en approche.",
      noneKnown:
        "Aucune de nos couleurs que nous savons exemptes de plomb et de cadmium n’en approche\u202f; ce qui n’est pas encore classé est laissé de côté.",
      note: "On compare les tons pleins\u202f: un \u0394E00 de 1 environ se voit à peine côte à côte. Dans les dégradés, la force peut différer. Les tubes simples sont tels que mesurés, les mélanges prévus.",
      more: "D’autres recettes, selon vos propres souhaits",
    },
  },
  map: {
    heading: "Carte de la gamme",
    headingIn: (white) => `Carte de la gamme, dans ${within(white)}`,
    lead: "Où sont nos couleurs, comment elles tournent en se dégradant, et jusqu’où vont leurs mélanges.",
    description:
      "Les couleurs de la gamme par teinte, chroma et clarté, et le contour de ce qu’on peut en mélanger.",
    title: (white) => `La gamme en a* et b*, chaque couleur avec son chemin dans ${within(white)}`,
    describe: (count, white, area) =>
      count === 1
        ? `Une couleur, avec son chemin du tube à un ton pâle dans ${within(white)}. Les contours entourent tout ce qu’elle et le blanc peuvent donner, à L* 30, 50 et 70\u202f; à L* 50 leur aire est de ${area}.`
        : `${count} couleurs, chacune avec son chemin du tube à un ton pâle dans ${within(white)}. Les contours entourent tout ce que deux quelconques d’entre elles et le blanc peuvent donner, à L* 30, 50 et 70\u202f; à L* 50 leur aire est de ${area}.`,
    axes: { a: "a* (à droite\u202f: plus rouge)", b: "b* (en haut\u202f: plus jaune)" },
    outline: (L) => `L* ${L}`,
    whites: "Dans quel blanc",
    nearNeutral: "près du milieu\u202f:",
    key: (p68) =>
      `Lignes pleines\u202f: L* 30\u202f; longs tirets\u202f: L* 50\u202f; tirets courts\u202f: L* 70. Ce qui est à l’intérieur d’une ligne peut s’obtenir par mélange\u202f; la ligne elle-même est une prévision, à \u0394E00 ${p68} près deux fois sur trois.`,
    without: "Sans quelle couleur\u202f?",
    withoutSaid: (name, shares) =>
      `Sans ${within(name)} la gamme est plus petite (lignes pointillées) de ${listed(shares)}\u202f: des aires, justes deux fois sur trois dans le \u00b1.`,
    withoutAt: (share, L) => `${share} à L* ${L}`,
    withoutNothing: (name) =>
      `Sans ${within(name)} la gamme va aussi loin\u202f: d’autres donnent ses teintes.`,
    adds: {
      heading: "Ce qu’ajoute chaque tube",
      caption: "De combien la gamme serait plus petite sans lui",
      colour: "Sans",
      column: (L) => `à L* ${L}`,
      note: "Part de l’aire du contour que seule cette couleur atteint\u202f; deux fois sur trois dans le \u00b1. Pas moins\u202f: moins que nous ne distinguons.",
      none: "pas moins",
      others: (names) =>
        `Autant que nous puissions dire, la gamme va aussi loin sans ${names.length === 1 ? "" : "l’une quelconque de ces couleurs\u202f: "}${listed(names)}.`,
    },
    absent: "Absentes de la carte",
    notMapped: (untried, otherwise) =>
      [
        ...(untried.length === 0
          ? []
          : [`Absentes de la carte, faute de dégradé dans ce blanc\u202f: ${listed(untried)}.`]),
        ...(otherwise.length === 0
          ? []
          : [
              `Absentes de la carte, car mesurées autrement que les autres\u202f: ${listed(otherwise)}.`,
            ]),
      ].join(" "),
  },
  palette: {
    heading: "Palette",
    lead: "Choisir ses tubes\u202f: ce qu’ils atteignent, ce qui manque, et dans quel ordre peindre avec.",
    description: "Un choix de couleurs\u202f: sa carte, ses manques, et l’ordre des couches.",
    without:
      "Pour choisir une palette, il faut le script de la page. L’ordre des couches de toute la gamme est dans le tableau ci-dessous.",
    choose: "Vos tubes",
    reach: "Ce qu’ils atteignent",
    reachTitle: "Vos tubes et ce qu’on peut en mélanger",
    white: "Dans quel blanc",
    level: "La carte à",
    levelName: (L) => `L* ${L}`,
    share: (shares) => `De ce qu’atteint toute la gamme, vos tubes atteignent ${listed(shares)}.`,
    shown: (white, L) => `Avec ${within(white)}\u202f; la carte à L* ${L}.`,
    shareAt: (share, L) => `${share} à L* ${L}`,
    unlike: (names, white) =>
      `${listed(names)}\u202f: non essayé dans ${within(white)} ou mesuré autrement, donc non compté dans ce qui est atteint.`,
    gaps: "Ce qui manque",
    gapsCaption: "Teintes où la gamme va plus loin que vos tubes",
    gapColumns: { hue: "Rien près d’une teinte franche", bring: "Ce qui l’apporterait" },
    gapHue: (hue) => hue,
    gapAt: (L) => `L* ${L}`,
    gapNone: "près",
    gapBy: (names) => listed(names, "or"),
    gapByNone: "plusieurs ensemble",
    gapsNote:
      "De combien vos tubes restent en deçà de la gamme\u202f; deux fois sur trois dans le \u00b1. Près\u202f: de moins de \u0394E00\u00a08.",
    noGaps: "Aucun manque qu’un autre de nos tubes comblerait.",
    tooFew: "Choisir deux couleurs ou plus.",
    hues: [
      "rouge",
      "orange",
      "jaune",
      "jaune-vert",
      "vert",
      "bleu-vert",
      "bleu",
      "violet",
      "pourpre",
      "rose",
    ],
    order: "Dans quel ordre peindre",
    orderNote:
      "Rapide et maigre dessous, lent et gras dessus\u202f: en couches, mettre une couleur sur une autre qui la précède ici, non dessous. Sur une couleur plus riche en huile, lui ajouter un peu de médium.",
    columns: {
      colour: "Couleur",
      dries: "Sèche au toucher",
      oil: "Huile du film sec, en volume",
      lasts: "Tenue",
    },
    leaner: (below) => `plus maigre que ${below} dessous\u202f: ajouter un peu de médium`,
    print: "Imprimer cette palette",
    yours: "la vôtre",
    wholeRange: "la gamme",
  },
};
