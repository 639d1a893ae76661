/** A mixture recorded by parts of paint, as it was weighed from tubes: readings of test/published/oil-paints. */
import { describe, expect, test } from "vitest";
import { isKnown, type Figure } from "../../lib/quantities/figure.ts";
import type { Quantity } from "../../lib/quantities/interval.ts";
import { wavelengthsNm } from "../../lib/quantities/spectrum.ts";
import { allSheets } from "../../lib/sheet/all-sheets.ts";
import type { Sheet } from "../../lib/sheet/sheet.ts";
import { measuredPaint } from "../published/measured-paints.ts";
import { type RecordTexts } from "../support/content-folder.ts";
import { soundRecords } from "../support/sound-records.ts";

const IDS = { cochineal: ["04A", "04B", "04C"], cobalt: ["12A", "12B", "12C"], zinc: ["07A"] };

function readings(): string {
  const ids = Object.values(IDS).flat();
  const rows = wavelengthsNm(measuredPaint("07A").overWhite.spectrum.grid).map((nm, i) =>
    [nm, ...ids.map((id) => measuredPaint(id).overWhite.spectrum.values[i])].join(","),
  );
  return `${[`nm,${ids.join(",")}`, ...rows].join("\n")}\n`;
}

function paint(name: keyof typeof IDS, oilIndex: string): string {
  const [masstone, ...tints] = IDS[name];
  const letDowns = tints.map((id) => {
    const white = 100 * (measuredPaint(id).parts.get("zinc white") ?? NaN);
    return `  - { white: zinc, massRatio: "${(100 - white).toFixed(1)}:${white.toFixed(1)}", ratioKind: paint, reading: paints, column: ${id} }`;
  });
  return `---
name: ${name}
pigments: [{ pigment: ${name} }]
${oilIndex}
masstone: { reading: paints, column: ${masstone} }
${letDowns.length === 0 ? "" : `tints:\n${letDowns.join("\n")}`}
---
`;
}

/** Oil to 100 g of pigment: .5 of the cochineal's paint is pigment, and .8 of the cobalt's. */
const OIL = { cochineal: "oilIndexGPer100g: 100", cobalt: "oilIndexGPer100g: 25" };

function workshop(pigments: string, oil: Readonly<Record<keyof typeof OIL, string>> = OIL): Sheet {
  const files: RecordTexts = {
    "workshop.yaml": "name: Test\nreadings: { scale: factor, geometry: d/8 included }\n",
    "readings/paints.csv": readings(),
    "colours/zinc.md": paint("zinc", "oilIndexGPer100g: 25"),
    "colours/cochineal.md": paint("cochineal", oil.cochineal),
    "colours/cobalt.md": paint("cobalt", oil.cobalt),
    "colours/violet.md": `---\nname: Violet\npigments: ${pigments}\n---\n`,
    ...Object.fromEntries(
      Object.keys(IDS).map((name) => [`pigments/${name}.yaml`, `name: ${name}\n`]),
    ),
  };
  const records = soundRecords(files);
  const sheet = allSheets(records).find(({ slug }) => slug === "violet");
  if (sheet === undefined) throw new Error("No sheet");
  return sheet;
}

const value = (figure: Figure<Quantity> | undefined): Quantity => {
  if (figure === undefined || !isKnown(figure)) throw new Error("Not stated");
  return figure.value;
};
const TUBES = "[{ pigment: cochineal, paintParts: 2 }, { pigment: cobalt, paintParts: 1 }]";
const masstone = ({ mixture }: Sheet): number[] => {
  const lab = mixture?.whites[0]?.steps[0]?.lab["D65/10"];
  if (lab === undefined) throw new Error("Nothing predicted");
  return [lab.L, lab.a, lab.b].map((figure) => value(figure) as number);
};

describe("two parts of a paint that is half pigment and one of a paint that is four fifths", () => {
  const sheet = workshop(TUBES);

  // basis: derived. 2 x .5 = 1 and 1 x .8 = .8 of pigment in 3 of paint: shares 1/1.8 and .8/1.8; oil 1.2 to 1.8.
  test("hold dry pigment as 1 to 0.8, and 66.7 g of oil to 100 g of it", () => {
    expect(sheet.pigments.map(({ massFraction }) => value(massFraction))).toEqual([
      expect.closeTo(0.5556, 4),
      expect.closeTo(0.4444, 4),
    ]);
    expect(value(sheet.oil.oilIndexGPer100g)).toBeCloseTo(66.67, 2);
    expect(value(sheet.mixture?.components[0]?.paintMassFraction)).toBeCloseTo(2 / 3, 6);
  });

  // basis: derived. The same mixture, its pigments weighed dry: 1 to 0.8.
  test("are predicted as the same pigments weighed dry", () => {
    const dry = workshop(
      "[{ pigment: cochineal, parts: 1 }, { pigment: cobalt, parts: 0.8 }]\noilIndexGPer100g: 66.67",
    );
    const [tubes, pigments] = [masstone(sheet), masstone(dry)];
    expect(tubes).toHaveLength(3);
    for (const [i, one] of tubes.entries()) expect(one).toBeCloseTo(pigments[i] ?? NaN, 6);
  });
});

describe("without any oil in the records", () => {
  const sheet = workshop(TUBES, { cochineal: "", cobalt: "" });

  test("the mixture is predicted all the same, since paint was weighed in its let-downs too", () => {
    expect(sheet.mixture?.refusals).toEqual([]);
    expect(masstone(sheet)).toEqual(
      masstone(workshop(TUBES)).map((one) => expect.closeTo(one, 6) as number),
    );
  });

  test("its shares of dry pigment are not stated, with what they would take", () => {
    const [first] = sheet.pigments;
    if (first === undefined || isKnown(first.massFraction)) throw new Error("Stated");
    expect(first.massFraction.reason).toBe(
      "it was weighed as paint, and how much of each paint is pigment is not recorded",
    );
    expect(first.massFraction.wanting).toEqual(["colours.cochineal.oilIndexGPer100g"]);
  });

  // basis: derived. Cobalt's pigment is 1/1.3 to 1/1.2 of its paint: shares of 0.5652 to 0.5455 of cochineal.
  test("an oil that is only estimated gives the middle of the shares that it allows, as an estimate", () => {
    const estimated = workshop(TUBES, { ...OIL, cobalt: "oilIndexGPer100g: { value: [20, 30] }" });
    const [first] = estimated.pigments;
    if (first === undefined || !isKnown(first.massFraction)) throw new Error("Not stated");
    expect(first.massFraction.value).toBeCloseTo((0.5652 + 0.5455) / 2, 4);
    expect(first.massFraction.method).toBe(
      "parts of paint by the pigment in each: the middle of 55 to 57 %",
    );
    expect(first.massFraction.standing).toBe("estimated");
    expect(value(estimated.oil.oilIndexGPer100g)).toHaveLength(2);
  });
});

/** A violet of two tubes, each in an oil of its own. */
function violetOfTubes(
  violet: string,
  { cobaltOil = "vehicle: heavy\n", cochinealDrier = "" } = {},
): Sheet {
  const records = soundRecords({
    "workshop.yaml": "name: Test\n",
    "pigments/cochineal.yaml": "name: Cochineal\ndensityGPerCm3: 2\n",
    "pigments/cobalt.yaml": "name: Cobalt\ndensityGPerCm3: 4\n",
    "vehicles/light.yaml": "name: Light oil\nkind: oil\ndensityGPerCm3: 0.9\n",
    "vehicles/heavy.yaml": "name: Heavy oil\nkind: oil\ndensityGPerCm3: 1\n",
    "vehicles/drier.yaml": "name: Drier\nkind: drier\ndensityGPerCm3: 0.9\n",
    "colours/cochineal.md": `---\nname: Cochineal\npigments: [{ pigment: cochineal }]\nvehicle: light\n${cochinealDrier}${OIL.cochineal}\n---\n`,
    "colours/cobalt.md": `---\nname: Cobalt\npigments: [{ pigment: cobalt }]\n${cobaltOil}${OIL.cobalt}\n---\n`,
    "colours/violet.md": `---\nname: Violet\npigments: ${TUBES}\n${violet}\n---\n`,
  });
  const sheet = allSheets(records).find(({ slug }) => slug === "violet");
  if (sheet === undefined) throw new Error("No sheet");
  return sheet;
}

describe("tubes in other oils than the record of the mixture names", () => {
  const density = (...tubes: Parameters<typeof violetOfTubes>) =>
    violetOfTubes(...tubes).oil.paintDensityGPerCm3;

  // basis: derived. Of 3 parts 1 is cochineal (/2), .8 cobalt (/4) and 1.2 oil: 1 of it light (/.9) and .2 heavy (/1).
  test("are reckoned with each by its own density: 3 / (.5 + .2 + 1/.9 + .2) = 1.4917", () => {
    expect(value(density("vehicle: light"))).toBeCloseTo(1.4917, 4);
    // 1.2 light: 3 / (.7 + 1.2/.9)
    expect(value(density("vehicle: light", { cobaltOil: "vehicle: light\n" }))).toBeCloseTo(
      1.4754,
      4,
    );
  });
  test("have no density where the oil of one is not recorded", () => {
    expect(density("vehicle: heavy", { cobaltOil: "" })).toMatchObject({
      reason: "no oil is recorded of a paint that it was weighed from",
    });
  });
});

describe("a mixture whose record names what its tubes hold as an addition", () => {
  const pigment = (sheet: Sheet): Quantity => value(sheet.oil.pigmentMassFraction);
  const ADDED = "vehicle: light\nadditions: [{ vehicle: heavy, percentOfOil: 20 }]";

  // basis: derived. 1 + .8 of pigment in 3 of paint, 0.6; of the 1.2 that is none 1 is light oil and .2 heavy, 20 % on it.
  test("counts that once: its pigment is that of the tubes, whatever the record names", () => {
    expect(pigment(violetOfTubes("vehicle: light"))).toBeCloseTo(0.6, 6);
    const sheet = violetOfTubes(ADDED);
    expect(pigment(sheet)).toBeCloseTo(0.6, 6);
  });

  // basis: derived. The 1.2 of oil on 1.8 of pigment, whoever the oils belong to; 1.0 of it is the main oil.
  test("prints all its oil, 66.7 g, and beside it the 55.6 of the main one", () => {
    const { oil } = violetOfTubes(ADDED);
    expect(value(oil.oilIndexGPer100g)).toBeCloseTo(120 / 1.8, 4);
    expect(value(oil.mainOilGPer100g)).toBeCloseTo(100 / 1.8, 4);
    expect(oil.oilIndexClass).toMatchObject({ value: "medium" });
  });

  test("has no main oil beside it where no other oil was added", () => {
    const drier = "vehicle: light\nadditions: [{ vehicle: drier, percentOfOil: 10 }]";
    expect(violetOfTubes("vehicle: light").oil).not.toHaveProperty("mainOilGPer100g");
    expect(violetOfTubes(drier).oil).not.toHaveProperty("mainOilGPer100g");
  });

  // basis: derived. A drier that is in no tube comes on top: 1.8 of pigment in 3 + 1.2 x .1.
  test("counts on top what none of its tubes holds", () => {
    const sheet = violetOfTubes(
      "vehicle: light\nadditions: [{ vehicle: drier, percentOfOil: 10 }]",
    );
    expect(pigment(sheet)).toBeCloseTo(1.8 / 3.12, 6);
  });

  // basis: derived. In a tube of 100 g of oil and 10 of drier to 100 of pigment: 1 / 2.1 of its paint is pigment.
  test("counts a drier of its tubes once too", () => {
    const sheet = violetOfTubes(
      "vehicle: light\nadditions: [{ vehicle: drier, percentOfOil: 8 }]",
      {
        cochinealDrier: "additions: [{ vehicle: drier, percentOfOil: 10 }]\n",
      },
    );
    expect(pigment(sheet)).toBeCloseTo((2 / 2.1 + 0.8) / 3, 6);
  });
});

describe("a paint in 40 g of one oil to 100 g of pigment, with a quarter of that of another", () => {
  const cobalt = (oil: string, absorption = ""): Sheet => {
    const [sheet] = allSheets(
      soundRecords({
        "workshop.yaml": "name: Test\n",
        "pigments/cobalt.yaml": `name: Cobalt\ndensityGPerCm3: 4\n${absorption}`,
        "vehicles/light.yaml": "name: Light oil\nkind: oil\ndensityGPerCm3: 0.9\n",
        "vehicles/heavy.yaml": "name: Heavy oil\nkind: oil\ndensityGPerCm3: 1\n",
        "colours/cobalt.md": `---\nname: Cobalt\npigments: [{ pigment: cobalt }]\nvehicle: light\nadditions: [{ vehicle: heavy, percentOfOil: 25 }]\n${oil}---\n`,
      }),
    );
    if (sheet === undefined) throw new Error("No sheet");
    return sheet;
  };
  const RECORDED = "oilIndexGPer100g: 40\n";

  // basis: derived. 40 + 10 g; 100 of 150 is pigment; 25 ml of pigment in 25 + 40/.9 + 10 = 79.44 ml.
  test("has 50 g in all, low at its limit, and is two thirds pigment", () => {
    const { oil } = cobalt(RECORDED);
    expect([oil.oilIndexGPer100g, oil.mainOilGPer100g].map(value)).toEqual([50, 40]);
    expect(oil.oilIndexClass).toMatchObject({ value: "low" });
    expect(value(oil.pigmentMassFraction)).toBeCloseTo(2 / 3, 6);
    expect(value(oil.pvc)).toBeCloseTo(25 / 79.444, 4);
  });

  // basis: derived. 100 g of pigment take 40 of the one and 10 of the other in a batch.
  test("is weighed out as 40 and 10", () => {
    const made = cobalt(RECORDED).batch?.sizes.find(({ pigmentG }) => pigmentG === 100);
    expect(value(made?.oilG)).toBe(40);
    expect(value(made?.additions[0]?.massG)).toBe(10);
  });

  // basis: derived. A rub-out of 30: 33 to 60 g in all, of which four fifths are the main oil; its PVC over CPVC
  // spans the ratio of 1.1 to 2 once: CPVC 93.5 / (93.5 + 30 x 4) = .4379; 60 g: 25/(25 + 48/.9 + 12) = .2768.
  test("is expected to take that of its rub-out figure in all", () => {
    const { oil } = cobalt("", "oilAbsorptionGPer100g: 30\n");
    expect(value(oil.oilIndexGPer100g)).toEqual([expect.closeTo(33, 6), expect.closeTo(60, 6)]);
    expect(value(oil.mainOilGPer100g)).toEqual([expect.closeTo(26.4, 6), expect.closeTo(48, 6)]);
    expect((value(oil.reducedPvc) as readonly number[])[0]).toBeCloseTo(0.2768 / 0.4379, 3);
  });

  // basis: derived. 50 g in all over 1.1 to 2.
  test("is expected to rub out by all of it", () => {
    expect(value(cobalt(RECORDED).oil.oilAbsorptionGPer100g)).toEqual([
      25,
      expect.closeTo(45.4545, 4),
    ]);
  });
});
