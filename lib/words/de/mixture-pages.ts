import type { AnyWords } from "../any-words.ts";
import type { PageWords } from "../en/pages.ts";

/** What the sheet says of a colour of several pigments: what its components predict, its greys, and drift. */
export const MIXTURE_PAGES: AnyWords<PageWords["mixture"]> = {
  caption: "Woraus sie gemischt ist",
  columns: {
    pigment: "Pigment",
    paint: "Farbe daraus allein",
    pigmentMass: "Trocken, nach Masse",
    pigmentVolume: "Trocken, nach Volumen",
    paintMass: "Farbe, nach Masse",
    paintVolume: "Tube zu Tube",
  },
  note: "Links das trockene Pigment darin. Rechts, was aus den einzelnen Tuben zu drücken ist, um auf der Palette dasselbe zu mischen.",
  noPaint: "daraus allein ist keine gemacht",
  lead: "Alles hier ist aus den Farben der einzelnen Pigmente errechnet. Wo wir die Mischung selbst aufgestrichen haben, steht beides nebeneinander.",
  heading: (white: string) => `In ${white}`,
  met: (white: string, count: number, middle: string, largest: string) =>
    count === 1
      ? `In ${white} sagen die Komponenten die eine Aufhellung auf \u0394E00 ${middle} vorher.`
      : `In ${white} sagen die Komponenten die ${count} Aufhellungen vorher, in der Mitte auf \u0394E00 ${middle}, die am weitesten verfehlte auf ${largest}.`,
  metWithMasstone: (white: string, count: number, middle: string, largest: string) =>
    `In ${white} sagen die Komponenten die ${count} Aufstriche vorher, die Farbe allein eingeschlossen, in der Mitte auf \u0394E00 ${middle}, den am weitesten verfehlten auf ${largest}.`,
  metAlone: (white: string, miss: string) =>
    `Nach ihren Aufhellungen in ${white} sagen die Komponenten die Farbe allein, ohne Weiß, auf \u0394E00 ${miss} vorher.`,
  notMet: (white: string) =>
    `In ${white} haben wir sie nicht erprobt: das ist nur eine Vorhersage.`,
  steps: (count: number) =>
    `Vorhergesagt neben gemessen: ${count === 1 ? "eine Stufe" : `${count} Stufen`}`,
  stepsCaption: (white: string) => `Farbe zu ${white}, wie die Komponenten es vorhersagen`,
  masstone: "Vollton",
  stepColumns: {
    ratio: "Farbe : Weiß",
    L: "L*",
    a: "a*",
    b: "b*",
    munsell: "Munsell",
    uncertainty: "\u00b1",
    miss: "Abweichung",
  },
  stepsNote:
    "L* a* b* unter D65, 10\u00b0-Beobachter. \u00b1: etwa 68\u00a0% der Vorhersagen bleiben darin, in \u0394E00, nach gemessenen Ölfarben und nach unseren eigenen Aufhellungen, jede der Reihe nach ausgelassen. Abweichung: das \u0394E00 zu unserem eigenen Aufstrich.",
  drift: {
    heading: "Wenn ein Pigment darin verblasst",
    figures: "Verschiebung in Zahlen",
    caption: (white: string) =>
      `Eine mittlere Aufhellung in ${white}, und dieselbe mit einem schwächeren Pigment`,
    asMade: "wie hergestellt",
    lost: (name: string, percent: string) => `${name}, ${percent}\u00a0% verloren`,
    columns: {
      what: "Aufhellung",
      L: "L*",
      a: "a*",
      b: "b*",
      change: "\u0394E00",
      hue: "Davon in a* b*",
    },
    note: "Errechnet, nicht gesehen: so viel des Pigments weggenommen. Die letzte Spalte lässt die Helligkeit aus; sie ist die Änderung des Bunttons.",
    single: (sentence: string) => `Zum Vergleich ein Schwarz aus einem Pigment: ${sentence}`,
    title: (white: string) =>
      `Wie sich ihre mittlere Aufhellung in ${white} verschiebt, wenn ein Pigment um 30 und 60\u00a0% verblasst`,
    description: (paths: readonly string[]) => `${paths.join("; ")}.`,
    path: (name: string, a: string, b: string) => `${name} 60 % schwächer: a* ${a}, b* ${b}`,
    less: (name: string) => `weniger ${name}`,
    percent: (percent: string) => `${percent}\u00a0%`,
  },
  pair: {
    title: (first: string, second: string) =>
      `Mittlere Aufhellungen von ${first} und ${second}, neben Schwarz aus einem Pigment`,
    description: (
      first: string,
      second: string,
      share: string,
      chroma: string,
      blacks: readonly string[],
    ) =>
      `Von ganz ${second} bis ganz ${first}, am nächsten an Neutral bei ${share} ${first} nach Masse, C*ab ${chroma}. ${blacks.join("; ")}.`,
    single: "Schwarz aus einem Pigment",
    black: (name: string, a: string, b: string) => `${name}: a* ${a}, b* ${b}`,
    neutral: (
      first: string,
      second: string,
      share: string,
      volume: string | undefined,
      chroma: string,
    ) =>
      `Die neutralste mittlere Aufhellung von ${first} und ${second} braucht ${share} ${first} nach Gewicht der Farbe${volume === undefined ? "" : ` (${volume} nach Volumen)`}; C*ab ${chroma}.`,
    share: (percent: string) => `${percent}\u00a0%`,
  },
  blacks: {
    summary: (count: number, all: number) =>
      count === all
        ? `Neben Schwarz aus einem Pigment: ${count} aus dem Sortiment`
        : `Neben Schwarz aus einem Pigment: von ${all} die ${count}, die ihm am nächsten kommen`,
    caption: (white: string) => `Bei gleicher Helligkeit in ${white}: a* und b*`,
    columns: { colour: "Farbe", at: (level: string) => `L* ${level}` },
    cell: (a: string, b: string) => `${a}, ${b}`,
    note: "a* und b*, unter D65 für den 10\u00b0-Beobachter. 0, 0 ist neutral; b* unter null ist Blau, darüber Gelb. Ein Strich: nicht bei dieser Helligkeit.",
  },
};
