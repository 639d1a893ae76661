import { labelModel, type LabelLine, type LabelModel } from "../present/label-model.ts";
import type { LabelTextView } from "../present/paint-views.ts";
import { statementText } from "../present/statement-text.ts";
import type { Words } from "../words/words.ts";
import type { Language } from "../quantities/languages.ts";
import { lotOnSale } from "../sheet/lots/lot-on-sale.ts";
import type { Sheet } from "../sheet/sheet.ts";
import { isPrinted, translationRemark } from "./label-view.ts";
import type { SheetPage } from "./page-of-sheet.ts";
import { given } from "../quantities/given.ts";

/** A colour's label text with what it is for. */
export function labelTextView({ sheet, words, context: { records } }: SheetPage): LabelTextView {
  const { labelText: text } = words.pages.paint;
  const { name, address, telephone, contact, languages = [] } = records.workshop;
  const { smallPackage, packaging } = sheet.cautions;
  const colour = records.colours.get(sheet.slug);
  const lot = colour && lotOnSale(colour, records);
  const remarks = given([
    smallPackage !== undefined && statementText(smallPackage, words),
    ...packaging.map((one) => statementText(one, words)),
  ]);
  return {
    id: "label",
    heading: words.pages.sections.label,
    lead: text.lead,
    ...(remarks.length > 0 && { remark: remarks.join(" ") }),
    text: labelText(
      sheet,
      {
        supplier: [name, address, telephone, contact].filter((line) => line !== undefined),
        sizesMl: (colour?.sizes ?? []).map(({ ml }) => ml),
        ...(lot !== undefined && { lot }),
        languages,
      },
      words,
    ),
  };
}

interface LabelMaker {
  /** Name, address, telephone, contact: a line each. */
  readonly supplier: readonly string[];
  /** Contents of its tubes [ml]; left blank when none is recorded. */
  readonly sizesMl: readonly number[];
  /** That tubes are filled from; left blank when none is recorded. */
  readonly lot?: string;
  /** That the statements are printed in, beside the page's own. */
  readonly languages: readonly Language[];
}

/** Product, supplier, pigments, vehicle, lightfastness as far as it may be said, hazards in full, lot as far as one is known: one line each. */
export function labelText(
  sheet: Sheet,
  { supplier, sizesMl, lot, languages }: LabelMaker,
  words: Words,
): string {
  const { labelText: text } = words.pages.paint;
  const sizes = sizesMl.map(
    (ml) => `${words.numbers.decimal(ml, Number.isInteger(ml) ? 0 : 1)}${text.ml}`,
  );
  const hazards = hazardLines(sheet, words);
  return given([
    sheet.name,
    ...supplier,
    "",
    (sheet.pigments.length === 1 ? text.pigment : text.pigments) +
      sheet.pigments.map(pigmentLine).join(", "),
    sheet.vehicle !== undefined && vehicleLine(sheet, words),
    statementText(sheet.permanence.label, words),
    "",
    ...(hazards.length === 0 ? [] : [...hazards, ""]),
    ...languages
      .filter((language) => language !== words.language)
      .flatMap((language) => languageLines(sheet, language, words)),
    sheet.cautions.unknown.length === 0 &&
      `${text.contents}${sizes.length === 0 ? text.blank + text.ml : sizes.join(" / ")}`,
    `${text.lot}${lot ?? text.blank}`,
  ]).join("\n");
}

export function pigmentLine({
  name,
  colourIndexName,
  colourIndexNumber,
}: Sheet["pigments"][number]): string {
  const index = [colourIndexName, colourIndexNumber]
    .filter((code) => code !== undefined)
    .join(", ");
  return index === "" ? name : `${name} (${index})`;
}

export function vehicleLine({ vehicle, additions }: Sheet, words: Words): string {
  const { labelText: text } = words.pages.paint;
  return `${text.vehicle}${vehicle?.name ?? ""}${additions.length === 0 ? "" : text.with + additions.map(({ name }) => name).join(", ")}`;
}

/** Never fewer than on the first screen; what is not known is said, and what is empty is left empty. */
function hazardLines({ cautions }: Sheet, words: Words): string[] {
  const { labelText: text } = words.pages.paint;
  const { pictograms, unknown, ufi } = cautions;
  const label = labelModel(cautions, words.language, words);
  const classified =
    unknown.length === 0 && (label.signalWord !== undefined || label.hazards.length > 0);
  return given([
    label.signalWord !== undefined && label.signalWord,
    pictograms.length > 0 &&
      text.pictograms +
        pictograms.map((code) => `${words.pictograms[code] ?? code} (${code})`).join(", "),
    ...statementLines(label, words),
    ...label.gaps.map(({ text: said }) => said),
    ufi !== undefined && `UFI: ${ufi}`,
    classified && text.frame(words.factWords[cautions.frame] ?? cautions.frame),
    unknown.length > 0 && text.notForSale,
  ]);
}

/** The same statements in a further language, under its own name; nothing where the label has none. */
function languageLines({ cautions }: Sheet, language: Language, words: Words): string[] {
  if (!isPrinted(cautions)) return [];
  const label = labelModel(cautions, language, words);
  return [
    words.pages.handling.languageNames[language] ?? language,
    ...(label.signalWord === undefined ? [] : [label.signalWord]),
    ...statementLines(label, words),
    "",
  ];
}

/** Substances, hazards, precautions, and what is said beside them. */
function statementLines(
  { language, substances, hazards, precautions, metals }: LabelModel,
  words: Words,
): string[] {
  return given([substances, ...hazards, ...precautions, ...metals]).map((line) =>
    printed(line, language, words),
  );
}

function printed({ code, text, isMissing }: LabelLine, language: Language, words: Words): string {
  const said = isMissing ? `${text} (${translationRemark(language, words)})` : text;
  return given([code, said !== "" && said]).join(" ");
}
