import type { LabelElements } from "../../hazard/label/label-elements.ts";
import type { PaintForm } from "../../hazard/classify/frame.ts";
import type { Ingredient } from "../../hazard/classify/composition.ts";
import { signalWordText, statementInLanguage } from "../../hazard/texts/hazard-statement-text.ts";
import { singleStatements } from "../../hazard/label/stated-label.ts";
import { unclassifiedMetals } from "../../hazard/studio/studio-material.ts";
import { ends, isInterval } from "../../quantities/interval.ts";
import type { Statement } from "../../quantities/statement.ts";
import type { Language } from "../../records/schema/terms.ts";
import type { LabelPart, StatementRuling } from "./handling-sections.ts";

export type PrintedElements = Pick<
  LabelPart,
  | "classification"
  | "signalWord"
  | "pictograms"
  | "hazardStatements"
  | "precautionaryStatements"
  | "supplemental"
  | "sensitisers"
>;

/** What a worked-out label prints. */
export function printedElements({
  classes,
  signalWord,
  pictograms,
  hazardStatements,
  precautionaryStatements,
  supplemental,
  sensitisers,
}: LabelElements): PrintedElements {
  return {
    classification: [...new Set(classes.map(({ hazardClass }) => hazardClass))],
    signalWord,
    pictograms,
    hazardStatements,
    precautionaryStatements: precautionaryStatements.map(({ statement }) => statement),
    supplemental,
    sensitisers,
  };
}

/** A label as it is printed, with the reasons that the reckoning has for it, in the names of the records. */
export function labelPart(
  printed: PrintedElements,
  workedOut: LabelElements,
  ingredients: readonly Ingredient[],
  languages: readonly Language[],
): LabelPart {
  const named = rulingsNamed(ingredients);
  const stands = new Set([
    ...printed.hazardStatements.flatMap(singleStatements),
    ...printed.precautionaryStatements,
    ...printed.supplemental,
  ]);
  return {
    ...printed,
    texts: statementTexts(printed, languages, workedOut.form),
    traces: [...workedOut.traces.map(spanned), ...workedOut.precautionaryStatements]
      .filter(({ statement }) => stands.has(statement))
      .map(named),
    leftOut: workedOut.leftOut.filter(({ statement }) => !stands.has(statement)).map(named),
    unknown: workedOut.gaps.flatMap(({ rule, values }) =>
      rule === "no-hazard-data" ? [String(values["name"])] : [],
    ),
    gaps: workedOut.gaps.map(named),
    notClassified: unclassifiedMetals(ingredients),
    unknownAcuteToxicity: workedOut.unknownAcuteToxicity.map(named),
  };
}

/** Puts the names of records in the place of slugs: a reader knows no slugs. */
export function rulingsNamed(
  ingredients: readonly Pick<Ingredient, "slug" | "name">[],
): <R extends Statement>(ruling: R) => R {
  const names = new Map(ingredients.map(({ slug, name }) => [slug, name]));
  return (ruling) => {
    const values = Object.fromEntries(
      Object.entries(ruling.values).map(([key, value]) => [
        key,
        (key === "ingredients" || key === "pigments") && Array.isArray(value)
          ? value.map((slug) => names.get(String(slug)) ?? String(slug))
          : value,
      ]),
    );
    return { ...ruling, values };
  };
}

/** A fraction that is known only between two ends is told as both, where the rule counted one substance whole. */
function spanned(trace: LabelElements["traces"][number]): StatementRuling {
  const { rule, values, shares } = trace;
  if (
    !rule.startsWith("cut-off") ||
    values["countedAs"] !== "substance" ||
    !shares.some(({ massFraction }) => isInterval(massFraction))
  )
    return trace;
  const total = (end: 0 | 1): number =>
    shares.reduce((sum, { massFraction }) => sum + ends(massFraction)[end], 0);
  return { ...trace, values: { ...values, massFraction: [total(0), total(1)] } };
}

function statementTexts(
  {
    signalWord,
    hazardStatements,
    precautionaryStatements,
    supplemental,
    sensitisers,
  }: PrintedElements,
  languages: readonly Language[],
  form: PaintForm,
): LabelPart["texts"] {
  const wanted = [...new Set<Language>(["en", ...languages])];
  const codes = [
    ...hazardStatements.flatMap(singleStatements),
    ...precautionaryStatements,
    ...supplemental,
  ];
  const inEach = (
    textIn: (language: Language) => { readonly text: string; readonly translationMissing: boolean },
  ): Partial<Record<Language, string>> =>
    Object.fromEntries(
      wanted.flatMap((language) => {
        const { text, translationMissing } = textIn(language);
        return translationMissing ? [] : [[language, text]];
      }),
    );
  return Object.fromEntries([
    ...(signalWord === null
      ? []
      : [[signalWord, inEach((language) => signalWordText(signalWord, language))] as const]),
    ...codes.map(
      (code) =>
        [
          code,
          inEach((language) => statementInLanguage(code, language, { names: sensitisers, form })),
        ] as const,
    ),
  ]);
}
