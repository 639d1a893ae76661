import { quantityText } from "../words/number-text.ts";
import { benchTestCaution } from "../hazard/studio/bench-test.ts";
import { propertyView } from "../present/property-view.ts";
import { statementText } from "../present/statement-text.ts";
import { standingWord } from "../present/standing-view.ts";
import type { PigmentSectionView, PropertyTableView, PropertyView } from "../present/views.ts";
import type { Words } from "../words/words.ts";
import type { PigmentRecord } from "../records/schema/pigment.ts";
import type { PigmentPart } from "../sheet/sheet.ts";
import { sourceLink } from "./page-context.ts";
import { emptySection, textOf, type SheetPage } from "./section-views.ts";

/** What the pigments of a colour are. */
export function pigmentSection(page: SheetPage): PigmentSectionView {
  const {
    worded: { sheet },
    words,
    context,
    place,
  } = page;
  const text = words.pages.pigment;
  return {
    ...emptySection("pigment", words.pages.sections.pigment),
    pigments: sheet.pigments.map((part) => {
      const record = context.records.pigments.get(part.slug)?.record;
      const share = textOf(page, `pigments.${part.slug}.massFraction`);
      return {
        name: part.name,
        href: `${place.root}pigments/${part.slug}/`,
        ...(part.colourIndexName === undefined ? {} : { colourIndexName: part.colourIndexName }),
        share:
          sheet.pigments.length === 1
            ? text.whole
            : share === undefined
              ? text.noShare
              : text.share(share),
        text: [record?.whatItIs ?? text.nothing],
        properties: pigmentProperties(part, record, page),
      };
    }),
  };
}

function pigmentProperties(
  part: PigmentPart,
  record: PigmentRecord | undefined,
  { worded, words, place, context }: SheetPage,
): PropertyTableView {
  const told = (["formula", "mineral", "introduced", "expectedOpacity"] as const).filter(
    (field) => part[field] !== undefined,
  );
  const paths = [
    ...told,
    "densityGPerCm3",
    "oilAbsorptionGPer100g",
    "bulkDensityLooseGPerMl",
    "bulkDensityTappedGPerMl",
  ].map((field) => `pigments.${part.slug}.${field}`);
  return {
    caption: words.pages.pigment.caption(part.name),
    rows: [
      ...pigmentFacts(record, words),
      ...paths.map((path) => propertyView(worded.leaf(path), words, sourceLink(context, place))),
    ],
  };
}

/** Origin, chemistry, particle and bench test, as far as the record says. */
export function pigmentFacts(record: PigmentRecord | undefined, words: Words): PropertyView[] {
  const text = words.pages.pigment;
  const sizeUm = record?.particle?.sizeUm;
  const size =
    sizeUm === undefined
      ? undefined
      : text.size(
          quantityText(
            typeof sizeUm === "number" ? sizeUm : sizeUm.value,
            (um) => words.numbers.significant(um, 2),
            words.about,
          ),
        );
  const { refractiveIndex } = record?.particle ?? {};
  const index =
    refractiveIndex === undefined
      ? undefined
      : quantityText(
          typeof refractiveIndex === "number" ? refractiveIndex : refractiveIndex.value,
          (n) => words.numbers.significant(n, 3),
          words.about,
        );
  const particle = text.particle(size, record?.particle?.shape, index);
  const fact = (name: string, value: string | undefined): PropertyView[] =>
    value === undefined || value === ""
      ? []
      : [{ name, value, standing: standingWord("stated", words) }];
  return [
    ...fact(text.facts.origin, record?.origin),
    ...fact(text.facts.chemistry, record?.chemistry),
    ...fact(text.facts.particle, particle),
    ...fact(text.facts.benchTest, benchTestText(record, words)),
  ];
}

/** The test with what it takes to make it without harm. */
function benchTestText(
  record: Pick<PigmentRecord, "benchTest" | "benchTestWith"> | undefined,
  words: Words,
): string | undefined {
  const { benchTest, benchTestWith = [] } = record ?? {};
  if (benchTest === undefined) return undefined;
  return [
    benchTest,
    ...benchTestCaution(benchTestWith).map((caution) => statementText(caution, words)),
  ].join(" ");
}
