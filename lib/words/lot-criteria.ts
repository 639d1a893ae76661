import type { Criterion } from "../lots/judgement.ts";
import type { Interval } from "../quantities/interval.ts";
import type { Language } from "../quantities/languages.ts";
import type { InEach } from "./in-each.ts";
import { inEach } from "./phrases-in-each.ts";
import { alike, saidIn } from "./texts.ts";
import { FINENESS, LET_DOWN_AT_EQUAL_STRENGTH } from "./shared-rows.ts";

interface CriterionInEach {
  readonly name: InEach;
  readonly unit: InEach;
  /** To how many it is rounded. */
  readonly places: number;
}

/** What a lot is held by against the standard. */
const CRITERIA: Readonly<Record<Criterion, CriterionInEach>> = {
  masstone: {
    name: { en: "Masstone", de: "Vollton", fr: "Ton plein", es: "Tono pleno" },
    unit: alike("\u0394E00"),
    places: 2,
  },
  letDown: {
    name: { en: "Let-down", de: "Aufhellung", fr: "Dégradé", es: "Rebaje" },
    unit: alike("\u0394E00"),
    places: 2,
  },
  strength: {
    name: {
      en: "Tinting strength",
      de: "Farbstärke",
      fr: "Pouvoir colorant",
      es: "Poder colorante",
    },
    unit: alike("%"),
    places: 1,
  },
  residual: {
    name: LET_DOWN_AT_EQUAL_STRENGTH,
    unit: alike("\u0394E00"),
    places: 2,
  },
  fineness: {
    name: FINENESS,
    unit: alike("\u00b5m"),
    places: 0,
  },
  oilIndex: {
    name: { en: "Oil index", de: "Ölindex", fr: "Indice d’huile", es: "Índice de aceite" },
    unit: {
      en: "g to 100 g",
      de: "g auf 100\u00a0g",
      fr: "g pour 100\u00a0g",
      es: "g por 100\u00a0g",
    },
    places: 1,
  },
  density: {
    name: { en: "Density", de: "Dichte", fr: "Masse volumique", es: "Densidad" },
    unit: alike("g/cm\u00b3"),
    places: 3,
  },
};

/** What is held against the standard, in one language: its name, its unit, and to how many places it is rounded. */
export type Criteria = Readonly<
  Record<Criterion, { readonly name: string; readonly unit: string; readonly places: number }>
>;

export function criteriaIn(language: Language): Criteria {
  return Object.fromEntries(
    Object.entries(CRITERIA).map(([of, { places, ...words }]) => [
      of,
      { ...saidIn(language, words), places },
    ]),
  ) as Record<Criterion, Criteria[Criterion]>;
}

/** What a lot is held by, as it is called. */
export function criterionName(of: Criterion): InEach {
  return CRITERIA[of].name;
}

export function figureOf(of: Criterion, value: number): InEach {
  return figure(of, (text) => text(value));
}

/** Limits from and to; from nought they are one that is not passed. */
export function limitsText(of: Criterion, [low, high]: Interval): InEach {
  return figure(of, (text, language) =>
    low === 0 ? `${AT_MOST[language]} ${text(high)}` : `${text(low)} ${TO[language]} ${text(high)}`,
  );
}

export function withUncertainty(of: Criterion, value: number, uncertainty: number): InEach {
  return uncertainty === 0
    ? figureOf(of, value)
    : figure(of, (text) => `${text(value)} \u00b1 ${text(uncertainty)}`);
}

/** A figure with its unit. @param numbers puts its numbers together, each as the criterion is rounded. */
function figure(
  of: Criterion,
  numbers: (text: (value: number) => string, language: Language) => string,
): InEach {
  const { unit, places } = CRITERIA[of];
  return inEach((p, language) => {
    const text = (value: number): string => p.NUMBERS.decimal(value, places);
    const space = language === "en" ? " " : "\u00a0";
    return `${numbers(text, language)}${space}${unit[language]}`;
  });
}

const AT_MOST: InEach = { en: "at most", de: "höchstens", fr: "au plus", es: "como máximo" };
const TO: InEach = { en: "to", de: "bis", fr: "à", es: "a" };
