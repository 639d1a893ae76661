import { childrenOf, elementAt, type CxfElement } from "./cxf-tree.ts";
import type { ReadText, Spotter } from "./fault-list.ts";
import {
  angledGeometry,
  saysPolarised,
  sphereGeometry,
  type FoundGeometry,
} from "./found-geometry.ts";
import { foundViewing } from "./found-observer.ts";
import type { FoundViewing, WrittenCell } from "./reading-column.ts";

/** Under what conditions the objects that name it were measured and reckoned. */
export interface CxfSpecification {
  readonly viewing: FoundViewing;
  /** As written; the spectrum may say it again. */
  readonly startNm?: WrittenCell;
  readonly stepNm?: WrittenCell;
  readonly geometry?: FoundGeometry;
  readonly geometryText?: string;
  readonly isPolarised?: true;
  readonly instrument?: string;
}

/** Specifications of a document by Id; complains of an Id that comes twice. */
export function cxfSpecifications(
  resources: CxfElement | undefined,
  { spot, faults }: ReadText,
): Map<string, CxfSpecification> {
  const specifications = new Map<string, CxfSpecification>();
  for (const element of childrenOf(
    elementAt(resources, "ColorSpecificationCollection"),
    "ColorSpecification",
  )) {
    const id = element.attributes.get("Id");
    if (id === undefined) {
      faults.error("cxf-specification", spot(element.start), {
        message: "A ColorSpecification has no Id",
        actual: "nothing",
        expected: "an Id",
      });
    } else if (specifications.has(id.value)) {
      faults.error("cxf-specification", spot(id.start), {
        message: `Two ColorSpecifications have the Id ${id.value}`,
        actual: id.value,
        expected: "each Id once",
      });
    } else {
      specifications.set(id.value, specificationOf(element, spot));
    }
  }
  return specifications;
}

/** The cell of an attribute; undefined when it is missing. */
export function attributeCell(
  element: CxfElement | undefined,
  name: string,
  spot: Spotter,
): WrittenCell | undefined {
  const attribute = element?.attributes.get(name);
  return attribute && { text: attribute.value, ...spot(attribute.start) };
}

function specificationOf(element: CxfElement, spot: Spotter): CxfSpecification {
  const tristimulus = elementAt(element, "TristimulusSpec");
  const measurement = elementAt(element, "MeasurementSpec");
  const range = elementAt(measurement, "WavelengthRange");
  const startNm = attributeCell(range, "StartWL", spot);
  const stepNm = attributeCell(range, "Increment", spot);
  const choice = elementAt(measurement, "GeometryChoice");
  const geometry = geometryOf(choice);
  const geometryText = leafWords(choice);
  const instrument = leafWords(elementAt(measurement, "Device"));
  const isPolarised = saysPolarised(leafWords(measurement));
  return {
    viewing: foundViewing(
      elementAt(tristimulus, "Illuminant")?.text,
      elementAt(tristimulus, "Observer")?.text,
    ),
    ...(startNm ? { startNm } : {}),
    ...(stepNm ? { stepNm } : {}),
    ...(geometry !== undefined && { geometry }),
    ...(geometryText ? { geometryText } : {}),
    ...(isPolarised && { isPolarised }),
    ...(instrument ? { instrument } : {}),
  };
}

function geometryOf(choice: CxfElement | undefined): FoundGeometry | undefined {
  // The schema of the core names it by the first; files with the other are about.
  const sphere = elementAt(choice, "SphereGeometry") ?? elementAt(choice, "Sphere");
  if (sphere) return sphereGeometry(specularWords(sphere));
  const single = elementAt(choice, "SingleAngle");
  const lighting = angleOf(single, "IlluminationAngle");
  const viewing = angleOf(single, "MeasurementAngle");
  if (lighting !== undefined && viewing !== undefined) return angledGeometry(lighting, viewing);
  return choice && choice.children.length > 0 && !single ? "other" : undefined;
}

function angleOf(single: CxfElement | undefined, name: string): number | undefined {
  const words = elementAt(single, name)?.text ?? single?.attributes.get(name)?.value ?? "";
  return /^\d+(?:\.0+)?$/.test(words) ? Number(words) : undefined;
}

/** All that is said inside a sphere; a part named after a mode counts as its opposite when it says no. */
function specularWords(sphere: CxfElement): string {
  return leaves(sphere)
    .map(({ name, words }) => {
      if (!/^(?:false|no|0)$/i.test(words))
        return `${/^(?:true|yes|1)$/i.test(words) ? name : ""} ${words}`;
      return /includ/i.test(name) ? "excluded" : /exclud/i.test(name) ? "included" : "";
    })
    .join(" ");
}

/** Words of all leaves of an element, for print. */
function leafWords(element: CxfElement | undefined): string {
  if (element === undefined) return "";
  const words = leaves(element).map((leaf) => leaf.words);
  return [
    ...element.children.filter((child) => child.children.length > 0).map((child) => child.name),
    ...words,
  ]
    .filter((word) => word !== "")
    .join(" ")
    .slice(0, 200);
}

/** Attributes and texts in an element, each with the name of what holds it. */
function leaves(element: CxfElement): { readonly name: string; readonly words: string }[] {
  const attributes = [...element.attributes].map(([name, { value }]) => ({ name, words: value }));
  const own = element.text === "" ? [] : [{ name: element.name, words: element.text }];
  return [...attributes, ...own, ...element.children.flatMap(leaves)];
}
