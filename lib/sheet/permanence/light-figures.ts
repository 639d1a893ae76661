import type { PermanenceRuling } from "../../permanence/permanence-ruling.ts";
import { classifiedFigure } from "../../quantities/derived-figure.ts";
import { isKnown, notStated, sourceFigure, type Figure } from "../../quantities/figure.ts";
import type { Quantity } from "../../quantities/interval.ts";
import type { Records } from "../../records/records.ts";
import type { PigmentPart } from "../pigments/pigment-figures.ts";
import { pigmentRecord } from "../record-inputs.ts";
import type { PermanenceOfColour } from "./permanence-figures.ts";

/** By its own exposure, else as stated for the colour or its pigments. */
export function categoryFigure({
  colour,
  facts: { ruling },
  deltaEab,
  read: inputs,
}: PermanenceOfColour & { readonly deltaEab: Figure<number> }): Figure<string> {
  const { category, weakest } = ruling;
  if (category === undefined)
    return notStated(
      "not exposed here, and no category is stated",
      [`colours.${colour.slug}.exposures`],
      inputs,
    );
  if (isKnown(deltaEab)) {
    const name = ruling.forms.every(({ underStandard }) => underStandard)
      ? "by the colour change of the standard's exposures"
      : "by colour change against the standard's limits; the exposure was another";
    const word: string = category;
    return classifiedFigure({ name, unit: "", source: "astm-d4303" }, { deltaEab }, () => word);
  }
  return sourceFigure<string>("stated", category, {
    unit: "",
    method:
      weakest.length === 0 ? "as stated for the colour" : `as stated for ${weakest.join(", ")}`,
    source: ruling.reasons.find(
      ({ rule, values }) =>
        rule === "category-stated" ||
        ((rule === "pigment-category-stated" || rule === "pigment-exposed-as-stated") &&
          weakest.includes(values.pigment)),
    )?.source,
    inputs,
  });
}

/** Why there is no expectation. @param count of its pigments. */
export function noExpectation(ruling: PermanenceRuling, count: number): string {
  if (ruling.category !== undefined) return "not needed: it was exposed, or is stated";
  return ruling.unknown.length > 0 && count > 1
    ? `how ${ruling.unknown.join(", ")} stands in light is not known, and a mixture is as good as its weakest`
    : "nothing is known of its pigments in light";
}

/** Of a mixture only when every pigment's is stated: then its weakest. */
export function blueWoolFigure(parts: readonly PigmentPart[], records: Records): Figure<Quantity> {
  const inputs = parts.map(({ slug }) => pigmentRecord(slug));
  const stated = parts.map(({ slug }) => ({
    slug,
    ...records.pigments.get(slug)?.record.lightfastness,
  }));
  const [weakest] = stated
    .flatMap(({ blueWool: reference, source }) =>
      reference === undefined ? [] : [{ reference, source }],
    )
    .toSorted((one, other) => one.reference - other.reference);
  const unstated = stated.filter(({ blueWool }) => blueWool === undefined);
  if (weakest === undefined || unstated.length > 0)
    return notStated(
      "no blue wool reference is stated",
      unstated.map(({ slug }) => `pigments.${slug}.lightfastness.blueWool`),
      inputs,
    );
  return sourceFigure<Quantity>("stated", weakest.reference, {
    unit: "1",
    method: `${parts.length === 1 ? "as stated" : "the weakest of its pigments, as stated"}, on the scale of ISO 105-B02`,
    source: weakest.source,
    inputs,
  });
}
