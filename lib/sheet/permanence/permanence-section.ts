import { blueWool, customaryCategory } from "../../permanence/blue-wool.ts";
import { changeSoFarStatements } from "../../permanence/change-so-far.ts";
import {
  expectedContradiction,
  type ExpectedContradiction,
} from "../../permanence/expected-contradiction.ts";
import {
  statedContradiction,
  weakestForm,
  type FormRating,
  type StatedContradiction,
} from "../../permanence/exposure.ts";
import { greyScaleRuling } from "../../permanence/grey-scale.ts";
import {
  labelLightfastness,
  suitabilityRuling,
  type SuitabilityStatement,
} from "../../permanence/lightfastness-on-label.ts";
import type { FadingComponent } from "../../permanence/least-lightfast.ts";
import {
  permanenceRuling,
  type PermanencePigment,
  type PermanenceRuling,
  type StatedCategory,
} from "../../permanence/permanence-ruling.ts";
import { sensitivityRulings } from "../../permanence/sensitivity.ts";
import { classifiedFigure } from "../../quantities/derived-figure.ts";
import {
  isKnown,
  notStated,
  sourceFigure,
  takenFrom,
  type Figure,
  type RecordRoot,
} from "../../quantities/figure.ts";
import { midpoint, type Quantity } from "../../quantities/interval.ts";
import type { PermanenceStatement } from "../../permanence/statements.ts";
import type { Colour, Records } from "../../records/records.ts";
import { fadingComponents, fadingRecords, recordedExposure } from "./fading-components.ts";
import { foundSoFar } from "../trials/found-so-far.ts";
import { permanenceForms } from "./permanence-forms.ts";
import { colourRecord, pigmentRecord } from "../record-inputs.ts";
import type { PermanenceBasis, PermanenceSection } from "./permanence-figures.ts";
import type { PigmentPart } from "../pigments/pigment-figures.ts";

/** Lightfastness from the colour's own exposures, else as stated, else as its pigments lead one to expect; and what else harms it. */
export function permanenceSection(
  colour: Colour,
  parts: readonly PigmentPart[],
  records: Records,
): PermanenceSection {
  const statedOf = (slug: string): PigmentLightfastness =>
    records.pigments.get(slug)?.record.lightfastness;
  // What the paints of its single pigments did in light holds of a mixture before any word.
  const pigments: readonly PermanencePigment[] =
    parts.length > 1
      ? fadingComponents(parts, records).map(componentPigment)
      : parts.map(({ slug, name, colourIndexName }) => {
          const { category, form, source } = statedOf(slug) ?? {};
          return {
            name,
            colourIndexName,
            expected: records.knowledge.pigment(colourIndexName).lightfastness,
            ...(category === undefined ? {} : { stated: { category, form, source } }),
          };
        });
  const exposures = (colour.record.exposures ?? []).map(recordedExposure);
  const stated = colour.record.lightfastness;
  const ruling = permanenceRuling({
    pigments,
    exposures,
    ...(stated === undefined ? {} : { stated }),
  });
  const byPigments = permanenceRuling({ pigments, exposures: [] });
  const weakest = parts.length <= 1 ? [] : byPigments.weakest;
  const wanting = [`colours.${colour.slug}.exposures`];
  const inputs = [
    ...colourRecord(colour, "exposures", "lightfastness"),
    ...(parts.length > 1
      ? fadingRecords(parts, records)
      : parts.map(({ slug }) => pigmentRecord(slug))),
  ];
  const forms = permanenceForms(colour, ruling.forms, stated);
  const weakestOf = weakestForm(ruling.forms)?.form;
  const changed = forms.find(({ slug }) => slug === weakestOf)?.deltaEab;
  const deltaEab =
    ruling.deltaEab === undefined || changed === undefined
      ? notStated("not exposed here", wanting, inputs)
      : mostChanged(changed);
  const wool = blueWoolFigure(
    parts.map(({ slug }) => statedOf(slug)),
    parts.length,
    parts
      .filter(({ slug }) => statedOf(slug)?.blueWool === undefined)
      .map(({ slug }) => `pigments.${slug}.lightfastness.blueWool`),
    parts.map(({ slug }) => pigmentRecord(slug)),
  );
  return {
    category: categoryFigure(ruling, deltaEab, wanting, inputs),
    basis: basisOf(ruling),
    expectation:
      ruling.expectation === undefined
        ? notStated(
            ruling.category === undefined
              ? ruling.unknown.length > 0 && parts.length > 1
                ? `how ${ruling.unknown.join(", ")} stands in light is not known, and a mixture is as good as its weakest`
                : "nothing is known of its pigments in light"
              : "not needed: it was exposed, or is stated",
            wanting,
            inputs,
          )
        : sourceFigure<string>("estimated", ruling.expectation, {
            unit: "",
            method:
              "by its pigments, of which the least lightfast form of the least lightfast decides",
            source: ruling.expectationSource,
            inputs,
          }),
    blueWool: wool,
    deltaEab,
    standing: ruling.standing,
    forms,
    weakest,
    reasons: [
      ...ruling.reasons.filter(({ rule }) => !AGAINST_STATED.has(rule)),
      ...foundSoFar(colour.slug, records).changes.flatMap((change) =>
        changeSoFarStatements(change, exposures),
      ),
      ...(ruling.deltaEab === undefined ? [] : [greyScaleRuling(ruling.deltaEab).reason]),
      ...(ruling.deltaEab !== undefined
        ? byPigments.reasons.filter(
            ({ rule }) =>
              OF_MIXTURE.has(rule) &&
              (rule !== "weaker-in-tints" || ruling.forms.every(({ form }) => form !== "tint")),
          )
        : []),
      ...(isKnown(wool) ? [customaryCategory(blueWool(midpoint(wool.value))).reason] : []),
      ...suitability(ruling),
    ],
    sensitivities: sensitivityRulings(
      parts.map(({ name, colourIndexName }) => ({
        name,
        sensitivities: records.knowledge.pigment(colourIndexName).sensitivities,
      })),
    ).map(({ reason }) => reason),
    label: labelLightfastness(ruling),
    contradictions: contradictions(weakestForm(ruling.forms), stated, byPigments),
  };
}

function componentPigment({
  name,
  pigments: [pigment],
  exposures,
  stated,
}: FadingComponent): PermanencePigment {
  return {
    name,
    colourIndexName: pigment?.colourIndexName,
    expected: pigment?.expected,
    stated: stated ?? pigment?.stated,
    exposures,
  };
}

type PigmentLightfastness =
  | {
      category?: "I" | "II" | "III" | "IV" | "V" | undefined;
      form?: "masstone" | "tint" | undefined;
      blueWool?: number | undefined;
      source?: string | undefined;
    }
  | undefined;

/** Rules that tell of an exposure against a statement: the section keeps them apart. */
const AGAINST_STATED: ReadonlySet<PermanenceStatement["rule"]> = new Set([
  "exposure-better-than-stated",
  "exposure-worse-than-stated",
]);
/** Which of its pigments a mixture depends on holds beside an exposure of the mixture too. */
const OF_MIXTURE: ReadonlySet<PermanenceStatement["rule"]> = new Set([
  "weakest-pigment-decides",
  "pigments-alike",
  "mixture-with-unknown-pigment",
  "weaker-in-tints",
]);

function basisOf({ basis, forms }: PermanenceRuling): PermanenceBasis {
  return basis !== "exposed"
    ? basis
    : forms.every(({ underStandard }) => underStandard)
      ? "exposed under the standard"
      : "own exposure";
}

/** Only of what may be called a category: by the standard's exposures, or stated. */
function suitability(ruling: PermanenceRuling): SuitabilityStatement[] {
  const basis = basisOf(ruling);
  return ruling.category !== undefined &&
    (basis === "exposed under the standard" ||
      (basis === "stated" && ruling.deltaEab === undefined))
    ? [suitabilityRuling(ruling.category)]
    : [];
}

/** The workshop's exposure against what is stated for the colour, or for its pigments, or expected of them. */
function contradictions(
  exposed: FormRating | undefined,
  stated: StatedCategory | undefined,
  byPigments: PermanenceRuling,
): (StatedContradiction | ExpectedContradiction)[] {
  if (exposed?.standing !== "measured") return [];
  const sameForm =
    stated !== undefined && (stated.form === undefined || stated.form === exposed.form);
  const found = sameForm
    ? statedContradiction(stated.category, exposed)
    : byPigments.category !== undefined
      ? statedContradiction(byPigments.category, exposed)
      : byPigments.expectation !== undefined
        ? expectedContradiction(byPigments.expectation, exposed)
        : undefined;
  return found === undefined ? [] : [found];
}

/** Of the form that changed most. */
function mostChanged(changed: Figure<number>): Figure<number> {
  return isKnown(changed)
    ? takenFrom(changed, `${changed.method}, of the form that changed most`)
    : changed;
}

function categoryFigure(
  ruling: PermanenceRuling,
  deltaEab: Figure<number>,
  wanting: readonly string[],
  inputs: readonly RecordRoot[],
): Figure<string> {
  const { category, weakest } = ruling;
  if (category === undefined)
    return notStated("not exposed here, and no category is stated", wanting, inputs);
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

/** Of a mixture only when every pigment's is stated: then its weakest. */
function blueWoolFigure(
  stated: readonly PigmentLightfastness[],
  count: number,
  wanting: readonly string[],
  inputs: readonly RecordRoot[],
): Figure<Quantity> {
  const told = stated.flatMap((pigment) =>
    pigment?.blueWool === undefined
      ? []
      : [{ reference: pigment.blueWool, source: pigment.source }],
  );
  const [weakest] = told.toSorted((one, other) => one.reference - other.reference);
  if (weakest === undefined || told.length < count)
    return notStated("no blue wool reference is stated", wanting, inputs);
  return sourceFigure<Quantity>("stated", weakest.reference, {
    unit: "1",
    method: `${count === 1 ? "as stated" : "the weakest of its pigments, as stated"}, on the scale of ISO 105-B02`,
    source: weakest.source,
    inputs,
  });
}
