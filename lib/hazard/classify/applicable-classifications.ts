/**
 * Which of the ingredients' classifications can bear on a mixture at all: by its
 * form, by its frame, and by what courts have annulled. Each one set aside is
 * named with its cause, so that nothing vanishes.
 *
 * @source clp-article-9 : Article 9(5)
 * @source cjeu-titanium-dioxide
 */
import type { StatementOf } from "../../quantities/statement.ts";
import type { SourceKey } from "../../sources/source.ts";
import type { Classification } from "./classification.ts";
import type { HazardFrame, PaintForm } from "./frame.ts";
import { classElements } from "./hazard-class.ts";
import { ACUTE_ROUTES, statementMeaning, type AcuteRoute } from "../texts/hazard-statement.ts";
import { isSubstance } from "./substance.ts";
import type { Part } from "./composition.ts";

interface OfIngredient {
  /** Slug and name. */
  readonly ingredient: string;
  readonly name: string;
}
interface InFrame extends OfIngredient {
  readonly form: PaintForm;
  readonly frame: HazardFrame;
}

/** Why a classification can bear on no mixture of the form, or in no label of the frame. */
export type SetAsideStatement =
  | StatementOf<"entry-annulled", InFrame>
  | StatementOf<"category-not-in-frame", InFrame>
  | StatementOf<"dust-not-from-a-paste", InFrame>
  | StatementOf<"vapour-not-from-a-powder", InFrame>;

/** Why a physical class of an ingredient does not carry over. */
export type PhysicalLeftOutStatement =
  | StatementOf<"not-a-liquid", OfIngredient>
  | StatementOf<"flash-point-decides", OfIngredient>
  | StatementOf<"flammable-trace", OfIngredient>
  | StatementOf<"too-viscous-to-aspirate", OfIngredient>
  | StatementOf<"needs-a-test-of-the-mixture", OfIngredient>;

/** Why a statement of an ingredient does not stand on the label. */
export type LeftOutStatement =
  | SetAsideStatement
  | PhysicalLeftOutStatement
  | StatementOf<
      "below-its-limit",
      {
        readonly ingredients: readonly string[];
        readonly massFraction: number;
        readonly limit?: number;
        /** Of an acute toxicity: what the mixture is estimated at, and the end of the last category. */
        readonly ate?: number;
        readonly upTo?: number;
        readonly unit?: "mg/kg" | "mg/l";
        /** Of an acute toxicity: ingredients beside these that the estimate reckons with. */
        readonly others?: readonly string[];
      }
    >
  | StatementOf<"covered-by", { readonly by: string }>;

/** A statement of an ingredient that the mixture does not take on, or that another one covers. */
export type LeftOut = LeftOutStatement & { readonly statement: string };

/** Routes of acute exposure that a form allows: a paste gives off no dust, a powder no vapour. */
export function acuteRoutes(form: PaintForm): readonly AcuteRoute[] {
  if (form === "paste") return ACUTE_ROUTES.filter((route) => route !== "dust");
  return form === "powder" ? ACUTE_ROUTES.filter((route) => route !== "vapour") : ACUTE_ROUTES;
}

/**
 * The route of an inhalation hazard whose record does not say it: vapour from a
 * liquid that burns or can be drawn into the lungs, else dust.
 */
export function inhalationRoute(part: Pick<Part, "classifications">): AcuteRoute {
  const volatile = part.classifications.some(({ hazardClass }) =>
    ["flammable liquid", "aspiration"].includes(classElements(hazardClass).family),
  );
  return volatile ? "vapour" : "dust";
}

/** The parts with only those classifications that count here, and why the others do not. */
export function applicableParts(
  parts: readonly Part[],
  form: PaintForm,
  frame: HazardFrame,
): { readonly parts: readonly Part[]; readonly leftOut: readonly LeftOut[] } {
  const leftOut: LeftOut[] = [];
  const kept = parts.map((part) => ({
    ...part,
    classifications: part.classifications.filter((by) => {
      const cause = setAside(part, by, form, frame);
      if (cause !== undefined) {
        leftOut.push({
          statement: by.statement,
          rule: cause.rule,
          values: { ingredient: part.slug, name: part.name, form, frame },
          source: cause.source,
        });
      }
      return cause === undefined;
    }),
  }));
  return { parts: kept, leftOut };
}

function setAside(
  part: Part,
  by: Classification,
  form: PaintForm,
  frame: HazardFrame,
): { readonly rule: SetAsideStatement["rule"]; readonly source: SourceKey } | undefined {
  if (frame === "EU CLP" && by.statement === "H351" && isSubstance(part, "titanium dioxide")) {
    return { rule: "entry-annulled", source: "cjeu-titanium-dioxide" };
  }
  const known = classElements(by.hazardClass).frame;
  if (known !== undefined && known !== frame)
    return { rule: "category-not-in-frame", source: "clp-1272-2008" };
  const isInhaled = statementMeaning(by.statement).route === "inhalation";
  const route = by.route ?? (isInhaled ? inhalationRoute(part) : undefined);
  if (route === "dust" && form === "paste")
    return { rule: "dust-not-from-a-paste", source: "clp-article-9" };
  if (route === "vapour" && form === "powder")
    return { rule: "vapour-not-from-a-powder", source: "clp-article-9" };
  return undefined;
}
