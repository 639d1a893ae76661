import type Sharp from "sharp";

let loaded: Promise<typeof Sharp> | undefined;

/** sharp, loaded when the first picture is read or drawn. It remembers no picture: none is made twice, and each would take its memory. */
export async function loadedSharp(): Promise<typeof Sharp> {
  loaded ??= import("sharp").then(({ default: sharp }) => {
    sharp.cache(false);
    return sharp;
  });
  return loaded;
}
