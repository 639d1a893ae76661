import { describe, expect, test } from "vitest";
import { cardOfSheet } from "../../lib/print/card-of-sheet.ts";
import { cardRevision, cardStates } from "../../lib/print/card-statements.ts";
import { shelfCards, type StatedCard } from "../../lib/print/range-cards.ts";
import { reprintList, type EarlierCard } from "../../lib/print/reprint-list.ts";
import { classifiedFigure } from "../../lib/quantities/derived-figure.ts";
import { sourceFigure } from "../../lib/quantities/figure.ts";
import { sheetTexts } from "../../lib/present/sheet-texts.ts";
import type { Sheet } from "../../lib/sheet/sheet.ts";
import { CARDS, CONTEXT } from "./demonstration-cards.ts";

const { words } = CONTEXT;
/** Once through a file, as a kept manifest goes. */
const KEPT = JSON.parse(
  JSON.stringify(CARDS.cards.map(({ slug, name, states }) => ({ slug, name, states }))),
) as EarlierCard[];

/** The demonstration's cards with one sheet changed. */
function changedIn(slug: string, change: (sheet: Sheet) => Sheet): StatedCard[] {
  return CARDS.cards.map((card) => {
    if (card.slug !== slug) return card;
    const content = cardOfSheet(sheetTexts(change(card.worded.sheet), words), CONTEXT, ["en"]);
    return { ...card, states: cardStates(content), revision: cardRevision(content) };
  });
}

describe("the list of reprints", () => {
  test("is empty when no card says anything else", () => {
    expect(reprintList(CARDS.cards, KEPT, words)).toEqual([]);
  });

  test("has the one card of which one figure changed, and that change alone, in words", () => {
    const now = changedIn("bone-black", (sheet) => ({
      ...sheet,
      optics: {
        ...sheet.optics,
        opacityClass: classifiedFigure({ name: "changed", unit: "" }, {}, () => "semi-opaque"),
      },
    }));
    expect(reprintList(now, KEPT, words)).toEqual([
      {
        slug: "bone-black",
        name: "Bone Black",
        kind: "changed",
        changes: ["Opacity: \u201cTransparent or nearly so\u201d is now \u201cSemi-opaque\u201d"],
      },
    ]);
  });

  test("has a card whose standing changed though its word did not", () => {
    const now = changedIn("bone-black", (sheet) => ({
      ...sheet,
      optics: {
        ...sheet.optics,
        opacityClass: sourceFigure("stated", "semi-transparent", {
          unit: "",
          method: "changed",
          inputs: [],
        }),
      },
    }));
    expect(reprintList(now, KEPT, words).map(({ changes }) => changes)).toEqual([
      ["Opacity: \u201cTransparent or nearly so\u201d is now \u201cSemi-transparent, stated\u201d"],
    ]);
  });

  test("leaves out a card of whose sheet something changed that a card does not say", () => {
    expect(
      reprintList(
        changedIn("bone-black", (sheet) => ({
          ...sheet,
          oil: { ...sheet.oil, reasons: [] },
          recordDate: "2031-01-01",
        })),
        KEPT,
        words,
      ),
    ).toEqual([]);
  });

  test("tells of a list only what came and went", () => {
    const now = changedIn("zinc-white", (sheet) => ({
      ...sheet,
      cautions: {
        ...sheet.cautions,
        precautionaryStatements: sheet.cautions.precautionaryStatements.filter(
          (code) => code !== "P391",
        ),
      },
    }));
    expect(reprintList(now, KEPT, words).map(({ slug, changes }) => [slug, changes])).toEqual([
      ["zinc-white", ["Precautions: no longer \u201cP391 Collect spillage.\u201d"]],
    ]);
  });

  test("tells a statement that is there in other words once, as it is now", () => {
    const earlier = KEPT.map((card) =>
      card.slug === "zinc-white"
        ? {
            ...card,
            states: {
              ...card.states,
              precautions: (card.states["precautions"] ?? "").replace(
                "Collect spillage.",
                "Collect.",
              ),
            },
          }
        : card,
    );
    expect(reprintList(CARDS.cards, earlier, words).map(({ changes }) => changes)).toEqual([
      ["Precautions: now \u201cP391 Collect spillage.\u201d"],
    ]);
  });

  test("has a discontinued colour's card, which was printed, taken off the shelf", () => {
    const bones = (discontinued: string | undefined) =>
      CARDS.cards.flatMap((card) => {
        const { sheet } = card.worded;
        return card.slug === "bone-black"
          ? [
              {
                ...card,
                lacks: ["price" as const],
                worded: {
                  ...card.worded,
                  sheet: { ...sheet, ...(discontinued === undefined ? {} : { discontinued }) },
                },
              },
            ]
          : [];
      });
    const kept = KEPT.filter(({ slug }) => slug === "bone-black");
    expect(reprintList(shelfCards(bones("2026-05-01"), kept), kept, words)).toMatchObject([
      { kind: "gone", changes: ["no card any more: take it off the shelf"] },
    ]);
    // One that has no price for now was printed without, and is a card still.
    expect(reprintList(shelfCards(bones(undefined), kept), kept, words)).toEqual([]);
  });

  test("names a new card, and one that is to be taken off the shelf", () => {
    const [first, ...rest] = CARDS.cards;
    expect(reprintList(CARDS.cards, KEPT.slice(1), words)).toEqual([
      { slug: first?.slug, name: first?.name, kind: "new", changes: ["a new card"] },
    ]);
    expect(reprintList(rest, KEPT, words)).toEqual([
      {
        slug: first?.slug,
        name: first?.name,
        kind: "gone",
        changes: ["no card any more: take it off the shelf"],
      },
    ]);
  });
});

test("a card's revision follows what it states and nothing else", () => {
  const [card] = CARDS.cards;
  const other = changedIn(card?.slug ?? "", (sheet) => ({
    ...sheet,
    name: `${sheet.name} II`,
  })).find(({ slug }) => slug === card?.slug);
  expect(other?.revision).not.toBe(card?.revision);
  expect(card?.revision).toMatch(/^[0-9a-f]{8}$/);
  expect(new Set(CARDS.cards.map(({ revision }) => revision)).size).toBe(CARDS.cards.length);
});
