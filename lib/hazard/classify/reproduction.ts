/**
 * Reproductive toxicity: harm to fertility and harm to the unborn child each have
 * a limit of their own, and the mixture's one statement is put together from both.
 * So a lead pigment gives H360D from .3 % and H360Df from its specific 2.5 %.
 *
 * @source clp-1272-2008 : Table 3.7.2 (read)
 */
import { groupFindings } from "./cut-offs.ts";
import type { Finding } from "./finding.ts";
import type { HazardCode } from "../texts/hazard-statement.ts";
import type { Part } from "./composition.ts";

type Severity = 1 | 2;
/** Severity by effect; `either`: the supplier does not say which. */
interface Effects {
  readonly child?: Severity;
  readonly fertility?: Severity;
  readonly either?: Severity;
}

const EFFECTS: Readonly<Partial<Record<HazardCode, Effects>>> = {
  H360: { either: 1 },
  H360D: { child: 1 },
  H360F: { fertility: 1 },
  H360FD: { child: 1, fertility: 1 },
  H360Df: { child: 1, fertility: 2 },
  H360Fd: { child: 2, fertility: 1 },
  H361: { either: 2 },
  H361d: { child: 2 },
  H361f: { fertility: 2 },
  H361fd: { child: 2, fertility: 2 },
};

/** Generic limits, mass fraction, inclusive: category 1A or 1B, category 2. */
export const REPRODUCTION_LIMITS: Readonly<Record<Severity, number>> = { 1: 0.003, 2: 0.03 };

/** Statement that a specific limit names when it is meant for one effect alone. */
const EFFECT_STATEMENT = {
  child: { 1: "H360D", 2: "H361d" },
  fertility: { 1: "H360F", 2: "H361f" },
  either: { 1: "H360", 2: "H361" },
} as const satisfies Record<keyof Effects, Record<Severity, HazardCode>>;

type Effect = keyof Effects;

/** One finding for the mixture, or none. */
export function reproductionFindings(parts: readonly Part[]): Finding[] {
  const found = (["child", "fertility", "either"] as const).flatMap((effect) =>
    ([1, 2] as const).flatMap((severity) =>
      effectFindings(parts, effect, severity).map((finding) => ({ effect, severity, finding })),
    ),
  );
  if (found.length === 0) return [];
  const worst = (effect: Effect): Severity | undefined =>
    ([1, 2] as const).find((severity) =>
      found.some((each) => each.effect === effect && each.severity === severity),
    );
  const statement = reproductionStatement(worst("child"), worst("fertility"), worst("either"));
  const counted = found.filter(({ effect, severity }) => worst(effect) === severity);
  const hazardClass = counted.map(({ finding }) => finding.hazardClass).sort()[0] ?? "Repr. 2";
  return [
    {
      hazardClass,
      statement,
      certain: true,
      traces: counted.flatMap(({ finding }) =>
        finding.traces.map((trace) => ({ ...trace, statement })),
      ),
    },
  ];
}

function effectFindings(parts: readonly Part[], effect: Effect, severity: Severity): Finding[] {
  return (["Repr. 1", "Repr. 1A", "Repr. 1B", "Repr. 2"] as const).flatMap((of) =>
    groupFindings(parts, {
      select: (by) => by.hazardClass === of && EFFECTS[by.statement]?.[effect] === severity,
      // The fertility part of H360Df is of category 2 although the substance is of category 1A.
      gives: severity === 2 ? "Repr. 2" : of,
      statement: EFFECT_STATEMENT[effect][severity],
      genericFrom: REPRODUCTION_LIMITS[severity],
      source: "clp-1272-2008",
    }),
  );
}

/**
 * The statement for the worst severity of each effect. Where one supplier does
 * not say which effect, the statement that leaves it open covers the others.
 */
export function reproductionStatement(
  child: Severity | undefined,
  fertility: Severity | undefined,
  either: Severity | undefined,
): HazardCode {
  if (either === 1) return "H360";
  const onChild = child ?? either;
  const onFertility = fertility ?? either;
  if (onChild === 1) return onFertility === 1 ? "H360FD" : onFertility === 2 ? "H360Df" : "H360D";
  if (onFertility === 1) return onChild === 2 ? "H360Fd" : "H360F";
  if (either === 2) return "H361";
  return onChild === 2 ? (onFertility === 2 ? "H361fd" : "H361d") : "H361f";
}
