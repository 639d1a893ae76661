import type { Diagnostic } from "../diagnostics/diagnostic.ts";
import { signalWordKey, textsToReview } from "../hazard/texts/statement-texts.ts";
import { ends } from "../quantities/interval.ts";
import type { Checked, Records } from "../records/records.ts";
import type { HazardRecord } from "../records/schema/hazard-form.ts";
import type { Language } from "../records/schema/terms.ts";
import type { LabelPart } from "../sheet/handling/handling-sections.ts";
import type { Sheet } from "../sheet/sheet.ts";

/**
 * What a workshop has to complete or to review before its labels can be relied
 * on: records without hazard data, components that fall short of the whole, and
 * label texts that are missing or from memory. Notes: none of them stops a build.
 */
export function hazardNotes(sheets: readonly Sheet[], records: Records): Diagnostic[] {
  return [
    ...supplierNotes(records),
    ...tradeNames(sheets, records),
    ...[...records.pigments.values(), ...records.vehicles.values()].flatMap((checked) => [
      ...withoutData(checked),
      ...shortOfTheWhole(checked),
    ]),
    ...(records.workshop.languages ?? ["en"]).flatMap((language, i) =>
      reviewed(sheets, language, records, records.workshopPlace(["languages", i])),
    ),
  ];
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

/** EUH208 names a substance: a record that is bought as a mixture, without its components, gives its trade name alone. */
function tradeNames(sheets: readonly Sheet[], { vehicles }: Records): Diagnostic[] {
  const named = new Set(sheets.flatMap(({ cautions }) => cautions.sensitisers));
  return [...vehicles.values()]
    .filter(
      ({ record: { name, casNumber, components } }) =>
        named.has(name) && casNumber === undefined && components === undefined,
    )
    .map(({ record: { name }, place }) => ({
      ...note(
        "hazard/trade-name",
        { ...place([]), path: "" },
        `EUH208 would name ${name}, a trade name, where the substance itself is wanted, under components`,
        "a trade name tells nobody what he is allergic to",
      ),
      severity: "warning",
    }));
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

/** Signal words, statements and lines that a label of the sheets carries. */
function carried(sheets: readonly Sheet[]): string[] {
  const labels: LabelPart[] = sheets.flatMap(({ cautions }) => [
    cautions,
    ...cautions.dryPigment,
    ...cautions.additions,
  ]);
  return [
    ...new Set(
      labels.flatMap(({ texts }) =>
        Object.keys(texts).map((key) =>
          key === "Danger" || key === "Warning" ? signalWordKey(key) : key,
        ),
      ),
    ),
  ].sort();
}

function reviewed(
  sheets: readonly Sheet[],
  language: Language,
  { hazardKnowledge: { texts } }: Records,
  place: Diagnostic["place"],
): Diagnostic[] {
  const { missing, fromMemory } = textsToReview(texts, carried(sheets), language);
  return [
    ...(missing.length === 0
      ? []
      : [
          note(
            "hazard/text-missing",
            place,
            `No ${language} text is known for ${missing.join(", ")}: the wording is that of the Official Journal`,
            "printed in English until then",
          ),
        ]),
    ...(fromMemory.length === 0
      ? []
      : [
          note(
            "hazard/text-to-review",
            place,
            `The ${language} texts of ${fromMemory.join(", ")} are from memory: the wording is that of the Official Journal`,
            "review them before they go on a label",
          ),
        ]),
  ];
}

function note(
  rule: Diagnostic["rule"],
  place: Diagnostic["place"],
  message: string,
  hint: string,
): Diagnostic {
  return { severity: "note", rule, place, message, hint };
}
