import type { SpannedRecipe } from "../formulation/batch-between.ts";
import { isKnown, type Figure, type Known } from "../quantities/figure.ts";
import { ends, midpoint, type Quantity } from "../quantities/interval.ts";
import { given } from "../quantities/given.ts";
import { valueText } from "../present/figure-text.ts";
import { standingView } from "../present/standing-view.ts";
import type { BatchReckonerView, BatchView } from "../present/paint-views.ts";
import type { CellView, TableView } from "../present/views.ts";
import { tableView } from "../present/table-view.ts";
import type { BatchSection } from "../sheet/oil/batch-figures.ts";
import type { BatchSize } from "../sheet/oil/batch-lines.ts";
import { weighedTubes } from "../sheet/pigments/parts-of-paint.ts";
import type { Sheet } from "../sheet/sheet.ts";
import { mainOil } from "../sheet/oil/main-oil.ts";
import { NO_VALUE } from "../words/no-value.ts";
import type { SheetPage } from "./page-of-sheet.ts";
import type { PathBelow } from "../sheet/sheet-path.ts";

/** A batch in three sizes, and what the browser needs for any other. */
export function batchView(batch: BatchSection, page: SheetPage): BatchView {
  const { words, sheet } = page;
  const text = words.pages.paint.batch;
  const [first] = batch.sizes;
  const unpriced =
    first?.cost === undefined ? [] : first.unpriced.map((slug) => nameOf(slug, sheet));
  return {
    table: batchTable(batch, page),
    remarks: given([
      ...ofTubes(page),
      first?.tubes.length === 0 && text.noTubes,
      unpriced.length > 0 && text.unpriced(unpriced),
    ]),
    reckoner: reckoner(batch, page),
  };
}

/** What to squeeze out in place of dry pigment, of a mixture that its record weighs from tubes. */
export function ofTubes({ sheet, words, context: { records } }: SheetPage): string[] {
  const colour = records.colours.get(sheet.slug);
  const tubes = (colour && weighedTubes(colour, records)) ?? [];
  const whole = tubes.reduce((sum, { paintParts }) => sum + paintParts, 0);
  const parts = tubes.flatMap(({ paint, paintParts }) =>
    paint === undefined
      ? []
      : [`${paint.record.name} ${words.numbers.decimal((100 * paintParts) / whole, 1)}\u00a0g`],
  );
  return parts.length === 0 || parts.length < tubes.length
    ? []
    : [words.pages.paint.batch.ofTubes(parts)];
}

/** Why nothing can be weighed out. */
export function noBatch({ sheet, words }: SheetPage): string {
  const wanting: readonly Figure[] = [
    sheet.oil.oilIndexGPer100g,
    ...sheet.pigments.map(({ massFraction }) => massFraction),
  ];
  const missing = wanting.find((figure) => !isKnown(figure));
  return words.pages.paint.batch
    .none(missing === undefined || isKnown(missing) ? "" : words.absence(missing))
    .trim();
}

type PathOfSize = PathBelow<`batch.sizes.${string}`>;

interface Line {
  readonly name: string;
  /** Path below a size, and its figure. */
  readonly at: (size: BatchSize) => readonly [path: PathOfSize, figure: Figure] | undefined;
  /** Key of the figure in the browser's script. */
  readonly key: string;
}

/** What stands in each line of a batch, in the order of the work. */
function lines(
  { sheet, words }: SheetPage,
  tubes: readonly { readonly slug: string; readonly ml: number }[],
  currency: string | undefined,
): Line[] {
  const { rows: text } = words.pages.paint.batch;
  const whole = (
    name: string,
    key: "oilG" | "oilAtFirstG" | "oilHeldBackG" | "paintG" | "paintMl" | "lossMl" | "yieldMl",
  ): Line => ({ name, key, at: (size) => [key, size[key]] });
  return given([
    ...sheet.pigments.map(({ slug, name }, i): Line => ({
      name: text.pigment(name),
      key: `pigments.${i}`,
      at: ({ pigments }) => pair(`pigments.${slug}.massG`, pigments[i]?.massG),
    })),
    whole(text.oil(sheet.vehicle?.name ?? ""), "oilG"),
    whole(text.atFirst, "oilAtFirstG"),
    whole(text.heldBack, "oilHeldBackG"),
    ...sheet.additions.map(({ slug, name }, i): Line => ({
      name: text.addition(name),
      key: `additions.${i}`,
      at: ({ additions }) => pair(`additions.${slug}.massG`, additions[i]?.massG),
    })),
    whole(text.paintG, "paintG"),
    whole(text.paintMl, "paintMl"),
    whole(text.loss, "lossMl"),
    whole(text.yield, "yieldMl"),
    ...tubes.map(({ slug, ml }, i): Line => ({
      name: text.tubes(words.numbers.decimal(ml, 0)),
      key: "tubes",
      at: (size) => pair(`tubes.${slug}.count`, size.tubes[i]?.count),
    })),
    currency !== undefined && {
      name: text.cost(currency),
      key: "cost",
      at: ({ cost }: BatchSize) => pair("cost", cost),
    },
  ]);
}

function pair(
  path: PathOfSize,
  figure: Figure | undefined,
): readonly [PathOfSize, Figure] | undefined {
  return figure === undefined ? undefined : [path, figure];
}

function batchTable(batch: BatchSection, page: SheetPage): TableView {
  const { worded, words, context } = page;
  const text = words.pages.paint.batch;
  const [first] = batch.sizes;
  return tableView({
    caption: text.caption,
    compact: true,
    columns: [
      text.columns.what,
      ...batch.sizes.map(({ pigmentG }) => ({ head: text.columns.size(pigmentG), numeric: true })),
    ],
    rows: lines(
      page,
      first?.tubes ?? [],
      first?.cost === undefined ? undefined : context.records.workshop.currency,
    ).map(({ name, at }) => [
      name,
      ...batch.sizes.map((size, i): CellView => {
        const found = at(size);
        if (found === undefined || !isKnown(found[1])) return { text: NO_VALUE };
        const { row } = worded.leaf(`batch.sizes.${size.slug}.${found[0]}`);
        return {
          text: valueText(row, found[1], words),
          ...(i === batch.sizes.length - 1 && { standing: standingView(found[1], words) }),
        };
      }),
    ]),
  });
}

function reckoner(batch: BatchSection, page: SheetPage): BatchReckonerView {
  const { words, context, sheet } = page;
  const { any: text, rows } = words.pages.paint.batch;
  const tube = batch.sizes[0]?.tubes[0];
  const currency =
    batch.sizes[0]?.cost === undefined ? undefined : context.records.workshop.currency;
  return {
    words: text,
    recipe: JSON.stringify({
      recipe: spannedRecipe(batch, sheet),
      about: words.about,
      mark: words.numbers.mark,
    }),
    sizes: Object.entries(text.sizes).map(([value, name]) => ({ value, text: name })),
    tubeMl: String(tube?.ml ?? CUSTOMARY_TUBE_ML),
    rows: lines(page, [{ slug: "", ml: 0 }], currency).map(({ name, key }) => ({
      name: key === "tubes" ? rows.tubesAny : name,
      figure: key,
    })),
  };
}

/** What a reader begins from where no size is recorded: it stands in a field that can be changed. */
const CUSTOMARY_TUBE_ML = 40;

/** A density under its key, left out where it is not known. */
function density<K extends string>(
  key: K,
  figure: Figure<Quantity>,
): { readonly [P in K]?: Quantity } {
  return (isKnown(figure) ? { [key]: figure.value } : {}) as { readonly [P in K]?: Quantity };
}

/** The recipe as the browser's script takes it: the same figures that the sheet's own table rests on. */
export function spannedRecipe(
  { holdBack, loss }: BatchSection,
  { pigments, vehicle, additions, oil }: Sheet,
): SpannedRecipe {
  const price = ({ pricePerKg }: { readonly pricePerKg?: Figure<number> }) =>
    pricePerKg === undefined || !isKnown(pricePerKg) ? {} : { pricePerKg: pricePerKg.value };
  return {
    pigments: pigments.map((part) => ({
      massFraction: midpoint(valueOf(part.massFraction)),
      ...price(part),
    })),
    ...density("pigmentDensityGPerCm3", oil.pigmentDensityGPerCm3),
    ...(isMeasured(oil.paintDensityGPerCm3) && {
      paintDensityGPerCm3: midpoint(oil.paintDensityGPerCm3.value),
    }),
    oilIndexGPer100g: valueOf(mainOil(oil)),
    oil: {
      ...(vehicle !== undefined && density("densityGPerCm3", vehicle.densityGPerCm3)),
      ...(vehicle !== undefined && price(vehicle)),
    },
    additions: additions.map((one) => ({
      percent: midpoint(valueOf(one.percentOfOil)),
      ...density("densityGPerCm3", one.densityGPerCm3),
      ...price(one),
    })),
    holdBack: ends(valueOf(holdBack)),
    loss: ends(valueOf(loss)),
  };
}

function isMeasured(figure: Figure<Quantity>): figure is Known<Quantity> {
  return isKnown(figure) && figure.standing === "measured";
}

/** @throws RangeError where a batch was made of a figure that is not known. */
function valueOf<V extends number | readonly [number, number]>(figure: Figure<V>): V {
  if (!isKnown(figure))
    throw new RangeError(`A batch lacks a figure: ${figure.wanting.join(", ")}`);
  return figure.value;
}

function nameOf(slug: string, { pigments, vehicle, additions }: Sheet): string {
  return given([...pigments, vehicle, ...additions]).find((one) => one.slug === slug)?.name ?? slug;
}
