import type { ANSWER_PAGES as ENGLISH_PAGES } from "../en/answer-pages.ts";
import type { AnyWords } from "../any-words.ts";
import { upperFirst } from "../letter-case.ts";
import { FORMS, wordOf } from "./closed-words.ts";
import { listed, namesWithin, of } from "./phrases.ts";

/** What a plain part of a sheet is called, by its path; the first that fits. */
const FACTS: readonly (readonly [RegExp, string])[] = [
  [/^cautions\.signalWord$/, "Mention d’avertissement"],
  [/^cautions\.(?:dryPigment\..*\.)?hazardStatements$/, "Mentions de danger"],
  [/^cautions\.supplemental$/, "Informations supplémentaires"],
  [/^cautions\.notForSale$/, "Marchés où la vente est exclue faute de base légale"],
  [/^cautions\.unknown$/, "Composants sans données de danger"],
  [/^cautions\.restrictions$/, "Textes de ses marchés"],
  [/^cautions\.basis$/, "Éléments d’étiquetage"],
  [/^pigments$/, "Pigments"],
  [/^additions$/, "Ajouté à l’huile"],
  [/^permanence\.basis$/, "Fondement de la solidité à la lumière"],
  [/^dispersion$/, "Broyé"],
  [/^family$/, "Famille"],
  [/^vehicle\.oil$/, "Huile"],
  [/^vehicle\.(?:name|slug)$/, "Liant"],
  [/\.colourIndexName$/, "Nom du Colour Index"],
  [/^drying\.layering$/, "Couches"],
  [/^drying\.filmHealth$/, "Film"],
  [/^drying\.grounds$/, "Préparations"],
  [/^permanence\.sensitivities$/, "Autres risques"],
  [/^permanence\.reasons$/, "Raisons de la solidité"],
  [/^permanence\.weakest$/, "Le plus faible à la lumière"],
  [/^cautions\.notClassified$/, "Contenu, sans classement pour cela"],
];

/** Headings, captions and sentences of answers, their claims and replies. */
export const ANSWER_PAGES: AnyWords<typeof ENGLISH_PAGES> = {
  heading: "Questions",
  lead: "Ce que les peintres nous demandent\u202f: la réponse d’abord, puis le pourquoi.",
  themes: {
    whites: "Blancs et mélanges",
    choice: "Choisir une couleur",
    drying: "Séchage et couches",
    lasting: "Sa tenue dans le temps",
    tube: "Ce qu’il y a dans le tube",
    safety: "Sécurité et droit",
    others: "Autres",
  },
  none: "Aucune question n’a encore de réponse.",
  all: "Toutes les réponses",
  description: (summary) =>
    summary.length <= 300 ? summary : `${summary.slice(0, 297).replace(/\s+\S*$/, "")}...`,
  claims: {
    checked: (count, date) =>
      `${count} ${count === 1 ? "affirmation vérifiée" : "affirmations vérifiées"} d’après nos relevés${date === undefined ? "" : ` jusqu’au ${date}`}`,
    caption: "Ce que dit la réponse, et ce que disent nos relevés aujourd’hui",
    columns: { statement: "Affirmation", today: "Aujourd’hui", records: "Relevés jusqu’au" },
    undated: "sans date",
    broken: "ne tient pas aujourd’hui",
    every: (but) =>
      but.length === 0 ? "Toutes les couleurs" : `Toutes les couleurs sauf ${listed(but)}`,
    about: (colour, statement) => `${colour}\u202f: ${statement}`,
    below: (name, limit) => `${name}\u202f: au-dessous de ${limit}`,
    above: (name, limit) => `${name}\u202f: au-dessus de ${limit}`,
    belowBy: (name, limit, by) => `${name}\u202f: au-dessous de ${limit}, de ${by} au moins`,
    aboveBy: (name, limit, by) => `${name}\u202f: au-dessus de ${limit}, de ${by} au moins`,
    other: (colour, name) => `celui ${of(colour)}${name === "" ? "" : `, ${name}`}`,
    between: (name, from, to) => `${name}\u202f: entre ${from} et ${to}`,
    is: (name, value) => `${name}\u202f: ${value}`,
    family: (name) => `les ${name.toLowerCase()}`,
    lowest: (name, rivals) => `${name}\u202f: la plus basse valeur parmi ${rivals}`,
    highest: (name, rivals) => `${name}\u202f: la plus haute valeur parmi ${rivals}`,
    by: (statement, by) => `${statement}, de ${by} au moins`,
    includes: (name, value) => `${name}\u202f: ${value} en fait partie`,
    lacks: (name, value) => `${name}\u202f: ${value} n’en fait pas partie`,
    among: "en fait partie",
    notAmong: "n’en fait pas partie",
    count: (name, count) => `${name}\u202f: ${count === 0 ? "aucun" : `${count} en tout`}`,
    standing: (statement, standing) => `${statement} (toujours ${standing})`,
    none: "aucun",
    nothing: "aucun",
    yes: "oui",
    no: "non",
  },
  place: {
    inWhite: (white) => `dans ${white}`,
    atL: (level) => `à L* ${level}`,
    at: (ratio) => `à ${ratio}`,
    masstone: "du ton plein",
    under: (viewing) => `sous ${viewing}`,
    of: (name) => of(name),
    form: (form) => `en ${wordOf(FORMS, form)}`,
  },
  facts: FACTS,
  fact: (path) => {
    const ofPigment = /^cautions\.dryPigment\.[^.]+\.(.+)$/.exec(path)?.[1];
    if (ofPigment !== undefined)
      return `${ANSWER_PAGES.fact(`cautions.${ofPigment}`)} du pigment sec`;
    const named = FACTS.find(([form]) => form.test(path))?.[1];
    const last = path.split(".").at(-1) ?? path;
    return (
      named ?? upperFirst(last).replace(/(?<=[a-z])[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`)
    );
  },
  table: { colour: "Couleur", caption: "Couleurs côte à côte", none: "absent de cette fiche" },
  picture: {
    swatchesTitle: (level, white) =>
      `Mélangées à ${white} jusqu’à une même clarté, L*\u00a0${level}`,
    swatchesAxis: (level, white) => `Avec ${white}, à L*\u00a0${level}`,
    swatchDescription: (name, a, b) => `${name}, a* ${a}, b* ${b}`,
    trailTitle: (white) => `Où ${white} mène chacune\u202f: a* et b* des mélanges`,
    ladderTitle: (name, white) => `${name} avec ${white}`,
  },
  answered: (date, newest) =>
    [
      ...(date === undefined ? [] : [`Répondu le ${date}.`]),
      ...(newest === undefined ? [] : [`D’après nos relevés jusqu’au ${newest}.`]),
    ].join(" "),
  coloursHeading: "Couleurs qu’elle nomme",
  /** Under a tile, of its lower part. */
  tintIn: (white) => `en bas\u202f: un ton dégradé avec ${namesWithin([white])}`,
  coloursNote: (whites) => `Chacune pure, puis en ton moyen avec ${namesWithin(whites)}.`,
  reply: {
    heading: "Une réponse à envoyer",
    lead: "Texte simple, prêt à coller dans une lettre. Les chiffres sont ceux des fiches.",
    text: "Réponse",
    copy: "Copier la réponse",
    copied: "Copié.",
    notCopied: "La copie n’a pas pu se faire\u202f: sélectionner le texte et le copier à la main.",
    question: "Ce qui a été demandé",
    colours: "Couleurs",
    figures: "Chiffres",
    thanks: "Merci de votre question.",
    asked: "Vous avez demandé\u202f:",
    sheetQuestion: (name) => `Que faut-il savoir de la couleur «\u202f${name}\u202f»\u202f?`,
    line: (name, value, standing) => `${name}\u202f: ${value} (${standing})`,
    notStated: (name) => `${name}\u202f: non indiqué`,
    lightfastness: "Solidité à la lumière",
    caution: (name, signalWord, statements) =>
      `Étiquette (${name})\u202f: ${[signalWord, ...statements].filter((part) => part !== "").join(" ")}`,
    cautionLine: "L’étiquette, la fiche de données de sécurité et vos règles locales priment.",
    more: (address) => `En entier, avec l’origine de chaque chiffre\u202f: ${address}`,
    closing: "Bien à vous,",
    invented: "(Démonstration\u202f: atelier, couleurs et mesures sont inventés.)",
  },
};
