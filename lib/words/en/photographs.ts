/** What stands beside photographs of paint. */
export const PHOTOGRAPHS = {
  heading: "Pictures",
  of: {
    drawdown: "Drawdown over black and white",
    "brush stroke": "Brush stroke",
    tube: "Tube",
    "dry pigment": "Dry pigment",
    impasto: "Impasto",
  },
  /** Said in place of a picture whose record says nothing. */
  alt: (of: string, name: string) => `${of}: ${name}, a photograph`,
  lot: (number: string) => `Lot ${number}`,
  estimated: "estimated from a photograph",
  notation:
    "Estimated from a photograph of the paint, corrected by patches that were read: no instrument has read it.",
};
