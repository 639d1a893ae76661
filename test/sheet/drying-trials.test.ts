import { describe, expect, test } from "vitest";
import { inputsOf, isKnown } from "../../lib/quantities/figure.ts";
import { statementText } from "../../lib/present/statement-text.ts";
import { ENGLISH } from "../../lib/words/english.ts";
import type { DryingSection } from "../../lib/sheet/drying/drying-figures.ts";
import { SMALLEST_WORKSHOP } from "../support/content-folder.ts";
import { soundSheet } from "../support/sound-records.ts";

/** Drying of the smallest workshop's one colour, a PBk 6 in linseed oil, with these trials. */
function dryingWith(...trials: string[]): DryingSection {
  const sheet = soundSheet({
    ...SMALLEST_WORKSHOP,
    "pigments/lamp-black.yaml": "name: Lamp black\ncolourIndexName: PBk 6\n",
    "pigments/white-lead.yaml": "name: White lead\ncolourIndexName: PW 1\n",
    "vehicles/linseed.yaml": "name: Linseed oil\nkind: oil\noil: linseed\n",
    "colours/lamp-black.md": SMALLEST_WORKSHOP["colours/lamp-black.md"].replace(
      "\n---\nNotes",
      `\nvehicle: linseed\ndryingTrials:\n${trials.map((trial) => `  - { ${trial} }`).join("\n")}\n---\nNotes`,
    ),
  });
  return sheet.drying;
}

describe("of several trials", () => {
  test("the one nearest the film and room that the classes are meant for decides, wherever it stands", () => {
    const { touchDryDays, trials } = dryingWith(
      "touchDryDays: 30, filmThicknessUm: 300, temperatureC: 12",
      "touchDryDays: 9, filmThicknessUm: 80, temperatureC: 21",
      "touchDryDays: 4, filmThicknessUm: 30, temperatureC: 30",
    );
    expect(touchDryDays).toMatchObject({ standing: "measured", value: [9, 9] });
    expect(inputsOf(touchDryDays)).toEqual([trials[1]?.touchDryDays]);
    expect(trials).toHaveLength(3);
  });
  test("one without its film and room is shown, says so, and gives way to one that has them", () => {
    const { touchDryDays, trials } = dryingWith(
      "touchDryDays: 2",
      "touchDryDays: 9, filmThicknessUm: 200, temperatureC: 25",
    );
    expect(touchDryDays).toMatchObject({ value: [9, 9] });
    expect(trials[0]?.sentence).toMatchObject({
      rule: "trial-without-conditions",
      values: { wanting: ["filmThicknessUm", "temperatureC"] },
    });
    expect(trials[0]?.filmThicknessUm).toBeUndefined();
  });
  test("alone it still stands before the rules, and is held against none of them", () => {
    const { touchDryDays, contradictions } = dryingWith("touchDryDays: 1");
    expect(touchDryDays).toMatchObject({ standing: "measured", value: [1, 1] });
    expect(contradictions).toEqual([]);
  });
  test("one that the rules for its own film and room cannot reach is said", () => {
    expect(
      dryingWith("touchDryDays: 1, filmThicknessUm: 75, temperatureC: 20").contradictions.map(
        ({ rule }) => rule,
      ),
    ).toEqual(["trial-faster-than-expected"]);
    // 8 to 20 days at 20 degrees are 13 and more at 10 (lib/drying/film-conditions.ts): what would be slow in a warm room is not in a cold one.
    expect(
      dryingWith("touchDryDays: 35, filmThicknessUm: 75, temperatureC: 10").contradictions,
    ).toEqual([]);
    expect(
      dryingWith("touchDryDays: 35, filmThicknessUm: 75, temperatureC: 20").contradictions.map(
        ({ rule }) => rule,
      ),
    ).toEqual(["trial-slower-than-expected"]);
  });
  test("one in a white says nothing of the colour alone", () => {
    const { touchDryDays, inWhites } = dryingWith(
      "touchDryDays: 2, filmThicknessUm: 75, temperatureC: 20, tintedWith: white-lead",
    );
    expect(touchDryDays.standing).toBe("estimated");
    const [white] = inWhites;
    expect(white?.white.name).toBe("White lead");
    expect(white !== undefined && isKnown(white.touchDryDays) && white.touchDryDays.value).toEqual([
      2, 2,
    ]);
    expect(white !== undefined && isKnown(white.class) && white.class.value).toBe("fast");
    // Of a white without a trial of its own the days by the rules have their factors: lead's speeds (Wehlte, lib/drying/pigment-chemistry.csv).
    const lead = white?.contributions.find(({ sentence }) =>
      statementText(sentence, ENGLISH).includes("lead"),
    );
    expect(lead?.sign).toBe("faster");
    expect(lead && isKnown(lead.factor) && lead.factor.value[1]).toBeLessThan(1);
  });
});

test("a trial that its record calls stated keeps source, uncertainty and standing", () => {
  const { touchDryDays, trials } = dryingWith(
    "touchDryDays: { value: 9, uncertainty: 1, standing: stated, source: memory-drying }, filmThicknessUm: 75, temperatureC: 20",
  );
  for (const days of [trials[0]?.touchDryDays, touchDryDays])
    expect(days).toMatchObject({
      standing: "stated",
      restsOn: "stated",
      value: [9, 9],
      uncertainty: 1,
      source: "memory-drying",
    });
  expect(trials[0]?.sentence && statementText(trials[0].sentence, ENGLISH)).toBe(
    "A trial as stated by others: touch dry in 9\u00a0days (75\u00a0\u00b5m, 20\u00a0\u00b0C).",
  );
});
