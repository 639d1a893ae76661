import type { Knowledge } from "../knowledge/pigment-knowledge.ts";
import { parentName } from "../quantities/colour-index-name.ts";
import { nearestHint } from "../diagnostics/nearest-word.ts";
import { warningAt, type Faults } from "./fault.ts";
import type { OwnRule } from "./own-faults.ts";
import type { ParsedFiles } from "./parsed-files.ts";
import type { PigmentRecord } from "./schema/pigment.ts";

/** What tells one pigment from another beside its record's own words. */
interface Identity {
  readonly colourIndexName: string;
  readonly kind: string | undefined;
  readonly formula: string | undefined;
  readonly constitutionNumbers: readonly string[];
}

/** One CAS number on two pigments that are no kin: labels name a substance by that number. */
export function* casFaults({ pigments }: ParsedFiles, knowledge: Knowledge): Faults {
  const known = [...pigments.values()].flatMap(({ record, yaml }) => {
    const { casNumber, colourIndexName } = record;
    const identity = identityOf(colourIndexName, knowledge);
    // A number that is known to be another pigment's is told of that one record.
    return casNumber === undefined ||
      identity === undefined ||
      foreignNumber(record, knowledge) !== undefined
      ? []
      : [{ record, yaml, casNumber, identity }];
  });
  for (const [i, { yaml, casNumber, identity }] of known.entries()) {
    const other = known
      .slice(0, i)
      .find((before) => before.casNumber === casNumber && areStrangers(before.identity, identity));
    if (other === undefined) continue;
    yield warningAt(yaml.place(["casNumber"]), "records/cas-shared", {
      message: `The CAS number ${casNumber} is that of ${other.record.name} (${other.identity.colourIndexName}) too, which is another substance than ${identity.colourIndexName}: labels name substances by that number`,
      actual: casNumber,
      expected: `the number of ${identity.colourIndexName}`,
      hint: "a record that was copied?",
    });
  }
}

function identityOf(
  colourIndexName: string | undefined,
  knowledge: Knowledge,
): Identity | undefined {
  if (colourIndexName === undefined) return undefined;
  const { identity, constitutionNumbers } = knowledge.pigment(colourIndexName);
  return identity === undefined
    ? undefined
    : { colourIndexName, kind: identity.class, formula: identity.formula, constitutionNumbers };
}

/**
 * Whether two pigments are two substances. Classes tell it across hues: one hue's carbons, earths
 * and oxides go by several classes. Within a hue their constitution numbers do, but where the
 * formula is the same, as of all carbons.
 */
function areStrangers(one: Identity, other: Identity): boolean {
  const numbers = [one, other].map(({ constitutionNumbers }) => constitutionNumbers);
  const [own = [], others = []] = numbers;
  if (own.some((number) => others.includes(number))) return false;
  if (hueLetters(one.colourIndexName) !== hueLetters(other.colourIndexName))
    return one.kind !== other.kind;
  const areNumbered = own.length > 0 && others.length > 0;
  return areNumbered && (one.formula === undefined || one.formula !== other.formula);
}

/** "PBk" of PBk 9. */
function hueLetters(colourIndexName: string): string {
  return colourIndexName.split(" ")[0] ?? "";
}

/** A Colour Index constitution number that is not of the name beside it. */
export const constitutionFaults: OwnRule<PigmentRecord> = function* (
  { record, yaml },
  { knowledge },
) {
  const rows = knowledge.tables.constitutionNumbers;
  const { colourIndexName, colourIndexNumber } = record;
  if (colourIndexName === undefined || colourIndexNumber === undefined) return;
  const right = knowledge.pigment(colourIndexName).constitutionNumbers;
  const [number = ""] = colourIndexNumber.split(":");
  if (right.length === 0 || right.includes(number)) return;
  const owners = rows
    .filter(({ numbers }) => numbers.includes(number))
    .flatMap((row) => row.pigments);
  const expected = right.join(" or ");
  yield warningAt(yaml.place(["colourIndexNumber"]), "records/constitution-number", {
    message: `The Colour Index number ${colourIndexNumber} is ${owners.length === 0 ? `not that of ${colourIndexName}` : `that of ${owners.join(", ")}`}, and ${colourIndexName} has ${expected}`,
    actual: colourIndexNumber,
    expected,
    hint: owners.length === 0 ? nearestHint(number, right) : "name and number of two pigments",
    source: "colour-index-memory",
  });
};

/** A CAS number that is another pigment's: labels, limits and what the law forbids go by that number. */
export const casNumberFaults: OwnRule<PigmentRecord> = function* ({ record, yaml }, { knowledge }) {
  const { colourIndexName = "", casNumber = "" } = record;
  const foreign = foreignNumber(record, knowledge);
  if (foreign === undefined) return;
  const expected = foreign.own.numbers.join(" or ");
  yield warningAt(yaml.place(["casNumber"]), "records/cas-number", {
    message: `The CAS number ${casNumber} is that of ${foreign.owners.join(", ")}, and ${colourIndexName} has ${expected}: labels name substances by that number`,
    actual: casNumber,
    expected,
    hint: "name and number of two pigments",
    source: "colour-index-memory",
  });
};

/** Whose a pigment's CAS number is by the table, where the table has other numbers for the pigment itself. */
function foreignNumber(
  {
    colourIndexName,
    casNumber,
    components,
  }: Pick<PigmentRecord, "colourIndexName" | "casNumber" | "components">,
  { tables: { casNumbers } }: Knowledge,
):
  | { readonly own: { readonly numbers: readonly string[] }; readonly owners: readonly string[] }
  | undefined {
  if (colourIndexName === undefined || casNumber === undefined || components !== undefined)
    return undefined;
  const names = [colourIndexName, parentName(colourIndexName)];
  const own = casNumbers.find(({ pigments }) => names.some((one) => pigments.includes(one)));
  if (own === undefined || own.numbers.includes(casNumber)) return undefined;
  const owners = casNumbers.filter(({ numbers }) => numbers.includes(casNumber));
  return owners.length === 0 ? undefined : { own, owners: owners.flatMap((row) => row.pigments) };
}

/** One substance twice among the components of what is bought as a mixture: each share is held against its limits alone. */
export const componentFaults: OwnRule<Pick<PigmentRecord, "components">> = function* ({
  record: { components = [] },
  yaml,
}) {
  for (const [i, { name, casNumber }] of components.entries()) {
    const twin = components
      .slice(0, i)
      .find((before) => casNumber !== undefined && before.casNumber === casNumber);
    if (twin === undefined) continue;
    yield warningAt(yaml.place(["components", i, "casNumber"]), "records/component-twice", {
      message: `The CAS number ${casNumber ?? ""} stands at two components, ${twin.name} and ${name}: limits are held against each by itself`,
      actual: casNumber ?? "",
      expected: "one substance once, with all of its share",
      hint: "the number of another component, or one substance whose shares belong together",
    });
  }
};
