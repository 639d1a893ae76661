import type { PageWords } from "../en/pages.ts";

/** What goes along with pictures of a colour into a shop. */
export const LISTING: PageWords["listing"] = {
  made: "Besteht aus",
  sizes: "Größen und Preise",
  noSizes: "Keine Größe ist aufgezeichnet.",
  label: "Auf dem Etikett",
  said: "Was sich über die Farbe sagen lässt",
  pictures: "Bilder",
  screen:
    "Die Farbfelder zeigen eine Messung der trockenen Farbe, wie ein Bildschirm sie zeigen kann, und kein Bildschirm zeigt Farbe genau: Beurteilt und abgemustert wird nach der Farbe selbst, nie nach einem Bild.",
  estimated:
    "Kein Gerät hat die Farbe gemessen. Sie ist aus einer Fotografie geschätzt: Das gehört überall dazugesagt, wo sie gezeigt wird.",
  outside:
    "Die Farbe liegt jenseits dessen, was sRGB fasst: Bildschirme zeigen sie stumpfer, als sie ist.",
  predicted: "Aufhellungen, die nicht aufgestrichen wurden, sind vorhergesagt.",
  alone: (name: string) => `${name}, die Farbe allein.`,
  strip: (name: string, white: string) =>
    `${name}, allein und aufgehellt mit ${white}, von kräftig bis blass.`,
  beside: (names: readonly string[]) => `${names.join(", ")}, nebeneinander.`,
};
