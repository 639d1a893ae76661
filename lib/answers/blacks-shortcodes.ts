import { blacksInWhitesPicture, blacksInWhitesTable } from "../pages/blacks-in-whites.ts";
import {
  scatteringPictures,
  theoryInputs,
  theoryPicture,
  theoryStatements,
} from "../pages/theory-views.ts";
import type { Block } from "../blocks/block.ts";
import { lists, plots, statement, tables } from "../blocks/section-blocks.ts";
import type { PictureView, TableView } from "../present/views.ts";
import type { BlockPiece, Shortcode, ShortcodeRoom } from "./shortcode.ts";

/** The range's blacks in its whites at one lightness. */
export const BLACKS: Shortcode = {
  name: "blacks",
  place: "on a line of its own",
  args: [
    { name: "show", kind: "text", optional: true },
    { name: "level", kind: "level", optional: true },
  ],
  does: "b* of every black of the range in every white, at L* 50, or with `level` at L* 70 or 30: a `picture`, or with `show=table` a table with a*",
  render: (args, room) => {
    const level = args.level("level");
    return shown(args.text("show") ?? "picture", room, {
      picture: () => pictured(blacksInWhitesPicture(level, room.context, room.id)),
      table: () => tabled(blacksInWhitesTable(level, room.context, room.place)),
    });
  },
};

/** The range's whites over the spectrum. */
export const SCATTERING: Shortcode = {
  name: "scattering",
  place: "on a line of its own",
  args: [],
  does: "how each white scatters light over the spectrum: from its own films, and as a band by theory",
  render: (_, room) => {
    const pictures = scatteringPictures(room.context, room.id);
    return pictures.length === 0 ? undefined : { blocks: plots(pictures) };
  },
};

/** What follows from grain and index alone. */
export const THEORY: Shortcode = {
  name: "theory",
  place: "on a line of its own",
  args: [{ name: "show", kind: "text", optional: true }],
  does: "what grain and refractive index alone say of blacks in whites: bands as a `picture`, or with `show` the statements that are `told`, those `untold`, or the `inputs`",
  render: (args, room) =>
    shown(args.text("show") ?? "picture", room, {
      picture: () => pictured(theoryPicture(room.context, room.id)),
      told: () => said(theoryStatements(true, room.context)),
      untold: () => said(theoryStatements(false, room.context)),
      inputs: () => tabled(theoryInputs(room.context)),
    }),
};

function shown(
  wanted: string,
  room: ShortcodeRoom,
  ways: Readonly<Record<string, () => readonly Block[] | undefined>>,
): BlockPiece | undefined {
  const way = Object.hasOwn(ways, wanted) ? ways[wanted] : undefined;
  if (way === undefined)
    return room.fault({
      message: `The list can't be shown as "${wanted}": show takes ${Object.keys(ways).join(", ")}`,
      actual: wanted,
      expected: Object.keys(ways).join(" | "),
    });
  const blocks = way();
  return blocks && { blocks };
}

function pictured(picture: PictureView | undefined): Block[] | undefined {
  return picture && plots([picture]);
}

function tabled(table: TableView | undefined): Block[] | undefined {
  return table && tables([table]);
}

function said(found: ReturnType<typeof theoryStatements>): Block[] | undefined {
  return found && [...lists([found.list]), statement(found.note, "note")];
}
