/**
 * What harms a pigment, where its chemistry gives cause: light where it does more than fade, and what acts beside light.
 *
 * @source memory-permanence
 */
import type { Statement } from "../quantities/statement.ts";
import type { SourceKey } from "../sources/source.ts";

export type Agent = "alkali" | "acid" | "sulphur" | "heat" | "damp" | "light";

export interface SensitivityRow {
  readonly agent: Agent;
  readonly colourIndexNames: readonly string[];
  /** What happens. */
  readonly effect:
    | "bleaches"
    | "darkens"
    | "browns"
    | "reddens"
    | "turns violet"
    | "dissolves"
    | "loses its ash"
    | "fades";
  /** How far an oil film shields it. */
  readonly inOil: "shielded" | "partly shielded" | "not shielded";
  /** Old lore that later trials do not bear out. */
  readonly disputed?: boolean | undefined;
  readonly source: SourceKey;
}

const RECALLED = "memory-permanence";

export const SENSITIVITIES: readonly SensitivityRow[] = [
  {
    agent: "acid",
    colourIndexNames: ["PB 29", "PV 15"],
    effect: "bleaches",
    inOil: "partly shielded",
    source: RECALLED,
  },
  {
    agent: "acid",
    colourIndexNames: ["PW 1", "PW 4", "PW 18"],
    effect: "dissolves",
    inOil: "partly shielded",
    source: RECALLED,
  },
  {
    agent: "acid",
    colourIndexNames: ["PBk 9"],
    effect: "loses its ash",
    inOil: "partly shielded",
    source: RECALLED,
  },
  {
    agent: "light",
    colourIndexNames: ["PR 106"],
    effect: "darkens",
    inOil: "not shielded",
    source: RECALLED,
  },
  {
    agent: "sulphur",
    colourIndexNames: ["PG 21"],
    effect: "darkens",
    inOil: "partly shielded",
    disputed: true,
    source: RECALLED,
  },
  {
    agent: "acid",
    colourIndexNames: ["PY 35", "PY 37", "PO 20", "PR 108"],
    effect: "fades",
    inOil: "shielded",
    source: RECALLED,
  },
  {
    agent: "acid",
    colourIndexNames: ["PB 30", "PG 39", "PR 105"],
    effect: "dissolves",
    inOil: "partly shielded",
    source: RECALLED,
  },
  {
    agent: "acid",
    colourIndexNames: ["PY 40"],
    effect: "fades",
    inOil: "partly shielded",
    source: RECALLED,
  },
  {
    agent: "alkali",
    colourIndexNames: ["PB 27"],
    effect: "browns",
    inOil: "partly shielded",
    source: RECALLED,
  },
  {
    agent: "alkali",
    colourIndexNames: ["PV 16", "PY 40"],
    effect: "fades",
    inOil: "partly shielded",
    source: RECALLED,
  },
  {
    agent: "alkali",
    colourIndexNames: ["PR 83", "NR 4", "NR 9"],
    effect: "turns violet",
    inOil: "partly shielded",
    source: RECALLED,
  },
  {
    agent: "alkali",
    colourIndexNames: ["PW 4"],
    effect: "dissolves",
    inOil: "partly shielded",
    source: RECALLED,
  },
  {
    agent: "alkali",
    colourIndexNames: ["PY 34", "PR 103", "PR 104"],
    effect: "reddens",
    inOil: "partly shielded",
    source: RECALLED,
  },
  {
    agent: "sulphur",
    colourIndexNames: ["PW 1", "PR 105", "PY 34", "PY 41", "PR 103", "PR 104"],
    effect: "darkens",
    inOil: "partly shielded",
    source: RECALLED,
  },
  {
    agent: "sulphur",
    colourIndexNames: ["PB 30", "PG 20", "PG 39"],
    effect: "darkens",
    inOil: "partly shielded",
    source: RECALLED,
  },
  {
    agent: "heat",
    colourIndexNames: ["PB 27"],
    effect: "browns",
    inOil: "not shielded",
    source: RECALLED,
  },
  {
    agent: "heat",
    colourIndexNames: ["PBk 11"],
    effect: "reddens",
    inOil: "not shielded",
    source: RECALLED,
  },
  {
    agent: "heat",
    colourIndexNames: ["PY 42", "PY 43"],
    effect: "reddens",
    inOil: "not shielded",
    source: RECALLED,
  },
  {
    agent: "heat",
    colourIndexNames: ["PG 18"],
    effect: "darkens",
    inOil: "not shielded",
    source: RECALLED,
  },
  {
    agent: "heat",
    colourIndexNames: ["PR 106"],
    effect: "darkens",
    inOil: "not shielded",
    source: RECALLED,
  },
  {
    agent: "damp",
    colourIndexNames: ["PY 35", "PY 37", "PO 20", "PR 108"],
    effect: "fades",
    inOil: "partly shielded",
    source: RECALLED,
  },
  {
    agent: "damp",
    colourIndexNames: ["PY 40"],
    effect: "fades",
    inOil: "shielded",
    source: RECALLED,
  },
];

/** Rule of a sentence, by agent. */
export const SENSITIVITY_RULES: Readonly<Record<Agent, string>> = {
  alkali: "harmed-by-alkali",
  acid: "harmed-by-acid",
  sulphur: "harmed-by-sulphur",
  heat: "harmed-by-heat",
  damp: "harmed-by-damp",
  light: "harmed-by-light",
};

export interface NamedPigment {
  readonly name: string;
  readonly colourIndexName?: string | undefined;
}

/** Every row that touches one of the pigments, in the order of the table, each naming the pigments it touches. */
export function sensitivityRulings(
  pigments: readonly NamedPigment[],
): { readonly row: SensitivityRow; readonly reason: Statement }[] {
  return SENSITIVITIES.flatMap((row) => {
    const touched = pigments
      .filter(
        ({ colourIndexName }) =>
          colourIndexName !== undefined &&
          (row.colourIndexNames.includes(colourIndexName) ||
            row.colourIndexNames.includes(colourIndexName.replace(/:\d+$/, ""))),
      )
      .map(({ name }) => name);
    if (touched.length === 0) return [];
    return [
      {
        row,
        reason: {
          rule: row.disputed === true ? "said-to-be-harmed" : SENSITIVITY_RULES[row.agent],
          values: {
            pigments: touched,
            effect: row.effect,
            inOil: row.inOil,
            ...(row.disputed === true ? { agent: row.agent } : {}),
          },
          standing: "estimated" as const,
          source: row.source,
        },
      },
    ];
  });
}
