import { type FigureIndex, pathParts } from "../claims/figure-index.ts";
import { factAt, factMember } from "../claims/fact-at.ts";
import type { HeldClaim } from "../claims/held-claims.ts";
import type { PageContext } from "../pages/page-context.ts";
import { claimText, factText, todayText } from "../present/claim-text.ts";
import { NO_VALUE } from "../words/no-value.ts";
import { standingView, standingWord } from "../present/standing-view.ts";
import type { CellView, TableView } from "../present/views.ts";
import { tableView } from "../present/table-view.ts";

/** Claims with the figures as they stand now. */
export function claimTable(
  claims: readonly HeldClaim[],
  { words, records }: PageContext,
  index: FigureIndex,
): TableView {
  const text = words.pages.answers.claims;
  const nameOf = (slug: string): string => records.colours.get(slug)?.record.name ?? slug;
  return tableView({
    caption: text.caption,
    columns: [text.columns.statement, text.columns.today, text.columns.records],
    rows: claims.map((held) => [
      {
        text: claimText(held, nameOf, words, (slug) => index.sheet(slug)),
        ...(held.faults.length > 0 && { note: text.broken }),
      },
      todayCell(held, nameOf, index, words),
      held.newest === undefined ? text.undated : words.date(held.newest.date),
    ]),
  });
}

/** The claim's own figure, and under it the one that it is compared with. */
function todayCell(
  { claim, figures }: HeldClaim,
  nameOf: (slug: string) => string,
  index: FigureIndex,
  words: PageContext["words"],
): CellView {
  if ("every" in claim) {
    const having = index.sheets.filter(
      (sheet) => factMember(sheet, claim.every, claim.lacks) !== undefined,
    );
    return {
      text: factText(
        having.map(({ name }) => name),
        words,
      ),
    };
  }
  if ("fact" in claim) {
    const { colour, figure } = pathParts(claim.fact);
    const sheet = index.sheet(colour);
    const at = sheet === undefined ? undefined : factAt(sheet, figure);
    if (at === undefined || !("fact" in at)) return { text: NO_VALUE };
    const member =
      "includes" in claim ? claim.includes : "lacks" in claim ? claim.lacks : undefined;
    if (member === undefined) return { text: factText(at.fact, words) };
    const { among, notAmong } = words.pages.answers.claims;
    return { text: Array.isArray(at.fact) && at.fact.includes(member) ? among : notAmong };
  }
  const [own, ...others] = figures;
  if (own === undefined) return { text: NO_VALUE, standing: standingWord("not stated", words) };
  const compared = "lowestOf" in claim || "highestOf" in claim ? [] : others;
  const note = compared
    .flatMap((other) => todayText(other, words) ?? [])
    .map((value, i) => `${nameOf(compared[i]?.sheet.slug ?? "")}${words.colon}${value}`)
    .join(words.semicolon);
  return {
    text: todayText(own, words) ?? NO_VALUE,
    standing: standingView(own.leaf.figure, words),
    ...(note !== "" && { note }),
  };
}
