import { GENERIC_LIMITS } from "../hazard/classify/cut-offs.ts";
import { reaches } from "../hazard/classify/limit.ts";
import { isHazardCode } from "../hazard/texts/hazard-statement.ts";
import { warningAt } from "./fault.ts";
import type { OwnRule } from "./own-faults.ts";
import { statementsOf } from "./schema/hazard-form.ts";
import type { PigmentRecord } from "./schema/pigment.ts";

/** What such a share of a substance that is STOT RE 1 makes of a powder, the graver first. */
const BY_SHARE = GENERIC_LIMITS.filter(({ of }) => of === "STOT RE 1").sort(
  (one, other) => other.from - one.from,
);

/**
 * A paper that gives respirable quartz and classifies the powder as if it held none. Quartz in fine dust scars the
 * lungs, and its makers classify it as STOT RE 1.
 *
 * @source clp-1272-2008 : Table 3.9.4, limits in a mixture
 * @source practice-hazard : that respirable quartz is classified so
 */
export const quartzHazardFaults: OwnRule<PigmentRecord> = function* ({ record, yaml }) {
  const { name, hazards, respirableQuartzPercent: percent = 0 } = record;
  const [limit] = BY_SHARE.filter(({ from }) => reaches(percent / 100, from));
  if (hazards === undefined || limit === undefined) return;
  const stated = statementsOf(record);
  if (stated.includes("H372") || stated.includes(limit.statement)) return;
  // A code that is none may be that very one.
  if (!stated.every(isHazardCode)) return;
  yield warningAt(yaml.place(["respirableQuartzPercent"]), "records/quartz-without-hazard", {
    message: `${name} holds ${percent} % of respirable quartz, and its hazards do not name ${limit.statement}: from ${100 * limit.from} % on a powder is commonly classified so`,
    actual: `${percent} %`,
    expected: limit.statement,
    hint: "ask its supplier for section 2 of a newer safety data sheet",
  });
};
