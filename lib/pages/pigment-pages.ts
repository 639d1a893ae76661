import type { LabelView, CautionView } from "../present/handling-views.ts";
import { tableOf } from "../blocks/section-blocks.ts";
import { cautionLineOf } from "./caution-line.ts";
import type { Knowledge } from "../knowledge/pigment-knowledge.ts";
import { isKnown, type Figure } from "../quantities/figure.ts";
import type { Quantity } from "../quantities/interval.ts";
import { unitText, valueText } from "../present/figure-text.ts";
import { propertyView } from "../present/property-view.ts";
import { standingView } from "../present/standing-view.ts";
import { notStatedCell } from "./order-cells.ts";
import type {
  CellView,
  PropertyView,
  PageView,
  PropertyTableView,
  ColourCardView,
  PhotographView,
} from "../present/views.ts";
import type { Words } from "../words/words.ts";
import { FAMILY_KEYS } from "./catalogue-pages.ts";
import { figureRow } from "../sheet/figure-table.ts";
import { filled } from "../sheet/found.ts";
import { PIGMENT_FACTS, type PigmentFacts } from "../sheet/pigments/pigment-figures.ts";
import { dryPigmentHandling } from "../sheet/handling/dry-pigment-handling.ts";
import type { Checked } from "../records/records.ts";
import type { PigmentRecord } from "../records/schema/pigment.ts";
import type { Block, FoldBlock } from "../blocks/block.ts";
import type { TextPageView } from "../blocks/page-kinds.ts";
import { colourCard } from "./colour-card.ts";
import { poisonCentreLine, workedOut } from "./safety-blocks.ts";
import { knownPigments } from "./known-pigments.ts";
import { labelView } from "./label-view.ts";
import { sourceLink, type PageContext, type PagePlace } from "./page-context.ts";
import { pigmentPhotographs } from "./photograph-blocks.ts";
import { isReadOpacity, pigmentFacts } from "./pigment-blocks.ts";
import { evenly, ON_ONE_PAGE } from "./range-parts.ts";
import type { SheetTexts } from "../present/sheet-texts.ts";
import { pageHead, standingsKey } from "./site-frame.ts";
import { wordedSheet } from "./worded-sheet.ts";
import { textPage } from "./text-page.ts";
import { cautionsByReason, isGraveDust } from "./studio-cautions.ts";
import { nameOrder } from "../quantities/name-order.ts";
import { onePage, type PageKind } from "./page-kind.ts";

export interface PigmentPageView extends PageView {
  readonly kind: "pigment";
  readonly name: string;
  readonly colourIndexName?: string;
  readonly whatItIs: readonly string[];
  readonly properties: PropertyTableView;
  readonly handlingHeading: string;
  /** Of the dry pigment. */
  readonly label: LabelView;
  /** What weighing and mulling it calls for. */
  readonly cautionsHeading: string;
  readonly cautions: readonly CautionView[];
  readonly handling: readonly string[];
  readonly colours: readonly ColourCardView[];
  /** How many of them are shown, where not all are. */
  readonly someColours?: string;
  /** Said in place of `colours` when no colour is made from it. */
  readonly noColours?: string;
  readonly photographs: { readonly heading: string; readonly list: readonly PhotographView[] };
}

/** Rows of a pigment's own page. */
const ROWS = [
  "formula",
  "mineral",
  "introduced",
  "expectedOpacity",
  "densityGPerCm3",
  "oilAbsorptionGPer100g",
  "bulkDensityLooseGPerMl",
  "bulkDensityTappedGPerMl",
] as const;

function factsOf({ slug, record }: Checked<PigmentRecord>, knowledge: Knowledge): PigmentFacts {
  const known = knowledge.pigment(record.colourIndexName);
  return filled(PIGMENT_FACTS, { slug, record, known, inputs: [] });
}

/** Every dry pigment, by family. */
export function pigmentIndex(context: PageContext, place: PagePlace): TextPageView {
  const { words, records } = context;
  const text = words.pages.pigments;
  const index = words.pages.pigmentIndex;
  const known: ReadonlyMap<string, readonly FoldBlock[]> = knownPigments(context, place);
  const pigments = [...records.pigments.values()];
  const families = FAMILY_KEYS.map(
    (family) =>
      [
        family,
        pigments.filter(
          ({ record }) =>
            (record.family ??
              records.knowledge.pigment(record.colourIndexName).family ??
              "other") === family,
        ),
      ] as const,
  );
  const shown = families.filter(
    ([family, members]) => members.length > 0 || (known.get(family) ?? []).length > 0,
  );
  return textPage(context, place, {
    heading: text.heading,
    description: index.lead,
    lead: [index.lead, index.known],
    sections: shown.map(([family, members]) => ({
      kind: "section",
      id: family,
      heading: words.families[family],
      blocks: [
        ...ownTable(family, members, context, place),
        ...knownFolds(known.get(family), index),
      ],
    })),
    close: [standingsKey(words)],
  });
}

type Members = readonly Checked<PigmentRecord>[];

function ownTable(
  family: keyof Words["families"],
  members: Members,
  context: PageContext,
  place: PagePlace,
): Block[] {
  if (members.length === 0) return [];
  const { words, records } = context;
  const text = words.pages.pigments;
  const inOrder = nameOrder(words.language);
  return [
    tableOf({
      caption: `${text.caption}${words.colon}${words.families[family]}`,
      columns: [
        text.columns.pigment,
        text.columns.index,
        { head: text.columns.density, unit: unitText("g/cm3", words), numeric: true },
        { head: text.columns.oil, unit: unitText("g/100 g", words), numeric: true },
        { head: text.columns.colours, numeric: true },
      ],
      rows: members
        .toSorted((one, other) => inOrder(one.record.name, other.record.name))
        .map((pigment) => {
          const { densityGPerCm3, oilAbsorptionGPer100g } = factsOf(pigment, records.knowledge);
          return [
            { text: pigment.record.name, href: `${place.root}pigments/${pigment.slug}/` },
            pigment.record.colourIndexName === undefined
              ? notStatedCell(words)
              : pigment.record.colourIndexName,
            numberCell(densityGPerCm3, "pigments.*.densityGPerCm3", words),
            numberCell(oilAbsorptionGPer100g, "pigments.*.oilAbsorptionGPer100g", words),
            String(coloursOf(pigment.slug, context).length),
          ];
        }),
    }),
  ];
}

function knownFolds(
  folds: readonly FoldBlock[] = [],
  text: PageContext["words"]["pages"]["pigmentIndex"],
): Block[] {
  if (folds.length === 0) return [];
  return [
    { kind: "heading", level: 3, text: text.knownHeading(folds.length) },
    { kind: "group", flow: "stack", blocks: folds },
  ];
}

function numberCell(
  figure: Figure<Quantity>,
  pattern: string,
  words: PageContext["words"],
): CellView {
  if (!isKnown(figure)) return notStatedCell(words);
  return {
    text: valueText(figureRow(pattern), figure, words),
    standing: standingView(figure, words),
  };
}

/** What films of a colour of the pigment alone told, in place of what a handbook expects of it. */
function readOpacity(worded: SheetTexts, context: PageContext, place: PagePlace): PropertyView {
  const row = worded.leaf("optics.opacityClass");
  const view = propertyView(row, context.words, sourceLink(context, place));
  return { ...view, name: `${view.name} (${worded.sheet.name})` };
}

function coloursOf(slug: string, context: PageContext): PageContext["sheets"] {
  return (context.range.ofPigment.get(slug) ?? []).flatMap(
    (colour) => wordedSheet(colour, context) ?? [],
  );
}

/** One pigment: what it is, its figures, how to handle it dry, and the colours made from it. */
export function pigmentPage(
  pigment: Checked<PigmentRecord>,
  context: PageContext,
  place: PagePlace,
): PigmentPageView {
  const { words, records } = context;
  const { slug, record } = pigment;
  const text = words.pages.pigments;
  const colours = coloursOf(slug, context);
  const shown = evenly(colours, ON_ONE_PAGE.named);
  const read = colours.find(({ sheet }) => isReadOpacity(sheet));
  const facts = factsOf(pigment, records.knowledge);
  const { part, cautions } = dryPigmentHandling(pigment, context.records);
  const { handling } = words.pages;
  const { poisonCentre } = context.records.workshop;
  return {
    kind: "pigment",
    ...pageHead(context, place, record.name, record.whatItIs ?? record.name),
    name: record.name,
    ...(record.colourIndexName !== undefined && { colourIndexName: record.colourIndexName }),
    whatItIs: [record.whatItIs ?? words.pages.pigment.nothing],
    properties: {
      caption: text.properties,
      rows: [
        ...pigmentFacts(record, words),
        ...ROWS.flatMap((field) => {
          const figure = facts[field];
          if (figure === undefined) return [];
          if (field === "expectedOpacity" && read !== undefined)
            return [readOpacity(read, context, place)];
          const entry = {
            path: `pigments.${slug}.${field}`,
            row: figureRow(`pigments.*.${field}`),
            figure,
          };
          return [propertyView(entry, words, sourceLink(context, place))];
        }),
      ],
    },
    photographs: {
      heading: words.pages.photographs.heading,
      list: pigmentPhotographs(slug, record.name, context, place).flatMap((one) => one.photographs),
    },
    handlingHeading: text.handling,
    label: labelView(
      part,
      workedOut(part),
      { heading: handling.dryPigment(record.name), nothing: handling.dryNothing },
      context,
      place,
    ),
    cautionsHeading: words.operations["weighing and mulling"] ?? "",
    cautions: cautionsByReason(
      cautions.filter(({ general }) => !general),
      words,
    ),
    handling: [
      handling.general(isGraveDust(cautions)),
      poisonCentreLine(poisonCentre, words),
      cautionLineOf([record], words),
    ],
    colours: shown.map((worded) => colourCard(worded, context, place)),
    ...(shown.length < colours.length && {
      someColours: words.pages.parts.someOf(shown.length, colours.length),
    }),
    ...(colours.length === 0 && { noColours: text.noColours }),
  };
}

export const PIGMENT_INDEX = onePage("pigments/index.html", pigmentIndex);

export const PIGMENTS: PageKind<PigmentPageView> = {
  pages: ({ context }) =>
    [...context.records.pigments.values()].map((pigment) => ({
      path: `pigments/${pigment.slug}/index.html`,
      view: (place) => pigmentPage(pigment, context, place),
    })),
};
