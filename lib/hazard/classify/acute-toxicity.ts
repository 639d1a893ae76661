/**
 * Acute toxicity of a mixture from its ingredients' estimates (ATE-mix).
 *
 * @source clp-1272-2008 : Annex I, 3.1.3.6; Tables 3.1.1 and 3.1.2
 * @source unece-acute-2008
 */
import { requirePositive } from "../../quantities/positive.ts";
import { domainError } from "../../diagnostics/diagnostic.ts";
import { isOfFrame, type HazardFrame } from "./frame.ts";
import type { HazardClass } from "./hazard-class.ts";
import {
  ACUTE_ROUTES,
  HAZARD_CODES,
  statementMeaning,
  type AcuteRoute,
  type HazardCode,
} from "../texts/hazard-statement.ts";
import { findingBy, traceShare, type Finding } from "./finding.ts";
import { inhalationRoute } from "./applicable-classifications.ts";
import { passes, reaches } from "./limit.ts";
import type { Part } from "./composition.ts";
import { certain } from "../../quantities/at.ts";

export type AcuteClass = Extract<HazardClass, `Acute Tox. ${number}`>;

interface AcuteCategory {
  readonly hazardClass: AcuteClass;
  /** Largest estimate still in the category, inclusive: mg/kg oral and dermal, mg/l over 4 h dust and vapour. */
  readonly upTo: Readonly<Partial<Record<AcuteRoute, number>>>;
  /** Point estimate that stands for the category in a sum. */
  readonly pointEstimate: Readonly<Record<AcuteRoute, number>>;
  readonly frame?: HazardFrame;
}

/** Most toxic first. */
const ACUTE_CATEGORIES = [
  {
    hazardClass: "Acute Tox. 1",
    upTo: { oral: 5, dermal: 50, dust: 0.05, vapour: 0.5 },
    pointEstimate: { oral: 0.5, dermal: 5, dust: 0.005, vapour: 0.05 },
  },
  {
    hazardClass: "Acute Tox. 2",
    upTo: { oral: 50, dermal: 200, dust: 0.5, vapour: 2 },
    pointEstimate: { oral: 5, dermal: 50, dust: 0.05, vapour: 0.5 },
  },
  {
    hazardClass: "Acute Tox. 3",
    upTo: { oral: 300, dermal: 1000, dust: 1, vapour: 10 },
    pointEstimate: { oral: 100, dermal: 300, dust: 0.5, vapour: 3 },
  },
  {
    hazardClass: "Acute Tox. 4",
    upTo: { oral: 2000, dermal: 2000, dust: 5, vapour: 20 },
    pointEstimate: { oral: 500, dermal: 1100, dust: 1.5, vapour: 11 },
  },
  {
    hazardClass: "Acute Tox. 5",
    frame: "UN GHS",
    upTo: { oral: 5000, dermal: 5000 },
    pointEstimate: { oral: 2500, dermal: 2500, dust: 5, vapour: 20 },
  },
] as const satisfies readonly AcuteCategory[];

const CATEGORIES: readonly AcuteCategory[] = ACUTE_CATEGORIES;

/** From which fraction an ingredient counts: categories 1 to 3, then the rest (Annex I, Table 1.1). */
const RELEVANT = { toxic: 0.001, harmful: 0.01 } as const;
/** Unknown ingredients above this share are taken out of the mixture that is reckoned with. */
const UNKNOWN_SHARE = 0.1;

/** One ingredient in the sum: its fraction and its estimate in the unit of the route. */
export interface AcutePart {
  readonly massFraction: number;
  readonly ate: number | "not toxic" | "unknown";
}

/**
 * ATE of a mixture.
 *
 *     100 / ATEmix = sum(Ci / ATEi)
 *     (100 - sum(Cunknown, if > 10 %)) / ATEmix = sum(Ci / ATEi)
 *
 * @returns in the unit of the parts' estimates; undefined when no part is toxic.
 * @throws RangeError for a fraction outside 0-1 or an estimate that is not positive.
 * @source clp-1272-2008 : Annex I, 3.1.3.6.1 and 3.1.3.6.2.3
 * @example ateMix([{ massFraction: .04, ate: 1737 }, { massFraction: .96, ate: "not toxic" }]) // 43425
 */
export function ateMix(parts: readonly AcutePart[]): number | undefined {
  let unknown = 0;
  let inverse = 0;
  for (const { massFraction, ate } of parts) {
    if (!(massFraction >= 0 && massFraction <= 1))
      throw domainError("mass fraction", massFraction, "0 <= fraction <= 1");
    if (ate === "unknown") unknown += massFraction;
    else if (ate !== "not toxic") {
      requirePositive("acute toxicity estimate", ate, "", "ATE");
      inverse += massFraction / ate;
    }
  }
  const reckoned = passes(unknown, UNKNOWN_SHARE) ? Math.max(0, 1 - unknown) : 1;
  return inverse > 0 ? reckoned / inverse : undefined;
}

/**
 * Category of an estimate; a value on a limit belongs to the more toxic one.
 * @returns undefined above the last category of the frame.
 */
export function acuteCategory(
  route: AcuteRoute,
  ate: number,
  frame: HazardFrame,
): AcuteClass | undefined {
  if (!(ate >= 0)) throw domainError("acute toxicity estimate", ate, "0 <= ATE");
  return CATEGORIES.find(
    (category) => isOfFrame(category, frame) && reaches(category.upTo[route] ?? -1, ate),
  )?.hazardClass;
}

/** Largest estimate that is still classified by a route, in its unit. */
function acuteUpTo(route: AcuteRoute, frame: HazardFrame): number {
  return Math.max(
    ...CATEGORIES.filter((category) => isOfFrame(category, frame)).map(
      ({ upTo }) => upTo[route] ?? 0,
    ),
  );
}

/** Point estimate that stands for a category where no estimate is stated. */
export function pointEstimate(hazardClass: AcuteClass, route: AcuteRoute): number {
  const category = certain(CATEGORIES.find((each) => each.hazardClass === hazardClass));
  return category.pointEstimate[route];
}

/** What one route comes to. */
export interface AcuteOutcome {
  readonly route: AcuteRoute;
  readonly finding?: Finding;
  /** What all relevant ingredients together bring the mixture to, classified or not; left out where none is toxic. */
  readonly estimate?: {
    readonly ate: number;
    /** Largest estimate that is still classified, in the same unit. */
    readonly upTo: number;
    readonly unit: "mg/kg" | "mg/l";
    /** Slugs of those that were reckoned with. */
    readonly ingredients: readonly string[];
  };
  /** Ingredients of unknown toxicity, 1 % or more each, and the share they make up; for the line on the label. */
  readonly unknown: { readonly slugs: readonly string[]; readonly massFraction: number };
}

interface KnownAcute {
  readonly part: Part;
  readonly ate: number;
  /** The stated class that the estimate stands for, where no estimate is stated. */
  readonly hazardClass?: AcuteClass;
  readonly statement?: Finding["traces"][number]["shares"][number];
}

/**
 * Acute toxicity of a mixture by each route that matters for its form.
 *
 * @param routes those that the form allows: a paste gives off no dust.
 * @param unaccounted share that no ingredient accounts for: unknown as well.
 */
export function acuteOutcomes(
  parts: readonly Part[],
  routes: readonly AcuteRoute[],
  frame: HazardFrame,
  unaccounted: number,
): AcuteOutcome[] {
  return ACUTE_ROUTES.filter((route) => routes.includes(route)).map((route) =>
    acuteOutcome(parts, route, frame, unaccounted),
  );
}

function acuteOutcome(
  parts: readonly Part[],
  route: AcuteRoute,
  frame: HazardFrame,
  unaccounted: number,
): AcuteOutcome {
  const toxic: KnownAcute[] = [];
  const unknown: { readonly slug: string; readonly massFraction: number }[] = [];
  for (const part of parts) {
    const datum = acuteDatum(part, route);
    if (datum === "unknown") {
      if (reaches(part.massFraction, RELEVANT.harmful)) unknown.push(part);
    } else if (datum !== "not toxic") {
      const category = acuteCategory(route, datum.ate, frame);
      const floor =
        category === "Acute Tox. 4" || category === "Acute Tox. 5"
          ? RELEVANT.harmful
          : RELEVANT.toxic;
      if (category !== undefined && reaches(part.massFraction, floor))
        toxic.push({ part, ...datum });
    }
  }
  if (reaches(unaccounted, RELEVANT.harmful))
    unknown.push({ slug: UNACCOUNTED, massFraction: unaccounted });
  const unknownFraction = Math.min(
    1,
    unknown.reduce((sum, each) => sum + each.massFraction, 0),
  );
  const mixed = ateMix([
    ...toxic.map(({ part, ate }) => ({ massFraction: part.massFraction, ate })),
    { massFraction: unknownFraction, ate: "unknown" as const },
  ]);
  const ingredients = toxic.map(({ part }) => part.slug);
  const unit = ateUnit(route);
  const outcome = {
    route,
    unknown: { slugs: unknown.map(({ slug }) => slug), massFraction: unknownFraction },
    ...(mixed !== undefined && {
      estimate: { ate: mixed, upTo: acuteUpTo(route, frame), unit, ingredients },
    }),
  };
  const hazardClass =
    mixed === undefined ? undefined : (wholeClass(toxic) ?? acuteCategory(route, mixed, frame));
  if (mixed === undefined || hazardClass === undefined) return outcome;
  const statement = acuteStatement(hazardClass, route);
  const category = CATEGORIES.find((row) => row.hazardClass === hazardClass);
  const limit = certain(category).upTo[route];
  return {
    ...outcome,
    finding: {
      route,
      ...findingBy(hazardClass, {
        statement,
        rule: "ate-mix",
        source: "clp-1272-2008",
        values: {
          hazardClass,
          route,
          ateMix: mixed,
          ...(limit !== undefined && { limit }),
          unit,
          unknownFraction,
          ingredients,
        },
        shares: toxic.map(({ part, statement: share }) => share ?? traceShare(part)),
      }),
    },
  };
}

/**
 * A material that is one substance alone has the class that its supplier states: the
 * point estimate of a class can lie on the limit of the next.
 */
function wholeClass(toxic: readonly KnownAcute[]): AcuteClass | undefined {
  const [only, ...others] = toxic;
  return only !== undefined && others.length === 0 && reaches(only.part.massFraction, 1)
    ? only.hazardClass
    : undefined;
}

/** Stands for the missing share among the slugs of a reason: no slug can hold a bracket. */
export const UNACCOUNTED = "(unaccounted)";

function ateUnit(route: AcuteRoute): "mg/kg" | "mg/l" {
  return route === "oral" || route === "dermal" ? "mg/kg" : "mg/l";
}

/** What is known of one ingredient by one route: the datum first, else the most toxic class of that route. */
function acuteDatum(
  part: Part,
  route: AcuteRoute,
): "unknown" | "not toxic" | Omit<KnownAcute, "part"> {
  const datum = part.acuteToxicity.find((each) => each.route === route);
  if (datum !== undefined) {
    if (datum.ate === "unknown") return "unknown";
    return datum.ate === "above the limit dose" ? "not toxic" : { ate: datum.ate };
  }
  if (!part.known) return "unknown";
  const stated = part.classifications.flatMap((by) => {
    const { hazardClass } = by;
    if (!isAcute(hazardClass) || (by.route ?? inhalationRoute(part)) !== route) return [];
    return {
      ate: by.ate ?? pointEstimate(hazardClass, route),
      statement: traceShare(part, by),
      ...(by.ate === undefined ? { hazardClass } : {}),
    };
  });
  return stated.sort((one, other) => one.ate - other.ate)[0] ?? "not toxic";
}

export function isAcute(hazardClass: HazardClass): hazardClass is AcuteClass {
  return hazardClass.startsWith("Acute Tox.");
}

function acuteStatement(hazardClass: AcuteClass, route: AcuteRoute): HazardCode {
  const exposure = route === "dust" || route === "vapour" ? "inhalation" : route;
  const code = certain(
    HAZARD_CODES.find(
      (each) =>
        statementMeaning(each).route === exposure &&
        statementMeaning(each).classes.some((known) => known === hazardClass),
    ),
  );
  return code;
}
