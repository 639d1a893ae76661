import type { AnyWords } from "../any-words.ts";
import type { PageWords } from "../en/pages.ts";

/** What answers show of the range's blacks in its whites, of the whites themselves, and of what theory says of both. */
export const BLACKS_PAGES: AnyWords<PageWords["blacks"]> = {
  table: {
    caption: (level: string) =>
      `Die Schwarztöne des Sortiments bei L* ${level}: a* und b* in jedem Weiß`,
    colour: "Schwarz",
    cell: (a: string, b: string) => `${a}, ${b}`,
    note: "a* und b*, unter D65 für den 10\u00b0-Beobachter. 0, 0 ist neutral; b* unter null ist Blau, darüber Gelb. Ein Strich: in diesem Weiß nicht erprobt, oder nicht bei dieser Helligkeit.",
  },
  picture: {
    title: (level: string) =>
      `b* jedes Schwarz in jedem Weiß, alle bei L*\u00a0${level}; die Balken sind eine Standardunsicherheit`,
    axis: "b* bei gleicher Helligkeit",
    ends: { minus: "\u2039 Blau", plus: "Gelb \u203a" },
    description: (parts: readonly string[]) => `${parts.join("; ")}.`,
    row: (black: string, lanes: readonly string[]) => `${black}: ${lanes.join(", ")}`,
    lane: (white: string, b: string) => `b* ${b} in ${white}`,
    short: (white: string) => white.replace(/\s+white$/, ""),
  },
  scattering: {
    title: (white: string) => `Wie ${white} Licht über dem Spektrum streut`,
    wavelength: "Wellenlänge, nm",
    axis: "Streuung neben 560 nm",
    read: (filmsUm: readonly number[]) =>
      `Linie: errechnet aus eigenen Filmen von ${filmsUm.join(", ")}\u00a0\u00b5m über einer Prüfkarte, soweit sie diese nicht deckten`,
    band: "Band: was die Theorie sagt, aus dem Korn und dem, was davon nicht bekannt ist",
    description: (white: string, parts: readonly string[]) => `${white}: ${parts.join("; ")}.`,
    at: (kind: string, nm: string, value: string) => `${kind} ${value} bei ${nm} nm`,
    kinds: { read: "aus den Filmen", band: "nach der Theorie" },
    span: (low: string, high: string) => `${low} bis ${high}`,
  },
  theory: {
    title: (level: string) =>
      `Was die Theorie bei L*\u00a0${level} zulässt: Bereiche, kein Wert irgendeiner Farbe`,
    description: (parts: readonly string[]) => `${parts.join("; ")}.`,
    row: (black: string, lanes: readonly string[]) => `${black}: ${lanes.join(", ")}`,
    lane: (white: string, low: string, high: string) => `b* ${low} bis ${high} in ${white}`,
    axis: "b*, die mittleren vier Fünftel der gerechneten Fälle",
    statements: (isTold: boolean) =>
      isTold ? "Was die Theorie sagen kann" : "Was die Theorie nicht sagen kann",
    statementsNote: (runs: number, robust: string) =>
      `Jeder der ${runs} Fälle nimmt andere Größen, Streubreiten, Indizes und Öl. Sagen kann die Theorie, was in ${robust} davon gleich herauskommt.`,
    pair: (black: string, white: string) => `${black} in ${white}`,
    inputs: {
      caption: "Was der Theorie vorgegeben wurde",
      pigment: "Pigment",
      size: "Korn, \u00b5m",
      spread: "Streubreite der Größen",
      indices: "Brechungsindex",
      sizeKinds: { "volume median": "Mitte, nach Volumen", "number mean": "Mittel, nach Anzahl" },
      note: (oils: readonly string[]) =>
        `Öl vom Index ${oils.join(", ")}, zufällig gewählt. Streubreite: die geometrische Standardabweichung. Die Theorie gilt für Kugeln weit auseinander; wirkliche Körner liegen dicht und haben andere Formen, daher kann sie nicht sagen, wie stark eine Farbe ist, und kein Farbfeld ist nach ihr gezeichnet.`,
    },
  },
};
