/**
 * The closed list of hazard statement codes, and the classes each one stands for:
 * a record that gives only "H302" is read as Acute Tox. 4, oral.
 *
 * @source clp-1272-2008 : Annex I and Annex III
 */
import { isOneOf } from "../../quantities/members.ts";
import type { HazardClass } from "../classify/hazard-class.ts";

/** Route of acute exposure, with its unit: mg/kg for oral and dermal, mg/l over 4 h for dust (and mist) and vapour. */
export const ACUTE_ROUTES = ["oral", "dermal", "dust", "vapour"] as const;
export type AcuteRoute = (typeof ACUTE_ROUTES)[number];

export interface StatementMeaning {
  /** Classes that carry the statement; the first, the most severe, is taken when a record names none. */
  readonly classes: readonly [HazardClass, ...HazardClass[]];
  readonly route?: "oral" | "dermal" | "inhalation";
}

/** In the order of a label: physical, health, environment. */
export const HAZARD_STATEMENTS = {
  H222: { classes: ["Aerosol 1"] },
  H223: { classes: ["Aerosol 2"] },
  H224: { classes: ["Flam. Liq. 1"] },
  H225: { classes: ["Flam. Liq. 2"] },
  H226: { classes: ["Flam. Liq. 3"] },
  H227: { classes: ["Flam. Liq. 4"] },
  H228: { classes: ["Flam. Sol. 1", "Flam. Sol. 2"] },
  H229: { classes: ["Aerosol 3"] },
  H251: { classes: ["Self-heat. 1"] },
  H252: { classes: ["Self-heat. 2"] },
  H260: { classes: ["Water-react. 1"] },
  H261: { classes: ["Water-react. 2", "Water-react. 3"] },
  H271: { classes: ["Ox. Sol. 1"] },
  H272: { classes: ["Ox. Sol. 2", "Ox. Sol. 3"] },
  H280: { classes: ["Press. Gas"] },
  H290: { classes: ["Met. Corr. 1"] },
  H300: { classes: ["Acute Tox. 1", "Acute Tox. 2"], route: "oral" },
  H301: { classes: ["Acute Tox. 3"], route: "oral" },
  H302: { classes: ["Acute Tox. 4"], route: "oral" },
  H303: { classes: ["Acute Tox. 5"], route: "oral" },
  H304: { classes: ["Asp. Tox. 1"] },
  H305: { classes: ["Asp. Tox. 2"] },
  H310: { classes: ["Acute Tox. 1", "Acute Tox. 2"], route: "dermal" },
  H311: { classes: ["Acute Tox. 3"], route: "dermal" },
  H312: { classes: ["Acute Tox. 4"], route: "dermal" },
  H313: { classes: ["Acute Tox. 5"], route: "dermal" },
  H314: { classes: ["Skin Corr. 1", "Skin Corr. 1A", "Skin Corr. 1B", "Skin Corr. 1C"] },
  H315: { classes: ["Skin Irrit. 2"] },
  H316: { classes: ["Skin Irrit. 3"] },
  H317: { classes: ["Skin Sens. 1", "Skin Sens. 1A", "Skin Sens. 1B"] },
  H318: { classes: ["Eye Dam. 1"] },
  H319: { classes: ["Eye Irrit. 2"] },
  H320: { classes: ["Eye Irrit. 2B"] },
  H330: { classes: ["Acute Tox. 1", "Acute Tox. 2"], route: "inhalation" },
  H331: { classes: ["Acute Tox. 3"], route: "inhalation" },
  H332: { classes: ["Acute Tox. 4"], route: "inhalation" },
  H333: { classes: ["Acute Tox. 5"], route: "inhalation" },
  H334: { classes: ["Resp. Sens. 1", "Resp. Sens. 1A", "Resp. Sens. 1B"] },
  H335: { classes: ["STOT SE 3"] },
  H336: { classes: ["STOT SE 3"] },
  H340: { classes: ["Muta. 1", "Muta. 1A", "Muta. 1B"] },
  H341: { classes: ["Muta. 2"] },
  H350: { classes: ["Carc. 1", "Carc. 1A", "Carc. 1B"] },
  H350i: { classes: ["Carc. 1", "Carc. 1A", "Carc. 1B"] },
  H351: { classes: ["Carc. 2"] },
  H360: { classes: ["Repr. 1", "Repr. 1A", "Repr. 1B"] },
  H360D: { classes: ["Repr. 1", "Repr. 1A", "Repr. 1B"] },
  H360Df: { classes: ["Repr. 1", "Repr. 1A", "Repr. 1B"] },
  H360F: { classes: ["Repr. 1", "Repr. 1A", "Repr. 1B"] },
  H360FD: { classes: ["Repr. 1", "Repr. 1A", "Repr. 1B"] },
  H360Fd: { classes: ["Repr. 1", "Repr. 1A", "Repr. 1B"] },
  H361: { classes: ["Repr. 2"] },
  H361d: { classes: ["Repr. 2"] },
  H361f: { classes: ["Repr. 2"] },
  H361fd: { classes: ["Repr. 2"] },
  H362: { classes: ["Lact."] },
  H370: { classes: ["STOT SE 1"] },
  H371: { classes: ["STOT SE 2"] },
  H372: { classes: ["STOT RE 1"] },
  H373: { classes: ["STOT RE 2"] },
  EUH380: { classes: ["ED HH 1"] },
  EUH381: { classes: ["ED HH 2"] },
  H400: { classes: ["Aquatic Acute 1"] },
  H401: { classes: ["Aquatic Acute 2"] },
  H402: { classes: ["Aquatic Acute 3"] },
  H410: { classes: ["Aquatic Chronic 1"] },
  H411: { classes: ["Aquatic Chronic 2"] },
  H412: { classes: ["Aquatic Chronic 3"] },
  H413: { classes: ["Aquatic Chronic 4"] },
  EUH430: { classes: ["ED ENV 1"] },
  EUH431: { classes: ["ED ENV 2"] },
  EUH440: { classes: ["PBT"] },
  EUH441: { classes: ["vPvB"] },
  EUH450: { classes: ["PMT"] },
  EUH451: { classes: ["vPvM"] },
  H420: { classes: ["Ozone 1"] },
} as const satisfies Record<string, StatementMeaning>;

export type HazardCode = keyof typeof HAZARD_STATEMENTS;
export const HAZARD_CODES = Object.keys(HAZARD_STATEMENTS) as readonly HazardCode[];

/**
 * Statements of classes that nothing is worked out from here: explosives, gases, self-reactive substances,
 * peroxides, what catches fire by itself. A substance that carries one counts as not classified.
 *
 * @source clp-1272-2008 : Annex III
 * @source un-ghs-rev-11 : H209 to H211 and H282 to H284
 */
export const UNRECKONED_HAZARD_CODES = [
  "H200",
  "H201",
  "H202",
  "H203",
  "H204",
  "H205",
  "H206",
  "H207",
  "H208",
  "H209",
  "H210",
  "H211",
  "H220",
  "H221",
  "H230",
  "H231",
  "H232",
  "H240",
  "H241",
  "H242",
  "H250",
  "H270",
  "H281",
  "H282",
  "H283",
  "H284",
] as const;

export function isHazardCode(text: unknown): text is HazardCode {
  return typeof text === "string" && Object.hasOwn(HAZARD_STATEMENTS, text);
}

export function statementMeaning(code: HazardCode): StatementMeaning {
  return HAZARD_STATEMENTS[code];
}

/** Codes in the order of a label, each once. */
export function inLabelOrder(codes: Iterable<HazardCode>): HazardCode[] {
  const wanted = new Set(codes);
  return HAZARD_CODES.filter((code) => wanted.has(code));
}

/** Whether a code is a hazard statement of the law at all, worked out here or not. */
export function isHazardStatement(text: string): boolean {
  return isHazardCode(text) || isOneOf(UNRECKONED_HAZARD_CODES, text);
}
