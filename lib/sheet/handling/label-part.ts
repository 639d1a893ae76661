import type { LabelElements } from "../../hazard/label/label-elements.ts";
import type { Ingredient } from "../../hazard/classify/composition.ts";
import type { HazardKnowledge } from "../../hazard/hazard-knowledge.ts";
import { namesItsSubstances, packagingStatements } from "../../hazard/label/packaging.ts";
import {
  signalWordKey,
  statementText,
  UNKNOWN_TOXICITY,
  type StatementContext,
} from "../../hazard/texts/statement-texts.ts";
import {
  metalLine,
  metalLineKey,
  SUBSTANCES_LINE,
  substancesLine,
} from "../../hazard/texts/contents-line.ts";
import { singleStatements } from "../../hazard/texts/single-statements.ts";
import { substanceName, type NamedSubstance } from "../../hazard/texts/substance-name.ts";
import { containedMetals } from "../../hazard/studio/studio-material.ts";
import { ends, isInterval } from "../../quantities/interval.ts";
import type { Language } from "../../quantities/languages.ts";
import type { LabelPart } from "./handling-sections.ts";

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

/** What brings a label's statements about: of a mixture that is classified as a whole, its components. */
export interface Cause {
  readonly elements: LabelElements;
  readonly ingredients: readonly Ingredient[];
}

/**
 * A label as it is printed, with the reasons that the reckoning has for it, in the names of the records.
 * @param cause whose substances the label names.
 */
export function labelPart(
  printed: PrintedElements,
  workedOut: LabelElements,
  ingredients: readonly Ingredient[],
  languages: readonly Language[],
  knowledge: HazardKnowledge,
  cause: Cause = { elements: workedOut, ingredients },
): LabelPart {
  const named = rulingsNamed(ingredients);
  const substances = namedSubstances(printed, cause);
  const notClassified = containedMetals(ingredients, printed.hazardStatements, knowledge.metals);
  const stands = new Set([
    ...printed.hazardStatements.flatMap(singleStatements),
    ...printed.precautionaryStatements,
    ...printed.supplemental,
  ]);
  return {
    ...printed,
    texts: {
      ...textsOf(printed, workedOut, cause.ingredients, languages, knowledge),
      ...contentsTexts(substances, notClassified, languages, knowledge),
    },
    traces: [...workedOut.traces.map(spanned), ...workedOut.precautionaryStatements]
      .filter(({ statement }) => stands.has(statement))
      .map(named),
    leftOut: workedOut.leftOut.filter(({ statement }) => !stands.has(statement)).map(named),
    unknown: workedOut.gaps.flatMap(({ rule, values }) =>
      rule === "total-short-of-the-whole" ? [] : [values.name],
    ),
    gaps: workedOut.gaps.map(named),
    notClassified,
    substances: substances.map(({ name }) => name),
    packaging: packagingStatements(workedOut.classes),
    unknownAcuteToxicity: workedOut.unknownAcuteToxicity.map(named),
  };
}

/** Fields of a ruling that hold slugs. */
const SLUGS: ReadonlySet<string> = new Set(["ingredients", "others", "pigments"]);

/** Puts the names of records in the place of slugs: a reader knows no slugs. */
export function rulingsNamed(
  ingredients: readonly Pick<Ingredient, "slug" | "name">[],
): <R extends { readonly values: object }>(ruling: R) => R {
  const names = new Map(ingredients.map(({ slug, name }) => [slug, name]));
  return (ruling) => {
    const values = Object.fromEntries(
      Object.entries(ruling.values).map(([key, value]) => [
        key,
        SLUGS.has(key) && Array.isArray(value)
          ? value.map((slug) => names.get(String(slug)) ?? String(slug))
          : (value as unknown),
      ]),
    );
    return { ...ruling, values };
  };
}

/** A fraction that is known only between two ends is told as both, where the rule counted one substance whole. */
function spanned(trace: LabelElements["traces"][number]): LabelElements["traces"][number] {
  if (trace.rule !== "cut-off" && trace.rule !== "cut-off-summed") return trace;
  const { values, shares } = trace;
  if (
    values.countedAs !== "substance" ||
    !shares.some(({ massFraction }) => isInterval(massFraction))
  )
    return trace;
  const total = (end: 0 | 1): number =>
    shares.reduce((sum, { massFraction }) => sum + ends(massFraction)[end], 0);
  return { ...trace, values: { ...values, massFraction: [total(0), total(1)] } };
}

/** The substances that bring about what Article 18(3)(b) wants them named for, each once. */
function namedSubstances(
  { hazardStatements }: PrintedElements,
  { elements: { traces }, ingredients }: Cause,
): NamedSubstance[] {
  const stated = hazardStatements.flatMap(singleStatements);
  const names = traces
    .filter(({ statement }) => stated.includes(statement) && namesItsSubstances(statement))
    .flatMap(({ shares }) => shares.map(({ name }) => name));
  return [...new Set(names)].map((name) => substanceOf(name, ingredients));
}

function substanceOf(name: string, ingredients: readonly Ingredient[]): NamedSubstance {
  const found = ingredients.find((one) => one.name === name);
  return { name, names: found?.names, casNumber: found?.casNumber };
}

/** A name as it stands within a label's sentence: as its record has it, unless the tables name it in that language. */
function nameIn(
  substance: NamedSubstance,
  language: Language,
  { substanceNames }: HazardKnowledge,
): string {
  const name = substanceName(substance, language, substanceNames);
  if (name === undefined) return substance.name;
  return language === "de"
    ? name
    : name.replace(/^\p{Lu}(?=\p{Ll})/u, (letter) => letter.toLowerCase());
}

/** Lines that no code stands for: the substances, and metals with what to leave. */
function contentsTexts(
  substances: readonly NamedSubstance[],
  notClassified: LabelPart["notClassified"],
  languages: readonly Language[],
  knowledge: HazardKnowledge,
): LabelPart["texts"] {
  const wanted = allOf(languages);
  const inEach = (
    line: (language: Language) => string | undefined,
  ): Partial<Record<Language, string>> =>
    Object.fromEntries(
      wanted.flatMap((language) => {
        const text = line(language);
        return text === undefined ? [] : [[language, text]];
      }),
    );
  return {
    ...(substances.length > 0 && {
      [SUBSTANCES_LINE]: inEach((language) =>
        substancesLine(
          knowledge.texts,
          substances.map((one) => nameIn(one, language, knowledge)),
          language,
        ),
      ),
    }),
    ...Object.fromEntries(
      notClassified.map(({ values: { metals, advice } }) => [
        metalLineKey(metals),
        inEach((language) => metalLine(knowledge.texts, metals, advice, language)),
      ]),
    ),
  };
}

/** English always, and the workshop's languages. */
function allOf(languages: readonly Language[]): Language[] {
  return [...new Set<Language>(["en", ...languages])];
}

/** A share as a label gives it: two digits, all of it as 100. */
function shareText(massFraction: number): string {
  return `${Number((massFraction * 100).toPrecision(massFraction > 0.995 ? 3 : 2))}\u00a0%`;
}

/** Every text that the label prints, by its code, in English and the workshop's languages: nothing else words a label. */
function textsOf(
  {
    signalWord,
    hazardStatements,
    precautionaryStatements,
    supplemental,
    sensitisers,
  }: PrintedElements,
  { form, unknownAcuteToxicity, precautionaryStatements: chosen }: LabelElements,
  ingredients: readonly Ingredient[],
  languages: readonly Language[],
  knowledge: HazardKnowledge,
): LabelPart["texts"] {
  const wanted = allOf(languages);
  const inEach = (
    key: string,
    code: string,
    context: StatementContext,
  ): [string, Partial<Record<Language, string>>][] => {
    const texts = wanted.flatMap((language): [Language, string][] => {
      const names = sensitisers.map((name) =>
        nameIn(substanceOf(name, ingredients), language, knowledge),
      );
      const { text, translationMissing } = statementText(knowledge.texts, code, language, {
        ...context,
        names,
      });
      return text === "" || (translationMissing && language !== "en") ? [] : [[language, text]];
    });
    return texts.length === 0 ? [] : [[key, Object.fromEntries(texts)]];
  };
  const protection = chosen.find(({ statement }) => statement === "P280")?.protection;
  const [share] = unknownAcuteToxicity
    .map(({ values }) => values.massFraction)
    .toSorted((one, other) => other - one);
  return Object.fromEntries([
    ...(signalWord === null ? [] : inEach(signalWord, signalWordKey(signalWord), {})),
    ...[...hazardStatements, ...precautionaryStatements, ...supplemental].flatMap((code) =>
      inEach(code, code, { form, protection }),
    ),
    ...(share === undefined
      ? []
      : inEach(UNKNOWN_TOXICITY, UNKNOWN_TOXICITY, { share: shareText(share) })),
  ]);
}
