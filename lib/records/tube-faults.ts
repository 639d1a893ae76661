/** A mixture weighed from tubes, held against what is in them. */
import { certain } from "../quantities/at.ts";
import { warningAt, type Faults } from "./fault.ts";
import type { ParsedFiles } from "./parsed-files.ts";
import type { Parsed } from "./parsed-record.ts";
import type { ColourRecord } from "./schema/colour.ts";
import { isOfPigmentAlone, vehiclesOf } from "./made-of.ts";

interface Tube {
  readonly slug: string;
  readonly record: ColourRecord;
  readonly paintParts: number;
}

/**
 * What a tube holds and the record of the mixture does not name: kind of oil, drying and label go by the record alone, and the density of the oil by the tubes.
 */
export function* tubeFaults(colour: Parsed<ColourRecord>, files: ParsedFiles): Faults {
  const { record, yaml } = colour;
  const tubes = tubesOf(colour, files);
  const named = vehiclesOf(record, files);
  for (const [i, tube] of tubes.entries()) {
    if (tube === undefined) continue;
    const lacking = vehiclesOf(tube.record, files).filter(
      (one) => one !== undefined && !named.includes(one),
    );
    if (lacking.length === 0) continue;
    yield warningAt(yaml.place(["pigments", i, "paintParts"]), "records/tube-vehicle", {
      message: `The tube of ${tube.slug} holds ${lacking.join(" and ")}, which the record of the mixture does not name: what its oil is, its drying and label are worked out without`,
      actual: named.filter((one) => one !== undefined).join(", ") || "no vehicle",
      expected: `${lacking.join(" and ")} under vehicle or additions`,
      hint: recipeHint(tubes, files),
    });
  }
}

function tubesOf(
  { slug, record }: Parsed<ColourRecord>,
  { colours }: ParsedFiles,
): (Tube | undefined)[] {
  return record.pigments.map(({ pigment, paint, paintParts }) => {
    if (paintParts === undefined) return undefined;
    const alone = [...colours].filter(
      ([other, { record: one }]) => other !== slug && isOfPigmentAlone(one, pigment),
    );
    const [found] = alone.filter(
      ([other]) => paint === other || (paint === undefined && alone.length === 1),
    );
    return found === undefined
      ? undefined
      : { slug: found[0], record: found[1].record, paintParts };
  });
}

/** The two lines that the tubes come to together, the oil that there is most of first; undefined where a tube's oil index is not one number. */
function recipeHint(tubes: readonly (Tube | undefined)[], files: ParsedFiles): string | undefined {
  const grams = new Map<string, number>();
  const oils = new Set<string>();
  for (const tube of tubes) {
    const oilIndex = tube?.record.oilIndexGPer100g;
    const oilG = typeof oilIndex === "object" ? oilIndex.value : oilIndex;
    const [oil] = tube === undefined ? [] : vehiclesOf(tube.record, files);
    if (tube === undefined || oil === undefined || typeof oilG !== "number") return undefined;
    const { additions = [] } = tube.record;
    const onOil = additions.reduce((sum, { percentOfOil }) => sum + percentOfOil / 100, 1);
    const ownG = (tube.paintParts * oilG) / (100 + oilG * onOil);
    oils.add(oil);
    grams.set(oil, (grams.get(oil) ?? 0) + ownG);
    for (const { vehicle, percentOfOil } of additions)
      grams.set(vehicle, (grams.get(vehicle) ?? 0) + (ownG * percentOfOil) / 100);
  }
  const [most] = [...oils].toSorted(
    (one, other) => (grams.get(other) ?? 0) - (grams.get(one) ?? 0),
  );
  if (most === undefined) return undefined;
  const oilG = certain(grams.get(most));
  const added = [...grams]
    .filter(([slug]) => slug !== most)
    .map(
      ([slug, massG]) =>
        `{ vehicle: ${slug}, percentOfOil: ${Number(((100 * massG) / oilG).toPrecision(2))} }`,
    );
  return `by the tubes vehicle: ${most}${added.length === 0 ? "" : ` with additions: [${added.join(", ")}]`}`;
}
