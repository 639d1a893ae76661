import type { CARDS as ENGLISH_CARDS } from "../en/cards.ts";
import type { AnyWords } from "../any-words.ts";
import { of } from "./phrases.ts";
import { shortWhite } from "./short-white.ts";

/** What a shelf card says beside what its sheet says, and the page of all cards. */
export const CARDS: AnyWords<typeof ENGLISH_CARDS> = {
  white: shortWhite,
  tint: (white, level) => `${white}, ${level}`,
  masstone: "Ton plein",
  noColour: "pas encore mesuré",
  chip: "application peinte",
  noTint: "Ce qu’elle fait dans un blanc n’est pas indiqué.",
  extender: "Un médium de charge.",
  isWhite: (count) =>
    count === 1
      ? "Un blanc\u202f: une couleur de la gamme y a été dégradée."
      : `Un blanc\u202f: ${count} couleurs de la gamme y ont été dégradées.`,
  overleaf: "Mentions au verso.",
  ragLead: "Les chiffons gras peuvent prendre feu d’eux-mêmes\u202f: voir au verso.",
  ragShort: "Les chiffons gras peuvent s’enflammer seuls.",
  basisWorkedOut: (frame, edition) => `Étiquette selon ${frame}\u202f: ${edition}.`,
  drawdown: "La couleur imprimée n’est qu’approchante\u202f: une application peinte fait foi.",
  approximateNote: "Celle-ci a été mesurée sous une autre lumière et adaptée.",
  lot: (number) => `Lot\u00a0${number}`,
  revision: (revision) => `Carte\u00a0${revision}`,
  address: (address) => `Code QR de l’adresse de la fiche, ${address}`,
  continued: (name) => `${name}, suite`,
  document: {
    title: (workshop, size) => `${workshop}\u202f: cartes de rayon, ${size}`,
    subject: (count) => `${count} carte${count === 1 ? "" : "s"} de rayon`,
    card: (name) => `Carte ${of(name)}`,
  },
  page: {
    heading: "Cartes de rayon",
    lead: (size, width, height) =>
      `Chaque carte telle qu’elle s’imprime au format ${size}, ${width} \u00d7 ${height} mm\u202f: recto et verso. Un écran ne montre pas une peinture\u202f; une imprimante non plus, tout à fait.`,
    sizes: "Formats",
    front: "recto",
    back: "verso",
    leaf: (leaf, side) => `feuillet ${leaf}, ${side}`,
    withoutHeading: "Sans carte",
    without: (markets) =>
      `vente permise sur base légale seulement, ou pas du tout (${markets.join(", ")})\u202f: ni carte, ni prix`,
    lacks: (lacks) =>
      lacks
        .map((lack) => (lack === "colour" ? "aucune couleur encore mesurée" : "pas de prix"))
        .join(", "),
    notClassified:
      "n’est pas encore classé, faute de fiche de données de sécurité, et n’est donc pas en vente\u202f: ni carte, ni prix",
    pdf: (size) => `ces cartes à imprimer et à couper, ${size}`,
    link: "cartes de rayon, chacune telle qu’elle s’imprime",
  },
  reprint: {
    fresh: "une nouvelle carte",
    gone: "plus de carte\u202f: la retirer du rayon",
    changed: (what, before, now) =>
      `${what}\u202f: «\u202f${before}\u202f» devient «\u202f${now}\u202f»`,
    added: (what, now) => `${what}\u202f: maintenant «\u202f${now}\u202f»`,
    removed: (what, before) => `${what}\u202f: n’est plus «\u202f${before}\u202f»`,
  },
  states: {
    name: "Nom",
    madeOf: "Composition",
    masstone: "Ton plein",
    tints: "Dégradés",
    sentence: "Dans les blancs",
    lightfastness: "Tenue",
    opacity: "Opacité",
    drying: "Sèche",
    strength: "Force",
    signalWord: "Mention d’avertissement",
    pictograms: "Pictogrammes",
    statements: "Mentions",
    precautions: "Conseils de prudence",
    unknown: "Composition et données de danger",
    rags: "Chiffons",
    sizes: "Contenances et prix",
    poisonCentre: "Centre antipoison",
    basis: "Fondement de l’étiquette",
    address: "Adresse",
    lot: "Lot",
    imprint: "Mentions légales",
  },
};
