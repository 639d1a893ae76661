import type { OPTICS_PAGES as ENGLISH_PAGES } from "../en/optics-pages.ts";
import type { AnyWords } from "../any-words.ts";
import { listed } from "./phrases.ts";

/** Words of the pages on what colours do in whites, in films and under gloss. */
export const OPTICS_PAGES: AnyWords<typeof ENGLISH_PAGES> = {
  strength: {
    byPigment: "Par masse de pigment sec",
    dispersion: "À la molette et à la machine",
    glossTitle: "Brillant et profondeur\u202f: la même couleur brillante, satinée et mate",
    glossAxis: "Telle qu’on la voit, hors du reflet\u202f; la dernière reflet inclus",
    glossIncluded: "inclus",
    glossDepth: (L, value) => `L* ${L}, valeur ${value}`,
    glossLabelDepth: (L) => `L* ${L}`,
    glossDescription: (parts) => `${parts.join("\u202f; ")}.`,
    finishes: { glossy: "brillant", satin: "satiné", matte: "mat" },
    glossColumns: {
      finish: "Aspect",
      excludedL: "Hors du reflet\u202f: L*",
      excludedValue: "Hors du reflet\u202f: valeur",
      includedL: "Reflet inclus\u202f: L*",
      includedValue: "Reflet inclus\u202f: valeur",
    },
    glossNote:
      "Hors du reflet, c’est ainsi qu’on regarde un tableau. Un instrument qui compte le reflet mesure tous les aspects de même. La valeur est celle de Munsell.",
  },
  fit: {
    title: "Absorption K et diffusion S sur le spectre",
    wavelength: "Longueur d’onde, nm",
    K: "Absorption K, en unités de la diffusion propre de chaque blanc",
    S: "Diffusion S, dans les mêmes unités",
    SUpper:
      "Diffusion S, dans les mêmes unités\u202f: seule une limite est connue, elle est sous la ligne",
    description: (parts) => `${parts.join("\u202f; ")}.`,
    part: (white, least, greatest) => `Dans ${white}, K de ${least} à ${greatest}`,
    list: "Comment K et S ont été ajustés",
    leftOut: "Applications laissées hors de l’ajustement",
    series: (count, least, greatest) => `${least} à ${greatest} sur ${count} longueurs d’onde`,
  },
  whites: {
    linkToAll: "Tous nos noirs et nos gris dans chaque blanc",
  },
  byStrength: {
    ranked: (reference) => `Par rapport à ${reference}, la plus forte d’abord`,
    notCompared: "Non comparées en force",
    lead: "Combien chacune colore un blanc, tube pour tube, par rapport à notre couleur de référence\u202f; et combien de blanc il lui faut jusqu’à un ton moyen. Une couleur foncée y prend beaucoup de blanc sans être plus forte pour cela\u202f: entre deux teintes, les parts de blanc ne disent pas laquelle colore le plus.",
    columns: {
      colour: "Couleur",
      byMass: "En masse",
      byVolume: "Tube pour tube",
      white: "Blanc jusqu’à L* 50, tube pour tube",
    },
    inWhite: (white) => `dans ${white}`,
  },
  inTheWhites: {
    heading: "Noirs et gris dans chaque blanc",
    lead: "Un noir se juge à son gris, non au tube\u202f: voici tous les nôtres, mélangés à chaque blanc jusqu’au même gris moyen.",
    orders: "Noirs et gris",
    sections: {
      swatches: "Côte à côte",
      trails: "Où chaque blanc les mène",
      figures: "En chiffres",
    },
    board: {
      caption:
        "Noirs et gris purs, et mélangés à chaque blanc jusqu’à L* 50\u202f; les plus bleus d’abord",
      alone: "Pur",
      said: "En mots",
      notRead: "non mesuré",
      notTried: "non essayé",
      figures: (a, b) => `a*\u00a0${a}, b*\u00a0${b}`,
    },
    readWithGloss: (names) =>
      `Reflet inclus à la mesure\u202f: ${listed(names)}\u202f; reflet exclu pour les autres. Ainsi mesurées, les deux sortes ne se comparent pas.`,
    group: (white, index) => `${white}${index === undefined ? "" : ` (${index})`}`,
    picture: (white) => `Dans ${white}`,
    description: (parts) => `À L* 50\u202f: ${parts.join("\u202f; ")}.`,
    descriptionPart: (name, a, b) => `${name} a* ${a}, b* ${b}`,
    key: "La croix est le neutre\u202f: en haut le jaune, en bas le bleu, à gauche le vert, à droite le rouge. Les marques pleines sont ce que nous avons peint et mesuré, de L* 30 au plus pâle\u202f; les tirets sont calculés entre elles. Une flèche au bord nomme un noir qui sort des gris, avec son a* et son b*.",
    caption: (white) => `Dans ${white}, le plus bleu à L* 50 d’abord`,
    columns: {
      colour: "Couleur",
      a: "a* à L* 50",
      b: "b* à L* 50",
      b70: "b* à L* 70",
      b30: "b* à L* 30",
    },
    note: "D65, observateur 10\u00b0. Un tiret\u202f: pas à cette clarté.",
    none: "Aucun noir ni gris de la gamme n’a encore été essayé dans un blanc.",
  },
};
