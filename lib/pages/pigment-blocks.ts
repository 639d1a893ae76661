import { quantityText } from "../words/number-text.ts";
import type { Block } from "../blocks/block.ts";
import { statement } from "../blocks/section-blocks.ts";
import { benchTestCaution } from "../hazard/studio/bench-test.ts";
import { propertyView } from "../present/property-view.ts";
import { statementText } from "../present/statement-text.ts";
import { standingWord } from "../present/standing-view.ts";
import type { PropertyTableView, PropertyView } from "../present/views.ts";
import type { Words } from "../words/words.ts";
import type { PigmentRecord } from "../records/schema/pigment.ts";
import { isKnown } from "../quantities/figure.ts";
import type { Quantity } from "../quantities/interval.ts";
import type { PigmentPart } from "../sheet/pigments/pigment-figures.ts";
import type { Sheet } from "../sheet/sheet.ts";
import { sourceLink } from "./page-context.ts";
import { textOf, type SheetPage } from "./page-of-sheet.ts";

/** What the pigments of a colour are, each with its share and its figures. */
export function pigmentBlocks(page: SheetPage): Block[] {
  const { sheet, words, context, place } = page;
  const text = words.pages.pigment;
  return sheet.pigments.flatMap((part): Block[] => {
    const { slug, name, colourIndexName } = part;
    const record = context.records.pigments.get(slug)?.record;
    const share = textOf(page, `pigments.${slug}.massFraction`);
    return [
      {
        kind: "heading",
        level: 3,
        text: name,
        href: `${place.root}pigments/${slug}/`,
        ...(colourIndexName !== undefined && { index: colourIndexName }),
      },
      statement(
        sheet.pigments.length === 1
          ? text.whole
          : share === undefined
            ? text.noShare
            : text.share(share),
        "note",
      ),
      statement(record?.whatItIs ?? text.nothing),
      { kind: "figures", table: pigmentProperties(part, record, page) },
    ];
  });
}

function pigmentProperties(
  part: PigmentPart,
  record: PigmentRecord | undefined,
  { worded, words, place, context }: SheetPage,
): PropertyTableView {
  const told = (["formula", "mineral", "introduced", "expectedOpacity"] as const).filter(
    (field) =>
      part[field] !== undefined && !(field === "expectedOpacity" && isReadOpacity(worded.sheet)),
  );
  const fields = [
    ...told,
    "densityGPerCm3",
    "oilAbsorptionGPer100g",
    "bulkDensityLooseGPerMl",
    "bulkDensityTappedGPerMl",
  ] as const;
  return {
    caption: words.pages.pigment.caption(part.name),
    rows: [
      ...pigmentFacts(record, words),
      ...fields.map((field) =>
        propertyView(
          worded.leaf(`pigments.${part.slug}.${field}`),
          words,
          sourceLink(context, place),
        ),
      ),
    ],
  };
}

/** Whether films tell the opacity of the one pigment of a colour, so that a handbook's word stands back. */
export function isReadOpacity({ pigments, optics }: Pick<Sheet, "pigments" | "optics">): boolean {
  return pigments.length === 1 && isKnown(optics.opacityClass);
}

/** Origin, chemistry, particle and bench test, as far as the record says. */
export function pigmentFacts(record: PigmentRecord | undefined, words: Words): PropertyView[] {
  const text = words.pages.pigment;
  const { sizeUm, refractiveIndex, shape } = record?.particle ?? {};
  const size = statedText(sizeUm, 2, words);
  const particle = text.particle(
    size === undefined ? undefined : text.size(size),
    shape,
    statedText(refractiveIndex, 3, words),
  );
  const fact = (name: string, value: string | undefined): PropertyView[] =>
    value === undefined || value === ""
      ? []
      : [{ name, value, isProse: true, standing: standingWord("stated", words) }];
  return [
    ...fact(text.facts.origin, record?.origin),
    ...fact(text.facts.chemistry, record?.chemistry),
    ...fact(text.facts.particle, particle),
    ...fact(text.facts.benchTest, benchTestText(record, words)),
  ];
}

function statedText(
  stated: Quantity | { readonly value: Quantity } | undefined,
  digits: number,
  words: Words,
): string | undefined {
  if (stated === undefined) return undefined;
  const value = typeof stated === "object" && "value" in stated ? stated.value : stated;
  return quantityText(value, (number) => words.numbers.significant(number, digits), words.about);
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
