import { harmonisedLeftOut } from "../hazard/classify/harmonised.ts";
import type { HazardKnowledge } from "../hazard/hazard-knowledge.ts";
import { isHazardCode } from "../hazard/texts/hazard-statement.ts";
import { warningAt, type Faults } from "./fault.ts";
import type { ParsedFiles } from "./parsed-files.ts";

/** Pigments whose hazards leave out what the law itself classifies of them: a label would be too mild. */
export function* harmonisedFaults(
  { pigments }: ParsedFiles,
  { harmonised }: Pick<HazardKnowledge, "harmonised">,
): Faults {
  for (const { record, yaml } of pigments.values()) {
    // What is bought as a mixture goes by its components.
    if (record.hazards === undefined || record.components !== undefined) continue;
    const stated = record.hazards.map((one) => (typeof one === "string" ? one : one.statement));
    const left = harmonisedLeftOut(record, stated, harmonised);
    // A code that is none may be that very one.
    if (left === undefined || !stated.every(isHazardCode)) continue;
    const { what, statements } = left;
    yield warningAt(yaml.place(["hazards"]), "records/harmonised-hazard", {
      message: `The law classifies ${what} with ${statements.join(" or ")}, and the hazards of ${record.name} do not name it`,
      actual: stated.join(", ") || "no hazards",
      expected: statements.join(" | "),
      hint: "ask its supplier for section 2 of a newer safety data sheet",
      source: "clp-annex-6-memory",
    });
  }
}
