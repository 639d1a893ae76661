import type { MeasuredErrors } from "../../optics/fit/measured-errors.ts";
import type { PageWords } from "../en/pages.ts";
import { EXPECTATIONS } from "../../permanence/expected-lightfastness.ts";
import type { AnyWords } from "../any-words.ts";
import { upperFirst } from "../letter-case.ts";
import { ANSWER_PAGES } from "./answer-pages.ts";
import { BLACKS_PAGES } from "./blacks-pages.ts";
import { CARDS } from "./cards.ts";
import { CHANGES } from "./changes.ts";
import { EXPECTED, GEOMETRIES, wordOf } from "./closed-words.ts";
import { COMPARE_PAGES } from "./compare-pages.ts";
import { HANDLING } from "./handling.ts";
import { LABEL_PAGE } from "./label-page.ts";
import { LOT_PAGES } from "./lot-pages.ts";
import { MIXING_PAGES } from "./mixing-pages.ts";
import { MIXTURE_PAGES } from "./mixture-pages.ts";
import { NEXT_STEPS } from "./next-steps.ts";
import { OPTICS_PAGES } from "./optics-pages.ts";
import { PACKAGE_LABELS } from "./package-labels.ts";
import { PAINT_PAGES } from "./paint-pages.ts";
import { LISTING } from "./listing.ts";
import { PHOTOGRAPHS } from "./photographs.ts";
import { NUMBERS, listed } from "./phrases.ts";
import { PIGMENT_INDEX } from "./pigment-index.ts";
import { SHEET_PAGE } from "./sheet-page.ts";
import { SHEET_PAPER } from "./sheet-paper.ts";
import { TERMS } from "./terms.ts";
import { WORKSHOP_PAGES } from "./workshop-pages.ts";

/** What was predicted and measured. */
const MEASURED: Readonly<Record<MeasuredErrors["what"], string>> = {
  "let-downs that hide": "dégradés qui couvrent",
  "all let-downs": "tous les dégradés",
  "mixtures with black": "mélanges avec du noir",
  "in a white not tried": "dans un blanc non essayé",
};

/** Headings, captions and sentences of the pages that do not come from a science. */
export const PAGES: AnyWords<PageWords> = {
  nav: {
    colours: "Couleurs",
    answers: "Questions",
    compare: "Comparer",
    mix: "Mélanger",
    pigments: "Pigments",
    methods: "Comment nous le savons",
    label: "Étiquettes",
    sources: "Sources",
    about: "À propos",
  },
  search: {
    text: "Trouver une couleur",
    nothing: "Rien trouvé.",
    count: "Trouvés\u202f: {count}.",
    kinds: { pigment: "Pigment", answer: "Question", comparison: "Côte à côte" },
  },
  frame: {
    skip: "Aller au texte",
    mainNavigation: "Site",
    more: "Plus",
    onThisPage: "Sur cette page",
    toContents: "Retour au sommaire",
    property: "Propriété",
    value: "Valeur",
    standing: "Origine",
    method: "Méthode et source",
    source: "Source",
    standingsHeading: "D’où l’on tient chaque chiffre",
    termsHeading: "Termes",
    downloadsHeading: "Données",
    handlingLink: "Tout sur la sécurité",
    orders: "Ordre",
    parts: "Page",
    families: "Famille",
    coloursMade: "Couleurs qui en sont faites",
    languages: "Langues",
  },
  demonstration: "Démonstration\u202f: tout ici est inventé.",
  ragLine:
    "Les chiffons imbibés d’huile siccative peuvent prendre feu d’eux-mêmes\u202f: les étaler un par un dehors jusqu’à ce qu’ils durcissent, ou les tremper dans l’eau dans un bidon métallique fermé. Jamais à la poubelle ni en tas.",
  fromPapers: "Dangers\u202f: d’après les documents de nos fournisseurs.",
  cautionLine:
    "L’étiquette, la fiche de données de sécurité, vos règles locales et la pratique habilitée priment.",
  build: (date) =>
    date === undefined
      ? "Établi d’après des relevés sans date."
      : `Établi d’après les relevés jusqu’au ${date}.`,
  title: (page, workshop) => (page === workshop ? workshop : `${page} \u2013 ${workshop}`),

  sheet: {
    description: (name, madeOf) =>
      `${name}\u202f: ${madeOf}. Ce qu’elle fait dans chaque blanc, si elle tient, quand elle sèche et comment la manier.`,
    madeOf: {
      mulled: (vehicle) => `\u202f; ${vehicle}, broyé à la molette`,
      milled: (vehicle) => `\u202f; ${vehicle}, broyé à la machine`,
      plain: (vehicle) => `\u202f; ${vehicle}`,
      comma: ", ",
      withAdditions: (names) => `\u202f; et aussi\u202f: ${listed(names)}`,
    },
    holdsMediums: (mediums) =>
      `Contient aussi ${listed(mediums)}\u202f: ce que cela fait au séchage, à l’aspect et au jaunissement, nous ne l’avons pas essayé.`,
    noPanel:
      "Aucune couleur n’est montrée\u202f: aucune application n’en a encore été mesurée ni comparée.",
    tintDescription: (level, a, b) => `L* ${level}, a* ${a}, b* ${b}`,
    missing: "non indiqué",
    approximateColour:
      "Approchante seulement à l’écran\u202f: calculée d’après une mesure sous une autre lumière.",
    outOfGamut:
      "Un écran ordinaire ne peut pas montrer cette couleur\u202f; l’échantillon en est le plus proche.",
    factDetail: {
      category: (category) => `catégorie\u00a0${category}`,
      asCategory: (category) => `comme en catégorie\u00a0${category}`,
      notTested: "non testée ici",
      notTestedInTints: "d’après ses dégradés, où elle est plus faible\u202f; non testée ici",
    },
    expectation: TERMS,
    categories: Object.fromEntries(
      EXPECTATIONS.map(({ category, expectation }) => [category, EXPECTED[expectation]]),
    ),
    revision: (revision, date) =>
      `Révision ${revision}${date === undefined ? "" : `, d’après les relevés du ${date}`}`,
    whiteSentence: (count) =>
      count === 1
        ? "Un blanc. Une couleur de la gamme y a été essayée."
        : `Un blanc. ${count} couleurs de la gamme y ont été essayées.`,
    noSentence: "Pas encore essayée dans le blanc.",
  },
  sections: {
    reply: "Réponse",
    label: "Texte d’étiquette",
  },
  whites: {
    heading: (name, index) => `Dans ${name}${index === undefined ? "" : ` (${index})`}`,
    ladderTitle: (white) => `Avec ${white}, du mélange le plus fort au plus pâle`,
    ladderDescription: (steps) => `${steps.join("\u202f; ")}.`,
    stepDescription: (ratio, standing, L, a, b) =>
      `${ratio}, ${standing}, L* ${L}, a* ${a}, b* ${b}`,
    suspect: "douteux",
    steps: (count) => (count === 1 ? "Le degré en chiffres" : `Les ${count} degrés en chiffres`),
    stepsCaption: (white, kind) =>
      `Couleur pour ${white} en masse de ${kind === "paint" ? "peinture" : "pigment sec"}`,
    columns: {
      ratio: "Couleur\u202f: blanc",
      L: "L*",
      a: "a*",
      b: "b*",
      munsell: "Munsell",
      misfit: "\u00b1 ou écart",
    },
    note: "L* a* b* sous D65, observateur 10\u00b0. Dernière colonne, en \u0394E00\u202f: pour un degré prévu, l’écart que n’excèdent pas environ 68\u00a0% des prévisions\u202f; pour une application, de combien l’ajustement s’en écarte, et entre parenthèses de combien si on l’écarte.",
    expectedNote:
      "À prévoir, non peint\u202f: L* a* b* (D65, observateur 10\u00b0) donnés par l’intervalle où tombent neuf dégradés de cette sorte sur dix, Munsell en son milieu. Dernière colonne, en \u0394E00\u202f: l’écart que n’excèdent pas environ 68\u00a0% des cas.",
    range: (low, high) => (low === high ? low : `${low} à ${high}`),
    trailEnds: { plusA: "rouge", minusA: "vert", plusB: "jaune", minusB: "bleu" },
    trailTitle: "Où chaque blanc mène la couleur\u202f: a* et b* des mélanges",
    trailDescription: (whites) =>
      `Une ligne pour chaque blanc, de la couleur pure au mélange le plus pâle\u202f: ${whites.join(", ")}.`,
  },
  strength: {
    caption: "Force et opacité",
    why: "Pourquoi",
    tubeCaption: "Combien de blanc pour une part, jusqu’à un ton moyen (L* 50)",
    tubeColumns: {
      white: "Blanc",
      byVolume: "Tube pour tube, en volume",
      byMass: "En masse de peinture",
    },
    tubeNote:
      "Une couleur forte demande beaucoup de blanc. C’est au volume qu’on presse les tubes\u202f; ce volume est calculé d’après les poids et les masses volumiques.",
    glazeTitle: "Sous-ton\u202f: des films de plus en plus épais sur du blanc",
    glazeAxis: "Film sec, \u00b5m",
    glazeLabel: (filmUm) => `${filmUm}`,
    glazeDescription: (films) => `Films sur du blanc\u202f: ${films.join("\u202f; ")}.`,
    hidingTitle: "Quelle épaisseur de film il faut pour couvrir",
    hidingFilm: "Film sec, \u00b5m",
    hidingRatio: "Rapport de contraste",
    hides: "couvre",
    hidingDescription: (points) =>
      `Rapport de contraste par film\u202f: ${points.join("\u202f; ")}.`,
  },
  drying: {
    caption: "Séchage",
    why: "Pourquoi",
    layering: "Couches",
    film: "Le film, avec l’âge",
    contradictions: "Où notre essai et la règle empirique ne s’accordent pas",
    summary: (dryingClass, days, through) =>
      through === undefined
        ? `${upperFirst(dryingClass)}\u202f: sec au toucher en ${days}. Ce n’est pas sec à cœur.`
        : `${upperFirst(dryingClass)}\u202f: sec au toucher en ${days}, à cœur en ${through}. Un film plus épais met plus longtemps.`,
    none: "Pas encore connu\u202f: nous n’en avons pas d’essai, et ne savons pas ce que son pigment fait à l’huile siccative.",
  },
  permanence: {
    exposed: (word, category) =>
      `${upperFirst(word)}\u202f: elle a changé autant que le permet la catégorie\u00a0${category}, dans notre propre exposition.`,
    stated: (word, told) => `${upperFirst(word)}\u202f: ${told}.`,
    expected: (word) => `${upperFirst(word)}\u202f; non testée ici.`,
    caption: "Solidité à la lumière",
    why: "Pourquoi",
    sensitivities: "Autres risques",
    note: "Les limites des catégories sont citées de mémoire d’après la norme. Une vraie catégorie demande les expositions de la norme elle-même.",
    none: "Pas encore connu\u202f: ni exposition, ni indication du fournisseur, ni rien à prévoir d’après ses pigments.",
  },
  oil: {
    caption: "Huile, compacité et aspect",
    why: "Pourquoi",
    contradictions: "Où notre relevé et la règle empirique ne s’accordent pas",
    summary: (oilClass, line) => `Niveau d’huile ${oilClass}\u202f: ${line}`,
    notClassed: (grams) =>
      `Son huile n’est pas encore pesée, et l’estimation est trop large pour un mot\u202f: ${grams}.`,
    none: "Pas encore connu\u202f: nous n’avons ni prise d’huile ni l’huile d’une fabrication.",
  },
  handling: HANDLING,
  pigmentIndex: PIGMENT_INDEX,
  pigment: {
    share: (share) => `${share} du pigment sec`,
    whole: "pigment unique",
    noShare: "part non consignée",
    caption: (name) => `${name}, sec`,
    facts: {
      origin: "Origine",
      chemistry: "Chimie",
      particle: "Particule",
      benchTest: "Un essai à l’établi",
    },
    particle: (size, shape, index) =>
      [shape, size, index === undefined ? undefined : `indice de réfraction ${index}`]
        .filter((part) => part !== undefined)
        .join(", "),
    size: (um) => `${um} \u00b5m`,
    nothing: "Nous n’en avons rien noté de plus.",
  },
  range: {
    ends: { low: "le moins", high: "le plus" },
    sameColour: "Semblables au sortir du tube",
    samePigment: "Faites du même pigment",
    metameric: "Au sortir du tube, à la lumière du jour et à la lampe",
    metamericPair: (name, sentence) => `${name}\u202f: ${sentence}`,
    hueTitle: "La gamme par teinte et chroma",
    hueDescription: (parts) => `${parts.join("\u202f; ")}.`,
    neutral: "neutre",
    chroma: "Chroma Munsell",
    value: "Valeur Munsell",
    valueTitle: "La gamme par valeur et chroma",
    difference: (deltaE, inWhite) =>
      inWhite === undefined
        ? `seule \u0394E00 ${deltaE}`
        : `seule \u0394E00 ${deltaE}\u202f; dans ${inWhite.white} \u0394E00 ${inWhite.deltaE}`,
    oilTitle: "Son huile à côté du reste de la gamme",
    dryingTitle: "Son séchage à côté du reste de la gamme",
    placeDescription: (name, value, count, [lowest, lower, upper, highest]) =>
      `${name}\u202f: ${value}. Les ${count} couleurs chiffrées vont de ${lowest} à ${highest}, la moitié centrale de ${lower} à ${upper}.`,
    box: (count) => `rectangle\u202f: la moitié centrale de ${count} couleurs`,
  },
  notations: {
    readBy: (geometry) => `Mesuré en ${wordOf(GEOMETRIES, geometry)}.`,
    included: (L) => `Mesuré reflet inclus\u202f; sans lui L* serait d’environ ${L}.`,
    byEye:
      "Comparé à l’œil à un échantillon Munsell, ce qui est juste à un demi-degré de valeur et un degré de chroma près.",
    none: "Aucune encore\u202f: aucune application n’a été mesurée ni comparée à l’œil.",
    labCaption: "La couleur pure, sous chaque lumière",
    light: "Lumière, observateur",
    viewings: {
      "C/2": "C, 2\u00b0",
      "D65/2": "D65, 2\u00b0",
      "D65/10": "D65, 10\u00b0",
      "D50/2": "D50, 2\u00b0",
      "A/10": "A (lampe), 10\u00b0",
      "A/2": "A (lampe), 2\u00b0",
      "C/10": "C, 10\u00b0",
      "D50/10": "D50, 10\u00b0",
      "D65/2006": "D65, 10\u00b0 de la CIE 2006",
    },
    caption: "Noms et couleurs d’écran",
    curveTitle: "Réflectance du ton plein sur le spectre",
    curveDescription: (low, high, lowNm, highNm) =>
      `Entre ${low} à ${lowNm} nm et ${high} à ${highNm} nm.`,
    curveLabel: (geometry) => `ton plein, ${wordOf(GEOMETRIES, geometry)}`,
    excludedLabel: "calculé sans le reflet",
    wavelength: "Longueur d’onde, nm",
    reflectance: "Facteur de réflectance",
    reflectanceTo: (end) => `Facteur de réflectance, agrandi\u202f: l’axe s’arrête à ${end}`,
  },
  evidence: {
    summary:
      "Chaque chiffre de cette fiche, d’où nous le tenons et de quoi il est calculé. Les chiffres portent les noms qu’emploient les données de la fiche et les affirmations des réponses.",
    caption: "Les chiffres et comment chacun a été trouvé",
    columns: {
      figure: "Chiffre",
      value: "Valeur",
      standing: "Origine",
      method: "Méthode",
      inputs: "À partir de",
    },
    part: (part, count) => `${part}\u202f: ${count} ${count === 1 ? "chiffre" : "chiffres"}`,
    parts: {
      pigments: "Le pigment",
      notations: "Notations",
      tints: "Dans les blancs",
      mixture: "Comme mélange",
      optics: "Force, opacité, brillant et ajustement",
      oil: "Huile et aspect",
      batch: "Une fabrication",
      fill: "Pots et tubes",
      drying: "Séchage",
      permanence: "Solidité à la lumière",
      additions: "Ajouts",
      vehicle: "Liant",
      cautions: "Sécurité",
      offer: "Contenances et prix",
    },
    notStated: "Pas encore connu",
    notStatedCaption: "Pas encore connu, et ce qu’il y faudrait",
    reason: "Pourquoi",
    wanting: "Il faut",
    sources: "Sources",
  },
  downloads: {
    sheet: "chaque chiffre de cette fiche et d’où on le sait",
    reading: "le ton plein tel que mesuré, facteur de réflectance par longueur d’onde",
    csv: "une ligne par contenance, à charger dans une boutique",
    figures: "une ligne par couleur, chaque chiffre avec son origine",
    json: "la liste des fiches, pour des programmes",
  },
  parts: {
    heading: (heading, page, pages) => `${heading}, page ${page} sur ${pages}`,
    onThisPage: (what) => `${what}, sur cette page`,
    someOf: (shown, all) => `${shown} sur ${all} sont montrées, prises régulièrement parmi toutes.`,
  },
  catalogue: {
    heading: "Couleurs",
    filters: {
      label: "Restreindre la gamme",
      families: "Seulement",
      heading: "qui",
      found: "{count} couleurs sur {all}",
      nothing: "Aucune couleur ne remplit toutes ces conditions.",
    },
    filterNames: {
      opaque: "couvrent",
      transparent: "sont transparentes",
      fast: "sèchent vite",
      slow: "sèchent lentement",
      lightfast: "tiennent (catégorie I ou II)",
      unwarned: "ne demandent aucun avertissement",
    },
    inThisWhite: (white) => `ont été essayées dans ${white}`,
    gridLead: "Chaque couleur, pure en haut et avec du blanc dessous, menée à un ton moyen.",
    orders: {
      grid: "Échantillons par famille",
      family: "Tableau par famille",
      value: "Par valeur",
      hue: "Par teinte",
      drying: "Par séchage",
      permanence: "Par permanence",
      oil: "Par huile",
      strength: "Par force",
      whites: OPTICS_PAGES.inTheWhites.orders,
    },
    leads: {
      family: "Par famille, puis par nom.",
      value: "De la plus sombre à la plus claire, telles qu’elles sortent du tube.",
      hue: "Les neutres d’abord, puis autour du cercle des teintes.",
      drying:
        "Les plus rapides d’abord. Là où les jours sont un intervalle, son milieu règle l’ordre\u202f; mieux vaut compter sur le dernier jour.",
      permanence:
        "Les plus solides à la lumière d’abord. Dans une catégorie, ce qui a été testé vient en tête\u202f: notre propre essai vaut plus que la parole d’un fournisseur, et celle-ci plus que ce qui est seulement à prévoir.",
      oil: PAINT_PAGES.byOil.lead,
      strength: OPTICS_PAGES.byStrength.lead,
    },
    columns: {
      colour: "Couleur",
      pigments: "Pigments",
      munsell: "Munsell",
      lightfastness: "Solidité à la lumière",
      opacity: "Opacité",
      drying: "Séchage",
      oil: "Indice d’huile",
    },
    notRead: "non mesuré",
    count: (count) => `${count} couleur${count === 1 ? "" : "s"}`,
    groups: { neutral: "Neutres", notStated: "Pas encore connu" },
    noSwatch: "pas encore mesuré",
    madeNoMore: "fabrication arrêtée",
    caption: (heading) => `Couleurs\u202f: ${heading}`,
    value: (from) => `Valeur ${from} à ${from + 1}`,
  },
  pigments: {
    heading: "Pigments",
    columns: {
      pigment: "Pigment",
      index: "Colour Index",
      density: "Masse volumique",
      oil: "Prise d’huile",
      colours: "Couleurs",
    },
    properties: "Chiffres du pigment sec",
    handling: "Manier le pigment sec",
    noColours: "Aucune couleur n’en est faite.",
    caption: "Pigments secs",
  },
  home: {
    promise: ({ measured, mediums, byEye, unread, tinted }) =>
      mediums + byEye + unread === 0 && tinted === measured
        ? `${measured} couleurs à l’huile, chacune montrée telle que nous l’avons mesurée\u202f: pure, et mélangée à du blanc.`
        : [
            `${measured} couleurs à l’huile${mediums === 0 ? "" : ` et ${mediums} ${mediums === 1 ? "médium" : "médiums"} de charge`} telles que nous les avons mesurées`,
            ...(tinted === measured + mediums
              ? ["pures et mélangées à du blanc"]
              : tinted === 0
                ? []
                : [`dont ${tinted} aussi mélangées à du blanc`]),
          ].join(", ") + ".",
    /** What is shown beside those, and how it is known. */
    besides: ({ byEye, unread }) =>
      [
        ...(byEye === 0 ? [] : [`${byEye} de plus à l’œil ou d’après les chiffres d’autrui`]),
        ...(unread === 0 ? [] : [`${unread} encore à mesurer`]),
      ].join(", "),
    pressFamily:
      "Toucher une famille pour voir ses couleurs, et une couleur pour voir sa fiche\u202f: ce qu’elle fait dans le blanc, si elle tient, quand elle sèche, ce qu’il y a dans le tube.",
    press:
      "Toucher une couleur pour voir sa fiche\u202f: ce qu’elle fait dans le blanc, si elle tient, quand elle sèche, ce qu’il y a dans le tube.",
    ask: "Demander",
    allQuestions: (count) => `Les ${count} questions`,
    beside: "Mises côte à côte",
    choose: "Choisir les vôtres",
    know: "Comment nous le savons",
    knowText:
      "Nous l’avons mesuré, calculé, estimé, ou repris d’un fournisseur. Chaque fiche le précise.",
    knowLink: "Comment lire une étiquette",
    wall: "La gamme",
  },
  methods: {
    heading: "Méthodes",
    lead: "D’où nous tenons chaque chiffre, et jusqu’où s’y fier.",
    measured: (rows, areInvented) =>
      [
        "De combien de telles prévisions s’écartent de peintures à l’huile mesurées, en \u0394E00. Chaque dégradé est écarté et prévu d’après les autres\u202f; un mélange est prévu d’après ses deux couleurs, et une couleur dans la baryte ou la craie d’après ses dégradés dans le blanc de zinc, par une autre couleur dégradée dans les deux. Avec films\u202f: des applications sur noir et blanc ont dit à l’ajustement comment chaque peinture diffuse. Les deux dernières colonnes comptent celles qui restent en deçà des 68 et des 90\u00a0% que nous imprimons à côté d’une prévision.",
        "",
        "| | | combien | médiane | neuf sur dix en deçà de | dans les 68\u00a0% | dans les 90\u00a0% |",
        "|---|---|---|---|---|---|---|",
        ...rows.map(
          ({ what, films, count, median, p90, inside68, inside90 }) =>
            `| ${MEASURED[what]} | ${films ? "avec films" : "sans films"} | ${count} | ${NUMBERS.decimal(median, 1)} | ${NUMBERS.decimal(p90, 1)} | ${inside68} | ${inside90} |`,
        ),
        "",
        `Un \u00b1 d’une fiche dépend des mesures de cette couleur\u202f: il est plus étroit ou plus large que ces chiffres.${areInvented ? " Les mesures de cette démonstration ont été faites par un programme et s’accordent bien mieux que celles d’une vraie peinture\u202f: d’une peinture, attendez les erreurs de ce tableau, non le petit \u00b1 de ces fiches." : ""}`,
      ].join("\n"),
    sections: [
      [
        "colour",
        "Couleur",
        "Une mesure est une liste de facteurs de réflectance. Elle est sommée d’après les tables de la CIE en X, Y, Z et L*, a*, b* pour chaque lumière et chaque observateur, de sorte qu’un blanc parfait donne le blanc de la CIE. Les notations Munsell sont celles de la renotation, interpolées en LCHab. Les couleurs d’écran valent pour D65 et l’observateur 2\u00b0. Nous nommons la géométrie à côté de chaque mesure\u202f: reflet inclus, un noir est de 13 à 23 unités de L* plus clair.",
      ],
      [
        "tints",
        "Dégradés",
        "Ce qu’une couleur fait dans un blanc vient de nos propres applications. Deux constantes, l’absorption K et la diffusion S, sont ajustées ensemble sur toutes les applications d’une couleur (Kubelka et Munk), une fois la surface ôtée. Les degrés intermédiaires sont prévus et marqués comme tels\u202f; plus ils sont loin d’une application, plus ils sont incertains. Rien n’est prévu d’après la couleur pure. Dans un blanc où une couleur n’a pas été essayée, nous disons à quoi s’attendre là où d’autres couleurs l’ont été dans les deux\u202f: de celles-ci vient combien les deux blancs diffusent. C’est une estimation, et un intervalle. Une application que les autres contredisent est montrée et n’est pas employée.",
      ],
      [
        "oil",
        "Huile et aspect",
        "L’indice d’huile est ce que nous avons pesé\u202f; la prise d’huile est ce qui lie tout juste le pigment. La prise d’huile et la masse volumique donnent la CPVC, la fabrication donne la CPV, et les deux ensemble disent s’il faut prévoir un film brillant ou mat. Une mesure au brillancemètre remplace la prévision.",
      ],
      [
        "drying",
        "Séchage",
        "Nous partons des jours que prend l’huile de lin seule, et multiplions par un facteur pour l’huile, le pigment, le siccatif s’il y en a, le film et la pièce. Cela donne un intervalle de jours. Notre propre essai remplace l’estimation et est montré avec ses conditions.",
      ],
      [
        "permanence",
        "Permanence",
        "Une catégorie vient d’une exposition, ou de l’indication d’un fournisseur\u202f; sans l’une ni l’autre, il n’y a que ce que la sorte de pigment fait prévoir. La fiche dit lequel des trois. La laine bleue est une autre échelle. Nous ne donnons pas d’années\u202f: aucune exposition ne peut dire combien.",
      ],
      [
        "handling",
        "Maniement",
        "Là où une étiquette a été déclarée, elle vient d’abord. Sinon elle est calculée d’après les classements des fournisseurs selon les règles des mélanges, et chaque mention nomme le composant, sa part et la limite. Ceci n’est pas une fiche de données de sécurité.",
      ],
    ],
  },
  sources: {
    heading: "Sources",
    lead: "Les textes derrière les chiffres, et comment nous avons employé chacun\u202f: lu, calculé d’après lui, ou cité de mémoire.",
    groups: { used: "Employées sur ces fiches", other: "À portée de main, non employées ici" },
    standings: {
      read: "lu",
      derived: "calculé d’après",
      memory: "cité de mémoire",
      practice: "pratique courante",
    },
  },
  about: {
    heading: "À propos",
    lead: (workshop) => `Ce qu’est ${workshop}, et ce que sont ces fiches.`,
    revision: (revision) => `Toutes les fiches ensemble\u202f: révision ${revision}.`,
    sections: [
      [
        "sheets",
        "Ce qu’est une fiche",
        "Une fiche est calculée d’après nos relevés\u202f: ce qui est entré dans la fabrication, prises d’huile, applications mesurées à l’instrument ou comparées à l’œil, essais de séchage, expositions, documents des fournisseurs. Chaque chiffre dit d’où on le sait. Là où nous ne savons pas, la fiche dit ce qu’il y faudrait.",
      ],
      [
        "limits",
        "Ce qu’elle n’est pas",
        "Une fiche n’est ni une fiche de données de sécurité ni un certificat. Se fier à un échantillon peint, non à l’écran.",
      ],
    ],
  },
  blacks: BLACKS_PAGES,
  mixture: MIXTURE_PAGES,
  mixing: MIXING_PAGES,
  paint: PAINT_PAGES,
  listing: LISTING,
  photographs: PHOTOGRAPHS,
  workshop: WORKSHOP_PAGES,
  lots: LOT_PAGES,
  optics: OPTICS_PAGES,
  labelPage: LABEL_PAGE,
  sheetPage: SHEET_PAGE,
  sheetPaper: SHEET_PAPER,
  cards: CARDS,
  changes: CHANGES,
  packageLabels: PACKAGE_LABELS,
  nextSteps: NEXT_STEPS,
  compare: COMPARE_PAGES,
  answers: ANSWER_PAGES,
  former: {
    gone: (name, date) =>
      date === undefined
        ? `${name} n\u2019est plus sur ce site.`
        : `${name} n\u2019est plus sur ce site depuis le ${date}.`,
    replacedBy: (name) => `\u00c0 sa place\u00a0: ${name}`,
  },
  notFound: {
    heading: "Page introuvable",
    lead: "Il n’y a rien à cette adresse. Une couleur a peut-être changé de nom ou quitté la gamme.",
    link: "Toutes les couleurs",
  },
};
