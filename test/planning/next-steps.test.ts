import { beforeAll, describe, expect, test } from "vitest";
import { coloursOfFewLots, dueLots, duePapers, dueTrials } from "../../lib/planning/due.ts";
import {
  isGivenBy,
  mayBeGiven,
  possibleMeasurements,
  recordLine,
  workHours,
} from "../../lib/planning/measurement.ts";
import { nextSteps, TRIED_ALIKE, worth, type NextStep } from "../../lib/planning/next-steps.ts";
import { stepGroups } from "../../lib/planning/step-groups.ts";
import type { Records } from "../../lib/records/records.ts";
import { figureEntries } from "../../lib/sheet/figure-entries.ts";
import { lotOnSale } from "../../lib/sheet/lots/lot-on-sale.ts";
import { nextLines } from "../../lib/workshop/next-view.ts";
import { workedSite, type WorkedSite } from "../../lib/site/site-context.ts";
import { RECORDS } from "../support/demonstration.ts";
import { SMALLEST_WORKSHOP, type RecordTexts } from "../support/content-folder.ts";
import { soundRecords } from "../support/sound-records.ts";

const GREY = `---
name: Grey
pigments:
  - { pigment: lamp-black }
  - { pigment: chalk }
---
`;
const FILES = {
  ...SMALLEST_WORKSHOP,
  "workshop.yaml": "name: Test Workshop\nvehicle: linseed-oil\n",
  "vehicles/linseed-oil.yaml":
    "name: Linseed oil\nkind: oil\noil: linseed\ndensityGPerCm3: 0.93\nhazards: []\n",
  "pigments/lamp-black.yaml":
    "name: Lamp black\ncolourIndexName: PBk 6\nhazards: []\nsoldDry: true\n",
  "pigments/chalk.yaml": "name: Chalk\nhazards: []\n",
  "colours/grey.md": GREY,
} as const;

const workedOf = (files: RecordTexts): WorkedSite => workedSite(soundRecords(files), undefined);
const notStated = ({ published }: WorkedSite): Set<string> =>
  new Set(
    published.flatMap(({ worded: { sheet, plain } }) =>
      plain.notStated.map(({ figure }) => `${sheet.slug}.${figure}`),
    ),
  );
const stated = ({ published }: WorkedSite): Set<unknown> =>
  new Set(
    published.flatMap(({ worded: { sheet, plain } }) =>
      plain.evidence.map(({ figure }) => `${sheet.slug}.${String(figure)}`),
    ),
  );

let records: Records;
let worked: WorkedSite;
let steps: readonly NextStep[];
beforeAll(() => {
  records = soundRecords(FILES);
  worked = workedOf(FILES);
  steps = nextSteps(
    records,
    worked.context.sheets.map(({ sheet }) => sheet),
    [],
    { steps: Infinity, sheets: Infinity },
  );
});
const stepOf = (kind: string, slug: string, key: string): NextStep | undefined =>
  steps.find(({ measurement: one }) => one.kind === kind && one.slug === slug && one.key === key);

/** What is written into a file of its own is read, checked and worked out whole: the lines that go are counted there. */
describe("what a step is said to clear goes when its record is really written", () => {
  test.each([
    {
      kind: "pigment",
      slug: "chalk",
      key: "densityGPerCm3",
      files: {
        "pigments/chalk.yaml":
          "name: Chalk\nhazards: []\ndensityGPerCm3: { value: 3, method: tried, date: 2000-01-01 }\n",
      },
    },
    {
      kind: "colour",
      slug: "grey",
      key: "parts",
      files: {
        "colours/grey.md": GREY.replace("lamp-black }", "lamp-black, parts: 1 }").replace(
          "chalk }",
          "chalk, parts: 1 }",
        ),
      },
    },
    {
      kind: "colour",
      slug: "lamp-black",
      key: "dryingTrials",
      files: {
        "colours/lamp-black.md": SMALLEST_WORKSHOP["colours/lamp-black.md"].replace(
          "\n---\nNotes",
          "\ndryingTrials:\n  - { touchDryDays: 6, throughDryDays: 20, filmThicknessUm: 75, temperatureC: 20, humidityPercent: 50, date: 2000-01-01 }\n---\nNotes",
        ),
      },
    },
    {
      kind: "pigment",
      slug: "lamp-black",
      key: "bulkDensities",
      files: {
        "pigments/lamp-black.yaml": `${FILES["pigments/lamp-black.yaml"]}bulkDensityLooseGPerMl: 0.2\nbulkDensityTappedGPerMl: 0.9\n`,
      },
    },
  ])("$kind $slug, $key", ({ kind, slug, key, files }) => {
    const step = stepOf(kind, slug, key);
    const after = workedOf({ ...FILES, ...files });
    const [open, now] = [notStated(worked), stated(after)];
    const gone = [...open].filter((path) => now.has(path));
    expect(step?.cleared, "cleared").toBe(gone.length);
    expect((step?.cleared ?? 0) + (step?.firmer ?? 0) + (step?.added ?? 0)).toBeGreaterThan(0);
  });
});

describe("of colours that want the same a few are tried", () => {
  const greys = Object.fromEntries(
    [1, 2, 3, 4, 5, 6, 7, 8].map((nth) => [
      `colours/grey-${nth}.md`,
      GREY.replace("Grey", `Grey ${nth}`),
    ]),
  );
  const many = { ...FILES, ...greys };
  const manyRecords = soundRecords(many);
  const before = workedOf(many);
  const found = nextSteps(
    manyRecords,
    before.context.sheets.map(({ sheet }) => sheet),
    [],
    { steps: Infinity, sheets: Infinity },
  );
  const parts = found.filter(({ measurement: { key } }) => key === "parts");

  test("and all are told of, with what was tried", () => {
    expect(parts).toHaveLength(9);
    expect(parts.filter(({ isTried }) => isTried)).toHaveLength(TRIED_ALIKE);
    const group = stepGroups(found).find(({ key }) => key === "parts");
    expect(group?.slugs).toHaveLength(9);
    expect(group?.counted).toEqual({ on: TRIED_ALIKE, of: 9 });
  });

  test("what is taken of one that was not tried goes when its record is really written", () => {
    const taken = parts.find(({ isTried }) => !isTried);
    const slug = taken?.measurement.slug ?? "";
    const record = `colours/${slug}.md`;
    const written = (many as RecordTexts)[record]
      ?.replace("lamp-black }", "lamp-black, parts: 1 }")
      .replace("chalk }", "chalk, parts: 1 }");
    const after = stated(workedOf({ ...many, [record]: written ?? "" }));
    const gone = [...notStated(before)].filter((path) => after.has(path));
    expect(taken?.colours).toEqual([slug]);
    expect(taken?.cleared).toBe(gone.filter((path) => path.startsWith(`${slug}.`)).length);
    expect(taken?.cleared).toBeGreaterThan(0);
  });

  test("a limit of steps is one of those that are tried", () => {
    const few = nextSteps(
      manyRecords,
      before.context.sheets.map(({ sheet }) => sheet),
      [],
      { steps: 20, sheets: Infinity },
    );
    expect(few.filter(({ isTried }) => isTried).length).toBeLessThanOrEqual(20);
    expect(few.length).toBeGreaterThan(20);
  });
});

test("nothing is proposed that the records have already", () => {
  const keys = possibleMeasurements(records).map(({ kind, slug, key }) => `${kind} ${slug} ${key}`);
  for (const there of [
    "vehicle linseed-oil densityGPerCm3",
    "vehicle linseed-oil hazards",
    "pigment chalk hazards",
    "colour lamp-black masstone",
    "colour lamp-black parts",
  ])
    expect(keys).not.toContain(there);
  expect(keys).toContain("colour grey parts");
});

test("what is being tried already is not proposed: of drying, of light, and of that colour alone", () => {
  const keys = (trials: typeof records.trials): string[] =>
    possibleMeasurements({ ...records, trials }).map(
      ({ kind, slug, key }) => `${kind} ${slug} ${key}`,
    );
  const without = keys(new Map());
  for (const [trial, key] of [
    ["ultramarine-blue-drying", "dryingTrials"],
    ["quinacridone-rose-window", "exposures"],
  ] as const) {
    const going = RECORDS.trials.get(trial);
    if (going === undefined) throw new Error(`Unexpected absence of ${trial}`);
    const own = { ...going, record: { ...going.record, colour: "lamp-black" } };
    expect(without).toContain(`colour lamp-black ${key}`);
    expect(keys(new Map([[trial, own]]))).toEqual(
      without.filter((one) => one !== `colour lamp-black ${key}`),
    );
  }
});

test("the best gain for the work comes first, and steps that gain alike stand together", () => {
  const packing = steps.filter(({ measurement: { key } }) => key === "bulkDensities");
  const gains = steps.filter((step) => !packing.includes(step)).map(worth);
  expect(gains).toEqual(gains.toSorted((one, other) => other - one));
  const groups = stepGroups(steps);
  expect(groups.flatMap(({ slugs }) => slugs)).toHaveLength(steps.length);
});

test("worth is lines and claims to the hour, ten new lines as one", () => {
  const [step] = steps;
  if (step === undefined) throw new Error("Unexpected workshop with nothing to do");
  expect(worth({ ...step, matters: 5, added: 10, claims: 1, hours: 2 })).toBe(3.5);
});

test("the cells of one table count once, and so does a pigment's own figure on all its sheets", () => {
  // basis: derived. Two densities of the powder, and on each of the two sheets one table of what jars hold.
  const step = steps.find(
    ({ measurement: { key, slug } }) => key === "bulkDensities" && slug === "lamp-black",
  );
  expect(step?.colours).toEqual(["grey", "lamp-black"]);
  expect((step?.cleared ?? 0) + (step?.firmer ?? 0)).toBeGreaterThan(step?.matters ?? Infinity);
  expect(step?.matters).toBeLessThanOrEqual(2 + 2);
});

test("each measurement has its work and its line", () => {
  for (const one of possibleMeasurements(records)) {
    expect(workHours(one)).toBeGreaterThan(0);
    expect(recordLine(one)).toMatch(/^[a-z]\w*:/);
  }
});

describe("a supplier's paper", () => {
  const WORKSHOP = { "workshop.yaml": "name: Test Workshop\n" };
  const papers = (text: string, today: string | undefined, more: RecordTexts = {}) =>
    duePapers(soundRecords({ ...WORKSHOP, "pigments/chalk.yaml": text, ...more }), today);
  const dated = "name: Chalk\nhazards: []\ndate: 2023-03-10\n";

  test("is asked for anew past three years, not on the day", () => {
    expect(papers(dated, "2026-03-10")).toEqual([]);
    expect(papers(dated, "2026-03-11")).toEqual([
      { due: "old-paper", record: "pigments/chalk", name: "Chalk", date: "2023-03-10" },
    ]);
    expect(papers(dated, undefined)).toEqual([]);
  });

  test("without a date is told of; where no hazards are recorded there is none", () => {
    expect(papers("name: Chalk\nhazards: []\n", "2026-03-10")).toEqual([
      { due: "undated-papers", record: "pigments/chalk", names: ["Chalk"] },
    ]);
    expect(papers("name: Chalk\n", "2026-03-10")).toEqual([]);
  });

  test("of several without a date all are told of together, at their folders", () => {
    const oil = "name: Walnut oil\nkind: oil\noil: walnut\nhazards: []\n";
    expect(
      papers("name: Chalk\nhazards: []\n", "2026-03-10", { "vehicles/walnut-oil.yaml": oil }),
    ).toEqual([
      { due: "undated-papers", record: "pigments, vehicles", names: ["Chalk", "Walnut oil"] },
    ]);
  });
});

describe("how a powder packs", () => {
  test("is asked for of one that is sold dry alone, after all that a painter asks", () => {
    const packing = steps.filter(({ measurement: { key } }) => key === "bulkDensities");
    // Chalk is not sold dry.
    expect(packing.map(({ measurement: { slug } }) => slug)).toEqual(["lamp-black"]);
    expect(steps.at(-1)?.measurement.key).toBe("bulkDensities");
  });

  test("of one that is toxic is told with the mask; of another it is not", () => {
    const toxic = {
      ...FILES,
      "pigments/chalk.yaml": "name: Chalk\nhazards: [H301]\nsoldDry: true\n",
    };
    const { context } = workedOf(toxic);
    const lines = nextLines(
      nextSteps(
        soundRecords(toxic),
        context.sheets.map(({ sheet }) => sheet),
        [],
        { steps: Infinity, sheets: Infinity },
      ),
      soundRecords(toxic),
      context.words,
    ).filter(({ record }) => record.startsWith("bulkDensity"));
    const ofToxic = lines.find(({ what }) => what.includes("Chalk"))?.what;
    expect(ofToxic).toMatch(/; with a P3 mask and the extractor on( for Chalk)?$/);
    expect(
      nextLines(steps, records, context.words).filter(({ what }) => what.includes("P3 mask")),
    ).toEqual([]);
  });
});

test("no white and no extender is to be let down in a white: a dark colour is, in it", () => {
  const asked = possibleMeasurements(RECORDS).flatMap(({ kind, slug, key }) =>
    kind === "colour" && key === "tints" ? [slug] : [],
  );
  const families = asked.map((slug) => RECORDS.colours.get(slug)?.record.family);
  expect(families.filter((family) => family === "white" || family === "extender")).toEqual([]);
  const open = [...RECORDS.colours.values()].filter(
    ({ slug, record }) =>
      record.tints === undefined && record.discontinued === undefined && !asked.includes(slug),
  );
  expect(open.map(({ slug }) => slug)).toEqual(
    expect.arrayContaining(["titanium-zinc-white", "barytes-medium", "chalk-medium"]),
  );
});

describe("what time makes due", () => {
  const kept = soundRecords({
    ...FILES,
    "trials/lamp-black-window.yaml":
      "kind: exposure\ncolour: lamp-black\nstarted: 2026-01-05\nform: masstone\nstandard: after ASTM D4303\nexposure: window\nreadings: []\n",
    "trials/grey-window.yaml":
      "kind: exposure\ncolour: grey\nstarted: 2025-01-05\nended: 2026-01-05\nform: masstone\nstandard: after ASTM D4303\nexposure: window\nreadings: []\n",
    "lots/lb-2601.yaml":
      'number: "LB-2601"\ncolour: lamp-black\ndate: 2026-01-05\npigments: [{ pigment: lamp-black, massG: 100 }]\noil: { vehicle: linseed-oil, massG: 100 }\n',
    "lots/lb-2602.yaml":
      'number: "LB-2602"\ncolour: lamp-black\ndate: 2026-02-05\nplanned: true\npigments: [{ pigment: lamp-black, massG: 100 }]\noil: { vehicle: linseed-oil, massG: 100 }\n',
  });

  test("a trial that goes on, on its day; one that has ended is not", () => {
    const due = dueTrials(kept);
    expect(due.map(({ record }) => record)).toEqual(["trials/lamp-black-window"]);
    const [first] = due;
    expect(first?.due === "trial" && first.date > "2026-01-05").toBe(true);
  });

  test("a second lot, of colours with fewer; a planned one is not made", () => {
    expect(coloursOfFewLots(kept)).toEqual([
      { due: "second-lot", record: "lots", lots: 0, colours: ["grey"] },
      { due: "second-lot", record: "lots", lots: 1, colours: ["lamp-black"] },
    ]);
    expect(coloursOfFewLots(records)).toEqual([]);
  });

  test("a lot with work left: one planned, one that nothing was read of, the oldest first", () => {
    expect(dueLots(kept)).toEqual([
      { due: "lot-unread", record: "lots/lb-2601", number: "LB-2601" },
      { due: "lot-planned", record: "lots/lb-2602", number: "LB-2602" },
    ]);
    expect(dueLots(records)).toEqual([]);
  });

  test("the newest lot of a colour that fails or can't be judged, and none that a later one has followed", () => {
    // As the demonstration was invented: one off strength, one in the wrong white, each the last of its colour.
    expect(dueLots(RECORDS)).toEqual([
      { due: "lot-failed", record: "lots/ib-2605", number: "IB-2605" },
      { due: "lot-unjudged", record: "lots/bb-2606", number: "BB-2606" },
    ]);
  });

  test("tubes are filled from the newest lot that was made", () => {
    const colour = kept.colours.get("lamp-black");
    expect(colour && lotOnSale(colour, kept)).toBe("LB-2601");
    const grey = kept.colours.get("grey");
    expect(grey && lotOnSale(grey, kept)).toBeUndefined();
  });
});

test("every figure that some measurement gives is one that may be given", () => {
  const paths = worked.sheets.flatMap((sheet) => figureEntries(sheet).map(({ path }) => path));
  const measurements = possibleMeasurements(records);
  const given = paths.filter((path) => measurements.some((one) => isGivenBy(one, path)));
  expect(given).toEqual(
    expect.arrayContaining(["drying.touchDryDays", "pigments.chalk.densityGPerCm3"]),
  );
  expect(given.filter((path) => !mayBeGiven(path))).toEqual([]);
  expect(mayBeGiven("drying.throughDryDays")).toBe(false);
});
