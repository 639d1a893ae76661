/** How to read a label and a sheet. Where a line needs a figure the page takes it from a sheet. */
export const LABEL_PAGE = {
  heading: "Reading a label",
  lead: "A tube has room for a few lines. What each of them says, what it leaves out, and what a sheet adds.",
  columns: { line: "Line", says: "What it says", here: (name: string) => `On ${name}` },
  label: {
    heading: "The lines of a label",
    caption: "Line by line",
    lines: {
      name: [
        "Name",
        "The maker's own. It may be historic or invented, and does not say which pigment is inside; one name can stand for several.",
      ],
      pigment: [
        "Pigment",
        "In words and by its Colour Index generic name: P for pigment or N for a natural one, letters for the hue, a number. It names a kind of pigment; maker, shade and quality still differ.",
      ],
      vehicle: [
        "Vehicle",
        "The oil that binds it, and what was added. It sets how the film yellows and helps to set how fast it dries.",
      ],
      lightfastness: [
        "Lightfastness",
        "A category from I to V only where the exposures of a standard were made, or as somebody's word; else what was done instead, or that nothing was.",
      ],
      hazards: [
        "Hazards",
        "Signal word, pictograms and statements in fixed words. They are about the paint in the tube; dust from sanding it and the dry pigment can be worse.",
      ],
      contents: [
        "Contents",
        "Millilitres, since paint is used by volume. The same tube weighs far more with a dense pigment in it.",
      ],
      lot: [
        "Lot",
        "Which batch it was: the thing to quote when something is wrong. Lots of one colour differ a little.",
      ],
    },
    nothing: "no warning: the suppliers' papers call for none",
    lot: "written in by hand",
    holds: (ml: string, grams: string) => `${ml}, which hold ${grams} of paint`,
    noSize: "no size is recorded",
    unsaid:
      "A label has no room for what the colour does in a white, how much oil is in it, when it is dry, and how any of that is known. That is what its sheet is for.",
  },
  studio: {
    heading: "What holds for every colour",
    text: "These cautions hold in every studio and workshop, whichever colour is on the table, and so they stand here once. What is particular to a colour stands on its sheet, first; a label and a safety data sheet prevail, and local codes and licensed practice come before anything that is said here.",
    caption: "In every studio",
    dust: "A dry pigment goes up as dust: treat it as very dusty unless its bulk density says otherwise.",
    columns: { operation: "At", caution: "What to do, and what to leave", reason: "Why" },
  },
  pigments: {
    heading: "One pigment or several",
    caption: "Colours of more than one pigment",
    text: (single: number, all: number) =>
      `Of the ${all} colours here ${single} ${single === 1 ? "is" : "are"} made of a single pigment. Look at how many Colour Index names a label gives: one name is one kind of pigment, which mixes cleanly and behaves alike in every layer. Several names are a mixture that could be made on the palette; it is sold because it is handy, or stands in for a pigment that is dear, harmful or fugitive.`,
    columns: { colour: "Colour", pigments: "Pigments", weakest: "Least lightfast" },
    alike: "alike, as far as is known",
    unknown: "not known",
    none: "No colour here is a mixture.",
  },
  names: {
    heading: "One name, several colours",
    caption: "Colour Index names that more than one pigment here goes by",
    text: "A Colour Index name covers everything of one constitution: raw and burnt earths share a name, and so do a coarse and a fine grade. Nor does a name follow from a CAS number: lamp black (PBk 6) and gas-made carbon black (PBk 7) have one number between them, and differ in grain, in oil and in what they do in a white.",
    columns: { index: "Colour Index name", pigments: "Pigments", colours: "Colours" },
  },
  drift: {
    heading: "Why some mixed blacks drift",
    caption: "Blacks and greys here that are mixed",
    text: "A black of a single pigment has one thing that can change. If light takes some of it, it grows lighter and keeps its hue. A mixed black is a balance: pigments of unlike hue are weighed so that together they look neutral. If one of them loses strength the balance tips, and the black drifts towards those that stay: towards brown where a blue or green gives way, towards green or blue where a red does. What fades first in light, what alkali, acid or heat reach, and what merely looks weaker in one white than in another can each tip it. So in a mixture the least lightfast pigment decides, and a mixture of pigments that are alike in light has little reason to drift.",
    driftColumn: "If it loses 30\u00a0% of one pigment",
    notReckoned: "not reckoned here",
    none: "No black or grey here is mixed.",
  },
  sheet: {
    heading: "The lines of a sheet",
    caption: "The facts of a first screen",
    facts: {
      lasts:
        "How it held, or is expected to hold, in light. The small print says which: exposed under the standard, exposed here, stated by somebody, or expected from its pigments and not tested.",
      hides:
        "How well a film covers black and white alike, and how thick a dry film has to be for it.",
      dries:
        "A class by the middle of the days to touch dry, for a film of the thickness and a room of the warmth that the sheet names. Touch dry is not through dry.",
      strength:
        "How far a little of it goes in a white, tube for tube, beside the colour that the workshop compares with.",
      oil: "Grams of oil in the paint to 100 g of pigment. High is no fault: a light, fine pigment needs it. By volume colours lie closer together.",
      safety:
        "The label's signal word, or that none is needed. Where nobody has classified a pigment the sheet says so: treat it as hazardous.",
    },
    whitens:
      "Of a white: how much of it brings one part of the colour that the workshop compares with to a middle tone. The less, the stronger the white.",
    middleTone:
      "How much white brings one part of it to a middle tone. A dark colour takes much white, and is not the stronger for it.",
    text: "Beside each figure stands how it is known. A figure that nobody knows is not stated, with what it would take; it is never a zero or a guess.",
  },
} as const;
