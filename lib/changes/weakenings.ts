/** What of a thing's changes takes a caution away, or puts one in its place. */
import { classElements } from "../hazard/classify/hazard-class.ts";
import { COVERED_BY } from "../hazard/classify/precedence.ts";
import { isHazardCode, statementMeaning } from "../hazard/texts/hazard-statement.ts";
import type { Change, ChangedThing } from "./changes-between.ts";
import { given } from "../quantities/given.ts";

type CautionChange = Extract<Change, { readonly kind: "cautions" }>;

/** A caution that says less than before, or another in its place of which nobody can say whether it says less. */
export interface Weakening {
  readonly is: "weaker" | "another";
  readonly change: Change;
}

/** Signal words by their weight: CLP, Article 20(3) has Danger stand alone where both would. @source clp */
const WEIGHT: Readonly<Record<string, number>> = { Danger: 2, Warning: 1 };

/**
 * A signal word of less weight or none; pictograms, statements and cautions that are no longer given. A hazard statement
 * for whose class a graver category has come is none of them.
 */
export function weakenings({ what, changes }: ChangedThing): Weakening[] {
  if (what !== "colour") return [];
  return changes.flatMap((change): Weakening[] => {
    if (change.kind === "signal word")
      return (WEIGHT[change.before ?? ""] ?? 0) > (WEIGHT[change.now ?? ""] ?? 0)
        ? [{ is: "weaker", change }]
        : [];
    return change.kind === "cautions" && change.went.length > 0 ? ofList(change) : [];
  });
}

function ofList(change: CautionChange): Weakening[] {
  const { went, came } = change;
  if (change.of !== "hazardStatements")
    return came.length === 0 ? [{ is: "weaker", change }] : [{ is: "another", change }];
  const those = (verdict: Verdict): string[] =>
    went.filter((code) => statementVerdict(code, came) === verdict);
  const [weaker, another] = [those("weaker"), those("another")];
  return given([
    weaker.length > 0 && ({ is: "weaker", change: { ...change, went: weaker, came: [] } } as const),
    another.length > 0 && ({ is: "another", change: { ...change, went: another } } as const),
  ]);
}

type Verdict = "weaker" | "another" | "stronger";

/** A statement that went beside those that came: by the categories of its class, where one of this class came, and by what covers it. @source clp-1272-2008 */
function statementVerdict(went: string, came: readonly string[]): Verdict {
  const old = categories(went);
  if (COVERED_BY.some(({ statement, by }) => statement === went && came.includes(by)))
    return "stronger";
  if (old === undefined) return came.length === 0 ? "weaker" : "another";
  const verdicts = came.flatMap((code): Verdict[] => {
    const own = categories(code);
    if (own === undefined || own.family !== old.family || own.route !== old.route) return [];
    return own.mildest < old.gravest
      ? ["stronger"]
      : own.gravest > old.mildest
        ? ["weaker"]
        : ["another"];
  });
  return (["stronger", "another"] as const).find((one) => verdicts.includes(one)) ?? "weaker";
}

interface Categories {
  readonly family: string;
  readonly route: string | undefined;
  /** Ranks of the categories that the statement stands for, 1 the gravest. */
  readonly gravest: number;
  readonly mildest: number;
}

function categories(code: string): Categories | undefined {
  if (!isHazardCode(code)) return undefined;
  const { classes, route } = statementMeaning(code);
  const rows = classes.map(classElements);
  const [first] = rows;
  if (first === undefined || rows.some(({ family }) => family !== first.family)) return undefined;
  const ranks = rows.map(({ rank }) => rank);
  return { family: first.family, route, gravest: Math.min(...ranks), mildest: Math.max(...ranks) };
}
