import type { Diagnostic } from "../diagnostics/diagnostic.ts";
import { CONTAINS, isOwnLine, metalKey } from "../hazard/texts/contents-line.ts";
import { signalWordKey, textsToReview, UNKNOWN_TOXICITY } from "../hazard/texts/statement-texts.ts";
import { substanceName, type NamesByLanguage } from "../hazard/texts/substance-name.ts";
import { madeStep, type KeptSteps } from "../kept/kept-steps.ts";
import { ends } from "../quantities/interval.ts";
import type { Checked, Records } from "../records/records.ts";
import type { HazardRecord } from "../records/schema/hazard-form.ts";
import type { PigmentRecord } from "../records/schema/pigment.ts";
import { labelLanguages, recordLanguage } from "../records/label-languages.ts";
import type { Language } from "../records/schema/terms.ts";
import { recordedNames } from "../sheet/handling/hazard-ingredients.ts";
import type { LabelPart } from "../sheet/handling/handling-sections.ts";
import type { Sheet } from "../sheet/sheet.ts";
import { slugOrder } from "../quantities/name-order.ts";

/**
 * What a workshop has to complete or to review before its labels can be relied
 * on: records without hazard data, components that fall short of the whole, and
 * label texts that are missing or from memory. Notes: none of them stops a build.
 */
export function hazardNotes(
  sheets: readonly Sheet[],
  records: Records,
  steps?: KeptSteps,
): Diagnostic[] {
  const step = { modules: ["lib/site/hazard-notes.ts"], name: "what labels say" };
  const labels = madeStep(steps, step, () => ({ named: named(sheets), carried: carried(sheets) }));
  return [
    ...supplierNotes(records),
    ...tradeNames(labels, records),
    ...[...records.pigments.values()].flatMap(earthNotTold),
    ...[...records.pigments.values(), ...records.vehicles.values()].flatMap((checked) => [
      ...withoutData(checked),
      ...shortOfTheWhole(checked),
    ]),
    ...labelLanguages(records.workshop).flatMap((language) =>
      languageNotes(labels, language, records, languagePlace(language, records)),
    ),
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
function supplierNotes({ workshop, workshopPlace }: Records): Diagnostic[] {
  return (["address", "telephone"] as const).flatMap((key) =>
    workshop[key] === undefined
      ? [
          note(
            "hazard/supplier-incomplete",
            { ...workshopPlace([]), path: "" },
            `A label has to give its supplier's ${key}, and workshop.yaml has none`,
            "the label text leaves it out until then",
          ),
        ]
      : [],
  );
}

/** A label names substances: a record that is bought as a mixture, without its components, gives its trade name alone. */
function tradeNames(labels: Labels, { vehicles }: Records): Diagnostic[] {
  return [...vehicles.values()]
    .filter(
      ({ record: { name, casNumber, components } }) =>
        labels.named.includes(name) && casNumber === undefined && components === undefined,
    )
    .map(({ record: { name }, place }) => ({
      ...note(
        "hazard/trade-name",
        { ...place([]), path: "" },
        `A label would name ${name}, a trade name, where the substance itself is wanted: give its CAS number, or its components`,
        "a trade name tells nobody what is in it",
      ),
      severity: "warning",
    }));
}

/** One Colour Index name for sienna and umber: without a word on which, hazard and drying cover both. */
function earthNotTold({ record, place }: Checked<PigmentRecord>): Diagnostic[] {
  const { name, colourIndexName, earth, manganeseDioxideFraction } = record;
  return colourIndexName !== "PBr 7" ||
    earth !== undefined ||
    manganeseDioxideFraction !== undefined
    ? []
    : [
        note(
          "hazard/earth-not-told",
          place(["colourIndexName"]),
          `${name} may be a sienna, with about 1 % of manganese dioxide, or an umber, with 5 to 20 %: give manganeseDioxideFraction, or earth`,
          "its hazard is that of an umber until then",
        ),
      ];
}

type Substance = Checked<Pick<HazardRecord, "hazards" | "components"> & { readonly name: string }>;

function withoutData({ record: { name, hazards, components }, place }: Substance): Diagnostic[] {
  const missing = (whose: string, at: Diagnostic["place"]): Diagnostic =>
    note(
      "hazard/no-data",
      at,
      `The record is silent about the hazards of ${whose}: give hazards, or an empty list where the supplier states none`,
      "treated as hazardous until then",
    );
  if (components === undefined)
    return hazards === undefined ? [missing(name, { ...place([]), path: "" })] : [];
  return components.flatMap((component, i) =>
    component.hazards === undefined ? [missing(component.name, place(["components", i]))] : [],
  );
}

/** From which share on components short of the whole are a gap, not rounding. */
const GAP_FROM = 0.001;

function shortOfTheWhole({ record: { components }, place }: Substance): Diagnostic[] {
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
          `The components add up to ${Number(total.toPrecision(6))}, not to 1`,
          "what is left is treated as hazardous",
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
  language: Language,
  records: Records,
  place: Diagnostic["place"],
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
    return record === undefined ? name : `${name} (translations.${language}.name of ${record})`;
  };
  return [
    ...(missing.length === 0
      ? []
      : [
          {
            ...note(
              "hazard/name-missing",
              place,
              `No ${IN_ENGLISH.of(language)} name is known here for ${missing.map(placeOf).join("; ")}: a label has to name its substances in the language of its market`,
              "printed as the record names it until the record gives that name; of a component by its CAS number alone",
            ),
            severity: "warning" as const,
          },
        ]),
    ...(known.length === 0
      ? []
      : [
          note(
            "hazard/name-to-review",
            place,
            `The ${IN_ENGLISH.of(language)} ${plural(known, "name")} of ${known.join("; ")} ${plural(known, "is")} from memory: the names of the EC inventory come first`,
            "review them before they go on a label",
          ),
        ]),
  ];
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

function languageNotes(
  labels: Labels,
  language: Language,
  records: Records,
  place: Diagnostic["place"],
): Diagnostic[] {
  return [
    ...reviewed(labels, language, records, place),
    ...substanceNotes(labels, language, records, place),
  ];
}

function reviewed(
  labels: Labels,
  language: Language,
  { hazardKnowledge: { texts } }: Records,
  place: Diagnostic["place"],
): Diagnostic[] {
  const codes = labels.carried.filter((code) => language !== "en" || !isOwnLine(code));
  const { missing, fromMemory, completed } = textsToReview(texts, codes, language);
  return [
    ...(missing.length === 0
      ? []
      : [
          note(
            "hazard/text-missing",
            place,
            `No ${IN_ENGLISH.of(language)} text is known for ${quoted(missing)}: the wording is that of the Official Journal`,
            "printed in English until then",
          ),
        ]),
    ...(fromMemory.length === 0
      ? []
      : [
          note(
            "hazard/text-to-review",
            place,
            `The ${IN_ENGLISH.of(language)} ${plural(fromMemory, "text")} of ${quoted(fromMemory)} ${plural(fromMemory, "is")} from memory or ours: where the Official Journal has a wording, that comes first`,
            "review them before they go on a label",
          ),
        ]),
    ...(completed.length === 0
      ? []
      : [
          note(
            "hazard/text-completed",
            place,
            `The ${IN_ENGLISH.of(language)} ${plural(completed, "text")} of ${quoted(completed)} ${plural(completed, "is")} official, with a gap that it leaves to the supplier filled here`,
            "see that it says what holds for you",
          ),
        ]),
  ];
}

/** Diagnostics are English, and so are the names of languages in them. */
const IN_ENGLISH = new Intl.DisplayNames(["en"], { type: "language" });

/** Codes as they are, lines that have none in quotation marks: "P501, “do not sand dry”". */
function quoted(texts: readonly string[]): string {
  return texts.map((text) => (/\d/.test(text) ? text : `“${text}”`)).join(", ");
}

/** "text" or "texts", "is" or "are". */
function plural(of: readonly string[], word: "text" | "name" | "is"): string {
  if (of.length === 1) return word;
  return word === "is" ? "are" : `${word}s`;
}

function note(
  rule: Diagnostic["rule"],
  place: Diagnostic["place"],
  message: string,
  hint: string,
): Diagnostic {
  return { severity: "note", rule, place, message, hint };
}
