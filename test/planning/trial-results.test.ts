import { describe, expect, test } from "vitest";
import { formatDiagnostic } from "../../lib/diagnostics/diagnostic.ts";
import { dueDoubts, dueResults } from "../../lib/planning/due.ts";
import { openResults } from "../../lib/planning/trial-results.ts";
import type { Records } from "../../lib/records/records.ts";
import { allSheets } from "../../lib/sheet/all-sheets.ts";
import { sheetWarnings } from "../../lib/site/sheet-warnings.ts";
import { ENGLISH } from "../../lib/words/english.ts";
import { soundRecords } from "../support/sound-records.ts";

/** A tint of a madder in a window for a year, read five times, the last at 22.5. */
const WINDOW = (more: string) =>
  `kind: exposure\ncolour: madder\nstarted: 2025-06-02\n${more}form: tint\nstandard: after ASTM D4303\nexposure: south window, under glass\nreadings:\n  - { date: 2025-08-01, deltaEab: 6.4 }\n  - { date: 2026-02-02, deltaEab: 18.2 }\n  - { date: 2026-06-01, deltaEab: 22.5 }\n`;
const ENDED = WINDOW("ended: 2026-06-01\n");

const FILM = (more: string) =>
  `kind: drying\ncolour: madder\nstarted: 2026-05-01\n${more}filmThicknessUm: 75\ntemperatureC: 20\ntouched:\n  - { date: 2026-05-08, found: tacky }\n  - { date: 2026-05-13, found: touch dry }\n`;
const DRIED = FILM("ended: 2026-05-20\n");

function recordsOf(trial: string, colour: string, pigment = ""): Records {
  return soundRecords({
    "workshop.yaml": "name: My workshop\n",
    "pigments/madder.yaml": `name: Madder\nhazards: []\n${pigment}`,
    "colours/madder.md": `---\nname: Madder\npigments: [{ pigment: madder }]\n${colour}---\n`,
    "trials/madder.yaml": trial,
  });
}

const exposed = (deltaEab: string, form = "tint") =>
  `exposures: [{ deltaEab: ${deltaEab}, form: ${form}, standard: after ASTM D4303, exposure: window }]\n`;
const dried = (days: string) => `dryingTrials: [{ touchDryDays: ${days} }]\n`;

/** Of a film and room as the trials here. */
const alike = (days: string, more = "") =>
  `dryingTrials: [{ touchDryDays: ${days}, filmThicknessUm: 75, temperatureC: 20${more} }]\n`;

const warned = (records: Records): string[] =>
  sheetWarnings(allSheets(records), records, ENGLISH)
    .filter(({ rule }) => rule === "sheet/trial-worse")
    .map(formatDiagnostic);

describe("an exposure that has ended", () => {
  test("is due until its result is in the record, and no longer", () => {
    expect(dueResults(recordsOf(ENDED, ""))).toMatchObject([
      {
        due: "trial-result",
        record: "trials/madder",
        ended: "2026-06-01",
        // ASTM D4303: above 16 and up to 24 is category IV.
        result: { kind: "exposure", deltaEab: 22.5, category: "IV" },
      },
    ]);
    for (const written of [exposed("22.5"), exposed("22"), exposed("{ value: [20, 24] }")])
      expect(openResults(recordsOf(ENDED, written)), written).toEqual([]);
    // Another form's, or another figure, is not its result.
    for (const written of [exposed("22.5", "masstone"), exposed("14.1"), exposed("30")])
      expect(openResults(recordsOf(ENDED, written)), written).toHaveLength(1);
  });

  test("is no due while it goes on, nor without a reading", () => {
    expect(openResults(recordsOf(WINDOW(""), exposed("14.1")))).toEqual([]);
    const unread = ENDED.replace(/readings:[^]*/, "readings: []\n");
    expect(openResults(recordsOf(unread, exposed("14.1")))).toEqual([]);
  });

  test("is a warning where the record says better, at its line", () => {
    expect(warned(recordsOf(ENDED, exposed("14.1")))).toEqual([
      "content/trials/madder.yaml:11:35 warning The trial ended on 2026-06-01 at a change of 22.5 (as in category IV), and colours/madder says 14.1 (III): the sheet tells it better than it was found sheet/trial-worse",
    ]);
    for (const silent of ["", exposed("22.5"), exposed("30"), exposed("5", "masstone")])
      expect(warned(recordsOf(ENDED, silent)), silent).toEqual([]);
  });
});

describe("an exposure that has ended, of a colour whose record has none", () => {
  const changed = (deltaEab: string): string => ENDED.replace(/6\.4|18\.2|22\.5/g, deltaEab);

  test("is a warning where its pigments alone are told, two categories better", () => {
    expect(warned(recordsOf(ENDED, "", "colourIndexName: PV 19\n"))).toEqual([
      "content/trials/madder.yaml:11:35 warning The trial ended on 2026-06-01 at a change of 22.5 (as in category IV), and by its pigments alone excellent is expected: the sheet tells it better than it was found sheet/trial-worse",
    ]);
    // One category beside the expectation is within it.
    expect(warned(recordsOf(changed("7.9"), "", "colourIndexName: PV 19\n"))).toEqual([]);
  });

  test("is a warning where a better category is stated", () => {
    const stated = "lightfastness: { category: II, source: practice-permanence }\n";
    expect(warned(recordsOf(ENDED, stated))).toEqual([
      expect.stringContaining("(as in category IV), and category II is stated"),
    ]);
    expect(warned(recordsOf(ENDED, stated.replace("II", "V")))).toEqual([]);
  });
});

describe("a drying trial that has ended", () => {
  test("is due until days between those on which it was found tacky and dry are in the record", () => {
    // From 1 May: tacky on day 7, dry to the touch on day 12.
    expect(openResults(recordsOf(DRIED, ""))).toMatchObject([
      { ended: "2026-05-20", result: { kind: "drying", touchDryDays: [7, 12] } },
    ]);
    for (const days of ["7", "12", "{ value: [10, 20] }"])
      expect(openResults(recordsOf(DRIED, dried(days))), days).toEqual([]);
    for (const days of ["6.9", "12.1"])
      expect(openResults(recordsOf(DRIED, dried(days))), days).toHaveLength(1);
    expect(openResults(recordsOf(FILM(""), ""))).toEqual([]);
  });

  test("is over when it is dry through, and has no result when it ended wet", () => {
    const through = FILM("").replace("touch dry", "through dry");
    expect(openResults(recordsOf(through, ""))).toMatchObject([{ ended: "2026-05-13" }]);
    expect(openResults(recordsOf(DRIED.replace("touch dry", "tacky"), ""))).toEqual([]);
  });

  test("that never dried has no result, and contradicts a record that says sooner", () => {
    const never = DRIED.replace("touch dry", "tacky");
    expect(warned(recordsOf(never, alike("11")))).toEqual([
      expect.stringMatching(
        /^content\/trials\/madder.yaml:9:5 .* ended on 2026-05-20, still tacky/,
      ),
    ]);
    expect(warned(recordsOf(never, alike("12")))).toEqual([]);
  });

  test("is a warning where the record says sooner", () => {
    expect(warned(recordsOf(DRIED, dried("5")))).toEqual([
      expect.stringMatching(
        /trials\/madder.yaml:8:5 .* still wet or tacky on day 7, and colours\/madder says .* in 5 days/,
      ),
    ]);
    expect(warned(recordsOf(DRIED, dried("13")))).toEqual([]);
  });
});

// What was found stays: no colour comes back, and no film was dry before it was tacky.
describe("a trial that goes on", () => {
  const stated = (records: Records): string[] =>
    [...allSheets(records)]
      .flatMap(({ drying, permanence }) => [...drying.reasons, ...permanence.reasons])
      .map(({ rule }) => rule)
      .filter((rule) => rule.endsWith("-beyond-record"));

  test("is a warning, stands on the sheet and is pressing where the film was tacky after the days on record", () => {
    // From 1 May: tacky on day 7.
    const doubted = recordsOf(FILM(""), alike("6.9"));
    expect(warned(doubted)).toEqual([
      "content/trials/madder.yaml:7:5 warning The trial goes on, still tacky on day 7, and colours/madder says dry to the touch in 6.9 days: the sheet tells it better than it was found sheet/trial-worse",
    ]);
    expect(stated(doubted)).toEqual(["film-wet-beyond-record"]);
    expect(dueDoubts(doubted)).toMatchObject([{ due: "trial-worse", record: "trials/madder" }]);
    for (const silent of [
      "",
      alike("7"),
      dried("6.9"),
      alike("6.9").replace("75", "120"),
      alike("6.9").replace("20", "12"),
      alike("6.9", ", tintedWith: madder"),
    ]) {
      const sound = recordsOf(FILM(""), silent);
      expect([warned(sound), stated(sound), dueDoubts(sound)], silent).toEqual([[], [], []]);
    }
  });

  test("is a warning and stands on the sheet where the change is greater already than the one on record", () => {
    const doubted = recordsOf(WINDOW(""), exposed("14.1"));
    expect(warned(doubted)).toEqual([
      "content/trials/madder.yaml:10:35 warning The trial goes on at a change of 22.5 (as in category IV), and colours/madder says 14.1 (III): the sheet tells it better than it was found sheet/trial-worse",
    ]);
    expect(stated(doubted)).toEqual(["change-beyond-record"]);
    expect(dueDoubts(doubted)).toHaveLength(1);
    for (const silent of [exposed("22"), exposed("14.1", "masstone"), ""])
      expect([warned, stated, dueDoubts].map((of) => of(recordsOf(WINDOW(""), silent)))).toEqual([
        [],
        [],
        [],
      ]);
  });

  test("is a warning where its pigments alone are told two categories better", () => {
    expect(warned(recordsOf(WINDOW(""), "", "colourIndexName: PV 19\n"))).toEqual([
      expect.stringMatching(/goes on at a change of 22.5 .*by its pigments alone excellent/),
    ]);
  });

  test("says nothing of what its record has once it is over", () => {
    expect(stated(recordsOf(ENDED, exposed("22.5")))).toEqual([]);
    expect(stated(recordsOf(DRIED, alike("{ value: [7, 12] }")))).toEqual([]);
  });
});
