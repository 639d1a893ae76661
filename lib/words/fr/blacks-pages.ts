import type { BLACKS_PAGES as ENGLISH_PAGES } from "../en/blacks-pages.ts";
import type { AnyWords } from "../any-words.ts";
import { shortWhite } from "./short-white.ts";

/** What answers show of the range's blacks in its whites, of the whites themselves, and of what theory says of both. */
export const BLACKS_PAGES: AnyWords<typeof ENGLISH_PAGES> = {
  table: {
    caption: (level) => `Les noirs de la gamme à L* ${level}\u202f: a* et b* dans chaque blanc`,
    colour: "Noir",
    cell: (a, b) => `${a}, ${b}`,
    note: "a* et b*, sous D65 pour l’observateur 10\u00b0. 0, 0 est neutre\u202f; b* au-dessous de zéro est bleu, au-dessus jaune. Un tiret\u202f: non essayé dans ce blanc, ou pas à cette clarté.",
  },
  picture: {
    title: (level) =>
      `b* de chaque noir dans chaque blanc, tous à L*\u00a0${level}\u202f; les barres valent une incertitude type`,
    axis: "b* à clarté égale",
    ends: { minus: "\u2039 bleu", plus: "jaune \u203a" },
    description: (parts) => `${parts.join("\u202f; ")}.`,
    row: (black, lanes) => `${black}\u202f: ${lanes.join(", ")}`,
    lane: (white, b) => `b* ${b} dans ${white}`,
    short: shortWhite,
  },
  scattering: {
    title: (white) => `Comment ${white} diffuse la lumière sur le spectre`,
    wavelength: "Longueur d’onde, nm",
    axis: "Diffusion par rapport à 560 nm",
    read: (filmsUm) =>
      `ligne\u202f: calculée d’après ses propres films de ${filmsUm.join(", ")}\u00a0\u00b5m sur une carte de contraste, tant qu’ils ne la couvraient pas`,
    band: "bande\u202f: ce que dit la théorie, d’après le grain et ce qu’on n’en sait pas",
    description: (white, parts) => `${white}\u202f: ${parts.join("\u202f; ")}.`,
    at: (kind, nm, value) => `${kind} ${value} à ${nm} nm`,
    kinds: { read: "d’après ses films", band: "selon la théorie" },
    span: (low, high) => `${low} à ${high}`,
  },
  theory: {
    title: (level) =>
      `Ce que la théorie permet à L*\u00a0${level}\u202f: des intervalles, non un chiffre d’une peinture`,
    description: (parts) => `${parts.join("\u202f; ")}.`,
    row: (black, lanes) => `${black}\u202f: ${lanes.join(", ")}`,
    lane: (white, low, high) => `b* ${low} à ${high} dans ${white}`,
    axis: "b*, les quatre cinquièmes du milieu des cas essayés",
    statements: (isTold) =>
      isTold ? "Ce que la théorie peut dire" : "Ce que la théorie ne peut pas dire",
    statementsNote: (runs, robust) =>
      `Chacun des ${runs} cas prend d’autres tailles, d’autres étalements, d’autres indices et une autre huile. La théorie peut dire ce qui sort de même dans ${robust} d’entre eux.`,
    pair: (black, white) => `${black} dans ${white}`,
    inputs: {
      caption: "Ce qu’on a donné à la théorie",
      pigment: "Pigment",
      size: "Grain, \u00b5m",
      spread: "Étalement des tailles",
      indices: "Indice de réfraction",
      sizeKinds: { "volume median": "médiane, en volume", "number mean": "moyenne, en nombre" },
      note: (oils) =>
        `Huile d’indice ${oils.join(", ")}, au hasard. Étalement\u202f: l’écart type géométrique. La théorie est celle de sphères éloignées les unes des autres\u202f; les vrais grains sont serrés et d’autres formes, et elle ne peut dire combien une couleur est forte\u202f: aucun échantillon n’en est tiré.`,
    },
  },
};
