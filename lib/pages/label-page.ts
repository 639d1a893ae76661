import { tables } from "../blocks/section-blocks.ts";
import { tableView } from "../present/table-view.ts";
import type { SectionBlock } from "../blocks/block.ts";
import { isKnown } from "../quantities/figure.ts";
import { at } from "../quantities/at.ts";
import { grouped } from "../quantities/grouped.ts";
import { given } from "../quantities/given.ts";
import { figureText } from "../present/figure-text.ts";
import { lotOnSale } from "../sheet/lots/lot-on-sale.ts";
import { labelModel } from "../present/label-model.ts";
import { standingWord } from "../present/standing-view.ts";
import { statementText } from "../present/statement-text.ts";
import type { CellView, TableView } from "../present/views.ts";
import type { SheetTexts } from "../present/sheet-texts.ts";
import type { Sheet } from "../sheet/sheet.ts";
import type { PageContext, PagePlace } from "./page-context.ts";
import { sixFacts } from "./six-facts.ts";
import { standingsKey } from "./site-frame.ts";
import { NO_VALUE } from "../words/no-value.ts";
import { declaredPage } from "./text-page.ts";
import { LABEL_PAGE } from "../words/pages/label-page.ts";
import { saidIn, type Said } from "../words/texts.ts";
import type { Words } from "../words/words.ts";
import { proseSection } from "./prose-section.ts";
import { pigmentName } from "./pigment-name.ts";

/** What each line of a label and of a sheet means, with the range's own examples: no figure here is typed by hand. */
export const LABELS_PAGE = declaredPage("label/index.html", LABEL_PAGE, (text, context, place) => {
  const { words, sheets } = context;
  const example = exampleSheet(context);
  const mixed = sheets.filter(({ sheet }) => sheet.pigments.length > 1);
  const blacks = mixed.filter(({ sheet }) => sheet.family === "black" || sheet.family === "grey");
  const sections = [
    section(
      "label",
      text.label.heading,
      text.label.unsaid,
      example === undefined ? [] : [labelTable(example, context)],
    ),
    section("studio", text.studio.heading, text.studio.text, [studioTable(context)]),
    section(
      "pigments",
      text.pigments.heading,
      text.pigments.text(sheets.length - mixed.length, sheets.length),
      mixed.length === 0 ? [] : [mixedTable(text.pigments.caption, mixed, context, place)],
      mixed.length === 0 ? text.pigments.none : undefined,
    ),
    section("names", text.names.heading, text.names.text, namesTable(context)),
    section(
      "drift",
      text.drift.heading,
      text.drift.text,
      blacks.length === 0 ? [] : [driftTable(blacks, context, place)],
      blacks.length === 0 ? text.drift.none : undefined,
    ),
    section(
      "sheet",
      text.sheet.heading,
      text.sheet.text,
      example === undefined ? [] : [factTable(example, context)],
    ),
  ];
  return { description: text.lead, sections, close: [standingsKey(words)] };
});

function said({ language }: Words): Said<typeof LABEL_PAGE> {
  return saidIn(language, LABEL_PAGE);
}

function section(
  id: string,
  heading: string,
  prose: string,
  shown: readonly TableView[],
  remark?: string,
): SectionBlock {
  const said = remark === undefined ? prose : `${prose}\n\n${remark}`;
  return proseSection([id, heading, said], tables(shown));
}

/** The first of the pair that the workshop leads with, else the first colour of one pigment that was read. */
function exampleSheet({ sheets, records }: PageContext): SheetTexts | undefined {
  const [leading] = records.workshop.leadingPair ?? [];
  return (
    sheets.find(({ sheet }) => sheet.slug === leading) ??
    sheets.find(
      ({ sheet }) => sheet.pigments.length === 1 && sheet.notations.masstone !== undefined,
    ) ??
    sheets[0]
  );
}

function labelTable({ sheet, leaf }: SheetTexts, { words, records }: PageContext): TableView {
  const { columns, label } = said(words);
  const { signalWord, hazardStatements, supplemental, unknown } = sheet.cautions;
  const { metals } = labelModel(sheet.cautions, words.language, words);
  const hazards = given([
    unknown.length > 0 && words.pages.handling.unknownInShort,
    signalWord !== null && words.signalWords[signalWord],
    ...hazardStatements,
    ...supplemental,
    ...(unknown.length === 0 ? metals.map(({ text }) => text) : []),
  ]).join(", ");
  const colour = records.colours.get(sheet.slug);
  const [size] = colour?.sizes ?? [];
  const held = sheet.fill.fillings
    .find(({ packing }) => packing === "paint")
    ?.holds.find(({ ml }) => ml === size?.ml);
  const ml = size === undefined ? undefined : `${words.numbers.decimal(size.ml, 0)}\u00a0ml`;
  const contents =
    ml === undefined
      ? label.noSize
      : held === undefined || !isKnown(held.massG)
        ? ml
        : label.holds(
            ml,
            figureText(leaf(`fill.fillings.paint.holds.${held.slug}.massG`).row, held.massG, words),
          );
  const here: Record<keyof typeof label.lines, string> = {
    name: sheet.name,
    pigment: pigmentWords(sheet),
    vehicle:
      sheet.vehicle === undefined
        ? NO_VALUE
        : [sheet.vehicle, ...sheet.additions].map(({ name }) => name).join(", "),
    lightfastness: statementText(sheet.permanence.label, words),
    hazards: hazards === "" ? label.nothing : hazards,
    contents,
    lot: (colour && lotOnSale(colour, records)) ?? label.lot,
  };
  return tableView({
    caption: label.caption,
    columns: [columns.line, columns.says, columns.here(sheet.name)],
    rows: Object.entries(label.lines).map(([key, { line, says }]) => [
      line,
      says,
      here[key as keyof typeof here],
    ]),
  });
}

/** Cautions that every sheet shares, each once; those of one operation that one reason asks for stand together. */
function studioTable({ sheets, words }: PageContext): TableView {
  const { caption, columns, dust } = said(words).studio;
  const shared = new Map<string, Sheet["cautions"]["studio"][number]>();
  for (const { sheet } of sheets)
    for (const caution of sheet.cautions.studio) {
      const key = `${caution.operation} ${caution.rule}`;
      if (caution.general && !shared.has(key)) shared.set(key, caution);
    }
  const together = grouped(
    [...shared.values()].map(({ operation, rule, reason }) => {
      const why = reason.rule === "dustiness" ? dust : statementText(reason, words);
      const caution = statementText({ rule, values: {} }, words);
      return [`${operation} ${why}`, { operation, why, caution }] as const;
    }),
  );
  const order = Object.keys(words.operations);
  return tableView({
    caption,
    columns: [columns.operation, columns.caution, columns.reason],
    rows: [...together.values()]
      .map((alike) => ({ ...at(alike, 0), cautions: alike.map(({ caution }) => caution) }))
      .toSorted((one, other) => order.indexOf(one.operation) - order.indexOf(other.operation))
      .map(({ operation, cautions, why }) => [
        { text: words.operations[operation] ?? operation },
        { text: cautions.join(" ") },
        { text: why },
      ]),
  });
}

function factTable(worded: SheetTexts, context: PageContext): TableView {
  const { columns, sheet: text } = said(context.words);
  const facts = sixFacts(worded, context);
  return tableView({
    caption: text.caption,
    columns: [columns.line, columns.says, columns.here(worded.sheet.name)],
    rows: Object.values(text.facts).flatMap((says, i) => {
      const fact = facts[i];
      if (fact === undefined) return [];
      return [
        [
          fact.name,
          fact.key === "whitens" || fact.key === "middleTone" ? text[fact.key] : says,
          {
            text: fact.word,
            standing: fact.standing,
            ...(fact.detail !== undefined && { note: fact.detail }),
          },
        ],
      ];
    }),
  });
}

function mixedTable(
  caption: string,
  mixed: readonly SheetTexts[],
  { words }: PageContext,
  { root }: PagePlace,
): TableView {
  const { pigments: text } = said(words);
  return tableView({
    caption,
    columns: [text.columns.colour, text.columns.pigments, text.columns.weakest],
    rows: mixed.map(({ sheet }) => [
      { text: sheet.name, href: `${root}colours/${sheet.slug}/` },
      pigmentWords(sheet),
      weakestWords(sheet, text),
    ]),
  });
}

/** The mixed blacks and greys, with where their sheets say that they go, in the first white that carries it. */
function driftTable(
  blacks: readonly SheetTexts[],
  context: PageContext,
  place: PagePlace,
): TableView {
  const { words } = context;
  const { drift: text } = said(words);
  const table = mixedTable(text.caption, blacks, context, place);
  return {
    ...table,
    columns: [...table.columns, { head: text.driftColumn }],
    rows: table.rows.map((cells, i): CellView[] => [
      ...cells,
      driftCell(blacks[i]?.sheet, context),
    ]),
  };
}

function driftCell(sheet: Sheet | undefined, { words }: PageContext): CellView {
  const [white] = sheet?.mixture?.whites ?? [];
  const sentences = (white?.drifts ?? []).flatMap(({ sentences: [first] }) =>
    first === undefined ? [] : [statementText(first, words)],
  );
  return sentences.length === 0
    ? { text: NO_VALUE, reason: said(words).drift.notReckoned }
    : { text: sentences.join(" "), standing: standingWord("estimated", words) };
}

function weakestWords(
  { permanence: { weakest }, pigments }: Sheet,
  text: Said<typeof LABEL_PAGE>["pigments"],
): string {
  if (weakest.length === 0) return text.unknown;
  return weakest.length === pigments.length ? text.alike : weakest.join(", ");
}

/** Colour Index names of more than one pigment of the range, with the colours made from them. */
function namesTable({ words, sheets, records }: PageContext): TableView[] {
  const { names: text } = said(words);
  const names = [...records.pigments.values()].flatMap(({ slug, record: { colourIndexName } }) =>
    colourIndexName === undefined ? [] : [[colourIndexName, slug] as const],
  );
  const shared = [...grouped(names)].filter(([, slugs]) => slugs.length > 1);
  if (shared.length === 0) return [];
  return [
    tableView({
      caption: text.caption,
      columns: [text.columns.index, text.columns.pigments, text.columns.colours],
      rows: shared.map(([index, slugs]) => [
        index,
        slugs.map((slug) => records.pigments.get(slug)?.record.name ?? slug).join(", "),
        sheets
          .filter(({ sheet }) => sheet.pigments.some(({ slug }) => slugs.includes(slug)))
          .map(({ sheet }) => sheet.name)
          .join(", "),
      ]),
    }),
  ];
}

function pigmentWords({ pigments }: Sheet): string {
  return pigments.map(pigmentName).join(", ");
}
