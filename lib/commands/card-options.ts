import { keysOf } from "../quantities/members.ts";
import { andNearest } from "../diagnostics/nearest-word.ts";
import { cardSizes, PAPER_SIZES, type CardSize } from "../print/card-size.ts";
import type { StatedCard, WithoutCard } from "../print/range-cards.ts";
import { FAMILIES } from "../records/schema/terms.ts";
import type { Records } from "../records/records.ts";
import type { WorkshopRecord } from "../records/schema/workshop.ts";
import { colourFamily } from "../sheet/colour-family.ts";
import { OutputFault } from "../site/output-fault.ts";

/** What `cards` is asked for, as written. */
export interface CardOptions {
  readonly only: string | undefined;
  readonly family: string | undefined;
  readonly size: string | undefined;
  readonly paper: string | undefined;
  readonly since: string | undefined;
  /** Cards without a colour or a price as well. */
  readonly incomplete: boolean;
  /** A preview in process inks in place of cards. */
  readonly proof: boolean;
}

/** The size asked for, on the paper asked for; else the workshop's. @throws OutputFault for one that is not known, with the nearest. */
export function chosenSize(
  { size, paper }: Pick<CardOptions, "size" | "paper">,
  workshop: WorkshopRecord,
): CardSize {
  const sizes = cardSizes(workshop);
  const found = size === undefined ? sizes[0] : sizes.find(({ name }) => name === size);
  if (found === undefined)
    throw unknownChoice(
      "--size",
      size ?? "",
      sizes.map(({ name }) => name),
    );
  if (paper === undefined) return found;
  const papers = keysOf(PAPER_SIZES);
  const sheet = papers.find((name) => name.toLowerCase() === paper.toLowerCase());
  if (sheet === undefined) throw unknownChoice("--paper", paper, papers);
  return { ...found, paper: sheet };
}

/** Whether a colour is among those asked for. @throws OutputFault for a slug or a family that is not known, with the nearest. */
export function chosenColours(
  { only, family }: Pick<CardOptions, "only" | "family">,
  colours: readonly { readonly slug: string; readonly family: string | undefined }[],
): (card: Pick<StatedCard | WithoutCard, "slug">) => boolean {
  const slugs = only
    ?.split(",")
    .map((slug) => slug.trim())
    .filter((slug) => slug !== "");
  const known = colours.map(({ slug }) => slug);
  for (const slug of slugs ?? [])
    if (!known.includes(slug)) throw unknownChoice("--only", slug, known);
  const key = family === undefined ? undefined : familyKey(family);
  const wanted = new Set(
    colours
      .filter(
        (colour) =>
          (slugs === undefined || slugs.includes(colour.slug)) &&
          (key === undefined || (colour.family ?? "other") === key),
      )
      .map(({ slug }) => slug),
  );
  return ({ slug }) => wanted.has(slug);
}

/** The same among all colours of a workshop. */
export function chosenAmong(
  wanted: Pick<CardOptions, "only" | "family">,
  records: Records,
): ReturnType<typeof chosenColours> {
  return chosenColours(
    wanted,
    [...records.colours.values()].map((colour) => ({
      slug: colour.slug,
      family: colourFamily(colour, records),
    })),
  );
}

const FAMILY_KEYS = [...FAMILIES, "other"];

/** "blacks" and "black" alike. */
function familyKey(family: string): string {
  const word = family.toLowerCase();
  const found = FAMILY_KEYS.find((key) => key === word || `${key}s` === word);
  if (found === undefined)
    throw unknownChoice(
      "--family",
      family,
      FAMILY_KEYS.map((key) => `${key}s`),
    );
  return found;
}

const MOST_NAMED = 14;

/** What an option can't be, with what it can and the nearest. */
export function unknownChoice(
  option: string,
  given: string,
  known: readonly string[],
): OutputFault {
  const expected = known.length > MOST_NAMED ? "a colour of the workshop" : known.join(", ");
  return new OutputFault(
    `${option} can't be ${given}: it takes ${expected}${andNearest(given, known)}`,
  );
}
