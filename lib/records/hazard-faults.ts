import { acuteCategory } from "../hazard/classify/acute-toxicity.ts";
import { genericLimit } from "../hazard/classify/generic-limit.ts";
import { classificationFaults, type HazardFault } from "../hazard/classify/classification.ts";
import { isHazardCode, statementMeaning } from "../hazard/texts/hazard-statement.ts";
import { formulaIdentifierFaults, statedLabelFaults } from "../hazard/label/stated-label.ts";
import { metalRow, type Metal, type MetalTables } from "../hazard/studio/metal-content.ts";
import { heatedMetals } from "../hazard/studio/bench-test.ts";
import { SHARE_ROUNDING } from "../hazard/classify/composition.ts";
import type { PigmentIdentity } from "../hazard/classify/substance.ts";
import type { Diagnostic } from "../diagnostics/diagnostic.ts";
import { amountEnds } from "./amount-ends.ts";
import { errorAt, noteAt, type Faults } from "./fault.ts";
import { hazardMetals } from "./hazard-metals.ts";
import type { OwnRule } from "./own-faults.ts";
import type { ColourRecord } from "./schema/colour.ts";
import type { HazardForm, HazardRecord } from "./schema/hazard-form.ts";
import type { PigmentRecord } from "./schema/pigment.ts";
import type { RecordPath, YamlRecord } from "./yaml-record.ts";

/** Label elements that are of no closed list, each at its line. */
export const labelFaults: OwnRule<ColourRecord> = function* ({ record, yaml }, { hazard }) {
  for (const fault of formulaIdentifierFaults(record.ufi)) yield told(fault, yaml, []);
  if (record.label !== undefined)
    for (const fault of statedLabelFaults(record.label, hazard)) yield told(fault, yaml, ["label"]);
};

type Substance = PigmentIdentity & Omit<HazardRecord, "components">;

/** What a pigment or vehicle states of itself, and the components that it is made of: what is of no closed list or makes no whole. */
export const substanceFaults: OwnRule<Substance & Pick<HazardRecord, "components">> = function* (
  { record, yaml },
  { hazard: { metals: tables } },
) {
  const { components = [], metals = [] } = record;
  yield* classified(record, yaml, [], tables);
  for (const [i, one] of components.entries())
    yield* classified(one, yaml, ["components", i], tables);
  const shares = components.map(({ massFraction }) => amountEnds(massFraction, [])[0]?.value ?? 0);
  yield* wholeFaults(yaml, "components", shares, 1, SHARE_ROUNDING * shares.length);
  yield* wholeFaults(
    yaml,
    "metals",
    metals.map(({ percent = 0 }) => percent),
    100,
  );
};

function* classified(
  substance: Substance,
  yaml: YamlRecord,
  above: RecordPath,
  tables: MetalTables,
): Faults {
  const metals = hazardMetals(substance, tables);
  for (const [i, hazard] of (substance.hazards ?? []).entries()) {
    const at = [...above, "hazards", i];
    const isBare = typeof hazard === "string";
    // A bare code is the whole entry, and what the science calls specific limits a record calls limits.
    for (const { path, ...fault } of formFaults(hazard))
      yield told(
        {
          ...fault,
          path: isBare ? [] : path.map((key) => (key === "specificLimits" ? "limits" : key)),
        },
        yaml,
        at,
      );
    for (const fault of [
      ...besideFaults(hazard),
      ...contradictedEstimate(hazard),
      ...highLimits(hazard),
    ])
      yield told(fault, yaml, at);
    const counted = isBare ? undefined : hazard.countedAs;
    if (counted !== undefined && typeof metals[counted] !== "number")
      yield told(
        {
          path: ["countedAs"],
          message: `A limit is counted as ${counted}, and how much ${counted} there is isn't known: give its percentage under metals, or a CAS number whose formula tells it`,
          actual: "a share that is not known",
          expected: "its percentage under metals, or a CAS number whose formula tells it",
        },
        yaml,
        at,
      );
  }
}

/**
 * An estimate that lies in another category of acute toxicity than the one stated beside it: the mixture
 * would be reckoned by the estimate.
 */
function contradictedEstimate(hazard: HazardForm): (HazardFault & { readonly hint?: string })[] {
  if (typeof hazard === "string" || hazard.ate === undefined || !isHazardCode(hazard.statement))
    return [];
  const { statement, ate } = hazard;
  const meaning = statementMeaning(statement);
  const stated: readonly string[] =
    hazard.hazardClass === undefined ? meaning.classes : [hazard.hazardClass];
  const route = hazard.route ?? (meaning.route === "inhalation" ? undefined : meaning.route);
  if (route === undefined || !(ate > 0) || !stated.some((one) => one.startsWith("Acute Tox. ")))
    return [];
  // The widest frame has every category that a supplier may state.
  const categoryOf = (value: number): string | undefined => acuteCategory(route, value, "UN GHS");
  if (stated.includes(categoryOf(ate) ?? "")) return [];
  const inGrams = stated.includes(categoryOf(1000 * ate) ?? "");
  const unit = route === "oral" || route === "dermal" ? "mg/kg" : "mg/l";
  return [
    {
      path: ["ate"],
      message: `An acute toxicity estimate of ${ate} ${unit} (${route}) is that of ${categoryOf(ate) ?? "no category"}, and ${statement} stands for ${stated.join(" or ")}: the mixture is reckoned by the estimate`,
      actual: String(ate),
      expected: `an estimate of ${stated.join(" or ")}`,
      severity: "warning",
      ...(inGrams && unit === "mg/kg" && { hint: `${1000 * ate} mg/kg, if it was given in g/kg` }),
    },
  ];
}

/**
 * Limits of a substance's own above those that hold for every substance: a supplier may set one so
 * high in exceptional cases alone.
 *
 * @source clp-1272-2008-memory : Article 10(1)
 */
function highLimits(hazard: HazardForm): (HazardFault & { readonly hint?: string })[] {
  if (typeof hazard === "string") return [];
  return (hazard.limits ?? []).flatMap(({ hazardClass, from }, i) => {
    const generic = genericLimit(hazardClass);
    if (generic === undefined || from <= generic * (1 + ROUNDING)) return [];
    const percent = (fraction: number): string => `${Number((100 * fraction).toPrecision(6))} %`;
    const inPercent = from / 100;
    return [
      {
        path: ["limits", i, "from"],
        message: `The limit of ${percent(from)} for ${hazardClass} lies above ${percent(generic)}, which holds for every substance: a supplier may set one so high in exceptional cases alone`,
        actual: String(from),
        expected: `at most ${generic}`,
        severity: "warning",
        hint:
          inPercent <= generic
            ? `${Number(inPercent.toPrecision(6))}, if it was given in percent`
            : "a decimal lost?",
      },
    ];
  });
}

/** What stands beside a statement that has no use for it, and perhaps belongs to its neighbour; an M-factor that is none (CLP, Annex I, table 4.1.3). */
function besideFaults(hazard: HazardForm): HazardFault[] {
  if (typeof hazard === "string" || !isHazardCode(hazard.statement)) return [];
  const { statement, ate, mFactor } = hazard;
  const classes: readonly string[] =
    hazard.hazardClass === undefined ? statementMeaning(statement).classes : [hazard.hazardClass];
  // A class that the statement has nothing to do with is told by itself.
  if (!statementMeaning(statement).classes.some((one) => classes.includes(one))) return [];
  const unused = (
    key: "ate" | "mFactor",
    value: number | undefined,
    what: string,
    of: RegExp,
  ): HazardFault[] =>
    value === undefined || classes.some((one) => of.test(one))
      ? []
      : [
          {
            path: [key],
            message: `${what} is of no use beside ${statement} (${classes.join(", ")}), and nothing is worked out from it`,
            actual: String(value),
            expected: `${key} beside a statement that it is about`,
            severity: "warning",
          },
        ];
  const oddFactor: HazardFault[] =
    mFactor === undefined || /^10*$/.test(String(mFactor))
      ? []
      : [
          {
            path: ["mFactor"],
            message: `M-factors go by tens, and ${mFactor} is none`,
            actual: String(mFactor),
            expected: "1, 10, 100 and on",
            severity: "warning",
          },
        ];
  return [
    ...oddFactor,
    ...unused("ate", ate, "An acute toxicity estimate", /^Acute Tox\. /),
    ...unused("mFactor", mFactor, "An M-factor", /^Aquatic (?:Acute|Chronic) 1$/),
  ];
}

/** A pigment that holds arsenic is never without hazard: an empty list is refused. */
export const arsenicFaults: OwnRule<PigmentRecord> = function* ({ record, yaml }, { hazard }) {
  if (record.hazards?.length === 0 && hazardMetals(record, hazard.metals).arsenic !== undefined)
    yield errorAt(yaml.place(["hazards"]), "records/arsenic-without-hazard", {
      message: `${record.name} holds arsenic, and its list of hazards is empty: arsenic compounds are toxic and carcinogenic`,
      actual: record.name,
      expected: "what section 2 of its supplier's safety data sheet states",
      hint: "without a paper leave the key out, and the colour is treated as hazardous and not offered",
    });
};

/** A test that would heat a metal which must never be heated. */
export const benchTestFaults: OwnRule<PigmentRecord> = function* ({ record, yaml }, { hazard }) {
  const held = Object.keys(hazardMetals(record, hazard.metals)) as Metal[];
  const heated = heatedMetals(
    record.benchTestWith ?? [],
    held.map((metal) => metalRow(metal, hazard.metals)),
  ).map(({ metal }) => metal);
  if (heated.length > 0)
    yield errorAt(yaml.place(["benchTestWith"]), "records/bench-test", {
      message: `This bench test heats a pigment that holds ${heated.join(" and ")}, which must never be heated`,
      actual: heated.join(", "),
      expected: "a test without heat",
    });
};

function formFaults(hazard: HazardForm): HazardFault[] {
  return typeof hazard === "string"
    ? classificationFaults(hazard)
    : classificationFaults({ ...hazard, specificLimits: hazard.limits });
}

/** Room for what a decimal's binary form adds. */
const ROUNDING = 1e-9;

function* wholeFaults(
  yaml: YamlRecord,
  list: "components" | "metals",
  shares: readonly number[],
  whole: number,
  rounded = 0,
): Faults {
  const total = shares.reduce((sum, share) => sum + share, 0);
  if (!(total > whole * (1 + ROUNDING))) return;
  const printed = String(Number(total.toPrecision(6)));
  if (total <= whole * (1 + ROUNDING) + rounded) {
    yield noteAt(yaml.place([list]), "records/rounded-shares", {
      message: `The ${list} add up to ${printed}, which is ${whole} as far as they are rounded; limits are held against each as it stands`,
      actual: printed,
      expected: String(whole),
    });
    return;
  }
  yield told(
    {
      path: [list],
      message: `The ${list} add up to ${printed}, more than ${whole}`,
      actual: printed,
      expected: `at most ${whole}`,
    },
    yaml,
    [],
  );
}

/** What the science finds wrong, at its place in the record. */
function told(
  { path, nearest, ...fault }: HazardFault & { readonly hint?: string },
  { place }: YamlRecord,
  above: RecordPath,
): Diagnostic {
  return errorAt(place([...above, ...path]), "records/hazard", {
    ...fault,
    hint: nearest === undefined ? fault.hint : `nearest: ${nearest}`,
  });
}
