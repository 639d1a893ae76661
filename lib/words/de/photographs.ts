import type { AnyWords } from "../any-words.ts";
import type { PHOTOGRAPHS as ENGLISH } from "../en/photographs.ts";

export const PHOTOGRAPHS: AnyWords<typeof ENGLISH> = {
  heading: "Im Bild",
  of: {
    drawdown: "Aufstrich über Schwarz und Weiß",
    "brush stroke": "Pinselstrich",
    tube: "Tube",
    "dry pigment": "Trockenes Pigment",
    impasto: "Pastoser Auftrag",
  },
  alt: (of, name) => `${of}: ${name}, Fotografie`,
  lot: (number) => `Charge ${number}`,
  estimated: "nach einem Foto geschätzt",
  notation:
    "Nach einem Foto der Farbe geschätzt, das nach gemessenen Feldern korrigiert ist: kein Gerät hat sie gemessen.",
};
