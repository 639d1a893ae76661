import { inputsOf, isKnown, type Figure } from "../quantities/figure.ts";
import { standingView } from "../present/standing-view.ts";
import { figureText } from "../present/figure-text.ts";
import { upperFirst } from "../words/en/pages.ts";
import type { FactView } from "../present/views.ts";
import type { SheetTexts } from "../present/sheet-texts.ts";
import type { PageContext } from "./page-context.ts";

/** The line of facts on the first screen: each a word, a little more, and how it is known. */
export function sheetFacts(worded: SheetTexts, { words, records }: PageContext): FactView[] {
  const { sheet } = worded;
  const { facts, factDetail, expectation } = words.pages.sheet;
  const text = (path: string): string | undefined => {
    if (!worded.has(path)) return undefined;
    const { row, figure } = worded.leaf(path);
    return isKnown(figure) ? figureText(row, figure, words) : undefined;
  };
  const fact = (
    name: string,
    figure: Figure | undefined,
    word: string | undefined,
    detail: string | undefined,
    href: string,
  ): FactView => {
    const known = figure !== undefined && isKnown(figure) && word !== undefined;
    return {
      name,
      word: known ? upperFirst(word) : "\u2013",
      ...(known
        ? detail === undefined
          ? {}
          : { detail }
        : { detail: words.standings["not stated"].word }),
      standing: known
        ? standingView(figure, words)
        : { kind: "not stated", word: words.standings["not stated"].word },
      href,
    };
  };
  const { permanence } = sheet;
  const category = isKnown(permanence.category) ? permanence.category.value : undefined;
  const exposureDetail =
    permanence.basis === "own exposure"
      ? words.pages.paint.permanence.fact
      : permanence.basis === "stated"
        ? factDetail.stated
        : factDetail.exposed;
  const strength = isKnown(sheet.optics.tintingStrength);
  const reference = records.workshop.strengthReference;
  const strengthDetail =
    reference === sheet.slug
      ? factDetail.isReference
      : factDetail.strength(records.colours.get(reference ?? "")?.record.name ?? "");
  const contrast = text("optics.contrastRatio");
  const { opacityClass } = sheet.optics;
  const byContrastRatio =
    isKnown(opacityClass) && inputsOf(opacityClass).includes(sheet.optics.contrastRatio);
  const days = text("drying.touchDryDays");
  const grams = text("oil.oilIndexGPer100g");
  return [
    fact(
      facts.munsell,
      sheet.notations.masstone?.munsell?.text,
      text("notations.masstone.munsell.text"),
      factDetail.munsell(sheet.notations.masstone?.geometry),
      "#notations",
    ),
    category !== undefined
      ? fact(
          facts.lightfastness,
          permanence.category,
          words.pages.sheet.categories[category],
          exposureDetail(category),
          "#permanence",
        )
      : fact(
          facts.lightfastness,
          permanence.expectation,
          expectationWord(permanence.expectation, expectation),
          factDetail.notTested,
          "#permanence",
        ),
    fact(
      facts.opacity,
      sheet.optics.opacityClass,
      text("optics.opacityClass"),
      contrast === undefined || !byContrastRatio ? undefined : factDetail.contrast(contrast),
      "#strength",
    ),
    fact(
      facts.drying,
      sheet.drying.class,
      text("drying.class"),
      days === undefined ? undefined : factDetail.drying(days),
      "#drying",
    ),
    fact(
      facts.strength,
      sheet.optics.tintingStrength,
      strength ? text("optics.tintingStrength") : undefined,
      strengthDetail,
      "#strength",
    ),
    fact(
      facts.oil,
      sheet.oil.oilIndexClass,
      text("oil.oilIndexClass"),
      grams === undefined ? undefined : factDetail.oil(grams),
      "#oil",
    ),
  ];
}

function expectationWord(
  figure: Figure<string>,
  wordings: Readonly<Record<string, string>>,
): string | undefined {
  return isKnown(figure) ? (wordings[figure.value] ?? figure.value) : undefined;
}
