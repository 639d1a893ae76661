import type sharp from "sharp";
import { importPackage } from "../kept/beside-program.ts";
import { once } from "./once.ts";

/** sharp, loaded when the first picture is read or drawn. */
export const loadedSharp = once(async () => {
  const { default: loaded } = (await importPackage("sharp")) as { readonly default: typeof sharp };
  asOnEveryMachine(loaded);
  return loaded;
});

/**
 * It remembers no picture: none is made twice, and each would take its memory. By its number of threads goes
 * what comes out as AVIF, and it takes that from the machine, its C library and its settings.
 */
export function asOnEveryMachine(loaded: Pick<typeof sharp, "cache" | "concurrency">): void {
  loaded.cache(false);
  loaded.concurrency(1);
}
