import { describe, expect, test } from "vitest";
import { contentFolder, SMALLEST_WORKSHOP, type RecordTexts } from "../support/content-folder.ts";
import { checkTold, toldOf } from "./told.ts";

/** That a change of colour does not fall as light goes on, and a film does not turn wet again, is common practice; the limits are our own. */
const exposure = (...changes: readonly number[]): RecordTexts => ({
  "trials/light.yaml": `kind: exposure
colour: lamp-black
started: 2026-01-01
form: tint
standard: after ASTM D4303
exposure: south window
readings:
${changes.map((deltaEab, i) => `  - { date: 2026-0${i + 2}-01, deltaEab: ${deltaEab} }\n`).join("")}`,
});

const fallen = (deltaEab: number, most: number): string =>
  `content/trials/light.yaml:10:35 warning The colour change is ${deltaEab} on 2026-04-01, and was ${most} on 2026-03-01: with more light it does not fall; a digit, two values exchanged, or read against another reference than the half kept dark; a few pigments come back in the dark records/change-falls`;

describe("a change that falls as light goes on", () => {
  checkTold([
    { what: "rising", files: exposure(1, 2, 3), told: [] },
    { what: "falling", files: exposure(1, 6.4, 0.9), told: [fallen(0.9, 6.4)] },
    { what: "by no more than two readings part", files: exposure(1, 2, 1.5), told: [] },
    { what: "by more", files: exposure(1, 2, 1.4), told: [fallen(1.4, 2)] },
    { what: "by a tenth of much", files: exposure(1, 20, 18), told: [] },
    {
      what: "by more than a tenth of much",
      files: exposure(1, 20, 17.9),
      told: [fallen(17.9, 20)],
    },
  ]);

  const recorded = (six: number, twelve: number): RecordTexts => ({
    "colours/lamp-black.md": SMALLEST_WORKSHOP["colours/lamp-black.md"].replace(
      "masstone:",
      `exposures:
  - { deltaEab: ${twelve}, form: tint, standard: own, exposure: "window, 12 months", date: 2026-01-01 }
  - { deltaEab: ${six}, form: tint, standard: own, exposure: "window, 6 months", date: 2025-07-01 }
masstone:`,
    ),
  });
  checkTold([
    { what: "the longer exposure on record changed more", files: recorded(0.5, 0.9), told: [] },
    {
      what: "the longer exposure on record changed less",
      files: recorded(5, 0.9),
      told: "content/colours/lamp-black.md:6:17 warning The colour change is 0.9 after window, 12 months, and was 5 after window, 6 months: with more light it does not fall; a digit, two values exchanged, or read against another reference than the half kept dark; a few pigments come back in the dark records/change-falls",
    },
  ]);
});

const drying = (...found: readonly string[]): RecordTexts => ({
  "trials/dry.yaml": `kind: drying
colour: lamp-black
started: 2026-01-01
touched:
${found.map((one, i) => `  - { date: 2026-01-0${i + 2}, found: ${one} }\n`).join("")}`,
});

describe("a film that turns back", () => {
  checkTold([
    { what: "drying", files: drying("wet", "tacky", "tacky", "through dry"), told: [] },
    {
      what: "wet again",
      files: drying("wet", "touch dry", "tacky"),
      told: "content/trials/dry.yaml:7:32 warning The film was touch dry on 2026-01-03, and tacky on 2026-01-04: no film turns back; two days or two words exchanged, or another film? records/trial-backwards",
    },
  ]);
});

describe("a room's humidity", () => {
  checkTold([
    {
      what: "as a fraction",
      files: {
        "trials/dry.yaml": `${drying("wet")["trials/dry.yaml"] ?? ""}humidityPercent: 0.5\n`,
      },
      told: "content/trials/dry.yaml:6:18 error The humidity is 0.5 %, and no room is so dry; 50 %, if it was given as a fraction records/humidity",
    },
  ]);
});

test("a kind that is none is told with all kinds", () => {
  const { lines } = toldOf(
    contentFolder({
      ...SMALLEST_WORKSHOP,
      "trials/light.yaml": exposure(1)["trials/light.yaml"]?.replace("exposure\n", "licht\n") ?? "",
    }),
  );
  expect(lines).toEqual([
    'content/trials/light.yaml:1:7 error kind can\'t be "licht": it takes exposure or drying records/schema',
  ]);
});
