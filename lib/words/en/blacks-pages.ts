/** What answers show of the range's blacks in its whites, of the whites themselves, and of what theory says of both. */
export const BLACKS_PAGES = {
  table: {
    caption: (level: string) => `Blacks of the range at L* ${level}: a* and b* in each white`,
    colour: "Black",
    cell: (a: string, b: string) => `${a}, ${b}`,
    note: "a* and b*, under D65 for the 10\u00b0 observer. 0, 0 is neutral; b* below zero is blue, above it yellow. A dash: not tried in that white, or not at that lightness.",
  },
  picture: {
    title: (level: string) =>
      `b* of each black in each white, all at L*\u00a0${level}; the bars are one standard uncertainty`,
    axis: "b* at equal lightness",
    ends: { minus: "\u2039 blue", plus: "yellow \u203a" },
    description: (parts: readonly string[]) => `${parts.join("; ")}.`,
    row: (black: string, lanes: readonly string[]) => `${black}: ${lanes.join(", ")}`,
    lane: (white: string, b: string) => `b* ${b} in ${white}`,
    short: (white: string) => white.replace(/\s+white$/, ""),
  },
  scattering: {
    title: (white: string) => `How ${white} scatters light over the spectrum`,
    wavelength: "Wavelength, nm",
    axis: "Scattering beside 560 nm",
    read: (filmsUm: readonly number[]) =>
      `line: worked out from its own films of ${filmsUm.join(", ")}\u00a0\u00b5m over an opacity chart, as far as they did not hide it`,
    band: "band: what theory says, from the grain and what is not known of it",
    description: (white: string, parts: readonly string[]) => `${white}: ${parts.join("; ")}.`,
    at: (kind: string, nm: string, value: string) => `${kind} ${value} at ${nm} nm`,
    kinds: { read: "from its films", band: "by theory" },
    span: (low: string, high: string) => `${low} to ${high}`,
  },
  theory: {
    title: (level: string) =>
      `What theory allows at L*\u00a0${level}: ranges, not a figure of any paint`,
    description: (parts: readonly string[]) => `${parts.join("; ")}.`,
    row: (black: string, lanes: readonly string[]) => `${black}: ${lanes.join(", ")}`,
    lane: (white: string, low: string, high: string) => `b* ${low} to ${high} in ${white}`,
    axis: "b*, the middle four fifths of the cases tried",
    statements: (isTold: boolean) => (isTold ? "What theory can say" : "What theory cannot say"),
    statementsNote: (runs: number, robust: string) =>
      `Each of ${runs} cases takes other sizes, spreads, indices and oil. Theory can say what comes out the same way in ${robust} of them.`,
    pair: (black: string, white: string) => `${black} in ${white}`,
    inputs: {
      caption: "What theory was given",
      pigment: "Pigment",
      size: "Grain, \u00b5m",
      spread: "Spread of sizes",
      indices: "Refractive index",
      sizeKinds: { "volume median": "middle, by volume", "number mean": "mean, by number" },
      note: (oils: readonly string[]) =>
        `Oil of index ${oils.join(", ")}, by chance. Spread: the geometric standard deviation. The theory is of spheres far apart; real grains are crowded and of other shapes, so it cannot say how strong a colour is, and no swatch is drawn from it.`,
    },
  },
} as const;
