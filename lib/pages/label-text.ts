import { singleStatements } from "../hazard/label/stated-label.ts";
import {
  signalWordText,
  statementInLanguage,
  unknownToxicityText,
  type StatementText,
} from "../hazard/texts/hazard-statement-text.ts";
import { decimalText } from "../words/number-text.ts";
import type { LabelTextView } from "../present/paint-views.ts";
import { statementText } from "../present/statement-text.ts";
import { lowerFirst } from "../words/en/pages.ts";
import { percent } from "../words/en/statements-phrases.ts";
import type { Words } from "../words/words.ts";
import type { Language } from "../records/schema/terms.ts";
import type { Sheet } from "../sheet/sheet.ts";
import { translationRemark } from "./label-view.ts";
import type { SheetPage } from "./section-views.ts";

/** A colour's label text with what it is for. */
export function labelTextView({
  worded: { sheet },
  words,
  place,
  context: { records },
}: SheetPage): LabelTextView {
  const { labelText: text } = words.pages.paint;
  const { name, contact, languages = [] } = records.workshop;
  const { smallPackage } = sheet.cautions;
  return {
    id: "label",
    heading: words.pages.sections.label,
    lead: text.lead,
    ...(smallPackage === undefined ? {} : { remark: statementText(smallPackage, words) }),
    text: labelText(
      sheet,
      {
        workshop: name,
        contact,
        sizesMl: (records.colours.get(sheet.slug)?.record.sizes ?? []).map(({ ml }) => ml),
        languages,
      },
      words,
    ),
    link: { text: text.link, href: `${place.root}label/` },
  };
}

export interface LabelMaker {
  readonly workshop: string;
  readonly contact: string | undefined;
  /** Contents of its tubes [ml]; left blank when none is recorded. */
  readonly sizesMl: readonly number[];
  /** That the statements are printed in, beside the page's own. */
  readonly languages: readonly Language[];
}

/** Name, pigments, vehicle, lightfastness as far as it may be said, hazards in full, lot left blank: one line each. */
export function labelText(
  sheet: Sheet,
  { workshop, contact, sizesMl, languages }: LabelMaker,
  words: Words,
): string {
  const { labelText: text } = words.pages.paint;
  const sizes = sizesMl.map((ml) => `${decimalText(ml, Number.isInteger(ml) ? 0 : 1)}${text.ml}`);
  return [
    sheet.name,
    workshop,
    ...(contact === undefined ? [] : [contact]),
    "",
    (sheet.pigments.length === 1 ? text.pigment : text.pigments) +
      sheet.pigments.map(pigmentLine).join(", "),
    ...(sheet.vehicle === undefined ? [] : [vehicleLine(sheet, words)]),
    statementText(sheet.permanence.label, words),
    "",
    ...hazardLines(sheet, words),
    "",
    ...languages
      .filter((language) => language !== words.language)
      .flatMap((language) => languageLines(sheet, language, words)),
    `${text.contents}${sizes.length === 0 ? text.blank + text.ml : sizes.join(" / ")}`,
    `${text.lot}${text.blank}`,
  ].join("\n");
}

function pigmentLine({
  name,
  colourIndexName,
  colourIndexNumber,
}: Sheet["pigments"][number]): string {
  const index = [colourIndexName, colourIndexNumber]
    .filter((code) => code !== undefined)
    .join(", ");
  return index === "" ? name : `${name} (${index})`;
}

function vehicleLine({ vehicle, additions }: Sheet, words: Words): string {
  const { labelText: text } = words.pages.paint;
  return `${text.vehicle}${lowerFirst(vehicle?.name ?? "")}${additions.length === 0 ? "" : text.with + additions.map(({ name }) => lowerFirst(name)).join(", ")}`;
}

/** Never fewer than on the first screen; what is not known is said. */
function hazardLines({ cautions }: Sheet, words: Words): string[] {
  const { labelText: text } = words.pages.paint;
  const { signalWord, pictograms, hazardStatements, supplemental, unknown } = cautions;
  const classified = signalWord !== null || hazardStatements.length > 0 || supplemental.length > 0;
  return [
    ...(signalWord === null ? [] : [words.signalWords[signalWord]]),
    ...(pictograms.length === 0
      ? []
      : [
          text.pictograms +
            pictograms.map((code) => `${words.pictograms[code] ?? code} (${code})`).join(", "),
        ]),
    ...statementLines(cautions, words.language, words),
    ...(unknown.length === 0 ? [] : [text.hazardsUnknown(unknown)]),
    ...(classified ? [text.frame(cautions.frame)] : unknown.length === 0 ? [text.noHazards] : []),
  ];
}

/** The same statements in a further language, under its own name; nothing where the label has none. */
function languageLines({ cautions }: Sheet, language: Language, words: Words): string[] {
  const { signalWord } = cautions;
  const lines = [
    ...(signalWord === null ? [] : [signalWordText(signalWord, language).text]),
    ...statementLines(cautions, language, words),
  ];
  return lines.length === 0
    ? []
    : [words.pages.handling.languageNames[language] ?? language, ...lines, ""];
}

/** Hazard, precautionary and supplemental statements, and the line on unknown acute toxicity, as the label prints them. */
function statementLines(
  {
    hazardStatements,
    precautionaryStatements,
    supplemental,
    sensitisers,
    unknownAcuteToxicity,
  }: Sheet["cautions"],
  language: Language,
  words: Words,
): string[] {
  const remarked = ({ text, translationMissing }: StatementText): string =>
    translationMissing ? `${text} (${translationRemark(language, words)})` : text;
  const statement = (code: string, names: readonly string[] = []): string =>
    `${code} ${remarked(statementInLanguage(code, language, { names }))}`;
  const shares = new Set(
    unknownAcuteToxicity.map(({ values }) => percent(Number(values["massFraction"]))),
  );
  return [
    ...hazardStatements.flatMap(singleStatements).map((code) => statement(code)),
    ...precautionaryStatements.map((code) => statement(code)),
    ...supplemental.map((code) => statement(code, sensitisers)),
    ...[...shares].map((share) => remarked(unknownToxicityText(share, language))),
  ];
}
