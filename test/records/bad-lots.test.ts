import { describe, expect, test } from "vitest";
import { loadRecords } from "../../lib/records/load-records.ts";
import { contentFolder, flatReadings, SMALLEST_WORKSHOP } from "../support/content-folder.ts";

/** Slips in records of lots and trials: one clear line each, at the key that it stands in. */
const LOT = `number: LB-1
colour: lamp-black
date: 2026-05-01
pigments: [{ pigment: lamp-black, massG: 500 }]
oil: { vehicle: linseed-oil, massG: 450 }
yieldG: 900
tubes: [{ ml: 40, count: 18, massG: 49 }]
masstone: { reading: lots, column: masstone, scale: factor, geometry: "45/0" }
`;
const SOUND = {
  ...SMALLEST_WORKSHOP,
  "workshop.yaml": "name: Test Workshop\nvehicle: linseed-oil\n",
  "vehicles/linseed-oil.yaml": "name: Linseed oil\nkind: oil\noil: linseed\n",
  "readings/lots.csv": flatReadings({ masstone: 0.021, again: 0.0211 }),
  "lots/lb-1.yaml": LOT,
};
const TRIAL = `kind: exposure
colour: lamp-black
started: 2026-01-01
form: tint
standard: after ASTM D4303
exposure: south window
readings: [{ date: 2026-02-01, deltaEab: 1 }, { date: 2026-03-01, deltaEab: 2 }]
`;

function told(files: Readonly<Record<string, string>>): string[] {
  const { content, home } = contentFolder({ ...SOUND, ...files });
  return loadRecords(content, home, "2026-06-30").diagnostics.map(
    ({ place: { file, line }, severity, message, hint }) =>
      `${file}:${line} ${severity} ${message}${hint === undefined ? "" : `; ${hint}`}`,
  );
}
const edited = (found: string, written: string): string => {
  if (!LOT.includes(found)) throw new Error(`Unexpected absence of ${found}`);
  return LOT.replace(found, written);
};

test("sound lots and trials are told nothing", () =>
  expect(told({ "trials/window.yaml": TRIAL })).toEqual([]));

describe("a lot", () => {
  test.each([
    [
      "of an unknown colour",
      "colour: lamp-black",
      "colour: lamp-blak",
      "content/lots/lb-1.yaml:2 error There is no lamp-blak in colours/; nearest: lamp-black",
    ],
    [
      "read in another geometry than its standard",
      'geometry: "45/0"',
      'geometry: "d/8 included"',
      "content/lots/lb-1.yaml:8 error The lot was read d/8 included, and its standard 45/0: the two can't be held against each other",
    ],
    [
      "whose standard was read again in another geometry",
      "yieldG: 900",
      'yieldG: 900\nstandard: { masstone: { reading: lots, column: again, scale: factor, geometry: "d/8 included" } }',
      "content/lots/lb-1.yaml:7 error The standard was read again d/8 included, and before 45/0: the two can't be held against each other",
    ],
    [
      "calibrated on a day that is none",
      'geometry: "45/0"',
      'geometry: "45/0", calibration: 2026-02-30',
      'content/lots/lb-1.yaml:8 error masstone.calibration can\'t be "2026-02-30": it takes a date, YYYY-MM-DD; the calendar has no such day',
    ],
    [
      "of a day to come",
      "date: 2026-05-01",
      "date: 2062-05-01",
      "content/lots/lb-1.yaml:3 warning The date 2062-05-01 lies after 2026-06-30; a digit of the year, or day and month exchanged?",
    ],
    [
      "that yields more than went in",
      "yieldG: 900",
      "yieldG: 990",
      "content/lots/lb-1.yaml:6 error The yield of 990 g is more than the 950 g that were weighed in",
    ],
    [
      "whose oil was weighed in kilograms",
      "massG: 450",
      "massG: 0.45",
      "content/lots/lb-1.yaml:5 error The yield of 900 g is more than the 500.4 g that were weighed in; 450 g, if 0.45 is in kg",
    ],
    [
      "that yields hardly half",
      "yieldG: 900\ntubes: [{ ml: 40, count: 18, massG: 49 }]",
      "yieldG: 500",
      "content/lots/lb-1.yaml:6 warning The yield of 500 g leaves 47 % of the 950 g that were weighed in; a weight left out, or a digit exchanged?",
    ],
    [
      "with more in its tubes than came out",
      "count: 18",
      "count: 81",
      "content/lots/lb-1.yaml:7 error The tubes hold 3969 g together, and the yield is 900 g",
    ],
    [
      "whose tubes were weighed full",
      "yieldG: 900\ntubes: [{ ml: 40, count: 18, massG: 49 }]",
      "yieldG: 900\ntubes: [{ ml: 40, count: 18, massG: 57, tareG: 8 }]",
      "content/lots/lb-1.yaml:7 error The tubes hold 1026 g together, and the yield is 900 g; 882 g without the empty tubes: massG is what is in one",
    ],
    [
      "whose tubes hold what an empty one weighs",
      "yieldG: 900\ntubes: [{ ml: 40, count: 18, massG: 49 }]",
      "yieldG: 900\ndensityGPerCm3: 1.2\ntubes: [{ ml: 40, count: 18, massG: 8, tareG: 49 }]",
      "content/lots/lb-1.yaml:8 warning The tubes of 40 ml hold 8 g, which at 1.2 g/cm3 are 6.67 ml: less on the mean than stands on them, and so they may not be sold; massG and tareG exchanged?",
    ],
    [
      "of a tube with a digit lost",
      "yieldG: 900\ntubes: [{ ml: 40, count: 18, massG: 49 }]",
      "yieldG: 900\ndensityGPerCm3: 1.2\ntubes: [{ ml: 4, count: 18, massG: 49 }]",
      "content/lots/lb-1.yaml:8 warning The tubes of 4 ml hold 49 g, which at 1.2 g/cm3 are 40.8 ml: more than such a tube takes; a digit of 40 ml lost?",
    ],
    [
      "of tubes with a digit too many, which nobody weighed",
      "tubes: [{ ml: 40, count: 18, massG: 49 }]",
      "tubes: [{ ml: 40, count: 180 }]",
      "content/lots/lb-1.yaml:7 error The tubes hold 5760 g together, and the yield is 900 g",
    ],
    [
      "that is planned and was made",
      "yieldG: 900",
      "planned: true\nyieldG: 900",
      "content/lots/lb-1.yaml:6 warning Lot LB-1 is planned, and its record has masstone, yieldG, tubes, which only a lot that was made has; without planned, once it is made",
    ],
    [
      "whose density no paint has, which is told once",
      "yieldG: 900",
      "yieldG: 900\ndensityGPerCm3: 12",
      "content/lots/lb-1.yaml:7 error The density of this lot is 12 g/cm3, and paints lie between 0.8 and 8 g/cm3",
    ],
    [
      "of a pigment that the colour is not made of",
      "{ pigment: lamp-black,",
      "{ pigment: bone-black,",
      "content/lots/lb-1.yaml:4 error There is no bone-black in pigments/",
    ],
    [
      "whose tubes hold less than stands on them",
      "yieldG: 900",
      "yieldG: 900\ndensityGPerCm3: 1.25",
      "content/lots/lb-1.yaml:8 warning The tubes of 40 ml hold 49 g, which at 1.25 g/cm3 are 39.2 ml: less on the mean than stands on them, and so they may not be sold",
    ],
    [
      "whose tubes were weighed with what is in them",
      "yieldG: 900",
      "yieldG: 900\ndensityGPerCm3: 1.05",
      "content/lots/lb-1.yaml:8 warning The tubes of 40 ml hold 49 g, which at 1.05 g/cm3 are 46.7 ml: more than such a tube takes; massG is what is in the tube; was the empty tube weighed with it? its own mass goes into tareG",
    ],
    [
      "whose tubes hold a little more than stands on them",
      "yieldG: 900",
      "yieldG: 900\ndensityGPerCm3: 1.2",
      [],
    ],
    [
      // Of paints the densest are of lead, bismuth and metal powders, under 8 g/cm3 (Gettens & Stout's densities of pigments).
      "whose density is in kg/m3",
      "yieldG: 900\ntubes: [{ ml: 40, count: 18, massG: 49 }]",
      "densityGPerCm3: 1250",
      "content/lots/lb-1.yaml:6 error The density of this lot is 1250 g/cm3, and paints lie between 0.8 and 8 g/cm3; 1.25 g/cm3, if it was given in kg/m3",
    ],
    [
      "read before it was made",
      'geometry: "45/0" }',
      'geometry: "45/0", date: 2026-04-30 }',
      "content/lots/lb-1.yaml:8 warning Lot LB-1 was read on 2026-04-30, and made on 2026-05-01; day and month exchanged, or the date of a record that was copied?",
    ],
  ] as const)("%s", (_, found, written, lines) =>
    expect(told({ "lots/lb-1.yaml": edited(found, written) }).toSorted()).toEqual(
      [lines].flat().toSorted(),
    ),
  );

  test("has a number of its own, and one that nobody takes for another's", () => {
    const twin = (number: string): string[] =>
      told({ "lots/lb-1.yaml": LOT, "lots/lb-2.yaml": LOT.replace("LB-1", number) }).filter(
        (line) => line.includes("number"),
      );
    expect(twin("lb-1")).toEqual([
      "content/lots/lb-2.yaml:1 error The lot number lb-1 is that of content/lots/lb-1.yaml already",
    ]);
    expect(twin("LB 1")).toEqual([
      "content/lots/lb-2.yaml:1 warning The lot number LB 1 is told from LB-1 of content/lots/lb-1.yaml by nothing but its blanks and signs",
    ]);
    expect(twin("LB-11")).toEqual([]);
  });

  describe("against the recipe of its colour", () => {
    const colour = (more: string, pigments = "[{ pigment: lamp-black }]"): string =>
      `---\nname: Lamp Black\npigments: ${pigments}\nmasstone: { reading: lamp-black, column: masstone, scale: factor, geometry: "45/0" }\n${more}---\nNotes\n`;
    const lot = (pigments: string, oilG: number): string =>
      LOT.replace(/pigments: .*/, `pigments: ${pigments}`)
        .replace("massG: 450", `massG: ${oilG}`)
        .replace(/yieldG: .*\n|tubes: .*\n/g, "");
    const ofLot = (files: Readonly<Record<string, string>>): string[] =>
      told(files).filter((line) => line.startsWith("content/lots/"));

    test("has oil in kilograms, or ten times of it, or beyond what may differ", () => {
      const oil = (oilG: number): string[] =>
        ofLot({
          "colours/lamp-black.md": colour("oilIndexGPer100g: 90\n"),
          "lots/lb-1.yaml": lot("[{ pigment: lamp-black, massG: 500 }]", oilG),
        });
      expect(oil(0.45)).toEqual([
        "content/lots/lb-1.yaml:5 warning Lot LB-1 has 0.09 g of oil to 100 g of pigment, and the record of lamp-black 90 g; 450 g, if it was weighed in kg",
      ]);
      expect(oil(4500)).toEqual([
        "content/lots/lb-1.yaml:5 warning Lot LB-1 has 900 g of oil to 100 g of pigment, and the record of lamp-black 90 g; 450 g, if a digit slipped in",
      ]);
      expect(oil(478)).toEqual([
        "content/lots/lb-1.yaml:5 warning Lot LB-1 has 95.6 g of oil to 100 g of pigment, and the record of lamp-black 90 g: 6.2 % more, where 5 % may differ",
      ]);
      expect(oil(422)).toEqual([
        "content/lots/lb-1.yaml:5 warning Lot LB-1 has 84.4 g of oil to 100 g of pigment, and the record of lamp-black 90 g: 6.2 % less, where 5 % may differ",
      ]);
      expect([428, 450, 472].flatMap(oil)).toEqual([]);
    });

    test("has another share of a pigment", () => {
      const shares = (blackG: number): string[] =>
        ofLot({
          "pigments/chalk.yaml": "name: Chalk\ncolourIndexName: PW 18\n",
          "colours/lamp-black.md": colour(
            "",
            "[{ pigment: lamp-black, parts: 3 }, { pigment: chalk, parts: 1 }]",
          ),
          "lots/lb-1.yaml": lot(
            `[{ pigment: lamp-black, massG: ${blackG} }, { pigment: chalk, massG: 100 }]`,
            200,
          ),
        });
      expect(shares(30)).toEqual([
        "content/lots/lb-1.yaml:4 warning lamp-black is 23.1 % of the pigment of lot LB-1, and 75 % of that of lamp-black; a weight in another unit, or a digit lost",
      ]);
      expect(shares(300)).toEqual([]);
    });
  });

  describe("whose density nobody measured", () => {
    // 500 g of 1.8 g/cm3 and 450 g of 0.93 g/cm3 take 277.8 and 483.9 ml: 1.247 g/ml, 49.9 g in 40 ml.
    const weighed = (tube: string): string[] =>
      told({
        "pigments/lamp-black.yaml": "name: Lamp black\ndensityGPerCm3: 1.8\n",
        "vehicles/linseed-oil.yaml":
          "name: Linseed oil\nkind: oil\noil: linseed\ndensityGPerCm3: 0.93\n",
        "lots/lb-1.yaml": edited(
          "{ ml: 40, count: 18, massG: 49 }",
          `{ ml: 40, count: 2, ${tube} }`,
        ),
      });
    const filling = (massG: number): string =>
      `content/lots/lb-1.yaml:7 warning The tubes of 40 ml hold ${massG} g, ${massG / 40} g to the millilitre, and what was weighed in comes to 1.25 g`;

    test("is held to what was weighed in", () => {
      expect(weighed("massG: 41")).toEqual([]);
      expect(weighed("massG: 62")).toEqual([]);
      expect(weighed("massG: 38")).toEqual([filling(38)]);
      expect(weighed("massG: 64")).toEqual([
        `${filling(64)}; massG is what is in the tube; was the empty tube weighed with it? its own mass goes into tareG`,
      ]);
      expect(weighed("massG: 64, tareG: 8")).toEqual([
        `${filling(64)}; 56 g without the empty tube`,
      ]);
      expect(weighed("massG: 8, tareG: 49")).toEqual([`${filling(8)}; massG and tareG exchanged?`]);
      expect(weighed("massG: 0.05")).toEqual([
        "content/lots/lb-1.yaml:7 warning The tubes of 40 ml hold 0.05 g, 0.00125 g to the millilitre, and what was weighed in comes to 1.25 g; 50 g, if it was given in kg",
      ]);
      expect(weighed("massG: 49, tareG: 0.008")).toEqual([
        "content/lots/lb-1.yaml:7 warning An empty tube of 0.008 g is hardly anything beside the 49.9 g of paint that it takes; 8 g, if it was given in kilograms",
      ]);
    });

    test("is held to what paints weigh, where nothing tells its own", () => {
      expect(told({ "lots/lb-1.yaml": edited("massG: 49 }]", "massG: 8, tareG: 49 }]") })).toEqual([
        "content/lots/lb-1.yaml:7 warning The tubes of 40 ml hold 8 g, 0.2 g to the millilitre, and paints weigh 0.8 to 8 g; massG and tareG exchanged?",
      ]);
    });
  });

  test("whose colour has let-downs that could not be read, says nothing of its own", () => {
    const tint = (reading: string): string =>
      `tints: [{ white: white, massRatio: "1:5", ratioKind: paint, reading: ${reading}, column: again, scale: factor, geometry: "45/0" }]\n`;
    const lines = (reading: string): string[] =>
      told({
        "pigments/white.yaml": "name: White\n",
        "colours/lamp-black.md": SMALLEST_WORKSHOP["colours/lamp-black.md"].replace(
          "masstone:",
          `${tint(reading)}masstone:`,
        ),
        "readings/broken.csv": "",
        "lots/lb-1.yaml": LOT + tint("lots"),
      });
    expect(lines("broken")).toEqual([
      "content/readings/broken.csv:1 error The file is empty, and would hold CSV",
    ]);
  });

  test("made before what is in it was delivered", () => {
    const delivered = (date: string): string[] =>
      told({
        "pigments/lamp-black.yaml": `name: Lamp black\nsupplierLots: [{ number: S-7, oilAbsorptionGPer100g: 80, date: ${date} }]\n`,
        "lots/lb-1.yaml": edited("massG: 500 }]", "massG: 500, supplierLot: S-7 }]"),
      });
    expect(delivered("2026-05-01")).toEqual([]);
    expect(delivered("2026-05-02")).toEqual([
      "content/lots/lb-1.yaml:4 warning Lot LB-1 was made on 2026-05-01, and the delivery S-7 of lamp-black in it is of 2026-05-02; another delivery, or day and month exchanged?",
    ]);
  });

  test("with the number of another", () =>
    expect(told({ "lots/lb-2.yaml": edited("column: masstone", "column: again") })).toEqual([
      "content/lots/lb-2.yaml:1 error The lot number LB-1 is that of content/lots/lb-1.yaml already",
    ]));

  test("of a pigment that another colour is made of", () =>
    expect(
      told({
        "pigments/bone-black.yaml": "name: Bone black\ncolourIndexName: PBk 9\n",
        "colours/bone-black.md":
          "---\nname: Bone Black\npigments: [{ pigment: bone-black }]\n---\n",
        "lots/lb-1.yaml": edited("{ pigment: lamp-black,", "{ pigment: bone-black,"),
      }),
    ).toEqual(["content/lots/lb-1.yaml:4 error The colour lamp-black is not made of bone-black"]));

  test("in another oil than its colour, or with what that does not name", () =>
    expect(
      told({
        "vehicles/walnut-oil.yaml": "name: Walnut oil\nkind: oil\noil: walnut\n",
        "vehicles/drier.yaml":
          "name: Drier\nkind: drier\nmetals: [{ metal: cobalt, percent: 6 }]\n",
        "lots/lb-1.yaml": `${edited("vehicle: linseed-oil", "vehicle: walnut-oil")}additions: [{ vehicle: drier, massG: 2 }]\n`,
      }).filter((line) => line.startsWith("content/lots/")),
    ).toEqual([
      "content/lots/lb-1.yaml:5 warning Lot LB-1 holds walnut-oil, and the record of lamp-black does not name it: sheet and label go by linseed-oil",
      "content/lots/lb-1.yaml:9 warning Lot LB-1 holds drier, and the record of lamp-black does not name it: sheet and label go by linseed-oil",
    ]));

  test("by the readings of another lot", () =>
    expect(told({ "lots/lb-2.yaml": edited("LB-1", "LB-2") })).toEqual([
      "content/lots/lb-2.yaml:8 warning The masstone of lot LB-2 is the column masstone, which lot LB-1 was read from already; a record that was copied, and its column not changed?",
    ]));

  test("by the readings of its colour, unless the colour was read from it", () => {
    const colour = SMALLEST_WORKSHOP["colours/lamp-black.md"];
    const read = (more: string): string[] =>
      told({
        "colours/lamp-black.md": colour
          .replace("reading: lamp-black, column", "reading: lots, column")
          .replace("\n---\nNotes", `${more}\n---\nNotes`),
      }).filter((line) => !line.startsWith("content/readings/lamp-black.csv"));
    expect(read("")).toEqual([
      "content/lots/lb-1.yaml:8 warning The masstone of lot LB-1 is the column masstone of its colour, so that the lot is held against itself; standard: lb-1 in the record of lamp-black, if the colour was read from this lot",
    ]);
    expect(read("\nstandard: lb-1")).toEqual([]);
    expect(read("\nlot: LB-1")).toEqual([]);
  });

  test("named as a standard that there is none of, or of another colour", () => {
    const colour = SMALLEST_WORKSHOP["colours/lamp-black.md"];
    expect(
      told({
        "colours/lamp-black.md": colour.replace("\n---\nNotes", "\nstandard: lb-9\n---\nNotes"),
      }),
    ).toEqual(["content/colours/lamp-black.md:6 error There is no lb-9 in lots/; nearest: lb-1"]);
    expect(
      told({
        "colours/soot.md": colour
          .replace("Lamp Black", "Soot")
          .replace("\n---\nNotes", "\nstandard: lb-1\n---\nNotes"),
      }).filter((line) => line.includes("standard")),
    ).toEqual(["content/colours/soot.md:6 error The standard lb-1 is a lot of lamp-black"]);
  });
});

describe("a trial", () => {
  test.each([
    [
      "2026-02-01",
      "2026-04-01",
      "content/trials/window.yaml:7 error The day 2026-03-01 does not come after 2026-04-01",
    ],
    [
      "2026-02-01",
      "2025-12-01",
      "content/trials/window.yaml:7 error The day 2025-12-01 does not come after 2026-01-01",
    ],
    [
      "form: tint",
      "ended: 2026-02-02\nform: tint",
      "content/trials/window.yaml:4 error The trial ended on 2026-02-02, and was read on 2026-03-01",
    ],
    [
      "colour: lamp-black",
      "colour: lamp-black\nlot: lb-7",
      "content/trials/window.yaml:3 error There is no lb-7 in lots/; nearest: lb-1",
    ],
  ])("with %s as %s", (found, written, line) =>
    expect(told({ "trials/window.yaml": TRIAL.replace(found, written) })).toEqual([line]),
  );
});

describe("a standard of another recipe than the record's", () => {
  const colour = SMALLEST_WORKSHOP["colours/lamp-black.md"];
  // 450 g of oil to 500 g of pigment are 90 g to 100 g; 5 % of 94.7 g are 4.7 g, of 94.8 g 4.7 g.
  const oil = (written: string, more = ""): string[] =>
    told({
      "colours/lamp-black.md": colour.replace(
        "\n---\nNotes",
        `\nstandard: lb-1\noilIndexGPer100g: ${written}${more}\n---\nNotes`,
      ),
    });

  test("is told from 5 % on, or from what the colour's lots may differ by", () => {
    expect(oil("94.7")).toEqual([]);
    expect(oil("94.8")).toEqual([
      "content/colours/lamp-black.md:7 warning The standard LB-1 has 90 g of oil to 100 g of pigment, and the record 94.8 g: lots are held against the standard's look and the record's oil; after a change of recipe a lot of the new one is the standard",
    ]);
    expect(oil("94.8", "\ntolerances: { oilIndexPercent: 6 }")).toEqual([]);
  });

  test("far from two lots that agree, it is told of the record alone", () => {
    const record = colour.replace(
      "\n---\nNotes",
      "\nstandard: lb-1\noilIndexGPer100g: 180\n---\nNotes",
    );
    const beside = (lots: Readonly<Record<string, string>>): string[] =>
      told({ "colours/lamp-black.md": record, ...lots })
        .filter((line) => line.includes("g of oil to 100 g"))
        .map((line) => line.split(" ")[0] ?? "");
    const again = LOT.replace("LB-1", "LB-2").replace("again", "masstone");
    expect(beside({ "lots/lb-2.yaml": again })).toEqual(["content/colours/lamp-black.md:7"]);
    expect(beside({ "lots/lb-2.yaml": again.replace("massG: 450", "massG: 600") })).toEqual([
      "content/colours/lamp-black.md:7",
      "content/lots/lb-2.yaml:5",
    ]);
  });

  test("is none beside an estimate", () => expect(oil("{ value: [94, 120] }")).toEqual([]));
});

test("a colour without readings of its own has those of its standard", () => {
  const { content, home } = contentFolder({
    ...SOUND,
    "colours/lamp-black.md":
      "---\nname: Lamp Black\npigments: [{ pigment: lamp-black }]\nstandard: lb-1\n---\n",
    "readings/lamp-black.csv": flatReadings({ masstone: 0.02 }),
  });
  const { records } = loadRecords(content, home);
  const masstone = records?.colours.get("lamp-black")?.masstone;
  expect(masstone?.form === "spectrum" ? masstone.spectrum.values[0] : undefined).toBe(0.021);
});

describe("a lot's grind against its colour's (our own limit: five times)", () => {
  const grindTold = (um: number): string[] =>
    told({
      "colours/lamp-black.md": SMALLEST_WORKSHOP["colours/lamp-black.md"].replace(
        "\n---\nNotes",
        "\nfinenessOfGrindUm: 20\n---\nNotes",
      ),
      "lots/lb-1.yaml": `${LOT}finenessOfGrindUm: ${um}\n`,
    });
  test("ten times coarser is told, with what the record says", () =>
    expect(grindTold(200)).toEqual([
      "content/lots/lb-1.yaml:9 warning Lot LB-1 is ground to 200 um, and the record of lamp-black says 20 um: so coarse a lot is another paint; a digit too many or a decimal lost?",
    ]));
  test("five times finer is told", () => expect(grindTold(4)).toHaveLength(1));
  test.each([99, 30, 4.1])("%s um is not", (um) => expect(grindTold(um)).toEqual([]));
});

describe("a lot's let-down against the standard's", () => {
  const ratioTold = (massRatio: string): string[] => {
    const white = "pigments: [{ pigment: white }]\nmasstone:";
    const tint = (ratio: string, column = ratio): string =>
      `{ white: white, massRatio: "${ratio}", ratioKind: paint, reading: lots, column: "${column}", scale: factor, geometry: "45/0" }`;
    return told({
      "pigments/white.yaml": "name: White\n",
      "colours/white.md": `---\nname: White\n${white} { reading: lots, column: white, scale: factor, geometry: "45/0" }\n---\n`,
      "colours/lamp-black.md": SMALLEST_WORKSHOP["colours/lamp-black.md"].replace(
        "\n---\nNotes",
        `\ntints:\n  - ${tint("1:1")}\n  - ${tint("1:10")}\n---\nNotes`,
      ),
      "lots/lb-1.yaml": `${LOT}tints:\n  - ${tint(massRatio, "own")}\n`,
      "readings/lots.csv": flatReadings({
        masstone: 0.021,
        again: 0.0211,
        "1:1": 0.06,
        "1:10": 0.25,
        own: 0.252,
        white: 0.88,
      }),
    });
  };
  test("1:1 written for 1:10 is told at its ratio", () =>
    expect(ratioTold("1:1")).toEqual([
      'content/lots/lb-1.yaml:10 warning The lot LB-1 is let down 1:1 in white and reads as its standard does 1:10 (dE00 0.2, and 25.7 from the standard 1:1): another ratio was weighed than written down; massRatio: "1:10"?',
    ]));
  test("the ratio that was weighed is not", () => expect(ratioTold("1:10")).toEqual([]));
});
