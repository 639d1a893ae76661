import { classificationFaults, type HazardFault } from "../hazard/classification.ts";
import { statedLabelFaults } from "../hazard/stated-label.ts";
import type { Diagnostic } from "../diagnostics/diagnostic.ts";
import type { Parsed, ParsedFiles } from "./parsed-files.ts";
import type { HazardForm } from "./schema/hazard-form.ts";
import type { RecordPath } from "./yaml-record.ts";

/** Classifications and label elements that are of no closed list, each at its line. */
export function hazardFaults(files: ParsedFiles): Diagnostic[] {
  const stated = [...files.pigments.values(), ...files.vehicles.values()].flatMap((parsed) => classified(parsed, parsed.record.hazards ?? []));
  const labels = [...files.colours.values()].flatMap((parsed) => {
    const { label } = parsed.record;
    return label === undefined ? [] : statedLabelFaults(label).map((fault) => diagnostic(fault, parsed, ["label"]));
  });
  return [...stated, ...labels];
}

function classified(parsed: Parsed<unknown>, hazards: readonly HazardForm[]): Diagnostic[] {
  return hazards.flatMap((hazard, i) => {
    const faults = typeof hazard === "string" ? classificationFaults(hazard) : classificationFaults({ ...hazard, specificLimits: hazard.limits });
    // A bare code is the whole entry, and what the science calls specific limits a record calls limits.
    return faults.map((fault) => diagnostic({ ...fault, path: typeof hazard === "string" ? [] : fault.path.map((key) => (key === "specificLimits" ? "limits" : key)) }, parsed, ["hazards", i]));
  });
}

function diagnostic({ path, subject, actual, expected, nearest }: HazardFault, { yaml }: Parsed<unknown>, above: RecordPath): Diagnostic {
  return {
    severity: "error", rule: "records/hazard", place: yaml.place([...above, ...path]), subject, actual, expected,
    ...(nearest === undefined ? {} : { hint: `nearest \`${nearest}\`` }),
  };
}
