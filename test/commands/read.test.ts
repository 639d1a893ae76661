import { existsSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { commandHere } from "../support/command-here.ts";
import { contentFolder, SMALLEST_WORKSHOP } from "../support/content-folder.ts";
import { mullstone, type CommandRun } from "../support/mullstone.ts";

const { home, content } = contentFolder(SMALLEST_WORKSHOP);
const run = (...args: string[]): Promise<CommandRun> =>
  commandHere(["read", ...args], { cwd: home });
/** Lines to be put into a record. */
const forRecords = (output: string): string[] =>
  output.split("\n").filter((line) => line.startsWith("{"));
const NM = Array.from({ length: 31 }, (_, i) => 400 + 10 * i);
const save = (name: string, values: readonly number[], columns = ["soot"]): string => {
  writeFileSync(
    join(home, name),
    [
      "Instrument;invented",
      `Sample;${columns.join(";")}`,
      ...NM.map((nm, i) => `${nm} nm;${columns.map(() => values[i % values.length]).join(";")}`),
    ].join("\n"),
  );
  return name;
};

describe("an instrument's file", () => {
  test("in percent is understood, written as factors and shown how to be named", async () => {
    const { code, output, complaints } = await mullstone(
      ["read", save("Soot 1.csv", [2.5, 3.7], ["soot", "grey soot"])],
      { cwd: home },
    );
    expect([code, complaints]).toEqual([0, ""]);
    expect(output).toBe(
      [
        "CSV: 2 samples: soot, grey soot",
        "400 to 700 nm in steps of 10 nm",
        "highest value 3.7",
        "taken as percent, since a value of 3.7 can only be that",
        "content/readings/soot-1.csv",
        '{ reading: soot-1, column: "soot", scale: factor, geometry: GEOMETRY }',
        '{ reading: soot-1, column: "grey soot", scale: factor, geometry: GEOMETRY }',
        "GEOMETRY stands for 45/0, d/8 included, d/8 excluded: the file does not say it, nor does workshop.yaml",
        "",
      ].join("\n"),
    );
    expect(
      readFileSync(join(content, "readings/soot-1.csv"), "utf8").split("\n").slice(0, 3),
    ).toEqual([
      "# From Soot 1.csv, CSV, read as percent, written as factor",
      "nm,soot,grey soot",
      "400,0.025,0.025",
    ]);
  });

  test("of drawdowns that were read again has a line for each drawdown", async () => {
    const { output } = await run(
      save("Lot 7.csv", [2.5, 3.7], ["LB-7 masstone 1", "LB-7 masstone 2", "LB-7 tint"]),
    );
    expect(forRecords(output)).toEqual([
      '{ reading: lot-7, column: ["LB-7 masstone 1", "LB-7 masstone 2"], scale: factor, geometry: GEOMETRY }',
      '{ reading: lot-7, column: "LB-7 tint", scale: factor, geometry: GEOMETRY }',
    ]);
  });

  test("whose names part in a number alone, and which read as other paints, have a line each", async () => {
    const rows = Array.from({ length: 31 }, (_, i) => `${400 + 10 * i},2.5,40`);
    const file = join(home, "Two.csv");
    writeFileSync(file, `nm,Probe 1,Probe 2\n${rows.join("\n")}\n`);
    expect(forRecords((await run(file)).output)).toEqual([
      '{ reading: two, column: "Probe 1", scale: factor, geometry: GEOMETRY }',
      '{ reading: two, column: "Probe 2", scale: factor, geometry: GEOMETRY }',
    ]);
  });

  test("that may be either is written only once somebody says which", async () => {
    const file = save("dark.csv", [0.4, 0.9]);
    const first = await run(file);
    expect([first.code, first.complaints]).toEqual([
      1,
      "no value is above 0.9: as factors that is usual, in percent every column would be a black; say which they are with --scale factor or --scale percent: nothing was written\n",
    ]);
    expect(existsSync(join(content, "readings/dark.csv"))).toBe(false);
    expect((await run(file, "--scale", "percent")).code).toBe(0);
    expect(readFileSync(join(content, "readings/dark.csv"), "utf8")).toContain("\n400,0.004\n");
    const again = await run(file, "--scale", "percent");
    expect([again.code, again.complaints]).toEqual([
      1,
      "content/readings/dark.csv is there already, and was left as it is\n",
    ]);
  });

  test.each([
    [
      ["--scale", "factor"],
      "--scale is factor, and a value of 40 can only be percent: nothing was written\n",
    ],
    [["--scale", "parts"], "--scale can't be parts: it takes factor or percent\n"],
  ])("%j against what it holds is refused in one line", async (options, complaint) => {
    const { code, complaints } = await run(save("light.csv", [40, 20]), ...options);
    expect([code, complaints]).toEqual([1, complaint]);
  });

  test("that is not there, or none, is told of in one line", async () => {
    expect((await run("none.csv")).complaints).toBe(
      "none.csv can't be read, since nothing is there\n",
    );
    writeFileSync(join(home, "letter.txt"), "Dear all,\nplease find\n");
    const { code, complaints } = await run("letter.txt");
    expect(code).toBe(1);
    expect(complaints).toMatch(/^letter\.txt:1:1 error /);
    expect((await run()).complaints).toBe("A file is read by: mullstone read FILE\n");
  });

  test("without a geometry goes by that of workshop.yaml, whatever else is still to be written", async () => {
    const begun = contentFolder({
      "workshop.yaml": 'name: Test Workshop\nreadings: { geometry: "45/0" }\n',
      "colours/red.md": "---\nname: Red\n---\n",
    });
    const { output } = await commandHere(["read", join(home, save("Begun.csv", [2.5, 3.7]))], {
      cwd: begun.home,
    });
    expect(output).toMatch(/\n\{ reading: begun, column: "soot", scale: factor \}\n$/);
  });

  test("that says its geometry before the table says it in what is written", async () => {
    const file = save("Geometric.csv", [2.5, 3.7]);
    const text = readFileSync(join(home, file), "utf8");
    writeFileSync(join(home, file), text.replace("Instrument;invented", "Geometry;d/8 SCE"));
    const { output } = await run(file);
    expect(output).toContain("geometry d/8 excluded\n");
    expect(output).toContain(
      '{ reading: geometric, column: "soot", scale: factor, geometry: d/8 excluded }',
    );
    expect(readFileSync(join(content, "readings/geometric.csv"), "utf8")).toContain(
      "# Geometry: d/8 excluded",
    );
  });

  test("that says who measured, with what, when and how has it said again", async () => {
    const fields = NM.map((nm) => `SPECTRAL_NM${nm}`).join(" ");
    writeFileSync(
      join(home, "Told.txt"),
      `CGATS.17\nORIGINATOR "Saltreach Colourworks, invented"\nINSTRUMENTATION "invented"\nCREATED 2026-03-02\nMEASUREMENT_GEOMETRY 45/0\nNUMBER_OF_FIELDS ${NM.length + 1}\nBEGIN_DATA_FORMAT\nSAMPLE_NAME ${fields}\nEND_DATA_FORMAT\nNUMBER_OF_SETS 1\nBEGIN_DATA\nsoot ${NM.map(() => "0.04").join(" ")}\nEND_DATA\n`,
    );
    expect((await run("Told.txt", "--scale", "factor")).output.split("\n").slice(3, 8)).toEqual([
      "geometry 45/0",
      "originator Saltreach Colourworks, invented",
      "instrument invented",
      "date 2026-03-02",
      "geometry 45/0",
    ]);
  });

  test("of K/S is not taken for reflectances", async () => {
    const { code, complaints } = await run(save("KS.csv", [3, 6.3], ["Soot K/S", "grey"]));
    expect(code).toBe(1);
    expect(complaints).toBe(
      "Soot K/S of KS.csv is named as K/S, which is worked out of a reflectance, and a reading is the reflectance itself; export that, or leave the column out: nothing was written\n",
    );
    expect(existsSync(join(content, "readings/ks.csv"))).toBe(false);
    // A name with a stroke is none of it.
    expect((await run(save("Lot KS 7.csv", [3, 6.3], ["lot 7/S"]))).code).toBe(0);
  });

  test("of L*a*b* alone is said to be that, and where it goes", async () => {
    writeFileSync(
      join(home, "lab.txt"),
      "CGATS.17\nNUMBER_OF_FIELDS 4\nBEGIN_DATA_FORMAT\nSAMPLE_NAME LAB_L LAB_A LAB_B\nEND_DATA_FORMAT\nNUMBER_OF_SETS 1\nBEGIN_DATA\nsoot 25.1 0.2 -0.4\nEND_DATA\n",
    );
    const { code, complaints } = await run("lab.txt");
    expect([code, complaints]).toEqual([
      1,
      "lab.txt holds L*a*b* and no spectrum; a record can name it as it is, put into readings/, with the illuminant and observer where the file does not say them: nothing was written\n",
    ]);
    writeFileSync(join(home, "lab.csv"), "Name;L*;a*;b*\nsoot;25,1;0,2;-0,4\n");
    expect((await run("lab.csv")).complaints).toContain(
      "L*a*b* alone stands in the record itself, lab: [L, a, b], with its illuminant",
    );
  });
});
