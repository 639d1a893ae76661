import { listed } from "./phrases.ts";

/** Words of the pages on what colours do in whites, in films and under gloss. */
export const OPTICS_PAGES = {
  strength: {
    byPigment: "By mass of dry pigment",
    dispersion: "Mulled and milled",
    glossTitle: "Gloss and depth: the same colour glossy, satin and matte",
    glossAxis: "As you see it, turned away from the shine; the last with the shine included",
    glossIncluded: "included",
    glossDepth: (L: string, value: string) => `L* ${L}, value ${value}`,
    glossLabelDepth: (L: string) => `L* ${L}`,
    glossDescription: (parts: readonly string[]) => `${parts.join("; ")}.`,
    finishes: { glossy: "glossy", satin: "satin", matte: "matte" } as Record<string, string>,
    glossColumns: {
      finish: "Finish",
      excludedL: "Away from the shine: L*",
      excludedValue: "Away from the shine: value",
      includedL: "Shine included: L*",
      includedValue: "Shine included: value",
    },
    glossNote:
      "Away from the shine is how you look at a picture. An instrument that takes the shine in reads every finish alike. Value is Munsell\u2019s.",
  },
  fit: {
    title: "Absorption K and scattering S over the spectrum",
    wavelength: "Wavelength, nm",
    K: "Absorption K, in units of each white\u2019s own scattering",
    S: "Scattering S, in the same units",
    SUpper: "Scattering S, in the same units: only a limit is known, it lies below the line",
    description: (parts: readonly string[]) => `${parts.join("; ")}.`,
    part: (white: string, least: string, greatest: string) =>
      `In ${white}, K from ${least} to ${greatest}`,
    list: "How K and S were fitted",
    leftOut: "Drawdowns left out of the fit",
    series: (count: number, least: string, greatest: string) =>
      `${least} to ${greatest} over ${count} wavelengths`,
  },
  whites: {
    linkToAll: "All our blacks and greys in each white",
  },
  byStrength: {
    ranked: (reference: string) => `Against ${reference}, the strongest first`,
    notCompared: "Not compared in strength",
    lead: "How much each colours a white, tube for tube, against our reference colour; and how much white it takes to a middle tone. A dark colour takes much white to that, and is not the stronger for it: two hues are not told apart in strength by their parts of white.",
    columns: {
      colour: "Colour",
      byMass: "By mass",
      byVolume: "Tube to tube",
      white: "White to L* 50, tube to tube",
    },
    inWhite: (white: string) => `in ${white}`,
  },
  inTheWhites: {
    heading: "Blacks and greys in each white",
    lead: "Judge a black by its grey, not by the tube: here is every one of ours, mixed with each white to the same middle grey.",
    orders: "Blacks and greys",
    sections: {
      swatches: "Side by side",
      trails: "Where each white takes them",
      figures: "In figures",
    },
    board: {
      caption: "Blacks and greys alone, and mixed with each white to L* 50; the bluest first",
      alone: "Alone",
      said: "In words",
      notRead: "not read",
      notTried: "not tried",
      figures: (a: string, b: string) => `a*\u00a0${a}, b*\u00a0${b}`,
    },
    readWithGloss: (names: readonly string[]) =>
      `${listed(names)} ${names.length === 1 ? "was" : "were"} read with gloss included, the others without: as read, the two kinds do not compare.`,
    group: (white: string, index: string | undefined) =>
      `${white}${index === undefined ? "" : ` (${index})`}`,
    picture: (white: string) => `In ${white}`,
    description: (parts: readonly string[]) => `At L* 50: ${parts.join("; ")}.`,
    descriptionPart: (name: string, a: string, b: string) => `${name} a* ${a}, b* ${b}`,
    key: "The cross is neutral: up is yellow, down blue, left green, right red. Filled marks are what we painted out and read, from L* 30 to the palest; dashed lines are worked out between them. An arrow at the edge names a black that leaves the greys, with its a* and b*.",
    caption: (white: string) => `In ${white}, the bluest at L* 50 first`,
    columns: {
      colour: "Colour",
      a: "a* at L* 50",
      b: "b* at L* 50",
      b70: "b* at L* 70",
      b30: "b* at L* 30",
    },
    note: "D65, 10\u00b0 observer. A dash: not at that lightness.",
    none: "No black or grey of the range has been tried in a white yet.",
  },
} as const;
