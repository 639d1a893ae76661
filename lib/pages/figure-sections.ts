import { isKnown } from "../quantities/figure.ts";
import type { SectionView } from "../present/views.ts";
import { emptySection, properties, reasons, textOf, type SheetPage } from "./sheet-parts.ts";

export function dryingSection(page: SheetPage): SectionView {
  const { worded: { sheet: { drying } }, words } = page;
  const text = words.pages.drying;
  const [dryingClass, days] = [textOf(page, "drying.class"), textOf(page, "drying.touchDryDays")];
  return {
    ...emptySection("drying", words.pages.sections.drying),
    summary: [dryingClass === undefined || days === undefined ? text.none : text.summary(dryingClass, days)],
    properties: properties(page, text.caption, ["drying.class", "drying.touchDryDays", "drying.throughDryDays"]),
    lists: [
      ...reasons(page, text.trials, drying.trials),
      ...reasons(page, text.why, drying.reasons.filter(({ rule }) => !rule.startsWith("trial-"))),
      ...reasons(page, text.contradictions, drying.contradictions),
      ...reasons(page, text.layering, drying.layering),
      ...reasons(page, text.film, drying.filmHealth),
    ],
  };
}

export function permanencePart(page: SheetPage): SectionView {
  const { worded: { sheet: { permanence } }, words } = page;
  const text = words.pages.permanence;
  const known = isKnown(permanence.category) || isKnown(permanence.expectation);
  const shown = isKnown(permanence.category) ? "permanence.category" : "permanence.expectation";
  return {
    ...emptySection("permanence", words.pages.sections.permanence),
    summary: [known ? text.note : text.none],
    properties: properties(page, text.caption, [shown, "permanence.deltaEab", "permanence.blueWool"]),
    lists: [...reasons(page, text.why, permanence.reasons), ...reasons(page, text.sensitivities, permanence.sensitivities)],
  };
}

export function oilPart(page: SheetPage): SectionView {
  const { worded: { sheet: { oil } }, words } = page;
  const text = words.pages.oil;
  const [oilClass, grams] = [textOf(page, "oil.oilIndexClass"), textOf(page, "oil.oilIndexGPer100g")];
  return {
    ...emptySection("oil", words.pages.sections.oil),
    summary: [oilClass === undefined || grams === undefined ? text.none : text.summary(oilClass, grams)],
    properties: properties(page, text.caption, [
      "oil.oilIndexGPer100g", "oil.oilAbsorptionGPer100g", "oil.oilGPer100cm3", "oil.cpvc", "oil.effectiveCpvc", "oil.pvc", "oil.effectiveReducedPvc", "oil.finish", "oil.gloss60", "oil.paintDensityGPerCm3",
    ]),
    lists: [...reasons(page, text.why, oil.reasons), ...reasons(page, text.contradictions, oil.contradictions)],
  };
}
