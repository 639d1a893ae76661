import type { DrierMetal } from "../../drying/added-drier.ts";
import type { Oil } from "../../drying/oils.ts";
import type { VehicleKind } from "../../records/schema/terms.ts";
import {
  list,
  notation,
  number,
  optional,
  orUndefined,
  plain,
  quantity,
  section,
  text,
  word,
  workshopAlone,
  type SectionOf,
} from "../declaration.ts";

const PRICE = workshopAlone(
  optional(number({ unit: "currency/kg", kind: "decimal", digits: 2, word: "price" })),
);
const OIL = orUndefined(plain<Oil>({ type: "string" }));

/** A pigment of the colour, with the figures that everything else starts from. */
export const PIGMENT = section({
  slug: text,
  name: text,
  colourIndexName: optional(text),
  colourIndexNumber: optional(text),
  casNumber: optional(text),
  massFraction: number({ unit: "1", kind: "share", digits: 0, word: "massFraction" }),
  densityGPerCm3: quantity({ unit: "g/cm3", kind: "significant", digits: 3, word: "density" }),
  oilAbsorptionGPer100g: quantity({
    unit: "g/100 g",
    kind: "significant",
    digits: 3,
    word: "oilAbsorption",
  }),
  bulkDensityLooseGPerMl: quantity({
    unit: "g/ml",
    kind: "significant",
    digits: 2,
    word: "bulkDensityLoose",
  }),
  bulkDensityTappedGPerMl: quantity({
    unit: "g/ml",
    kind: "significant",
    digits: 2,
    word: "bulkDensityTapped",
  }),
  /** Only where the record tells no chemistry. */
  formula: optional(notation("formula")),
  mineral: optional(notation("mineral")),
  introduced: optional(number({ unit: "1", kind: "decimal", digits: 0, word: "introduced" })),
  expectedOpacity: optional(word("expectedOpacity")),
  particleSizeUm: quantity({ unit: "um", kind: "significant", digits: 2, word: "particleSize" }),
  /** Only where the record has one. */
  pricePerKg: PRICE,
});
export type PigmentPart = SectionOf<typeof PIGMENT>;

/** The oil that the colour is made in. */
export const VEHICLE = section({
  slug: text,
  name: text,
  oil: OIL,
  densityGPerCm3: quantity({ unit: "g/cm3", kind: "significant", digits: 3, word: "oilDensity" }),
  pricePerKg: PRICE,
});
export type VehiclePart = SectionOf<typeof VEHICLE>;

/** A drier, medium or thinner on top of pigment and oil. */
export const ADDITION = section({
  slug: text,
  name: text,
  kind: plain<VehicleKind>({ type: "string" }),
  oil: OIL,
  /** By mass on the oil [%]. */
  percentOfOil: number({ unit: "%", kind: "significant", digits: 2, word: "percentOfOil" }),
  densityGPerCm3: quantity({
    unit: "g/cm3",
    kind: "significant",
    digits: 3,
    word: "additionDensity",
  }),
  /** Of a drier, each metal that bears on drying, by mass on the oil [%]. */
  metals: list(
    section({
      slug: plain<DrierMetal>({ type: "string" }),
      percentOfOil: quantity({
        unit: "%",
        kind: "significant",
        digits: 2,
        word: "metalPercentOfOil",
      }),
    }),
  ),
  pricePerKg: PRICE,
});
export type AdditionPart = SectionOf<typeof ADDITION>;
