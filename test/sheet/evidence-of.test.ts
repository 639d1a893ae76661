import { expect, test } from "vitest";
import { readBy } from "../../lib/kept/reads.ts";
import { inputsOf, isKnown } from "../../lib/quantities/figure.ts";
import { evidenceOf, inputPaths } from "../../lib/sheet/figure-places.ts";
import { sheets } from "../support/demonstration.ts";
import { libModules } from "../rooms/lib-modules.ts";

const [first] = sheets();
const figure = first?.oil.oilIndexGPer100g;

test("who reads what a figure says has not read what it was made from; who asks for that has", () => {
  if (first === undefined || figure === undefined) throw new RangeError("There is no sheet");
  const said = readBy(() => (isKnown(figure) ? figure.value : undefined));
  expect([...said.names]).toEqual([]);
  const asked = readBy(() => evidenceOf(figure));
  expect(asked.value).toEqual(inputsOf(figure));
  expect([...asked.names]).toEqual([`sheets/${first.slug}/evidence`]);
  expect([...readBy(() => inputPaths(figure, first.slug)).names]).toEqual([...asked.names]);
});

test("above the sheet nobody asks for it without noting that", () => {
  const WORKS_OUT = new Set(["quantities", "sheet", "formulation", "drying"]);
  const asking = libModules().filter(
    ({ room, text }) =>
      !WORKS_OUT.has(room) &&
      /import \{[^}]*\binputsOf\b[^}]*\} from "[^"]*quantities\/figure\.ts"/.test(text),
  );
  expect(asking.map(({ file }) => file)).toEqual([]);
});
