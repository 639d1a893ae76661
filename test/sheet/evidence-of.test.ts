import { expect, test } from "vitest";
import { readBy } from "../../lib/kept/reads.ts";
import { inputsOf, isKnown } from "../../lib/quantities/figure.ts";
import { evidenceOf, inputPaths } from "../../lib/sheet/figure-places.ts";
import { sheets } from "../support/demonstration.ts";

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
