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
  note: "Left, the dry pigment in it. Right, what to squeeze out of the tubes of its single pigments to mix the same on the palette.",
  noPaint: "none is made of it alone",
  lead: "Everything here is reckoned from the drawdowns of its components' own paints, none from its own; where it was drawn down itself, the two stand side by side.",
  heading: (white: string) => `In ${white}`,
  met: (white: string, count: number, middle: string, largest: string) =>
    `In ${white} its components predict ${count === 1 ? "its one drawdown" : `its ${count} drawdowns, masstone included,`} to \u0394E00 ${middle}${count === 1 ? "" : ` in the middle, ${largest} at most`}.`,
  notMet: (white: string) =>
    `It was not drawn down in ${white}, so this is a prediction that nothing here holds it to.`,
  steps: (count: number) => `Predicted beside what was read: ${count} steps`,
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
    "L* a* b* under D65, 10\u00b0 observer. \u00b1 is what about 68 % of predictions lie within, in \u0394E00, from one set of oil paint-outs; missed by is the \u0394E00 to its own drawdown.",
  drift: {
    heading: "If a pigment in it fades",
    figures: "Drift in figures",
    caption: (white: string) => `A tint at L* 50 in ${white}, and the same with one pigment weaker`,
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
    note: "A loss counts as so much of the pigment gone; nobody has watched this happen here. The last column leaves lightness out: it is what the eye sees as another hue.",
    single: (sentence: string) => `Beside it a black of one pigment: ${sentence}`,
    title: (white: string) =>
      `Where its grey at L* 50 in ${white} goes as one pigment loses 30 and 60\u00a0%`,
    description: (paths: readonly string[]) => `${paths.join("; ")}.`,
    path: (name: string, a: string, b: string) => `${name} 60 % weaker: a* ${a}, b* ${b}`,
    less: (name: string) => `less ${name}`,
    percent: (percent: string) => `${percent}\u00a0%`,
  },
  pair: {
    title: (first: string, second: string) =>
      `Greys of ${first} and ${second} at L* 50, beside blacks of one pigment`,
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
      `Of ${first} and ${second} the nearest to neutral at L* 50 is ${share} of ${first} by mass of paint${volume === undefined ? "" : ` (${volume} tube to tube)`}, C*ab ${chroma}.`,
    share: (percent: string) => `${percent}\u00a0%`,
  },
  blacks: {
    summary: (count: number) => `Beside blacks of one pigment: ${count} of the range`,
    caption: (white: string) => `At equal lightness in ${white}: a* and b*`,
    columns: { colour: "Colour", at: (level: string) => `L* ${level}` },
    cell: (a: string, b: string) => `${a}, ${b}`,
    note: "a*, b* under D65, 10\u00b0 observer. Nought and nought is neutral; b* below nought is blue, above it yellow. A dash: its ladder does not reach that lightness.",
  },
} as const;
