import { heldMassG, takenVolumeMl } from "../../formulation/container-fill.ts";
import type { Figure } from "../../quantities/figure.ts";
import type { Quantity } from "../../quantities/interval.ts";
import {
  list,
  oneOf,
  optional,
  plainNumber,
  quantity,
  section,
  statements,
  text,
  type SectionOf,
} from "../declaration.ts";
import { derived, filled, found } from "../found.ts";

/** Paint or dry pigment, and what it is filled into. */
interface Filled {
  readonly density: Figure<Quantity>;
  readonly containersMl: readonly number[];
}

const HELD = section({
  slug: text,
  ml: plainNumber,
  massG: derived(
    quantity({ unit: "g", kind: "significant", digits: 3, word: "fillHolds" }),
    ({ density }: Pick<Filled, "density"> & { readonly ml: number }) => ({ density }),
    { name: ({ ml }) => `${ml} ml x density` },
    (v, { ml }) => heldMassG(ml, v.density),
  ),
});

export const FILLING = section({
  /** "paint", "lamp-black-poured", "lamp-black-tapped". */
  slug: text,
  /** The pigment, where it is a dry one. */
  pigment: optional(text),
  packing: oneOf(["paint", "poured", "tapped"]),
  holds: found(list(HELD), ({ density, containersMl }: Filled) =>
    containersMl.map((ml) => filled(HELD, { slug: `${ml}-ml`, ml, density })),
  ),
  takesMlPer100g: derived(
    quantity({ unit: "ml", kind: "significant", digits: 3, word: "fillTakes" }),
    ({ density }: Filled) => ({ density }),
    { name: "100 g / density", example: [{ density: 1.25 }, 80] },
    (v) => takenVolumeMl(100, v.density),
  ),
});
export type Filling = SectionOf<typeof FILLING>;

/** What jars and tubes hold, and the reverse. */
export const FILL = section({
  fillings: list(FILLING),
  /** Whether 100 g of a dry pigment fill a jar. */
  sentences: statements,
});
export type FillSection = SectionOf<typeof FILL>;
