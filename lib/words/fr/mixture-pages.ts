import type { MIXTURE_PAGES as ENGLISH_PAGES } from "../en/mixture-pages.ts";
import type { AnyWords } from "../any-words.ts";
import { of } from "./phrases.ts";

/** What the sheet says of a colour of several pigments: what its components predict, its greys, and drift. */
export const MIXTURE_PAGES: AnyWords<typeof ENGLISH_PAGES> = {
  caption: "Ce qui la compose",
  columns: {
    pigment: "Pigment",
    paint: "Sa peinture pure",
    pigmentMass: "Sec, en masse",
    pigmentVolume: "Sec, en volume",
    paintMass: "Peinture, en masse",
    paintVolume: "Tube pour tube",
  },
  note: "À gauche, le pigment sec qu’elle contient. À droite, ce qu’il faut prendre aux tubes simples pour refaire ce mélange sur la palette.",
  noPaint: "aucune n’en est faite seule",
  lead: "Tout ici est calculé d’après les peintures de ses pigments simples. Là où nous avons peint le mélange lui-même, les deux sont montrés côte à côte.",
  heading: (white) => `Dans ${white}`,
  met: (white, count, middle, largest) =>
    `Dans ${white}, ses composants prévoient ${count === 1 ? "son unique dégradé" : `ses ${count} dégradés`} à \u0394E00 ${middle} près${count === 1 ? "" : ` en médiane, ${largest} au plus`}.`,
  metWithMasstone: (white, count, middle, largest) =>
    `Dans ${white}, ses composants prévoient ses ${count} applications, la couleur pure comprise, à \u0394E00 ${middle} près en médiane, ${largest} au plus.`,
  metAlone: (white, miss) =>
    `D’après leurs dégradés dans ${white}, ses composants prévoient la couleur pure, sans blanc, à \u0394E00 ${miss} près.`,
  notMet: (white) => `Nous ne l’avons pas essayée dans ${white}\u202f: c’est une simple prévision.`,
  steps: (count) =>
    `Prévision et mesure côte à côte\u202f: ${count === 1 ? "un degré" : `${count} degrés`}`,
  stepsCaption: (white) => `Couleur pour ${white}, comme ses composants la prévoient`,
  masstone: "ton plein",
  stepColumns: {
    ratio: "Couleur\u202f: blanc",
    L: "L*",
    a: "a*",
    b: "b*",
    munsell: "Munsell",
    uncertainty: "\u00b1",
    miss: "Écart",
  },
  stepsNote:
    "L* a* b* sous D65, observateur 10\u00b0. \u00b1\u202f: environ 68\u00a0% des prévisions restent en deçà, en \u0394E00, d’après des peintures à l’huile mesurées et nos propres dégradés, chacun écarté à son tour. Écart\u202f: le \u0394E00 à notre propre application.",
  drift: {
    heading: "Si l’un de ses pigments passe",
    figures: "La dérive en chiffres",
    caption: (white) => `Un ton moyen dans ${white}, et le même avec un pigment plus faible`,
    asMade: "tel quel",
    lost: (name, percent) => `${name}, ${percent}\u00a0% perdus`,
    columns: {
      what: "Dégradé",
      L: "L*",
      a: "a*",
      b: "b*",
      change: "\u0394E00",
      hue: "Dont en a* b*",
    },
    note: "Calculé, non vu\u202f: tant du pigment ôté. La dernière colonne laisse la clarté de côté\u202f; c’est le changement de teinte.",
    single: (sentence) => `Pour comparer, un noir d’un seul pigment\u202f: ${sentence}`,
    title: (white) =>
      `Comment son ton moyen dans ${white} se déplace si un pigment passe de 30 et de 60\u00a0%`,
    description: (paths) => `${paths.join("\u202f; ")}.`,
    path: (name, a, b) => `${name} plus faible de 60\u00a0%\u202f: a* ${a}, b* ${b}`,
    less: (name) => `moins ${of(name)}`,
    percent: (percent) => `${percent}\u00a0%`,
  },
  pair: {
    title: (first, second) =>
      `Tons moyens ${of(first)} et ${second}, à côté des noirs d’un seul pigment`,
    description: (first, second, share, chroma, blacks) =>
      `De ${second} seul à ${first} seul, au plus près du neutre à ${share} ${of(first)} en masse, C*ab ${chroma}. ${blacks.join("\u202f; ")}.`,
    single: "noirs d’un seul pigment",
    black: (name, a, b) => `${name}\u202f: a* ${a}, b* ${b}`,
    neutral: (first, second, share, volume, chroma) =>
      `Le ton moyen le plus neutre ${of(first)} et ${second} prend ${share} ${of(first)} en poids de peinture${volume === undefined ? "" : ` (${volume} en volume)`}\u202f; C*ab ${chroma}.`,
    share: (percent) => `${percent}\u00a0%`,
  },
  blacks: {
    summary: (count, all) =>
      count === all
        ? `À côté des noirs d’un seul pigment\u202f: ${count} de la gamme`
        : `À côté des noirs d’un seul pigment\u202f: les ${count} plus proches sur ${all}`,
    caption: (white) => `À clarté égale dans ${white}\u202f: a* et b*`,
    columns: { colour: "Couleur", at: (level) => `L* ${level}` },
    cell: (a, b) => `${a}, ${b}`,
    note: "a* et b*, sous D65 pour l’observateur 10\u00b0. 0, 0 est neutre\u202f; b* au-dessous de zéro est bleu, au-dessus jaune. Un tiret\u202f: pas à cette clarté.",
  },
};
