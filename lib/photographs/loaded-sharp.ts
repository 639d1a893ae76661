import type sharp from "sharp";
import { importPackage } from "../kept/beside-program.ts";
import { once } from "./once.ts";

/** sharp, loaded when the first picture is read or drawn. It remembers no picture: none is made twice, and each would take its memory. */
export const loadedSharp = once(async () => {
  const loaded = (await importPackage("sharp")) as { readonly default: typeof sharp };
  loaded.default.cache(false);
  // By their number goes what comes out as AVIF, and sharp takes that from the machine, its C library and its settings.
  loaded.default.concurrency(1);
  return loaded.default;
});
