/**
 * What harms a pigment, light among the rest, where its chemistry gives cause;
 * `sensitivities.csv` says what harms which pigment.
 */
import type { StatementOf } from "../quantities/statement.ts";
import type { SourceKey } from "../sources/source.ts";

export const AGENTS = [
  "light",
  "acid",
  "alkali",
  "sulphur",
  "sulphide pigments",
  "heat",
  "damp",
] as const;
export type Agent = (typeof AGENTS)[number];

/** What happens. */
export const EFFECTS = [
  "bleaches",
  "darkens",
  "browns",
  "reddens",
  "whitens",
  "turns violet",
  "dissolves",
  "loses its ash",
  "fades",
] as const;

/** How far an oil film shields it. */
export const SHIELDINGS = ["shielded", "partly shielded", "not shielded"] as const;

export interface SensitivityRow {
  readonly agent: Agent;
  readonly effect: (typeof EFFECTS)[number];
  readonly inOil: (typeof SHIELDINGS)[number];
  /** Said of old, and not borne out by pictures or trials. */
  readonly disputed?: boolean | undefined;
  readonly source: SourceKey;
}

/** Rule of a sentence, by agent. */
const SENSITIVITY_RULES = {
  light: "harmed-by-light",
  alkali: "harmed-by-alkali",
  acid: "harmed-by-acid",
  sulphur: "harmed-by-sulphur",
  "sulphide pigments": "said-to-be-harmed",
  heat: "harmed-by-heat",
  damp: "harmed-by-damp",
} as const satisfies Readonly<Record<Agent, string>>;

export type SensitivityStatement = StatementOf<
  (typeof SENSITIVITY_RULES)[Agent],
  {
    pigments: readonly string[];
    effect: (typeof EFFECTS)[number];
    inOil: (typeof SHIELDINGS)[number];
  }
>;

export interface NamedPigment {
  readonly name: string;
  /** Rows of the table that hold for it. */
  readonly sensitivities: readonly SensitivityRow[];
}

/** Every row that touches one of the pigments, agent by agent, each naming the pigments it touches. */
export function sensitivityRulings(
  pigments: readonly NamedPigment[],
): { readonly row: SensitivityRow; readonly reason: SensitivityStatement }[] {
  const rows = [...new Set(pigments.flatMap(({ sensitivities }) => sensitivities))];
  return AGENTS.flatMap((agent) =>
    rows
      .filter((row) => row.agent === agent)
      .map((row) => ({
        row,
        reason: {
          rule: row.disputed === true ? ("said-to-be-harmed" as const) : SENSITIVITY_RULES[agent],
          values: {
            pigments: pigments
              .filter(({ sensitivities }) => sensitivities.includes(row))
              .map(({ name }) => name),
            effect: row.effect,
            inOil: row.inOil,
          },
          standing: "estimated" as const,
          source: row.source,
        },
      })),
  );
}
