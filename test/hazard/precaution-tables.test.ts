import { describe, expect, test } from "vitest";
import {
  HAZARD_CLASS_NAMES,
  HAZARD_CLASSES,
  type HazardClass,
} from "../../lib/hazard/classify/hazard-class.ts";
import { recommendation } from "../../lib/hazard/label/precautionary-choice.ts";
import type { AcuteRoute } from "../../lib/hazard/texts/hazard-statement.ts";
import { choosablePrecautions } from "../../lib/hazard/texts/precautionary-statement.ts";
import { KNOWLEDGE } from "./knowledge.ts";

/**
 * A table of Annex I of CLP, read in a public copy of the text consolidated on 1 September 2025 or recalled without it,
 * the classes that it is of, and the codes that it gives them.
 */
type LabelElementsOf = readonly [
  table: string,
  basis: "published" | "memory",
  classes: readonly HazardClass[],
  codes: string,
  route?: AcuteRoute,
];

const CMR = "P201 P202 P280 P308+P313 P405 P501";
const LASTING = "P201 P202 P273 P391 P501";

/** Source: clp-1272-2008, Annex I, the table of label elements of each class. */
const LABEL_ELEMENTS: readonly LabelElementsOf[] = [
  [
    "2.6.2",
    "published",
    ["Flam. Liq. 1", "Flam. Liq. 2", "Flam. Liq. 3"],
    "P210 P233 P240 P241 P242 P243 P280 P303+P361+P353 P370+P378 P403+P235 P501",
  ],
  ["2.7.2", "memory", ["Flam. Sol. 1", "Flam. Sol. 2"], "P210 P240 P241 P280 P370+P378"],
  ["2.11.2", "memory", ["Self-heat. 1", "Self-heat. 2"], "P235 P280 P407 P413 P420"],
  [
    "2.12.2",
    "memory",
    ["Water-react. 1", "Water-react. 2"],
    "P223 P231+P232 P280 P302+P335+P334 P370+P378 P402+P404 P501",
  ],
  ["2.12.2", "memory", ["Water-react. 3"], "P231+P232 P280 P370+P378 P402+P404 P501"],
  [
    "2.14.3",
    "memory",
    ["Ox. Sol. 1"],
    "P210 P220 P280 P283 P306+P360 P370+P378 P371+P380+P375 P420 P501",
  ],
  ["2.14.3", "memory", ["Ox. Sol. 2", "Ox. Sol. 3"], "P210 P220 P280 P370+P378 P501"],
  ["2.16.2", "memory", ["Met. Corr. 1"], "P234 P390 P406"],
  [
    "3.1.3, oral",
    "published",
    ["Acute Tox. 1", "Acute Tox. 2", "Acute Tox. 3"],
    "P264 P270 P301+P310 P321 P330 P405 P501",
    "oral",
  ],
  ["3.1.3, oral", "published", ["Acute Tox. 4"], "P264 P270 P301+P312 P330 P501", "oral"],
  [
    "3.1.3, dermal",
    "published",
    ["Acute Tox. 1", "Acute Tox. 2"],
    "P262 P264 P270 P280 P302+P352 P310 P321 P361+P364 P405 P501",
    "dermal",
  ],
  [
    "3.1.3, dermal",
    "published",
    ["Acute Tox. 3"],
    "P280 P302+P352 P312 P321 P361+P364 P405 P501",
    "dermal",
  ],
  [
    "3.1.3, dermal",
    "published",
    ["Acute Tox. 4"],
    "P280 P302+P352 P312 P321 P362+P364 P501",
    "dermal",
  ],
  [
    "3.1.3, inhalation (storage and disposal from memory)",
    "published",
    ["Acute Tox. 1", "Acute Tox. 2"],
    "P260 P271 P284 P304+P340 P310 P320 P403+P233 P405 P501",
    "dust",
  ],
  [
    "3.1.3, inhalation (storage and disposal from memory)",
    "published",
    ["Acute Tox. 3"],
    "P261 P271 P304+P340 P311 P321 P403+P233 P405 P501",
    "vapour",
  ],
  [
    "3.1.3, inhalation (storage and disposal from memory)",
    "published",
    ["Acute Tox. 4"],
    "P261 P271 P304+P340 P312",
    "dust",
  ],
  [
    "3.2.5",
    "memory",
    ["Skin Corr. 1", "Skin Corr. 1A", "Skin Corr. 1B", "Skin Corr. 1C"],
    "P260 P264 P280 P301+P330+P331 P303+P361+P353 P304+P340 P305+P351+P338 P310 P321 P363 P405 P501",
  ],
  ["3.2.5", "memory", ["Skin Irrit. 2"], "P264 P280 P302+P352 P321 P332+P313 P362+P364"],
  ["3.3.5", "memory", ["Eye Dam. 1"], "P280 P305+P351+P338 P310"],
  ["3.3.5", "memory", ["Eye Irrit. 2"], "P264 P280 P305+P351+P338 P337+P313"],
  [
    "3.4.7",
    "published",
    ["Resp. Sens. 1", "Resp. Sens. 1A", "Resp. Sens. 1B"],
    "P261 P284 P304+P340 P342+P311 P501",
  ],
  [
    "3.4.7",
    "published",
    ["Skin Sens. 1", "Skin Sens. 1A", "Skin Sens. 1B"],
    "P261 P272 P280 P302+P352 P321 P333+P313 P362+P364 P501",
  ],
  ["3.5.3", "memory", ["Muta. 1", "Muta. 1A", "Muta. 1B", "Muta. 2"], CMR],
  ["3.6.3", "memory", ["Carc. 1", "Carc. 1A", "Carc. 1B", "Carc. 2"], CMR],
  ["3.7.3", "memory", ["Repr. 1", "Repr. 1A", "Repr. 1B", "Repr. 2"], CMR],
  ["3.7.3", "memory", ["Lact."], "P201 P260 P263 P264 P270 P308+P313"],
  ["3.8.4", "published", ["STOT SE 1"], "P260 P264 P270 P308+P311 P321 P405 P501"],
  ["3.8.4", "published", ["STOT SE 2"], "P260 P264 P270 P308+P311 P405 P501"],
  ["3.8.4", "published", ["STOT SE 3"], "P261 P271 P304+P340 P312 P403+P233 P405 P501"],
  ["3.9.5", "published", ["STOT RE 1"], "P260 P264 P270 P314 P501"],
  ["3.9.5", "published", ["STOT RE 2"], "P260 P314 P501"],
  ["3.10.2", "published", ["Asp. Tox. 1"], "P301+P310 P331 P405 P501"],
  ["3.11", "memory", ["ED HH 1", "ED HH 2"], "P201 P202 P263 P280 P308+P313 P405 P501"],
  [
    "4.1.4",
    "memory",
    ["Aquatic Acute 1", "Aquatic Chronic 1", "Aquatic Chronic 2"],
    "P273 P391 P501",
  ],
  ["4.1.4", "memory", ["Aquatic Chronic 3", "Aquatic Chronic 4"], "P273 P501"],
  ["4.2", "memory", ["ED ENV 1", "ED ENV 2"], "P201 P202 P273 P391 P405 P501"],
  ["4.3, 4.4", "memory", ["PBT", "vPvB", "PMT", "vPvM"], LASTING],
];

/** What the tables give and no label is given here, each with its reason. */
const LEFT_TO_THE_SUPPLIER: Readonly<Record<string, readonly string[]>> = {
  "names an antidote or a measure that is on the label": ["P320", "P321"],
  "said by what to do when it is swallowed": ["P330"],
  "for vessels, stacks and fires of a works": [
    ...["P240", "P241", "P242", "P243", "P283", "P306+P360", "P370+P378", "P371+P380+P375"],
    ...["P407", "P413", "P420"],
  ],
  "needs inert gas; of it P232 is chosen": ["P231+P232"],
  "for first aid with wet bandages": ["P302+P335+P334"],
  "for the package alone": ["P234", "P390", "P406"],
};
const LEFT_OUT = new Set(Object.values(LEFT_TO_THE_SUPPLIER).flat());
/** Gloves and goggles against a burn are gear of a works. */
const BURNS: readonly string[] = [
  "flammable liquid",
  "flammable solid",
  "self-heating",
  "water-reactive",
  "oxidising solid",
];

/** Classes of no paint: their containers come labelled from who filled them. */
const NO_PAINT = /^(Aerosol|Press\. Gas|Ozone)/;

function chosenFor(hazardClass: HazardClass, route: AcuteRoute | undefined): string[] {
  const hazard = { hazardClass, ...(route === undefined ? {} : { route }) };
  return choosablePrecautions(KNOWLEDGE.precautions)
    .filter(({ frame }) => frame !== "UN GHS")
    .filter((row) => ![undefined, "any"].includes(recommendation(row, hazard)?.name))
    .map(({ code }) => code);
}

describe("a hazard is answered by what its table of Annex I gives it, and by nothing else", () => {
  test.each(
    LABEL_ELEMENTS.flatMap(([table, , classes, codes, route]) =>
      classes.map((hazardClass) => ({ table, hazardClass, route, codes: codes.split(" ") })),
    ),
  )("Table $table: $hazardClass $route", ({ hazardClass, route, codes }) => {
    const burns = BURNS.includes(HAZARD_CLASSES[hazardClass].family);
    const expected = codes.filter((code) => !LEFT_OUT.has(code) && !(burns && code === "P280"));
    if (codes.includes("P231+P232")) expected.push("P232");
    expect(chosenFor(hazardClass, route)).toEqual(expected.toSorted());
  });

  test("every class of the EU frame that a paint can be in has its table here", () => {
    const here = new Set(LABEL_ELEMENTS.flatMap(([, , classes]) => classes));
    const wanting = HAZARD_CLASS_NAMES.filter(
      (name) => !here.has(name) && !NO_PAINT.test(name) && !("frame" in HAZARD_CLASSES[name]),
    );
    expect(wanting).toEqual([]);
  });
});
