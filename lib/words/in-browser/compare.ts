/** What the script that sets colours side by side says. */
import type { ComparisonStatement } from "../../collection/statements.ts";
import type { WordingsOf } from "../../quantities/statement.ts";
import { COMPARE } from "../pages/compare.ts";
import { COMPARISON_RULINGS as IN_EACH } from "../rulings/comparison.ts";
import { wordingsIn } from "../rulings/rulings-in-each.ts";
import { saidIn, type Said } from "../texts.ts";
import { LANGUAGE } from "./language.ts";

export const COMPARE_PAGES: Said<typeof COMPARE> = saidIn(LANGUAGE, COMPARE);

export const COMPARISON_RULINGS: WordingsOf<ComparisonStatement> = wordingsIn(LANGUAGE, IN_EACH);
