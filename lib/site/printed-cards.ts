import { existsSync, readFileSync, renameSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import type { EarlierCard } from "../print/reprint-list.ts";
import type { RangeCard } from "../print/range-cards.ts";
import { PRINTED_CARDS } from "../records/content-tree.ts";
import { areCards, PRINTED_CARDS_KIND } from "./earlier-manifest.ts";
import { OutputFault, stoppedBy } from "./output-fault.ts";

/**
 * What the shelf cards said when the workshop last printed them, by its own record of that;
 * undefined where it has none yet.
 * @throws OutputFault for a record that can't be read.
 */
export function printedCards(contentDir: string): EarlierCard[] | undefined {
  const file = join(contentDir, PRINTED_CARDS);
  if (!existsSync(file)) return undefined;
  try {
    const { cards } = JSON.parse(readFileSync(file, "utf8")) as { readonly cards?: unknown };
    if (areCards(cards)) return cards;
  } catch {
    // What is no JSON tells no more than what is no list of cards.
  }
  throw new OutputFault(
    `${file} can't be read as what cards said when they were printed: put it right, or delete it and print them anew`,
  );
}

/**
 * Keep what these cards say beside the records: in place of what they said, beside the others, of
 * which those of colours that have no card any more are dropped.
 * @param all every card that there is.
 * @returns why it could not be kept, in one line.
 */
export function keepPrintedCards(
  contentDir: string,
  printed: readonly Pick<RangeCard, "slug" | "name" | "states">[],
  all: readonly Pick<RangeCard, "slug">[],
): string | undefined {
  const file = join(contentDir, PRINTED_CARDS);
  const aside = join(contentDir, `.${PRINTED_CARDS}.building`);
  try {
    const now = new Map(
      [...(printedCards(contentDir) ?? []), ...printed].map(({ slug, name, states }) => [
        slug,
        { slug, name, states },
      ]),
    );
    const cards = all.flatMap(({ slug }) => now.get(slug) ?? []);
    writeFileSync(aside, `${JSON.stringify({ kind: PRINTED_CARDS_KIND, cards }, null, 1)}\n`);
    renameSync(aside, file);
    return undefined;
  } catch (error) {
    rmSync(aside, { force: true });
    return stoppedBy(error, file);
  }
}
