import { nearestWord } from "../diagnostics/nearest-word.ts";
import { RECORDS_VERSION } from "../records/schema/records-version.ts";
import { asked } from "./told.ts";

/** A record as it is begun: where it goes, its text, and what has to be filled in before `check` accepts it. */
export interface Starter {
  /** Below the content folder. */
  readonly path: string;
  readonly text: string;
  readonly toFillIn?: string;
}

/** What is there already, by the names of the files without their endings. */
interface KnownNames {
  readonly pigments: readonly string[];
}

/** How each kind of record is asked for. */
export const STARTER_FORMS = {
  workshop: 'new workshop "Name"',
  pigment: 'new pigment "Name"',
  vehicle: 'new vehicle "Name"',
  colour: 'new colour "Name"',
  answer: 'new answer "Question"',
  source: 'new source "Citation"',
  lot: "new lot COLOUR",
  trial: "new trial COLOUR",
} as const;
export type StarterKind = keyof typeof STARTER_FORMS;

/** What is not filled in: no file can be called so, so that `check` tells of it. */
const OPEN = "CHANGE-ME";

/** @param slug of the name, for the file; of a trial its colour. @param today YYYY-MM-DD. */
export function starter(
  kind: Exclude<StarterKind, "lot">,
  name: string,
  slug: string,
  known: KnownNames,
  today: string,
): Starter {
  switch (kind) {
    case "workshop":
      return { path: "workshop.yaml", text: workshopText(name) };
    case "pigment":
      return { path: `pigments/${slug}.yaml`, text: pigmentText(name) };
    case "vehicle":
      return { path: `vehicles/${slug}.yaml`, text: vehicleText(name) };
    case "colour": {
      const pigment = known.pigments.find((one) => one === slug);
      return {
        path: `colours/${slug}.md`,
        text: colourText(name, pigment ?? OPEN),
        ...(pigment === undefined ? { toFillIn: pigmentWanted(slug, known.pigments) } : {}),
      };
    }
    case "trial":
      return { path: `trials/${slug}-${today}.yaml`, text: trialText(slug, today) };
    case "answer":
      return {
        path: `answers/${slug}.md`,
        text: answerText(name),
        toFillIn: "summary, the short answer in a sentence or two",
      };
    case "source":
      return { path: `sources/${slug}.yaml`, text: sourceText(name) };
  }
}

function pigmentWanted(slug: string, pigments: readonly string[]): string {
  const near = nearestWord(slug, pigments);
  const there =
    near !== undefined
      ? `, such as ${near}`
      : pigments.length === 0
        ? `, where none is yet: ${asked(STARTER_FORMS.pigment)} writes one`
        : `: ${pigments.slice(0, 6).join(", ")}${pigments.length > 6 ? " ..." : ""}`;
  return `pigment in place of ${OPEN}, the name of a file in pigments/${there}`;
}

function workshopText(name: string): string {
  return `recordsVersion: ${RECORDS_VERSION}
name: ${JSON.stringify(name)}
# What every label has to give of its supplier:
# address: "1 Mill Lane, Town"
# telephone: "000 000 000"
# contact: workshop@example.org

# Languages of pages and papers, first that of these records: en | fr | de | es
# pageLanguages: [en]

# Where colours are sold, and in which languages their labels are printed:
# markets: [EU, GB]
# languages: [en]
# currency: GBP

# The oil of every colour that names none, by its file in vehicles/:
# vehicle: linseed-oil

# What holds for every reading that does not say its own:
# readings: { scale: factor, geometry: "d/8 excluded" }

# Labels to stick:
# labels:
#   - { name: tube-40, kind: tube, ml: 40, symbol: none }
`;
}

function pigmentText(name: string): string {
  return `name: ${JSON.stringify(name)}
# Estimates of drying, lightfastness, density and oil absorption go by it:
# colourIndexName: PBk 9
# casNumber: "8021-99-6"

# densityGPerCm3: { value: 2.3, method: pycnometer, date: 2026-01-31 }
# oilAbsorptionGPer100g: { value: 60, method: ISO 787-5, date: 2026-01-31 }
# bulkDensityLooseGPerMl: 0.4
# bulkDensityTappedGPerMl: 0.7

# As its supplier's safety data sheet has them, section 2; an empty list where it states none:
# hazards: []
# supplier: "Name of the supplier"
# pricePerKg: 20
# date: 2026-01-31
`;
}

/** Oils that a name tells of. */
const OILS = ["linseed", "walnut", "safflower", "poppy"] as const;

function vehicleText(name: string): string {
  const lower = name.toLowerCase();
  const oil = lower.includes("stand") ? "stand linseed" : OILS.find((one) => lower.includes(one));
  return `name: ${JSON.stringify(name)}
# oil | medium | drier | thinner
kind: oil
# linseed | walnut | safflower | poppy | stand linseed
${oil === undefined ? "# oil: linseed" : `oil: ${oil}`}
# densityGPerCm3: 0.93
# As its supplier's safety data sheet has them, section 2; an empty list where it states none:
# hazards: []
# pricePerKg: 12
# date: 2026-01-31
`;
}

function answerText(question: string): string {
  return `---
question: ${JSON.stringify(question)}
# The short answer, in a sentence or two:
summary:

# whites | choice | drying | lasting | tube | safety
# theme: choice
# colours: [bone-black]
# What the answer rests on: check, build and start hold it against the sheets.
# claims:
#   - { figure: bone-black.drying.touchDryDays, below: 15 }
# date: 2026-01-31

# The answer, in Markdown, stands below this line:
---
`;
}

function sourceText(citation: string): string {
  return `citation: ${JSON.stringify(citation)}
# read | derived | memory | practice
# standing: read
# note: "what it is used for"
# date: 2026-01-31
`;
}

function trialText(colour: string, today: string): string {
  return `# An exposure, read again and again; it goes on until it has an end.
kind: exposure
colour: ${colour}
started: ${today}
form: masstone
standard: after ASTM D4303
exposure: south window, under glass
# Delta-E*ab from the half that is kept dark:
readings: []
#   - { date: ${today}, deltaEab: 0.5 }
# ended: ${today}

# A drying trial instead:
# kind: drying
# colour: ${colour}
# started: ${today}
# filmThicknessUm: 75
# temperatureC: 20
# humidityPercent: 50
# touched: []
`;
}

/** All that a colour can say, as comments; only its name and what it is made of are filled in. */
function colourText(name: string, pigment: string): string {
  return `---
name: ${JSON.stringify(name)}
# The least a colour needs: which pigments, by the file names in pigments/.
# Parts by mass of dry pigment, of all pigments or of none.
pigments:
  - pigment: ${pigment}
    # parts: 1

# vehicle: linseed-oil          # a file name in vehicles/
# dispersion: mulled            # mulled | milled
# oilIndexGPer100g: { value: 60, method: "weighed on the slab", date: 2026-01-31, standing: measured }
# gloss60: { value: 45, method: "ISO 2813", standing: measured }

# What colour the masstone has, in one of three ways:
# masstone: { reading: my-file, column: masstone, scale: factor, geometry: "d/8 excluded" }
# masstone: { lab: [24.1, 0.2, -0.6], illuminant: D65, observer: 10, geometry: "d/8 excluded" }
# masstone: { munsell: "N 2/" }

# Let-downs, colour to white by mass; ratioKind says whether pigment or paint was weighed:
# tints:
#   - { white: titanium-white, massRatio: "1:20", ratioKind: paint, reading: my-file, column: "1:20", scale: factor, geometry: "d/8 excluded" }

# dryingTrials:
#   - { touchDryDays: 6, filmThicknessUm: 75, temperatureC: 20, humidityPercent: 50, date: 2026-01-31 }
# exposures:
#   - { deltaEab: 2.1, form: tint, standard: "after ASTM D4303", exposure: "south window, under glass, 6 months", date: 2026-01-31 }

# Notes for the sheet, in Markdown, stand below this line:
---
`;
}
