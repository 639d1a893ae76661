/** Words of the pages on what colours do in whites, in films and under gloss. */
export const OPTICS_PAGES = {
  strength: {
    byPigment: "By mass of dry pigment",
    dispersion: "Mulled and milled",
    glossTitle: "Gloss and depth: the masstone glossy, satin and matte",
    glossAxis: "Past the glare, as an eye sees it; the last with gloss included",
    glossIncluded: "included",
    glossDepth: (L: string, value: string) => `L* ${L}, value ${value}`,
    glossLabelDepth: (L: string) => `L* ${L}`,
    glossDescription: (parts: readonly string[]) => `${parts.join("; ")}.`,
    finishes: { glossy: "glossy", satin: "satin", matte: "matte" } as Record<string, string>,
    glossColumns: {
      finish: "Finish",
      excludedL: "Excluded: L*",
      excludedValue: "Excluded: value",
      includedL: "Included: L*",
      includedValue: "Included: value",
    },
    glossNote:
      "Excluded: past the glare, as an eye sees it. Included: an instrument that lets the glare in reads every finish alike. Munsell value.",
  },
  fit: {
    title: "Absorption K and scattering S over the spectrum",
    wavelength: "Wavelength, nm",
    K: "Absorption K, in units of each white's own scattering",
    S: "Scattering S, in the same units",
    SUpper: "Scattering S in the same units: told only as a bound, it lies below the line",
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
    linkToAll: "Every near-neutral in this white and the others, one beside the other",
  },
  byStrength: {
    ranked: (reference: string) => `Beside ${reference}, the strongest first`,
    notCompared: "Not compared",
    lead: "How much each colours a white beside the workshop's reference, by mass and tube to tube; and how much white brings it to a middle grey.",
    leadWithout:
      "How much white brings each to L* 50. The workshop names no reference to rank them by.",
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
