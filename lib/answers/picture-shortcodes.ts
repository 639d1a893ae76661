import { plots } from "../blocks/section-blocks.ts";
import { ladderPicture } from "../pages/ladder-picture.ts";
import { trailPoint, whiteTrail } from "../pages/trail-picture.ts";
import type { NearNeutral } from "../collection/near-neutrals.ts";
import { glossCaption } from "../pages/gloss-caption.ts";
import { ownColour } from "../pages/screen-swatch.ts";
import { colourStrip, type ColourStep } from "../plots/colour-strip.ts";
import { tintTrail } from "../plots/tint-trail.ts";
import { coordinateOf } from "../present/coordinate-text.ts";
import type { SheetTexts } from "../present/sheet-texts.ts";
import type { EqualLightness, TintSection } from "../sheet/tints/tint-figures.ts";
import type { Words } from "../words/words.ts";
import type { Args, Shortcode, ShortcodeRoom } from "./shortcode.ts";

/** Width where there is room: for one line of swatches, and of a square [user units]. */
const WIDE = 640;
const WIDE_SQUARE = 480;

/** The ladder of one colour in one white, as its sheet has it. */
export const LADDER: Shortcode = {
  name: "ladder",
  place: "on a line of its own",
  args: [
    { name: "colour", kind: "colour" },
    { name: "white", kind: "white" },
  ],
  does: "the let-downs of a colour in a white, drawn down and predicted told apart",
  render: (args, room) => {
    const { words } = room.context;
    const [worded] = args.colours("colour");
    const tint = worded === undefined ? undefined : tintIn(worded, args.text("white"), room);
    if (worded === undefined || tint === undefined) return undefined;
    const title = words.pages.answers.picture.ladderTitle(worded.sheet.name, tint.white.name);
    const picture = ladderPicture(tint, room.id, title, words);
    return picture && { blocks: plots([picture]) };
  },
};

/** Where one white takes several colours. */
export const TRAIL: Shortcode = {
  name: "trail",
  place: "on a line of its own",
  args: [
    { name: "colours", kind: "colours" },
    { name: "white", kind: "white" },
  ],
  does: "a* and b* of the let-downs of several colours in a white, in one square",
  render: (args, room) => {
    const { words } = room.context;
    const tints = tintsIn(args, room);
    const white = tints?.[0]?.tint.white.name;
    if (tints === undefined || white === undefined) return undefined;
    const trails = tints.flatMap(({ sheet, tint }) =>
      whiteTrail(
        tint.steps,
        sheet.name,
        trailPoint({ ...sheet.notations.masstone, standing: "measured" }),
      ),
    );
    if (trails.length === 0) return undefined;
    const title = words.pages.answers.picture.trailTitle(white);
    const drawn = (idPrefix: string, width?: number) =>
      tintTrail({
        decimalMark: words.numbers.mark,
        idPrefix,
        width,
        title,
        description: words.pages.whites.trailDescription(trails.map(({ label }) => label)),
        trails,
        ends: words.pages.whites.trailEnds,
      });
    const picture = {
      svg: drawn(room.id, WIDE_SQUARE),
      narrow: drawn(`${room.id}-narrow`),
      caption: glossCaption(title, tints, words),
    };
    return { blocks: plots([picture]) };
  },
};

/** Tints of several colours at one lightness in one white. */
export const SWATCHES: Shortcode = {
  name: "swatches",
  place: "on a line of its own",
  args: [
    { name: "colours", kind: "colours" },
    { name: "white", kind: "white" },
    { name: "level", kind: "level", optional: true },
  ],
  does: "tints of several colours side by side in a white, at L* 50, or with `level` at L* 70 or 30",
  render: (args, room) => {
    const { words } = room.context;
    const text = words.pages.answers.picture;
    const level = args.level("level");
    const tints = tintsIn(args, room);
    const white = tints?.[0]?.tint.white.name;
    if (tints === undefined || white === undefined) return undefined;
    const steps = tints.map((one) => step(one, level, words));
    const title = text.swatchesTitle(level, white);
    const strip = (idPrefix: string, width?: number) =>
      colourStrip({
        idPrefix,
        title,
        axisLabel: text.swatchesAxis(level, white),
        missing: words.pages.sheet.missing,
        description: `${steps.map(({ spoken }) => spoken).join("; ")}.`,
        colours: steps,
        width,
      });
    const picture = {
      svg: strip(room.id, WIDE),
      narrow: strip(`${room.id}-narrow`),
      caption: glossCaption(title, tints, words),
    };
    return { blocks: plots([picture]) };
  },
};

function step(
  { sheet, tint }: NearNeutral,
  level: EqualLightness,
  words: Words,
): ColourStep & { readonly spoken: string } {
  const reached = tint.atL[level];
  if (reached === undefined)
    return {
      name: sheet.name,
      detail: "",
      colour: undefined,
      standing: "not stated",
      spoken: `${sheet.name}, ${words.pages.sheet.missing}`,
    };
  const [a, b] = [coordinateOf(reached.a, words.numbers), coordinateOf(reached.b, words.numbers)];
  return {
    name: sheet.name,
    detail: `b* ${b}`,
    colour: ownColour(reached),
    standing: "derived",
    spoken: words.pages.answers.picture.swatchDescription(sheet.name, a, b),
  };
}

/** The tints of the named colours in the named white; undefined where one was not let down in it, which is told. */
function tintsIn(args: Args, room: ShortcodeRoom): readonly NearNeutral[] | undefined {
  const tints = args.colours("colours").map((worded) => {
    const tint = tintIn(worded, args.text("white"), room);
    return tint && { sheet: worded.sheet, tint };
  });
  return tints.every((one) => one !== undefined) ? tints : undefined;
}

/** A colour's tints in a white that it was let down in; else a fault that names those that there are. */
function tintIn(
  { sheet }: SheetTexts,
  white: string | undefined,
  { fault }: ShortcodeRoom,
): TintSection | undefined {
  const found = sheet.tints.find((tint) => tint.white.slug === white);
  if (found !== undefined) return found;
  const whites = sheet.tints.map((tint) => tint.white.slug);
  return fault({
    message:
      whites.length === 0
        ? `${sheet.slug} was let down in no white`
        : white === undefined
          ? `Name the white: ${sheet.slug} was let down in ${whites.join(", ")}`
          : `${sheet.slug} was not let down in ${white}, only in ${whites.join(", ")}`,
    actual: white ?? "nothing",
    expected: whites.length === 0 ? "a colour that was let down in a white" : whites.join(" | "),
  });
}
