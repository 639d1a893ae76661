import { BAG_G, BAG_JAR_ML, CUSTOMARY_JARS_ML } from "../../formulation/containers.ts";
import { jarFillStatement } from "../../formulation/container-fill.ts";
import { isKnown, weakestRoot, type Figure } from "../../quantities/figure.ts";
import { ends, type Quantity } from "../../quantities/interval.ts";
import type { Statement } from "../../quantities/statement.ts";
import type { Colour } from "../../records/records.ts";
import { filled } from "../found.ts";
import { FILLING, type FillSection, type Filling } from "./fill-figures.ts";
import type { OilSection } from "./oil-figures.ts";
import type { PigmentPart } from "../pigments/pigment-figures.ts";

/** What tubes and jars hold of the paint, and of each dry pigment poured and tapped; and what 100 g of each take. */
export function fillSection(
  colour: Colour,
  parts: readonly PigmentPart[],
  oil: OilSection,
): FillSection {
  const tubesMl = colour.sizes.map(({ ml }) => ml);
  const containersMl = [...new Set([...tubesMl, ...CUSTOMARY_JARS_ML])].sort(
    (one, other) => one - other,
  );
  const filling = (
    what: Pick<Filling, "slug" | "pigment" | "packing">,
    density: Figure<Quantity>,
  ): Filling[] => (isKnown(density) ? [filled(FILLING, { ...what, density, containersMl })] : []);
  return {
    fillings: [
      ...filling({ slug: "paint", packing: "paint" }, oil.paintDensityGPerCm3),
      ...parts.flatMap(({ slug, bulkDensityLooseGPerMl, bulkDensityTappedGPerMl }) => [
        ...filling(
          { slug: `${slug}-poured`, pigment: slug, packing: "poured" },
          bulkDensityLooseGPerMl,
        ),
        ...filling(
          { slug: `${slug}-tapped`, pigment: slug, packing: "tapped" },
          bulkDensityTappedGPerMl,
        ),
      ]),
    ],
    sentences: parts.flatMap(jarSentence),
  };
}

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
