import type { RulingWording } from "../words.ts";

/** A sentence for each rule of each science; one file a science. */
export const RULINGS: Readonly<Record<string, RulingWording>> = {};
