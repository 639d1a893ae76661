import type { InEach } from "./in-each.ts";
import { SEMICOLON as de } from "./de/phrases.ts";
import { SEMICOLON as en } from "./en/phrases.ts";
import { SEMICOLON as es } from "./es/phrases.ts";
import { SEMICOLON as fr } from "./fr/phrases.ts";

/** Between parts of a line that have commas of their own. */
export const SEMICOLONS: InEach = { en, de, fr, es };
