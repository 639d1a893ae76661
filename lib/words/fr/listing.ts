import type { PageWords } from "../en/pages.ts";

/** What goes along with pictures of a colour into a shop. */
export const LISTING: PageWords["listing"] = {
  made: "Composition",
  sizes: "Contenances et prix",
  noSizes: "Aucune contenance n’est enregistrée.",
  label: "Sur l’étiquette",
  said: "Ce que l’on peut dire de la couleur",
  pictures: "Images",
  screen:
    "Les échantillons montrent une mesure de la peinture sèche telle qu’un écran peut la montrer, et aucun écran ne montre exactement une peinture : on juge et on contretype sur la peinture elle-même, jamais sur une image.",
  estimated:
    "Aucun instrument n’a mesuré la couleur. Elle est estimée d’après une photographie : il faut le dire partout où elle est montrée.",
  outside:
    "La couleur dépasse ce que contient le sRGB : les écrans la montrent plus terne qu’elle n’est.",
  predicted: "Les dégradés qui n’ont pas été peints sont prévus.",
  alone: (name: string) => `${name}, la couleur seule.`,
  strip: (name: string, white: string) =>
    `${name}, seule et dégradée au ${white}, du plus fort au plus pâle.`,
  beside: (names: readonly string[]) => `${names.join(", ")}, côte à côte.`,
};
