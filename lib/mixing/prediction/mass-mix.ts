/** From parts as they are squeezed out to parts by mass of paint, as K and S are known. */
import { massParts } from "../../optics/mixtures/mixture.ts";
import { partsOf, type Mix, type MixPart, type MixStatement } from "../mix.ts";
import { paintName, type MixingRange } from "../mixing-range.ts";

/** The same mix by mass of paint; colours of no part are left out. */
export function massMix(
  mix: Mix,
  range: MixingRange,
): Mix | Extract<MixStatement, { rule: "density-not-recorded" }> {
  const colours = mix.colours.filter(({ parts }) => parts > 0);
  if (mix.by === "mass") return { ...mix, colours };
  const used = partsOf({ ...mix, colours });
  const unknown = used.filter(({ slug }) => range.paint(slug)?.densityGPerCm3 === undefined);
  // A paint by itself is the same by volume and by mass.
  if (unknown.length > 0 && used.length > 1)
    return {
      rule: "density-not-recorded",
      values: { paints: unknown.map(({ slug }) => paintName(slug, range)) },
    };
  const weighed = (part: MixPart): MixPart => ({
    slug: part.slug,
    parts: massParts([part.parts], [range.paint(part.slug)?.densityGPerCm3 ?? 1])[0] ?? Number.NaN,
  });
  return { by: "mass", colours: colours.map(weighed), white: weighed(mix.white) };
}

/** The same mix by volume; undefined where a density is not recorded. */
export function volumeMix(mix: Mix, range: MixingRange): Mix | undefined {
  if (mix.by === "volume") return mix;
  if (partsOf(mix).some(({ slug }) => range.paint(slug)?.densityGPerCm3 === undefined))
    return undefined;
  const measured = ({ slug, parts }: MixPart): MixPart => ({
    slug,
    parts: parts / (range.paint(slug)?.densityGPerCm3 ?? 1),
  });
  return { by: "volume", colours: mix.colours.map(measured), white: measured(mix.white) };
}
