import { figureName } from "../present/figure-name.ts";
import { unitText, valueText } from "../present/figure-text.ts";
import { standingView, standingWord } from "../present/standing-view.ts";
import type { CellView, ColumnView } from "../present/views.ts";
import { tableView } from "../present/table-view.ts";
import { isKnown } from "../quantities/figure.ts";
import { tables } from "../blocks/section-blocks.ts";
import type { RangeFigure } from "../claims/figure-index.ts";
import { NO_VALUE } from "../words/no-value.ts";
import type { Shortcode, ShortcodeRoom } from "./shortcode.ts";

/** Colours down, figures across. */
export const TABLE: Shortcode = {
  name: "table",
  place: "on a line of its own",
  args: [
    { name: "colours", kind: "colours" },
    { name: "figures", kind: "figures" },
    { name: "caption", kind: "text", optional: true },
  ],
  does: "a table of colours by figures; what a colour has not stated is a dash with the reason",
  render: (args, room) => {
    const { words } = room.context;
    const text = words.pages.answers.table;
    const paths = args.figures("figures");
    const colours = args.colours("colours");
    const table = tableView({
      caption: args.text("caption") ?? text.caption,
      columns: [
        text.colour,
        ...paths.map((path) =>
          column(colours.flatMap(({ sheet }) => found(`${sheet.slug}.${path}`, room))[0], room),
        ),
      ],
      rows: colours.map(({ sheet }) => [
        { text: sheet.name, href: `${room.place.root}colours/${sheet.slug}/` },
        ...paths.map((path) => cell(found(`${sheet.slug}.${path}`, room)[0], room)),
      ]),
    });
    return { blocks: tables([table]) };
  },
};

function found(path: string, { index }: ShortcodeRoom): RangeFigure[] {
  const figure = index.figure(path);
  return "lost" in figure ? [] : [figure];
}

function column(first: RangeFigure | undefined, { context: { words } }: ShortcodeRoom): ColumnView {
  if (first === undefined) return { head: "" };
  const { leaf, sheet } = first;
  const unit = unitText(leaf.row.unit, words);
  const numeric = leaf.row.kind !== "word" && leaf.row.kind !== "notation";
  return {
    head: figureName(leaf, sheet, words),
    ...(unit !== "" && { unit }),
    ...(numeric && { numeric }),
  };
}

function cell(at: RangeFigure | undefined, { context: { words } }: ShortcodeRoom): CellView {
  const none = standingWord("not stated", words);
  if (at === undefined)
    return { text: NO_VALUE, standing: none, reason: words.pages.answers.table.none };
  const { row, figure } = at.leaf;
  if (!isKnown(figure)) return { text: NO_VALUE, standing: none, reason: words.absence(figure) };
  return { text: valueText(row, figure, words), standing: standingView(figure, words) };
}
