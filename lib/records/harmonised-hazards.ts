import { harmonisedLeftOut } from "../hazard/classify/harmonised.ts";
import { isHazardCode } from "../hazard/texts/hazard-statement.ts";
import { warningAt } from "./fault.ts";
import type { OwnRule } from "./own-faults.ts";
import { statementsOf } from "./schema/hazard-form.ts";
import type { PigmentRecord } from "./schema/pigment.ts";

/** Pigments whose hazards leave out what the law itself classifies of them: a label would be too mild. */
export const harmonisedFaults: OwnRule<PigmentRecord> = function* ({ record, yaml }, { hazard }) {
  // What is bought as a mixture goes by its components.
  if (record.hazards === undefined || record.components !== undefined) return;
  const stated = statementsOf(record);
  const left = harmonisedLeftOut(record, stated, hazard.harmonised);
  // A code that is none may be that very one.
  if (left === undefined || !stated.every(isHazardCode)) return;
  const { what, statements } = left;
  yield warningAt(yaml.place(["hazards"]), "records/harmonised-hazard", {
    message: `The law classifies ${what} with ${statements.join(" or ")}, and the hazards of ${record.name} do not name it`,
    actual: stated.join(", ") || "no hazards",
    expected: statements.join(" | "),
    hint: "ask its supplier for section 2 of a newer safety data sheet",
    source: "clp-annex-6-memory",
  });
};
