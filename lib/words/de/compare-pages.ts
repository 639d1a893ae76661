import type { AnyWords } from "../any-words.ts";
import type { COMPARE_PAGES as ENGLISH } from "../en/compare-pages.ts";
import { listed, within } from "./phrases.ts";

/** The pages that set colours side by side; the page's script carries these words too, so nothing else is imported here. */
export const COMPARE_PAGES: AnyWords<typeof ENGLISH> = {
  heading: "Farben nebeneinander",
  lead: "Zwei bis vier Farben, allein und in jedem Weiß; dann, was sich unterscheidet, was zu nah beieinander liegt und was gleich ist.",
  description: (names: readonly string[]) =>
    `${listed(names)} nebeneinander: in Weiß, Farbstärke, Öl, Trocknung, Beständigkeit, Vorsicht und Pigmente.`,
  pairHeading: (names: readonly string[]) => listed(names),
  panelTitle: (names: readonly string[]) => `Nebeneinander: ${listed(names)}`,
  missing: "keine Angabe",
  swatches: {
    alone: "Allein",
    notRead: "nicht gemessen",
    notTried: "nicht erprobt",
    notReached: "nicht erreicht",
    differs: undefined,
    "not told": undefined,
    same: "Gleich.",
    "not stated": undefined,
  },
  /** @param differs @param notTold keys of rows. */
  summary: (differs: readonly string[], notTold: readonly string[]) => {
    const different = inShort(differs);
    const close = inShort(notTold).filter((name) => !different.includes(name));
    return [
      different.length === 0
        ? "Nichts, was wir wissen, unterscheidet sie."
        : `Unterschiede: ${listed(different)}.`,
      close.length === 0 ? "" : `Zu nah beieinander: ${listed(close)}.`,
    ]
      .join(" ")
      .trim();
  },
  parts: {
    differs: { id: "differs", heading: "Was sich unterscheidet" },
    "not told": { id: "not-told", heading: "Zu nah beieinander" },
    same: { id: "same", heading: "Was gleich ist" },
    "not stated": { id: "not-stated", heading: "Nicht von allen bekannt" },
    figures: { id: "in-figures", heading: "Die Farbfelder in Zahlen" },
  },
  foldedFigures: "Munsell-Notationen, a* und b*, Teile Weiß",
  folded: (heads: readonly string[]) => heads.join(", "),
  unstated: (heads: readonly string[]) => `Von keiner bekannt: ${listed(heads)}.`,
  property: "Eigenschaft",
  finding: "Was das heißt",
  rows: {
    masstone: { head: "Allein", unit: "Munsell" },
    strength: { head: "Farbstärke" },
    whitens: { head: "Aufhellvermögen" },
    opacity: { head: "Deckvermögen" },
    oilByMass: { head: "Öl", unit: "auf 100 g Pigment" },
    oilByVolume: { head: "Öl nach Volumen", unit: "auf 100 cm\u00b3 Pigment" },
    finish: { head: "Glanzgrad" },
    drying: { head: "Trocknet", unit: "bis grifftrocken" },
    lightfastness: { head: "Lichtechtheit" },
    label: { head: "Warnung" },
    sale: { head: "Verkaufsbeschränkungen" },
    pigments: { head: "Pigmente" },
    vehicle: { head: "Bindemittel" },
    dispersion: { head: "Anreiben" },
  },
  white: {
    head: (white: string) => `In ${within(white)}`,
    unit: (level: string) => `bei L*\u00a0${level}`,
  },
  partsOfWhite: {
    head: "Weiß für einen Mittelton",
    unit: (white: string) => `Teile ${within(white)} auf 1 Teil der Farbe, Tube zu Tube`,
  },
  cells: {
    tint: (a: string, b: string) => `a*\u00a0${a}, b*\u00a0${b}`,
    strength: (reference: string) => `von ${within(reference)}, Tube zu Tube`,
    isReference: "die Bezugsfarbe selbst",
    gloss: (gloss: string) => `${gloss} bei 60\u00b0`,
    nothingClassified: "Keine nötig",
    noData: "Keine Gefahrendaten",
    noLimit: "Keine aufgezeichnet",
    limited: (markets: readonly string[]) => `Nur auf einer Rechtsgrundlage: ${listed(markets)}`,
    asked: (markets: readonly string[]) => `Mit Auflagen: ${listed(markets)}`,
    share: (name: string, share: string) => `${name}, ${share}`,
    dispersion: { mulled: "Von Hand angerieben", milled: "Gewalzt" },
    pictograms: (names: readonly string[]) => `Piktogramme: ${listed(names)}`,
  },
  form: {
    heading: "Zwei, drei oder vier Farben antippen",
    fold: "Andere Farben wählen",
    result: "Nebeneinander",
    without:
      "Um hier Farben zu wählen, braucht es das Skript der Seite und einen Webserver. Die Vergleiche unten kommen ohne beides aus.",
    tooFew: (first: string | undefined) =>
      first === undefined ? "Zwei Farben oder mehr antippen." : `${first}, und welche noch?`,
    unknown: (slug: string, near: string | undefined) =>
      `Eine Farbe „${slug}“ gibt es hier nicht${near === undefined ? "" : `; vielleicht war ${near} gemeint`}.`,
    some: (shown: number, all: number) =>
      `Hier sind ${shown} von ${all} Farben. Jede andere lässt sich von ihrem eigenen Blatt aus in den Vergleich nehmen.`,
    tooMany: "Vier passen nebeneinander; nehmen Sie erst eine weg.",
    leftOut: "Vier passen nebeneinander; die übrigen bleiben weg.",
    failed:
      "Die Werte ließen sich nicht laden. Aus einem Ordner geöffnet, darf eine Seite andere Dateien oft nicht lesen: öffnen Sie sie über einen Webserver.",
  },
  pairs: "Oft gefragt",
  more: "Andere Farben wählen",
  besides: "Vergleichen",
  beside: (name: string) => `Mit ${within(name)}`,
  besideAny: "Mit einer anderen Farbe",
  fromCatalogue: "Zwei bis vier davon nebeneinander stellen",
};

/** What rows are about, in a word within a sentence, each once. */
const IN_SHORT: Readonly<Record<string, string>> = {
  masstone: "Vollton",
  white: "das Verhalten in Weiß",
  strength: "Farbstärke",
  whitens: "Aufhellvermögen",
  parts: "Farbstärke",
  opacity: "Deckvermögen",
  oilByMass: "Öl",
  oilByVolume: "Öl",
  finish: "Glanzgrad",
  drying: "Trocknung",
  lightfastness: "Lichtechtheit",
  label: "Warnungen",
  sale: "Verkaufsbeschränkungen",
  pigments: "Pigmente",
  vehicle: "Bindemittel",
  dispersion: "Anreiben",
};

function inShort(keys: readonly string[]): string[] {
  return [...new Set(keys.map((key) => IN_SHORT[key.split(".")[0] ?? key] ?? key))];
}
