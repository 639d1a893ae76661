/** What the sheet says of a colour of several pigments: what its components predict, its greys, and drift. */
export const MIXTURE_PAGES = {
  caption: "What it is mixed from",
  columns: {
    pigment: "Pigment",
    paint: "Paint of it alone",
    pigmentMass: "Dry, by mass",
    pigmentVolume: "Dry, by volume",
    paintMass: "Paint, by mass",
    paintVolume: "Tube to tube",
  },
  note: "Left, the dry pigment in it. Right, what to squeeze from the single tubes to mix the same on the palette.",
  noPaint: "none is made of it alone",
  lead: "Everything here is worked out from the paints of its single pigments. Where we painted out the mixture itself, the two are shown side by side.",
  heading: (white: string) => `In ${white}`,
  met: (white: string, count: number, middle: string, largest: string) =>
    `In ${white} its components predict ${count === 1 ? "its one let-down" : `its ${count} let-downs`} to \u0394E00 ${middle}${count === 1 ? "" : ` in the middle, ${largest} at most`}.`,
  metWithMasstone: (white: string, count: number, middle: string, largest: string) =>
    `In ${white} its components predict its ${count} drawdowns, the colour alone included, to \u0394E00 ${middle} in the middle, ${largest} at most.`,
  metAlone: (white: string, miss: string) =>
    `By their let-downs in ${white} its components predict the colour alone, without white, to \u0394E00 ${miss}.`,
  notMet: (white: string) => `We have not tried it in ${white}: this is a prediction alone.`,
  steps: (count: number) =>
    `Predicted beside what was read: ${count === 1 ? "one step" : `${count} steps`}`,
  stepsCaption: (white: string) => `Colour to ${white}, as its components predict it`,
  masstone: "masstone",
  stepColumns: {
    ratio: "Colour : white",
    L: "L*",
    a: "a*",
    b: "b*",
    munsell: "Munsell",
    uncertainty: "\u00b1",
    miss: "Missed by",
  },
  stepsNote:
    "L* a* b* under D65, 10\u00b0 observer. \u00b1: about 68\u00a0% of predictions stay within it, in \u0394E00, by measured oil paints and by our own let-downs, each left out in turn. Missed by: the \u0394E00 to our own drawdown.",
  drift: {
    heading: "If a pigment in it fades",
    figures: "Drift in figures",
    caption: (white: string) => `A middle tint in ${white}, and the same with one pigment weaker`,
    asMade: "as made",
    lost: (name: string, percent: string) => `${name}, ${percent}\u00a0% lost`,
    columns: {
      what: "Tint",
      L: "L*",
      a: "a*",
      b: "b*",
      change: "\u0394E00",
      hue: "Of it in a* b*",
    },
    note: "Worked out, not seen: so much of the pigment taken away. The last column leaves lightness out; it is the change of hue.",
    single: (sentence: string) => `For comparison, a black of one pigment: ${sentence}`,
    title: (white: string) =>
      `How its middle tint in ${white} shifts if one pigment fades by 30 and 60\u00a0%`,
    description: (paths: readonly string[]) => `${paths.join("; ")}.`,
    path: (name: string, a: string, b: string) => `${name} 60 % weaker: a* ${a}, b* ${b}`,
    less: (name: string) => `less ${name}`,
    percent: (percent: string) => `${percent}\u00a0%`,
  },
  pair: {
    title: (first: string, second: string) =>
      `Middle tints of ${first} and ${second}, beside blacks of one pigment`,
    description: (
      first: string,
      second: string,
      share: string,
      chroma: string,
      blacks: readonly string[],
    ) =>
      `From all ${second} to all ${first}, nearest to neutral at ${share} of ${first} by mass, C*ab ${chroma}. ${blacks.join("; ")}.`,
    single: "blacks of one pigment",
    black: (name: string, a: string, b: string) => `${name}: a* ${a}, b* ${b}`,
    neutral: (
      first: string,
      second: string,
      share: string,
      volume: string | undefined,
      chroma: string,
    ) =>
      `The most neutral middle tint of ${first} and ${second} takes ${share} of ${first} by weight of paint${volume === undefined ? "" : ` (${volume} by volume)`}; C*ab ${chroma}.`,
    share: (percent: string) => `${percent}\u00a0%`,
  },
  blacks: {
    summary: (count: number, all: number) =>
      count === all
        ? `Beside blacks of one pigment: ${count} of the range`
        : `Beside blacks of one pigment: the ${count} nearest to it of ${all}`,
    caption: (white: string) => `At equal lightness in ${white}: a* and b*`,
    columns: { colour: "Colour", at: (level: string) => `L* ${level}` },
    cell: (a: string, b: string) => `${a}, ${b}`,
    note: "a* and b*, under D65 for the 10\u00b0 observer. 0, 0 is neutral; b* below zero is blue, above it yellow. A dash: not at that lightness.",
  },
} as const;
