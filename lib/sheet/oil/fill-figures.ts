import { heldMassG, jarFillStatement, takenVolumeMl } from "../../formulation/container-fill.ts";
import { BAG_G, BAG_JAR_ML, CUSTOMARY_JARS_ML } from "../../formulation/containers.ts";
import { isKnown, weakestRoot, type Figure } from "../../quantities/figure.ts";
import { ends, type Quantity } from "../../quantities/interval.ts";
import type { Statement } from "../../quantities/statement.ts";
import * as d from "../declaration.ts";
import { derived, filled, found, foundFrom } from "../found.ts";
import type { PigmentPart } from "../pigments/pigment-figures.ts";
import type { PaintOfColour } from "../paint-as-made.ts";

/** Paint or dry pigment, and what it is filled into. */
interface Filled {
  readonly density: Figure<Quantity>;
  readonly containersMl: readonly number[];
}

const HELD = d.section({
  slug: d.text,
  ml: d.plainNumber,
  massG: derived(
    d.quantity({ unit: "g", kind: "significant", digits: 3, word: "fillHolds" }),
    ({ density }: Pick<Filled, "density"> & { readonly ml: number }) => ({ density }),
    {
      name: ({ ml }) => `${ml} ml x density`,
      byHand: ["lamp-black.fill.fillings.paint.holds.40-ml.massG", "40 x 1.2155", 48.62],
    },
    (v, { ml }) => heldMassG(ml, v.density),
  ),
});

const FILLING = d.section({
  /** "paint", "lamp-black-poured", "lamp-black-tapped". */
  slug: d.text,
  /** The pigment, where it is a dry one. */
  pigment: d.optional(d.text),
  packing: d.oneOf(["paint", "poured", "tapped"]),
  holds: found(d.list(HELD), ({ density, containersMl }: Filled) =>
    containersMl.map((ml) => filled(HELD, { slug: `${ml}-ml`, ml, density })),
  ),
  takesMlPer100g: derived(
    d.quantity({ unit: "ml", kind: "significant", digits: 3, word: "fillTakes" }),
    ({ density }: Filled) => ({ density }),
    { name: "100 g / density", example: [{ density: 1.25 }, 80] },
    (v) => takenVolumeMl(100, v.density),
  ),
});
export type Filling = d.SectionOf<typeof FILLING>;

const fill = foundFrom<PaintOfColour>();

/** What jars and tubes hold, and the reverse. */
export const FILL = d.section({
  /** The paint, and each dry pigment poured and tapped. */
  fillings: fill.found(d.list(FILLING), ({ colour: { sizes }, pigments, oil }) => {
    const containersMl = [...new Set([...sizes.map(({ ml }) => ml), ...CUSTOMARY_JARS_ML])].sort(
      (one, other) => one - other,
    );
    const filling = (
      what: Pick<Filling, "slug" | "pigment" | "packing">,
      density: Figure<Quantity>,
    ): Filling[] => (isKnown(density) ? [filled(FILLING, { ...what, density, containersMl })] : []);
    return [
      ...filling({ slug: "paint", packing: "paint" }, oil.paintDensityGPerCm3),
      ...pigments.flatMap(({ slug: pigment, bulkDensityLooseGPerMl, bulkDensityTappedGPerMl }) => [
        ...filling(
          { slug: `${pigment}-poured`, pigment, packing: "poured" },
          bulkDensityLooseGPerMl,
        ),
        ...filling(
          { slug: `${pigment}-tapped`, pigment, packing: "tapped" },
          bulkDensityTappedGPerMl,
        ),
      ]),
    ];
  }),
  /** Whether 100 g of a dry pigment fill a jar. */
  sentences: fill.found(d.statements, ({ pigments }) => pigments.flatMap(jarSentence)),
});

/** Whether a bag of the dry pigment fills the customary jar; nothing where poured and tapped contradict each other. */
function jarSentence({
  name,
  bulkDensityLooseGPerMl: loose,
  bulkDensityTappedGPerMl: tapped,
}: PigmentPart): Statement[] {
  if (!isKnown(loose) || !isKnown(tapped)) return [];
  const [looseGPerMl, tappedGPerMl] = [ends(loose.value)[0], ends(tapped.value)[1]];
  if (looseGPerMl > tappedGPerMl) return [];
  const statement = jarFillStatement(name, BAG_G, BAG_JAR_ML, { looseGPerMl, tappedGPerMl });
  const root = weakestRoot([loose.restsOn, tapped.restsOn]);
  return [
    {
      ...statement,
      standing: root === "estimated" ? "estimated" : "derived",
    },
  ];
}
