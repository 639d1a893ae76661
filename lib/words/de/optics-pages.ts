import type { AnyWords } from "../any-words.ts";
import type { PageWords } from "../en/pages.ts";
import { listed } from "./phrases.ts";

/** Words of the pages on what colours do in whites, in films and under gloss. */
export const OPTICS_PAGES: AnyWords<PageWords["optics"]> = {
  strength: {
    byPigment: "Nach Masse des trockenen Pigments",
    dispersion: "Von Hand angerieben und gewalzt",
    glossTitle: "Glanz und Tiefe: dieselbe Farbe glänzend, seidenmatt und matt",
    glossAxis: "Wie Sie sie sehen, vom Glanz abgewandt; zuletzt mit Glanz",
    glossIncluded: "mit Glanz",
    glossDepth: (L: string, value: string) => `L* ${L}, Helligkeit ${value}`,
    glossLabelDepth: (L: string) => `L* ${L}`,
    glossDescription: (parts: readonly string[]) => `${parts.join("; ")}.`,
    finishes: { glossy: "glänzend", satin: "seidenmatt", matte: "matt" },
    glossColumns: {
      finish: "Glanzgrad",
      excludedL: "Vom Glanz abgewandt: L*",
      excludedValue: "Vom Glanz abgewandt: Helligkeit",
      includedL: "Mit Glanz: L*",
      includedValue: "Mit Glanz: Helligkeit",
    },
    glossNote:
      "Vom Glanz abgewandt sehen Sie ein Bild an. Ein Messgerät, das den Glanz einschließt, misst jeden Glanzgrad gleich. Helligkeit ist Munsells Value.",
  },
  fit: {
    title: "Absorption K und Streuung S über dem Spektrum",
    wavelength: "Wellenlänge, nm",
    K: "Absorption K, in Einheiten der Streuung jedes Weiß",
    S: "Streuung S, in denselben Einheiten",
    SUpper:
      "Streuung S, in denselben Einheiten: nur eine Grenze ist bekannt, sie liegt unter der Linie",
    description: (parts: readonly string[]) => `${parts.join("; ")}.`,
    part: (white: string, least: string, greatest: string) =>
      `In ${white}, K von ${least} bis ${greatest}`,
    list: "Wie K und S angepasst wurden",
    leftOut: "Aufstriche, die nicht in die Anpassung eingehen",
    series: (count: number, least: string, greatest: string) =>
      `${least} bis ${greatest} über ${count} Wellenlängen`,
  },
  whites: {
    linkToAll: "Alle unsere Schwarz- und Grautöne in jedem Weiß",
  },
  byStrength: {
    ranked: (reference: string) => `Gegen ${reference}, die stärkste zuerst`,
    notCompared: "In der Farbstärke nicht verglichen",
    lead: "Wie stark jede ein Weiß färbt, Tube zu Tube, gegen unsere Bezugsfarbe; und wie viel Weiß sie bis zu einem mittleren Ton braucht. Eine dunkle Farbe braucht dazu viel Weiß und ist darum nicht die stärkere: welche von zwei Bunttönen stärker färbt, sagen ihre Teile Weiß nicht.",
    columns: {
      colour: "Farbe",
      byMass: "Nach Masse",
      byVolume: "Tube zu Tube",
      white: "Weiß bis L* 50, Tube zu Tube",
    },
    inWhite: (white: string) => `in ${white}`,
  },
  inTheWhites: {
    heading: "Schwarz und Grau in jedem Weiß",
    lead: "Beurteilen Sie ein Schwarz nach seinem Grau, nicht nach der Tube: hier ist jedes von unseren, mit jedem Weiß zum selben mittleren Grau gemischt.",
    orders: "Schwarz und Grau",
    sections: {
      swatches: "Nebeneinander",
      trails: "Wohin jedes Weiß sie führt",
      figures: "In Zahlen",
    },
    board: {
      caption:
        "Schwarz und Grau allein und mit jedem Weiß auf L* 50 gemischt; die blauesten zuerst",
      alone: "Allein",
      said: "In Worten",
      notRead: "nicht gemessen",
      notTried: "nicht erprobt",
      figures: (a: string, b: string) => `a*\u00a0${a}, b*\u00a0${b}`,
    },
    readWithGloss: (names: readonly string[]) =>
      `${listed(names)} ${names.length === 1 ? "wurde" : "wurden"} mit Glanz gemessen, die anderen ohne: so gemessen lassen sich die beiden Arten nicht vergleichen.`,
    group: (white: string, index: string | undefined) =>
      `${white}${index === undefined ? "" : ` (${index})`}`,
    picture: (white: string) => `In ${white}`,
    description: (parts: readonly string[]) => `Bei L* 50: ${parts.join("; ")}.`,
    descriptionPart: (name: string, a: string, b: string) => `${name} a* ${a}, b* ${b}`,
    key: "Das Kreuz ist neutral: oben ist Gelb, unten Blau, links Grün, rechts Rot. Gefüllte Marken zeigen, was wir aufgestrichen und gemessen haben, von L* 30 bis zum blassesten; gestrichelte Linien sind dazwischen errechnet. Ein Pfeil am Rand nennt ein Schwarz, das den Bereich der Grautöne verlässt, mit a* und b*.",
    caption: (white: string) => `In ${white}, das bei L* 50 blaueste zuerst`,
    columns: {
      colour: "Farbe",
      a: "a* bei L* 50",
      b: "b* bei L* 50",
      b70: "b* bei L* 70",
      b30: "b* bei L* 30",
    },
    note: "D65, 10\u00b0-Beobachter. Ein Strich: nicht bei dieser Helligkeit.",
    none: "Noch kein Schwarz oder Grau des Sortiments wurde in einem Weiß erprobt.",
  },
};
