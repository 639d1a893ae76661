import type { ComparisonStatement } from "../../collection/statements.ts";
import type { ColorimetryStatement } from "../../colorimetry/statements.ts";
import type { DryingStatement } from "../../drying/statements.ts";
import type { FormulationStatement } from "../../formulation/statements.ts";
import type { HazardStatement } from "../../hazard/statements.ts";
import type { LotStatement } from "../../lots/statements.ts";
import type { DrawnCoatStatement } from "../../optics/films/drawn-coat.ts";
import type { OpticsStatement } from "../../optics/statements.ts";
import type { JudgedTintStatement } from "../../optics/tints/tint-statement.ts";
import type { PhotographStatement } from "../../patches/statements.ts";
import type { PermanenceStatement } from "../../permanence/statements.ts";
import type { WordingsOf } from "../../quantities/statement.ts";
import type { Language } from "../../quantities/languages.ts";
import { byRule } from "../by-rule.ts";
import type { StatementWording, Substance } from "../words.ts";
import { COLORIMETRY_RULINGS } from "./colorimetry.ts";
import { COMPARISON_RULINGS } from "./comparison.ts";
import { DRAWDOWN_RULINGS } from "./drawdowns.ts";
import { DRAWN_COAT_RULINGS } from "./drawn-coat.ts";
import { DRYING_RULINGS } from "./drying.ts";
import { EXPECTED_RULINGS } from "./expected.ts";
import { FORMULATION_RULINGS } from "./formulation.ts";
import { LABEL_RULINGS } from "./label.ts";
import { LOT_RULINGS } from "./lots.ts";
import { MARKET_RULINGS } from "./markets.ts";
import { MIXTURE_RULINGS } from "./mixtures.ts";
import { OPACITY_RULINGS } from "./opacity.ts";
import { OPTICS_RULINGS } from "./optics.ts";
import { PATCH_RULINGS } from "./patches.ts";
import { PERMANENCE_RULINGS } from "./permanence.ts";
import { wordingsIn, type NamingRulings } from "./rulings-in-each.ts";
import { STUDIO_RULINGS } from "./studio.ts";

/** What any science states, and what colours side by side do. */
type AnyStatement =
  | ColorimetryStatement
  | ComparisonStatement
  | DrawnCoatStatement
  | DryingStatement
  | FormulationStatement
  | HazardStatement
  | LotStatement
  | OpticsStatement
  | PermanenceStatement
  | PhotographStatement;

/** Of tints a sentence is put together of phrases, which cards and first screens say too. */
const RULINGS: NamingRulings<Exclude<AnyStatement, JudgedTintStatement>> = {
  ...COLORIMETRY_RULINGS,
  ...COMPARISON_RULINGS,
  ...OPTICS_RULINGS,
  ...DRAWDOWN_RULINGS,
  ...OPACITY_RULINGS,
  ...EXPECTED_RULINGS,
  ...DRAWN_COAT_RULINGS,
  ...MIXTURE_RULINGS,
  ...FORMULATION_RULINGS,
  ...DRYING_RULINGS,
  ...PERMANENCE_RULINGS,
  ...LABEL_RULINGS,
  ...STUDIO_RULINGS,
  ...MARKET_RULINGS,
  ...LOT_RULINGS,
  ...PATCH_RULINGS,
};

/** A language's sentences, one for each rule of each science, to be looked up by rule. */
export function rulingsIn(
  language: Language,
  tints: WordingsOf<JudgedTintStatement>,
): Readonly<Record<string, StatementWording>> {
  return byRule<AnyStatement, [substance: Substance]>({
    ...wordingsIn<Exclude<AnyStatement, JudgedTintStatement>, [substance: Substance]>(
      language,
      RULINGS,
    ),
    ...tints,
  });
}
