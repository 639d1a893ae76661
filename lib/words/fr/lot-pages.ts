import type { LOT_PAGES as ENGLISH_PAGES } from "../en/lot-pages.ts";
import type { AnyWords } from "../any-words.ts";
import { FORMS, wordOf } from "./closed-words.ts";
import { of } from "./phrases.ts";

/** What the workshop's pages of lots, batch sheets and trials say. */
export const LOT_PAGES: AnyWords<typeof ENGLISH_PAGES> = {
  describes: (standard, others) =>
    [
      ...(standard === undefined ? [] : [`Les chiffres décrivent le lot ${standard}.`]),
      ...(others.length === 0
        ? []
        : [
            `${others.length === 1 ? "Le lot" : "Les lots"} ${others.join(", ")} ${others.length === 1 ? "s’accorde" : "s’accordent"} avec ${standard === undefined ? "l’étalon" : "lui"} dans la tolérance.`,
          ]),
    ].join(" "),
  recalled: (number, since) =>
    `Le lot ${number} a été rappelé le ${since}\u202f: ne pas l’utiliser, et nous écrire.`,
  conceded: (number) => `Le lot ${number} est vendu par dérogation, bien que hors tolérance.`,
  reply: "Lots",
  verdicts: { pass: "Conforme", near: "À la limite", fail: "Non conforme", none: "Non jugé" },
  index: {
    heading: "Lots",
    lead: "Chaque lot à côté de son étalon, le plus récent d’abord.",
    description: "Les lots de l’atelier à côté de leurs étalons.",
    none: "Aucun lot n’est encore consigné. Un lot est un fichier dans lots/.",
    outcome: "Ce qu’ils ont donné",
    caption: "Lots, le plus récent d’abord",
    columns: {
      lot: "Lot",
      colour: "Couleur",
      date: "Date",
      verdict: "Verdict",
      letDown: "Dégradé, \u0394E00",
      strength: "Force, %",
    },
    recalled: "rappelé",
    conceded: "dérogation",
    standard: "Étalon",
    planned: "Prévu",
    spreadHeading: "Notre répétabilité",
    spread: (colour, strength, degrees) =>
      `Le même lot, dégradé et mesuré une seconde fois, diffère de ${colour} \u0394E*ab et de ${strength}\u00a0% de force (écart type, ${degrees} ${degrees === 1 ? "degré" : "degrés"} de liberté).`,
    spreadUsed: "Les verdicts s’appuient là-dessus, au double.",
    spreadNotUsed:
      "C’est trop peu pour s’y fier\u202f: les verdicts suivent le bruit propre de l’instrument.",
    spreadOfReadings:
      "Le \u00b1 de chaque mesure du même instrument qui n’en indique pas tient compte de ces répétitions et de toutes les autres.",
    spreadNone:
      "Aucun lot n’a de dégradé fait ou mesuré deux fois\u202f; les verdicts suivent le bruit propre de l’instrument.",
  },
  lot: {
    heading: (number, colour) => `Lot ${number}, ${colour}`,
    description: (number, colour) => `Le lot ${number} (${colour}) à côté de son étalon.`,
    back: "Tous les lots",
    ruled: (since, why) => `Depuis le ${since}\u202f: ${why}`,
    lead: {
      pass: "Il est conforme.",
      near: "Il est trop près d’une limite pour être jugé.",
      unjudged:
        "Non jugé\u202f: ce qui en a été mesuré ne peut pas être comparé en entier à l’étalon.",
      fail: "Il n’est pas conforme.",
      none: "Non jugé\u202f: ni son ton plein ni son dégradé n’a été mesuré en spectre.",
      standard: "L’étalon conservé\u202f: les lots suivants se comparent à lui.",
      recalled: "Rappelé\u202f: rien n’en doit être vendu ni utilisé.",
      conceded: "Accordé par dérogation\u202f: il est vendu bien que non conforme.",
      planned: "Prévu, et pas encore fait.",
    },
    sections: {
      verdict: "Face à l’étalon",
      seen: "Côte à côte",
      parts: "L’écart en parties",
      correction: "Ce qui le ramènerait",
      planned: "Tel qu’il est prévu",
      batch: "Tel qu’il a été fait",
      next: "Ensuite",
    },
    judgedCaption: "Chaque critère avec sa tolérance",
    judgedColumns: { what: "Critère", found: "Trouvé", tolerance: "Tolérance", verdict: "Verdict" },
    customary:
      "Les tolérances sont notre propre choix là où ni l’atelier ni la couleur n’en nomment.",
    seenRows: ["Étalon", "Lot"],
    seenDescription: (number) => `L’étalon au-dessus du lot ${number}, en ton plein et en dégradé.`,
    masstone: "Ton plein",
    letDown: (white, ratio) => `${ratio} dans ${white}`,
    partsCaption: "Lot moins étalon, \u0394E00 (D65, 10\u00b0)",
    partsColumns: {
      of: "Quoi",
      total: "\u0394E00",
      L: "\u0394L\u2032",
      C: "\u0394C\u2032",
      H: "\u0394H\u2032",
    },
    equal: "Dégradé à force égale",
    strength: (percent, nm, weighted) =>
      `Force ${percent}\u00a0% à ${nm} nm, où l’étalon absorbe le plus\u202f; ${weighted}\u00a0% pondérée par ce que l’œil prend de la lumière du jour.`,
    correctionLead: (best, grams) => `Incorporer ${grams} g ${of(best)} à 100 g du lot.`,
    correctionForeign: (name, pigments) =>
      `Avec ${name} il contient aussi ${pigments}, ce que ne dit ni son nom ni son étiquette.`,
    correctionNone:
      "Rien de ce qui a été essayé ne réduirait l’écart de moitié\u202f: ni un blanc, ni une charge, ni une couleur mesurée de même, ni un autre lot. N’a pu être essayé ce qui n’a jamais été coupé de blanc, ni mesuré seul et en films sur une carte de contraste nue, mesurée elle aussi.",
    correctionUnread: "Rien à corriger avant une mesure juste.",
    correctionCaption: "Pour 100 g du lot, et ce qu’on mesurerait alors",
    correctionColumns: {
      what: "Ajout",
      grams: "Pour 100 g, g",
      masstone: "Ton plein, \u0394E00",
      letDown: "Dégradé, \u0394E00",
      strength: "Force, %",
    },
    correctionNote:
      "Entre parenthèses, ce à quoi cela peut aller avec une dose fausse de 5\u00a0%, ou d’autant que l’ajout est mal connu, et l’incertitude de la mesure. Essayer d’abord sur 20 g\u202f: ce que la théorie laisse de côté n’est pas dans l’intervalle.",
    kinds: { white: "blanc", extender: "charge", colour: "couleur", lot: "lot" },
    plannedCaption: "À peser",
    batchCaption: "Pesé, et ce qui en est sorti",
    batchColumns: { what: "Quoi", amount: "Quantité" },
    rows: {
      yield: "Rendement",
      loss: "Perdu",
      tubes: (ml) => `Tubes de ${ml} ml`,
      packed: (ml) => `Les tubes de ${ml} ml doivent contenir en moyenne`,
      packedMean: (grams) => `${grams} ou plus`,
      packedFew: "Peu d’entre eux peuvent contenir moins de",
      packedGross: (net, gross) => `${net}\u202f; avec le tube vide ${gross}`,
      packedShort: (found, ml) =>
        `Ils contiennent en moyenne ${found} ml, et ${ml} ml y sont inscrits\u202f: ils ne peuvent être vendus ainsi (directive 76/211/CEE).`,
      tubeMass: (ml) => `Dans un tube de ${ml} ml`,
      fineness: "Finesse de broyage",
      density: "Masse volumique de la peinture",
      retained: "Échantillon témoin",
      passes: "Passes",
      note: "Note",
    },
    steps: {
      recalled: (number) => [
        `Ce qui en est sorti, à rappeler\u202f: npm run check -- --uses ${number}.`,
        "Aucune étiquette n’en est imprimée.",
      ],
      conceded: (number, howMany) => [
        `Ses étiquettes\u202f: npm run labels -- --lot ${number} ${howMany}.`,
      ],
      planned: () => [
        "Une fois fait\u202f: mettre dans son relevé les masses telles qu’elles furent, et en ôter planned: true.",
        "Étirer le ton plein et le dégradé, les mesurer\u202f; npm run read -- FICHIER garde les mesures et donne les lignes pour son relevé.",
      ],
      none: () => [
        "Étirer le ton plein et le dégradé, les mesurer\u202f; npm run read -- FICHIER garde les mesures et donne les lignes pour son relevé.",
      ],
      pass: (number, howMany) => [
        `Ses étiquettes\u202f: npm run labels -- --lot ${number} ${howMany}.`,
      ],
      standard: (number, howMany) => [
        `Ses étiquettes\u202f: npm run labels -- --lot ${number} ${howMany}.`,
      ],
      unjudged: () => [
        "En faire un dégradé dans le blanc et au rapport de l’étalon, et le mesurer comme l’étalon\u202f; ou faire de l’étalon conservé le même dégradé que de ce lot.",
      ],
      near: () => [
        "L’étirer et le mesurer encore une fois\u202f: avec un ± plus petit, on saura peut-être s’il est conforme.",
      ],
      fail: () => [
        "Le corriger d’après sa fiche, ou le retenir. Ce qui a été corrigé se mesure de nouveau, comme un lot à part.",
      ],
      kept: () => [
        "Le retenir\u202f: rien de ce qui a été mesuré ici ne le ramènerait à son étalon.",
      ],
    },
    ownSheet: (number) => `Fiche de fabrication du lot ${number}`,
    correctionSheet: (number) => `Fiche de correction du lot ${number}`,
    reply: (colour) => `Une réponse sur ${colour}`,
    batchSheet: (colour) => `Fiche de fabrication\u202f: ${colour}`,
    colourPage: (colour) => `${colour} à l’atelier`,
  },
  chart: {
    of: {
      strength: {
        title: (colour) => `Force ${of(colour)}, lot par lot`,
        ranges: (colour) => `Force ${of(colour)}\u202f: d’un lot au suivant`,
        value: "Pouvoir colorant, % de l’étalon",
        range: "Écart de deux voisins, %",
        column: "Force, %",
      },
      letDown: {
        title: (colour) => `Dégradé ${of(colour)} à côté de l’étalon, lot par lot`,
        ranges: (colour) => `Dégradé ${of(colour)}\u202f: d’un lot au suivant`,
        value: "\u0394E00 du dégradé à l’étalon",
        range: "Écart de deux voisins, \u0394E00",
        column: "Dégradé, \u0394E00",
      },
      masstone: {
        title: (colour) => `Ton plein ${of(colour)} à côté de l’étalon, lot par lot`,
        ranges: (colour) => `Ton plein ${of(colour)}\u202f: d’un lot au suivant`,
        value: "\u0394E00 du ton plein à l’étalon",
        range: "Écart de deux voisins, \u0394E00",
        column: "Ton plein, \u0394E00",
      },
    },
    description: (numbers) => `Par ordre de date\u202f: ${numbers}.`,
    order: "Lots par ordre de date",
    lines: {
      mean: "moyenne",
      limits: "limites de contrôle",
      limit: "limite",
      tolerance: "tolérance",
    },
    provisional: (count) =>
      `Les limites de ${count} lots sont provisoires\u202f: les suivants les déplaceront. Il en faut vingt pour qu’elles soient fermes.`,
    quiet:
      "Aucun lot ne sort des limites, et aucune suite n’est assez longue pour dire quelque chose.",
    points: "Quel lot est chaque marque",
    columns: { place: "Marque", lot: "Lot", date: "Date" },
    one: "Un seul lot ne fait pas une carte de contrôle.",
    apart:
      "Aucun de ces lots n’a pu être comparé à l’étalon par la couleur ou la force\u202f; il n’y a donc pas de carte de contrôle.",
  },
  correctionSheet: {
    heading: (number) => `Correction du lot ${number}`,
    description: (number) => `Ce qu’il faut peser pour ramener le lot ${number} à son étalon.`,
    rows: {
      trialLot: "Essai\u202f: du lot",
      trialAdded: (name) => `Essai\u202f: ${name}`,
      restLot: "Puis\u202f: le reste du lot",
      restAdded: (name) => `Puis\u202f: ${name}`,
    },
    predicted: (masstone, letDown, strength) =>
      `Devrait alors donner\u202f: ton plein \u0394E00 ${masstone}, dégradé \u0394E00 ${letDown}, force ${strength}\u00a0%.`,
    dose: (grams, name) => `${grams}\u00a0g ${of(name)} pour 100 g du lot.`,
    ofYield: (grams) =>
      `Pour les ${grams}\u00a0g obtenus\u202f: d’autant moins qu’il y en a déjà en tubes.`,
    ofWeighed: (grams) =>
      `Pour les ${grams}\u00a0g pesés\u202f: le relevé ne donne pas de rendement.`,
    order: [
      "Mélanger l’essai sur le marbre au couteau jusqu’à ce qu’aucune traînée ne reste.",
      "L’étirer à côté de l’étalon, ton plein et dégradé, et mesurer les deux.",
      "Hors tolérance\u202f: noter ce qui a été mesuré, et laisser le lot tel qu’il est.",
      "Dans la tolérance\u202f: incorporer le reste par tiers, et donner au tout une passe de plus.",
      "Étirer le tout, le mesurer, et remplir un nouvel échantillon témoin.",
      "Le noter comme un lot à part, avec tout ce qui y est entré.",
    ],
    cautions: "Avant de mélanger",
    classified: (name, statements) =>
      `${name} est classé (${statements})\u202f: les mises en garde de son étiquette valent au marbre, et le lot demande une étiquette à lui.`,
    fields: {
      masstone: "Essai, ton plein \u0394E00",
      letDown: "Essai, dégradé \u0394E00",
      strength: "Essai, force %",
    },
  },
  batchSheet: {
    heading: (colour) => `Fiche de fabrication\u202f: ${colour}`,
    description: (colour) =>
      `Ce qu’il faut peser pour un lot (${colour}), à imprimer et à porter au marbre.`,
    back: (colour) => `${colour} à l’atelier`,
    backToLot: (number) => `Lot ${number}`,
    wanted: "Ce qu’on veut",
    units: { tubes: (ml) => `tubes de ${ml} ml`, pigmentG: "g de pigment" },
    amount: "Combien",
    fault: "Donner une quantité supérieure à 0.",
    print: "Imprimer",
    caption: "Ce qu’il faut peser",
    columns: { what: "Quoi", planned: "Prévu,\u00a0g", weighed: "Pesé,\u00a0g" },
    rows: {
      first: "Huile pour commencer",
      held: "Huile gardée en réserve",
      paint: "Peinture en tout",
    },
    comesOut: (from, to) => `Il doit en sortir ${from} à ${to} ml.`,
    loss: {
      learnt: (from, to, count) =>
        `Perte ${from} à ${to}\u00a0%, d’après ${count === 1 ? "un lot" : `${count} lots`} de cette couleur.`,
      customary: (from, to) =>
        `Perte ${from} à ${to}\u00a0%, selon l’usage\u202f: aucun lot de cette couleur n’est consigné.`,
    },
    fill: (ml, really) =>
      `Compter ${really} ml par tube de ${ml} ml\u202f: c’est ce que contenaient les précédents.`,
    packed: (ml, mean, few, none, density) =>
      `La loi veut que les tubes de ${ml} ml contiennent en moyenne ${mean} g de peinture ou plus\u202f: c\u2019est assez pour ${ml} ml jusqu\u2019à une masse volumique de ${density} g/cm\u00b3. Peu de tubes d\u2019un lot (2 sur 100 selon le droit allemand) peuvent contenir moins de ${few} g, et aucun moins de ${none} g (directive 76/211/CEE).`,
    gross: (ml, mean, few, none, tare) =>
      `Sur la balance, avec un tube vide de ${ml} ml de ${tare} g\u202f: ${mean} g, ${few} g et ${none} g.`,
    tareless:
      "Le tube vide avec son bouchon s\u2019y ajoute\u202f: en peser un, et l\u2019inscrire comme tareG.",
    densityFirst: "Peser d\u2019abord la masse volumique du lot\u202f: les masses en dépendent.",
    rubbedOut: (pigment, number, figure) =>
      `${pigment}, livraison ${number}\u202f: absorption ${figure} g/100 g, d\u2019après laquelle l\u2019huile est retenue ici.`,
    step: (grams) => `Pesées à ${grams} g près, le pas de la balance.`,
    order: {
      heading: "Ordre du travail",
      mulled: [
        "Peser le pigment aspiration en marche, comme il est dit plus bas, et fermer le pot.",
        "Huile pour commencer\u202f: l’incorporer au couteau jusqu’à ce qu’il ne reste plus de pigment sec.",
        "Broyer à la molette par portions\u202f; ramasser et retourner après chaque passe.",
        "Huile gardée en réserve\u202f: goutte à goutte, et seulement autant que la pâte le demande. Noter ce qui reste.",
        "Siccatifs et médiums à la fin, bien incorporés à la pâte.",
        "Étirer le ton plein et le dégradé, remplir le pot témoin, puis les tubes.",
      ],
      milled: [
        "Peser le pigment aspiration en marche, comme il est dit plus bas, et fermer le pot.",
        "Huile pour commencer\u202f: mélanger en une pâte ferme, et laisser reposer jusqu’à ce qu’elle soit mouillée à cœur.",
        "Passer à la broyeuse cylindres écartés, puis plus serrés à chaque passe\u202f; lire la jauge après chacune.",
        "Huile gardée en réserve\u202f: entre les passes, et seulement autant que la pâte le demande. Noter ce qui reste.",
        "Siccatifs et médiums à la dernière passe.",
        "Étirer le ton plein et le dégradé, remplir le pot témoin, puis les tubes.",
      ],
    },
    cautions: "Avant que le pigment soit peinture",
    defer: "Les fiches de données de sécurité des fournisseurs et les règles locales priment.",
    fields: {
      heading: "À remplir",
      lot: "Lot",
      name: "Fait par",
      date: "Date",
      passes: "Passes",
      fineness: "Finesse, \u00b5m",
      left: "Huile restante, g",
      yield: "Rendement, g",
      tubes: "Tubes remplis",
      sample: "Numéro du témoin",
    },
    none: "Rien ne peut être pesé\u202f:",
  },
  labels: {
    heading: "Étiquettes à coller",
    description: "Les étiquettes de l’atelier pour tubes et pots.",
    lead: "Une étiquette de chaque couleur dans chaque contenance où elle se vend, en vraie grandeur. Une étiquette est un projet pour qui la signe\u202f: la loi de chaque marché décide de ce qu’elle doit porter.",
    sections: {
      print: "À imprimer",
      refused: "Sans étiquette",
      remarks: "Au sujet des étiquettes imprimées",
    },
    list: "Couleur, contenance, et pourquoi",
    caption: "Étiquettes par contenance",
    columns: { size: "Contenance", measures: "Étiquette, mm", colours: "Couleurs" },
    measures: (width, height) => `${width} \u00d7 ${height}`,
    pdf: (pages) =>
      `labels.pdf, ${pages} ${pages === 1 ? "page" : "pages"}, à imprimer en vraie grandeur`,
    none: "workshop.yaml ne donne pas d’étiquettes\u202f: une liste de { name, kind, ml } dit lesquelles il y a.",
    nothing: "Aucune couleur vendue dans l’une de ces contenances n’a encore d’étiquette.",
    command:
      "Pour un lot, et autant que de tubes remplis\u202f: npm run labels -- --lot NUMBER --filled.",
  },
  trials: {
    heading: "Essais",
    lead: "Expositions et essais de séchage, au point où ils en sont.",
    description: "Les essais de l’atelier en séries datées.",
    none: "Aucun essai n’est consigné en série. Un essai est un fichier dans trials/.",
    due: "À voir ensuite",
    dueCaption: "Quand regarder de nouveau",
    dueColumns: { what: "Essai", date: "Regarder le" },
    ended: "Terminé",
    exposure: (colour, form) => `${colour}, ${wordOf(FORMS, form)}, exposé`,
    drying: (colour) => `${colour}, séchage`,
    soFar: (category, deltaEab, days) =>
      `Catégorie\u00a0${category} jusqu’ici\u202f: \u0394E*ab ${deltaEab} après ${days} ${days === 1 ? "jour" : "jours"}. Cela ne dit rien de la suite.`,
    over: (category, deltaEab, days) =>
      `Catégorie\u00a0${category}\u202f: \u0394E*ab ${deltaEab} après ${days} ${days === 1 ? "jour" : "jours"}.`,
    unread: "Pas encore mesuré.",
    touch: (from, to) => `Sec au toucher entre le jour ${from} et le jour ${to}.`,
    through: (from, to) => `Sec à cœur entre le jour ${from} et le jour ${to}.`,
    notYet: "Pas encore sec au toucher.",
    never: "Pas sec au toucher à la fin de l’essai.",
    day: "Jours depuis le début",
    change: "\u0394E*ab par rapport à la moitié gardée à l’obscurité",
    state: "Humide 0, collant 1, sec au toucher 2, à cœur 3",
    limit: (category) => `fin de ${category}`,
    next: (date) => `Regarder de nouveau le ${date}.`,
    table: "Chaque mesure",
    columns: { date: "Date", day: "Jour", found: "Trouvé" },
  },
};
