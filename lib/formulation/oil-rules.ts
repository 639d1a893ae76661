/** What is said of a paint's oil and paste. A rule that is new is named in the list that its sentence belongs to. */
import type { Quantity } from "../quantities/interval.ts";
import { withCases } from "../quantities/statement.ts";
import { oilDemandStatements } from "./cpvc.ts";
import { oilIndexRuling, type OwnPigment } from "./oil-index-class.ts";
import {
  bodyStatement,
  oilSeparationStatement,
  type Body,
  type OilSeparation,
} from "./paste-body.ts";
import { solventStatements } from "./solvent.ts";

export interface OilFacts {
  readonly pigments: readonly OwnPigment[];
  readonly oilIndexGPer100g: Quantity | undefined;
  /** [1] */
  readonly cpvc: Quantity | undefined;
}

/** Of its oil, by mass and by volume. */
export const OIL_RULES = [
  ({ oilIndexGPer100g: oil, pigments }: OilFacts) =>
    oil === undefined ? [] : [oilIndexRuling(oil, pigments).reason],
  ({ cpvc }: OilFacts) => (cpvc === undefined ? [] : oilDemandStatements(cpvc)),
] as const;

export interface PasteFacts {
  /** Names of mediums that hold a solvent of which no amount is recorded. */
  readonly untoldSolvents: readonly string[];
  readonly body: Body | undefined;
  readonly oilSeparation: OilSeparation | undefined;
}

/** Of what is in it, and what the workshop saw of it. */
export const PASTE_RULES = [
  withCases(({ untoldSolvents }: PasteFacts) => solventStatements(untoldSolvents), {
    "medium-holds-solvent": {
      said: [
        { untoldSolvents: ["Alkyd medium"] },
        { untoldSolvents: ["Alkyd medium", "Dammar varnish"] },
      ],
      unsaid: [{ body: "long" }],
    },
  }),
  ({ body }: PasteFacts) => (body === undefined ? [] : [bodyStatement(body)]),
  ({ oilSeparation: parts }: PasteFacts) =>
    parts === undefined ? [] : [oilSeparationStatement(parts)],
] as const;
