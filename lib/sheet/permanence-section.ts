import { permanenceRuling, type PermanenceRuling } from "../permanence/permanence-ruling.ts";
import { sensitivityRulings } from "../permanence/sensitivity.ts";
import { notStated, rootFigure, type Figure } from "../quantities/figure.ts";
import { midpoint, type Quantity } from "../quantities/range.ts";
import type { Colour, Records } from "../records/records.ts";
import type { PermanenceSection, PigmentPart } from "./sheet.ts";

/** Lightfastness from the colour's own exposures, else as stated, else as its pigments lead one to expect; and what else harms it. */
export function permanenceSection(colour: Colour, parts: readonly PigmentPart[], records: Records): PermanenceSection {
  const stated = (slug: string): PigmentLightfastness => records.pigments.get(slug)?.record.lightfastness;
  const exposures = (colour.record.exposures ?? []).map(({ deltaEab, ...rest }) => ({ ...rest, deltaEab: midpoint(typeof deltaEab === "number" ? deltaEab : deltaEab.value) }));
  const ruling = permanenceRuling({
    pigments: parts.map(({ slug, name, colourIndexName }) => {
      const { category, form } = stated(slug) ?? {};
      return { name, colourIndexName, ...(category === undefined ? {} : { stated: { category, form } }) };
    }),
    exposures,
    ...(colour.record.lightfastness === undefined ? {} : { stated: colour.record.lightfastness }),
  });
  const wanting = [`colours.${colour.slug}.exposures`];
  return {
    category: categoryFigure(ruling, wanting),
    expectation: ruling.expectation === undefined
      ? notStated(ruling.category === undefined ? "nothing is known of its pigments in light" : "not needed: it was exposed, or is stated", wanting)
      : rootFigure<string>("estimated", ruling.expectation, { unit: "", method: "by the Colour Index name of its pigments", source: "astm-d4302" }),
    blueWool: blueWoolFigure(parts.map(({ slug }) => stated(slug)), parts.length, wanting),
    deltaEab: ruling.deltaEab === undefined
      ? notStated("not exposed here", wanting)
      : rootFigure("measured", ruling.deltaEab, { unit: "1", method: "CIE 1976, exposed against kept dark, mean of its exposures", source: "astm-d4303" }),
    standing: ruling.standing,
    reasons: ruling.reasons,
    sensitivities: sensitivityRulings(parts).map(({ reason }) => reason),
  };
}

type PigmentLightfastness = { category?: "I" | "II" | "III" | "IV" | "V" | undefined; form?: "masstone" | "tint" | undefined; blueWool?: number | undefined; source?: string | undefined } | undefined;

function categoryFigure({ category, basis, weakest }: PermanenceRuling, wanting: readonly string[]): Figure<string> {
  if (category === undefined) return notStated("not exposed here, and no category is stated", wanting);
  if (basis === "exposed") return { ...rootFigure<string>("measured", category, { unit: "", method: "by the colour change of its own exposure", source: "astm-d4303" }), standing: "derived", inputs: ["permanence.deltaEab"] };
  return rootFigure<string>("stated", category, { unit: "", method: weakest.length === 0 ? "as stated for the colour" : `as stated for ${weakest.join(", ")}` });
}

/** Of a mixture only when every pigment's is stated: then its weakest. */
function blueWoolFigure(stated: readonly PigmentLightfastness[], count: number, wanting: readonly string[]): Figure<Quantity> {
  const references = stated.flatMap((pigment) => pigment?.blueWool ?? []);
  if (references.length < count) return notStated("no blue wool reference is stated", wanting);
  return rootFigure<Quantity>("stated", Math.min(...references), { unit: "1", method: count === 1 ? "as stated" : "the weakest of its pigments, as stated", source: "iso-105-b02" });
}
