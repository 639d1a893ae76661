import type { Diagnostic } from "../diagnostics/diagnostic.ts";
import { CONTAINS, isOwnLine, metalKey } from "../hazard/texts/contents-line.ts";
import {
  lineName,
  signalWordKey,
  textsToReview,
  UNKNOWN_TOXICITY,
} from "../hazard/texts/statement-texts.ts";
import { substanceName, type NamesByLanguage } from "../hazard/texts/substance-name.ts";
import { madeStep, type KeptSteps } from "../kept/kept-steps.ts";
import { given } from "../quantities/given.ts";
import { ends } from "../quantities/interval.ts";
import { noteAt } from "../records/fault.ts";
import type { Checked, Records } from "../records/records.ts";
import type { HazardRecord } from "../records/schema/hazard-form.ts";
import type { PigmentRecord } from "../records/schema/pigment.ts";
import { labelLanguages, recordLanguage } from "../records/label-languages.ts";
import type { Language } from "../quantities/languages.ts";
import { recordedNames } from "../sheet/handling/hazard-ingredients.ts";
import type { LabelPart } from "../sheet/handling/handling-sections.ts";
import type { Sheet } from "../sheet/sheet.ts";
import type { HazardNote } from "../words/pages/hazard-notes.ts";
import type { Words } from "../words/words.ts";
import { slugOrder } from "../quantities/name-order.ts";

type Texts = Words["pages"]["hazardNotes"];

/**
 * What a workshop has to complete or to review before its labels can be relied
 * on: records without hazard data, components that fall short of the whole, and
 * label texts that are missing or from memory. Notes: none of them stops a build.
 * @param words those of the records' own language.
 */
export function hazardNotes(
  sheets: readonly Sheet[],
  records: Records,
  words: Words,
  steps?: KeptSteps,
): Diagnostic[] {
  const texts = words.pages.hazardNotes;
  const step = { modules: ["lib/site/hazard-notes.ts"], name: "what labels say" };
  const labels = madeStep(steps, step, () => ({ named: named(sheets), carried: carried(sheets) }));
  return [
    ...supplierNotes(records, texts),
    ...tradeNames(labels, records, texts),
    ...[...records.pigments.values()].flatMap((pigment) => earthNotTold(pigment, texts)),
    ...[...records.pigments.values(), ...records.vehicles.values()].flatMap((checked) => [
      ...withoutData(checked, texts),
      ...shortOfTheWhole(checked, texts),
    ]),
    ...labelLanguages(records.workshop).flatMap((language) => {
      const asked = { language, place: languagePlace(language, records), texts };
      return [...reviewed(labels, asked, records), ...substanceNotes(labels, asked, records)];
    }),
  ];
}

/** Where the workshop asks for label texts in a language. */
function languagePlace(
  language: Language,
  { workshop: { languages = [], labels = [], cards = [] }, workshopPlace }: Records,
): Diagnostic["place"] {
  const asks = (size: { readonly languages?: readonly Language[] | undefined }): boolean =>
    size.languages?.includes(language) === true;
  if (languages.includes(language))
    return workshopPlace(["languages", languages.indexOf(language)]);
  if (labels.some(asks)) return workshopPlace(["labels", labels.findIndex(asks), "languages"]);
  if (cards.some(asks)) return workshopPlace(["cards", cards.findIndex(asks), "languages"]);
  return workshopPlace(["pageLanguages"]);
}

/** What a label has to say of its supplier and the workshop's record does not hold. */
function supplierNotes({ workshop, workshopPlace }: Records, texts: Texts): Diagnostic[] {
  return (["address", "telephone"] as const).flatMap((key) =>
    workshop[key] === undefined
      ? [
          note(
            "hazard/supplier-incomplete",
            { ...workshopPlace([]), path: "" },
            texts.supplierIncomplete(key),
          ),
        ]
      : [],
  );
}

/** A label names substances: a record that is bought as a mixture, without its components, gives its trade name alone. */
function tradeNames(labels: Labels, { vehicles }: Records, texts: Texts): Diagnostic[] {
  return [...vehicles.values()]
    .filter(
      ({ record: { name, casNumber, components } }) =>
        labels.named.includes(name) && casNumber === undefined && components === undefined,
    )
    .map(({ record: { name }, place }) => ({
      ...note("hazard/trade-name", { ...place([]), path: "" }, texts.tradeName(name)),
      severity: "warning",
    }));
}

/** One Colour Index name for sienna and umber: without a word on which, hazard and drying cover both. */
function earthNotTold({ record, place }: Checked<PigmentRecord>, texts: Texts): Diagnostic[] {
  const { name, colourIndexName, earth, manganeseDioxideFraction } = record;
  return colourIndexName !== "PBr 7" ||
    earth !== undefined ||
    manganeseDioxideFraction !== undefined
    ? []
    : [note("hazard/earth-not-told", place(["colourIndexName"]), texts.earthNotTold(name))];
}

type Substance = Checked<Pick<HazardRecord, "hazards" | "components"> & { readonly name: string }>;

function withoutData(
  { record: { name, hazards, components }, place }: Substance,
  texts: Texts,
): Diagnostic[] {
  const missing = (whose: string, at: Diagnostic["place"]): Diagnostic =>
    note("hazard/no-data", at, texts.noData(whose));
  if (components === undefined)
    return hazards === undefined ? [missing(name, { ...place([]), path: "" })] : [];
  return components.flatMap((component, i) =>
    component.hazards === undefined ? [missing(component.name, place(["components", i]))] : [],
  );
}

/** From which share on components short of the whole are a gap, not rounding. */
const GAP_FROM = 0.001;

function shortOfTheWhole({ record: { components }, place }: Substance, texts: Texts): Diagnostic[] {
  if (components === undefined) return [];
  const total = components.reduce(
    (sum, { massFraction }) =>
      sum + ends(typeof massFraction === "number" ? massFraction : massFraction.value)[1],
    0,
  );
  return 1 - total < GAP_FROM
    ? []
    : [
        note(
          "hazard/short-of-the-whole",
          place(["components"]),
          texts.shortOfTheWhole(Number(total.toPrecision(6))),
        ),
      ];
}

/** What the labels of all sheets say. */
interface Labels {
  readonly named: readonly string[];
  readonly carried: readonly string[];
}

/** Substances that the labels name. */
function named(sheets: readonly Sheet[]): string[] {
  const all = labelsOf(sheets).flatMap(({ substances, sensitisers }) => [
    ...substances,
    ...sensitisers,
  ]);
  return [...new Set(all)].sort(slugOrder);
}

function labelsOf(sheets: readonly Sheet[]): LabelPart[] {
  return sheets.flatMap(({ cautions }) => [
    cautions,
    ...cautions.dryPigment,
    ...cautions.additions,
  ]);
}

/** Signal words, statements and lines that a label of the sheets carries, as the tables name them. */
function carried(sheets: readonly Sheet[]): string[] {
  return [
    ...new Set(
      labelsOf(sheets).flatMap(
        ({ signalWord, hazardStatements, precautionaryStatements, supplemental, ...part }) => [
          ...(signalWord === null ? [] : [signalWordKey(signalWord)]),
          ...hazardStatements,
          ...precautionaryStatements,
          ...supplemental,
          ...(part.unknownAcuteToxicity.length === 0 ? [] : [UNKNOWN_TOXICITY]),
          ...(part.substances.length === 0 ? [] : [CONTAINS]),
          ...part.notClassified.flatMap(({ values: { metals, advice } }) => [
            CONTAINS,
            ...metals.map(metalKey),
            advice,
          ]),
        ],
      ),
    ),
  ].sort();
}

/** Names that a label gives and that the tables do not have in a language, or have from memory. */
function substanceNotes(
  labels: Labels,
  { language, place, texts }: Asked,
  records: Records,
): Diagnostic[] {
  const own = recordLanguage(records.workshop);
  if (language === own) return [];
  const rows = records.hazardKnowledge.substanceNames;
  const substances = substancesByName(records);
  const byRecord = (name: string): boolean => substances.get(name)?.names?.[language] !== undefined;
  const has = (name: string): boolean =>
    substanceName({ name, ...substances.get(name) }, language, rows) !== undefined;
  const known = labels.named.filter((name) => has(name) && !byRecord(name));
  const missing = labels.named.filter((name) => !has(name));
  const placeOf = (name: string): string => {
    const record = substances.get(name)?.record;
    return record === undefined ? name : texts.namedIn(name, language, record);
  };
  return given([
    missing.length > 0 && {
      ...note(
        "hazard/name-missing",
        place,
        texts.nameMissing(language, missing.map(placeOf).join("; ")),
      ),
      severity: "warning" as const,
    },
    known.length > 0 && note("hazard/name-to-review", place, texts.nameToReview(language, known)),
  ]);
}

interface RecordedSubstance {
  readonly casNumber?: string | undefined;
  readonly names?: NamesByLanguage | undefined;
  /** The record that can name it in other languages; none of a component. */
  readonly record?: string;
}

/** What records know of substances, by the names that they give them. */
function substancesByName({
  pigments,
  vehicles,
  language,
}: Records): ReadonlyMap<string, RecordedSubstance> {
  const own = [
    ...[...pigments.values()].map(({ slug, record }) => ({ at: `pigments/${slug}.yaml`, record })),
    ...[...vehicles.values()].map(({ slug, record }) => ({ at: `vehicles/${slug}.yaml`, record })),
  ];
  const components = own.flatMap(({ record }) => record.components ?? []);
  return new Map<string, RecordedSubstance>([
    ...components.map(({ name, casNumber }) => [name, { casNumber }] as const),
    ...own.map(
      ({ at, record }) =>
        [
          record.name,
          { casNumber: record.casNumber, names: recordedNames(record, language), record: at },
        ] as const,
    ),
  ]);
}

/** A language that label texts are wanted in, where the workshop says so, and what is said of it. */
interface Asked {
  readonly language: Language;
  readonly place: Diagnostic["place"];
  readonly texts: Texts;
}

function reviewed(
  labels: Labels,
  { language, place, texts }: Asked,
  { hazardKnowledge, workshop }: Records,
): Diagnostic[] {
  const codes = labels.carried.filter((code) => language !== "en" || !isOwnLine(code));
  const { missing, fromMemory, completed } = textsToReview(hazardKnowledge.texts, codes, language);
  const called = (codes: readonly string[]): string[] =>
    codes.map((code) => lineName(hazardKnowledge.texts, code, recordLanguage(workshop)));
  return given([
    missing.length > 0 &&
      note("hazard/text-missing", place, texts.textMissing(language, called(missing))),
    fromMemory.length > 0 &&
      note("hazard/text-to-review", place, texts.textToReview(language, called(fromMemory))),
    completed.length > 0 &&
      note("hazard/text-completed", place, texts.textCompleted(language, called(completed))),
  ]);
}

function note(rule: Diagnostic["rule"], place: Diagnostic["place"], said: HazardNote): Diagnostic {
  return noteAt(place, rule, said);
}
