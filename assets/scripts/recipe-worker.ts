/** The search for recipes beside the page: it is sent wishes, and answers with what it finds; a new wish ends the one before. */
import { searchRecipes, type RecipeWish } from "./mixing/recipe-search.ts";
import { sentRange } from "./mixing/sent-range.ts";

declare function importScripts(...addresses: readonly string[]): void;

/** The paints lie beside this script; named from the folder above, which is how a name with its hash is put in. */
importScripts("../scripts/mixing-paints.js");

const range = sentRange();
let latest = 0;

addEventListener("message", ({ data }: MessageEvent<RecipeWish>) => {
  const turn = ++latest;
  if (typeof range === "string") {
    postMessage({ fault: range });
    return;
  }
  void searchRecipes(
    data,
    range,
    (report) => postMessage(report),
    () => turn !== latest,
  );
});
