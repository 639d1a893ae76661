import { section } from "../blocks/section-blocks.ts";
import { replacementBlocks } from "./replacement-blocks.ts";
import {
  colourChoices,
  offeredLead,
  offeredOf,
  mixingPlaces,
  mixingWays,
  RECIPES_PATH,
  type MixingPageView,
  type PaintChoice,
} from "./mixing-ways.ts";
import type { PageContext, PagePlace } from "./page-context.ts";
import { pageHead } from "./site-frame.ts";
import { onePage } from "./page-kind.ts";

/** Mixtures of the range that come near a colour; without script those that were looked up beforehand. */
export interface RecipesView extends MixingPageView {
  readonly kind: "recipes";
  readonly colours: readonly PaintChoice[];
  readonly whites: readonly PaintChoice[];
  /** Metals that a paint of the range holds. */
  readonly metals: readonly { readonly metal: string; readonly name: string }[];
}

/** What a colour can be mixed from, looked for in the reader's browser. */
export function recipesPage(context: PageContext, place: PagePlace): RecipesView {
  const text = context.words.pages.mixing;
  const range = offeredOf(context);
  const held = new Set(range.data.paints.flatMap(({ facts }) => facts.metals));
  return {
    kind: "recipes",
    ...pageHead(context, place, text.recipes.heading, text.recipes.description),
    lead: [text.recipes.lead, ...offeredLead(context)],
    ways: mixingWays(context, place),
    words: text,
    colours: colourChoices(range),
    whites: range.whites.map(({ slug, name }) => ({ slug, name })),
    metals: Object.entries(text.recipes.metals).flatMap(([metal, name]) =>
      held.has(metal) ? [{ metal, name }] : [],
    ),
    sections: range.data.paints.flatMap(({ slug, name }) =>
      section(
        `instead-of-${slug}`,
        text.recipes.replaces.onRecipes(name),
        replacementBlocks(slug, context, place),
      ),
    ),
  };
}

export const RECIPES = onePage(RECIPES_PATH, recipesPage, (context) => mixingPlaces(context).mixes);
