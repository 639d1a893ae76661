import type { SearchDocument } from "../blocks/search-document.ts";
import { chosenPairs } from "../records/chosen-pairs.ts";
import { colourTile } from "./colour-tile.ts";
import { pairAddress, pairHeading } from "./compare-pages.ts";
import { madeOfText } from "./made-of.ts";
import { pagePlace, type PageContext } from "./page-context.ts";

const ROOT = pagePlace("index.html");

/** Colours, pigments, answers and chosen comparisons, as the search of every page finds them. */
export function searchDocuments(context: PageContext): SearchDocument[] {
  return [
    ...colours(context),
    ...pigments(context),
    ...answers(context),
    ...comparisons(context),
  ].map((found, id) => ({ id, ...found }));
}

type Found = Omit<SearchDocument, "id">;

function colours(context: PageContext): Found[] {
  return context.sheets.map((worded) => {
    const { sheet } = worded;
    const tile = colourTile(worded, context, ROOT);
    return {
      kind: "colour",
      title: sheet.name,
      words: [
        ...sheet.pigments.flatMap(({ name, colourIndexName }) => [
          name,
          ...codes(colourIndexName),
          ...commonNames(colourIndexName, context),
        ]),
        sheet.vehicle?.name ?? "",
        context.words.families[sheet.family ?? "other"],
        sheet.family ?? "",
      ].join(" "),
      text: madeOfText(sheet, context.words),
      href: tile.href,
      colours: tile.colours,
    };
  });
}

/** A Colour Index name as it is written and as it is typed: "PBk 9", "PBk9". */
function codes(colourIndexName: string | undefined): string[] {
  return colourIndexName === undefined
    ? []
    : [colourIndexName, colourIndexName.replaceAll(" ", "")];
}

/** What else a pigment is called in the language of the page. */
function commonNames(
  colourIndexName: string | undefined,
  { records, words }: Pick<PageContext, "records" | "words">,
): string[] {
  return records.knowledge
    .pigment(colourIndexName)
    .commonNames.map(({ name }) => words.substance(name));
}

function pigments(context: PageContext): Found[] {
  return [...context.records.pigments.values()].map(({ slug, record }) => ({
    kind: "pigment",
    title: record.name,
    words: [...codes(record.colourIndexName), ...commonNames(record.colourIndexName, context)].join(
      " ",
    ),
    text: record.colourIndexName ?? "",
    href: `pigments/${slug}/`,
  }));
}

function answers({ answers: links }: PageContext): Found[] {
  return links.map(({ slug, question, summary }) => ({
    kind: "answer",
    title: question,
    words: summary,
    text: "",
    href: `answers/${slug}/`,
  }));
}

function comparisons(context: PageContext): Found[] {
  return chosenPairs(context.records.workshop).map((pair) => ({
    kind: "comparison",
    title: pairHeading(pair, context),
    words: pair.why ?? "",
    text: "",
    href: pairAddress(pair),
  }));
}
