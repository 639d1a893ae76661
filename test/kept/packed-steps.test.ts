import { expect, test } from "vitest";
import { packedSteps, unpackedSteps } from "../../lib/kept/packed-steps.ts";
import type { KeptStep } from "../../lib/kept/step-book.ts";

const OIL = ["oil", "a name\nof two lines"];
const STEPS: readonly (readonly [string, KeptStep])[] = [
  [
    "bone",
    {
      parts: [
        { owner: "", parts: [] },
        { owner: "sheets/bone", parts: OIL },
        { owner: "sheets/lamp", parts: OIL },
      ],
      time: "first",
      value: { oil: [60, Number.NaN], of: new Map([["é", 1]]) },
      identity: "as bone is",
    },
  ],
  ["lamp", { parts: [{ owner: "sheets/lamp", parts: OIL }], time: "second", value: undefined }],
  ["none", { parts: [], time: "first", value: "nothing was read" }],
];

test("a step is unpacked as it was packed, whatever was read of several owners alike", () => {
  const unpacked = unpackedSteps(packedSteps(STEPS));
  const told = [...unpacked].map(([name, { parts, value, ...step }]) => [
    name,
    { ...step, value, parts: parts.map(({ owner, parts: own }) => ({ owner, parts: own })) },
  ]);
  expect(told).toEqual(STEPS);
  expect(unpackedSteps(packedSteps(unpacked)).get("bone")?.value).toEqual(STEPS[0]?.[1].value);
});

test("what two steps read alike of one owner is one thing, so that it is looked at once", () => {
  const unpacked = unpackedSteps(packedSteps(STEPS));
  const [, , ofLamp] = unpacked.get("bone")?.parts ?? [];
  expect(ofLamp).toBeDefined();
  expect(unpacked.get("lamp")?.parts[0]).toBe(ofLamp);
});
