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
    inWhite: (white: string) => `in ${white}`,
    description: (parts: readonly string[]) => `${parts.join("; ")}.`,
    part: (white: string, least: string, greatest: string) =>
      `In ${white}, K from ${least} to ${greatest}`,
    list: "How K and S were fitted",
    leftOut: "Drawdowns left out of the fit",
    series: (count: number, least: string, greatest: string) =>
      `${least} to ${greatest} over ${count} wavelengths`,
  },
  whites: {
    across: "From white to white",
    linkToAll: "All our blacks and greys in each white",
  },
  byStrength: {
    ranked: (reference: string) => `Against ${reference}, the strongest first`,
    notCompared: "Not compared",
    lead: "How much each colours a white, against our reference colour; and how much white it takes to a middle tone.",
    leadWithout:
      "How much white each takes to a middle tone (L* 50). We have no reference colour to rank them by.",
    columns: {
      colour: "Colour",
      place: "Place",
      byMass: "By mass",
      byVolume: "Tube to tube",
      white: "White to L* 50, tube to tube",
    },
    inWhite: (white: string) => `in ${white}`,
  },
  inTheWhites: {
    heading: "Near-neutrals in the whites",
    lead: "Every black and grey of the range let down in each white. A grey is judged by its own a* and b*, never by its masstone.",
    orders: "Near-neutrals in the whites",
    group: (white: string, index: string | undefined) =>
      `In ${white}${index === undefined ? "" : ` (${index})`}`,
    picture: (white: string) =>
      `a* and b* of the near-neutrals in ${white}, from L* 30 to the palest let-down`,
    description: (parts: readonly string[]) => `At L* 50: ${parts.join("; ")}.`,
    descriptionPart: (name: string, a: string, b: string) => `${name} a* ${a}, b* ${b}`,
    key: "Filled marks are drawdowns as read; dashed lines run through what the fit predicts.",
    caption: (white: string) => `Near-neutrals in ${white}, the bluest at L* 50 first`,
    columns: {
      colour: "Colour",
      a: "a* at L* 50",
      b: "b* at L* 50",
      b70: "b* at L* 70",
      b30: "b* at L* 30",
    },
    note: "D65, 10\u00b0 observer. Each figure is predicted or read as its mark says; a dash where the ladder does not reach.",
    none: "No near-neutral of the range has been let down in a white.",
  },
} as const;
