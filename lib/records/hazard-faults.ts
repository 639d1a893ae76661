import { classificationFaults, type HazardFault } from "../hazard/classify/classification.ts";
import { formulaIdentifierFaults, statedLabelFaults } from "../hazard/label/stated-label.ts";
import type { HazardKnowledge } from "../hazard/hazard-knowledge.ts";
import { metalRow, type Metal, type MetalTables } from "../hazard/studio/metal-content.ts";
import { heatedMetals } from "../hazard/studio/bench-test.ts";
import type { PigmentIdentity } from "../hazard/classify/substance.ts";
import type { Diagnostic } from "../diagnostics/diagnostic.ts";
import { amountEnds } from "./amount-ends.ts";
import { hazardMetals } from "./hazard-metals.ts";
import type { ParsedFiles } from "./parsed-files.ts";
import type { Parsed } from "./parsed-record.ts";
import type { HazardForm, HazardRecord } from "./schema/hazard-form.ts";
import type { PigmentRecord } from "./schema/pigment.ts";
import type { RecordPath } from "./yaml-record.ts";

/** Classifications, components and label elements that are of no closed list or make no whole, each at its line. */
export function hazardFaults(
  files: ParsedFiles,
  { metals, precautions }: HazardKnowledge,
): Diagnostic[] {
  const pigments = [...files.pigments.values()].flatMap((parsed) => [
    ...substanceFaults(parsed, parsed.record, metals),
    ...arsenicFaults(parsed, metals),
    ...benchTestFaults(parsed, metals),
  ]);
  const vehicles = [...files.vehicles.values()].flatMap((parsed) => [
    ...substanceFaults(parsed, parsed.record, metals),
  ]);
  const labels = [...files.colours.values()].flatMap((parsed) => {
    const { label, ufi } = parsed.record;
    return [
      ...formulaIdentifierFaults(ufi).map((fault) => diagnostic(fault, parsed, [])),
      ...(label === undefined
        ? []
        : statedLabelFaults(label, precautions).map((fault) =>
            diagnostic(fault, parsed, ["label"]),
          )),
    ];
  });
  return [...pigments, ...vehicles, ...labels];
}

type Substance = PigmentIdentity & Omit<HazardRecord, "components">;

/** What a pigment, vehicle or component states of itself, and the components that it is made of. */
function substanceFaults(
  parsed: Parsed<unknown>,
  record: Substance & Pick<HazardRecord, "components">,
  tables: MetalTables,
): Diagnostic[] {
  const components = record.components ?? [];
  return [
    ...classified(parsed, record, [], tables),
    ...components.flatMap((one, i) => classified(parsed, one, ["components", i], tables)),
    ...(components.length === 0
      ? []
      : wholeFaults(
          parsed,
          "components",
          components.reduce(
            (sum, { massFraction }) => sum + (amountEnds(massFraction, [])[0]?.value ?? 0),
            0,
          ),
          1,
        )),
    ...(record.metals === undefined
      ? []
      : wholeFaults(
          parsed,
          "metals",
          record.metals.reduce((sum, { percent = 0 }) => sum + percent, 0),
          100,
        )),
  ];
}

function classified(
  parsed: Parsed<unknown>,
  substance: Substance,
  above: RecordPath,
  tables: MetalTables,
): Diagnostic[] {
  const metals = hazardMetals(substance, tables);
  return (substance.hazards ?? []).flatMap((hazard, i) => {
    const at = [...above, "hazards", i];
    // A bare code is the whole entry, and what the science calls specific limits a record calls limits.
    const faults = formFaults(hazard).map((fault) =>
      diagnostic(
        {
          ...fault,
          path:
            typeof hazard === "string"
              ? []
              : fault.path.map((key) => (key === "specificLimits" ? "limits" : key)),
        },
        parsed,
        at,
      ),
    );
    const counted = typeof hazard === "string" ? undefined : hazard.countedAs;
    if (counted === undefined || typeof metals[counted] === "number") return faults;
    return [
      ...faults,
      diagnostic(
        {
          path: ["countedAs"],
          message: `A limit is counted as ${counted}, and how much ${counted} there is isn't known: give its percentage under metals, or a CAS number whose formula tells it`,
          actual: "a share that is not known",
          expected: "its percentage under metals, or a CAS number whose formula tells it",
        },
        parsed,
        at,
      ),
    ];
  });
}

/** A pigment that holds arsenic is never without hazard: an empty list is refused. */
function arsenicFaults({ record, yaml }: Parsed<PigmentRecord>, tables: MetalTables): Diagnostic[] {
  if (record.hazards?.length !== 0 || hazardMetals(record, tables).arsenic === undefined) return [];
  return [
    {
      severity: "error",
      rule: "records/arsenic-without-hazard",
      place: yaml.place(["hazards"]),
      message: `${record.name} holds arsenic, and its list of hazards is empty: arsenic compounds are toxic and carcinogenic`,
      actual: record.name,
      expected: "what section 2 of its supplier's safety data sheet states",
      hint: "without a paper leave the key out, and the colour is treated as hazardous and not offered",
    },
  ];
}

/** A test that would heat a metal which must never be heated. */
function benchTestFaults(
  { record, yaml }: Parsed<PigmentRecord>,
  tables: MetalTables,
): Diagnostic[] {
  const { benchTestWith = [] } = record;
  const held = Object.keys(hazardMetals(record, tables)) as Metal[];
  const heated = heatedMetals(
    benchTestWith,
    held.map((metal) => metalRow(metal, tables)),
  );
  return heated.length === 0
    ? []
    : [
        {
          severity: "error",
          rule: "records/bench-test",
          place: yaml.place(["benchTestWith"]),
          message: `This bench test heats a pigment that holds ${heated.map(({ metal }) => metal).join(" and ")}, which must never be heated`,
          actual: heated.map(({ metal }) => metal).join(", "),
          expected: "a test without heat",
        },
      ];
}

function formFaults(hazard: HazardForm): HazardFault[] {
  return typeof hazard === "string"
    ? classificationFaults(hazard)
    : classificationFaults({ ...hazard, specificLimits: hazard.limits });
}

/** Room for what a decimal's binary form adds. */
const ROUNDING = 1e-9;

function wholeFaults(
  parsed: Parsed<unknown>,
  list: "components" | "metals",
  total: number,
  whole: number,
): Diagnostic[] {
  if (total <= whole * (1 + ROUNDING)) return [];
  return [
    diagnostic(
      {
        path: [list],
        message: `The ${list} add up to ${Number(total.toPrecision(6))}, more than ${whole}`,
        actual: String(Number(total.toPrecision(6))),
        expected: `at most ${whole}`,
      },
      parsed,
      [],
    ),
  ];
}

function diagnostic(
  { path, message, actual, expected, nearest, severity }: HazardFault,
  { yaml }: Parsed<unknown>,
  above: RecordPath,
): Diagnostic {
  return {
    severity: severity ?? "error",
    rule: "records/hazard",
    place: yaml.place([...above, ...path]),
    message,
    actual,
    expected,
    ...(nearest === undefined ? {} : { hint: `nearest: ${nearest}` }),
  };
}
