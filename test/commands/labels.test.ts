import { existsSync, mkdirSync, readFileSync, rmdirSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { beforeAll, describe, expect, test } from "vitest";
import { takenLock } from "../../lib/site/build-lock.ts";
import { OutputFault } from "../../lib/site/output-fault.ts";
import { keepPrintedLabels } from "../../lib/site/printed-labels.ts";
import { commandHere } from "../support/command-here.ts";
import { contentFolder, flatReadings, SMALLEST_WORKSHOP } from "../support/content-folder.ts";
import { mullstone, type CommandRun } from "../support/mullstone.ts";
import { pageText, readPdf } from "../support/read-pdf.ts";

const WORKSHOP = `name: Test Workshop
address: 1 Test Lane
telephone: "000"
currency: GBP
vehicle: linseed-oil
labels:
  - { name: tube-40, kind: tube, ml: 40, price: code, symbol: ean }
  - { name: jar-120, kind: jar, ml: 120 }
`;
const RECORDS = {
  ...SMALLEST_WORKSHOP,
  "workshop.yaml": WORKSHOP,
  "pigments/lamp-black.yaml": "name: Lamp black\ncolourIndexName: PBk 6\nhazards: []\n",
  "vehicles/linseed-oil.yaml": "name: Linseed oil\nkind: oil\noil: linseed\nhazards: []\n",
};
const { home } = contentFolder({
  ...RECORDS,
  "prices.csv": "colour,ml,price,code,ean\nlamp-black,40 ml,8,A,6291041500213\n",
});
const run = (...options: string[]): Promise<CommandRun> =>
  commandHere(["labels", ...options], { cwd: home });

describe("labels of a workshop", () => {
  let first: CommandRun;
  beforeAll(async () => {
    first = await mullstone(["labels", "--copies", "3"], { cwd: home });
  });

  test("are printed into labels.pdf, so many of each, for the sizes that a colour is put up in", async () => {
    expect([first.code, first.complaints]).toEqual([0, ""]);
    expect(first.output).toMatch(
      /3 labels on 1 page, to print at full size, \d+\.\d s: labels\.pdf\n$/,
    );
    const { pages, title } = await readPdf(readFileSync(join(home, "labels.pdf")));
    const text = pages[0] === undefined ? "" : pageText(pages[0]);
    expect(title).toBe("Labels: Test Workshop");
    expect(text.match(/Lamp Black/g)).toHaveLength(3);
    expect(text).toContain("Price group A");
    expect(text).toContain("6 291041 500213");
  });

  test.each([
    [
      ["--size", "tube-41"],
      "--size can't be tube-41: it takes tube-40, jar-120; nearest: tube-40\n",
    ],
    [
      ["--only", "lamp-blak"],
      "--only can't be lamp-blak: it takes lamp-black; nearest: lamp-black\n",
    ],
    [["--copies", "0"], "--copies can't be 0: it takes 1 to 500\n"],
    [["--filled"], "--filled needs --lot: it takes as many labels as that lot filled tubes\n"],
    [
      ["--filled", "--lot", "LB-1", "--copies", "2"],
      "--filled says how many of each, and so does --copies: give one of them\n",
    ],
    [["--paper", "A4"], "labels has no --paper: it belongs to cards\n"],
  ])("%j is refused in one line", async (options, complaint) => {
    const { code, complaints } = await run(...options, "--output", "none.pdf");
    expect([code, complaints]).toEqual([1, complaint]);
    expect(existsSync(join(home, "none.pdf"))).toBe(false);
  });

  test("are as many as a lot filled tubes, size by size", async () => {
    const { home: filled } = contentFolder({
      ...RECORDS,
      "prices.csv": "colour,ml,price\nlamp-black,40 ml,8\nlamp-black,120 ml,20\n",
      "lots/lb-1.yaml":
        "number: LB-1\ncolour: lamp-black\ndate: 2026-04-01\npigments: [{ pigment: lamp-black, massG: 100 }]\ntubes: [{ ml: 40, count: 5 }, { ml: 120, count: 2 }, { ml: 15, count: 3 }, { ml: 10, count: 0 }]\n",
    });
    const { code, output } = await commandHere(
      ["labels", "--lot", "LB-1", "--filled", "--output", "filled.pdf"],
      { cwd: filled },
    );
    expect(code).toBe(0);
    expect(output.match(/^.* have no label here$/gm)).toEqual([
      "3 tubes of 15 ml of lot LB-1 have no label here",
    ]);
    const { pages } = await readPdf(readFileSync(join(filled, "filled.pdf")));
    const text = pages.map(pageText).join(" ");
    // Five round tubes; of two jars the front alone bears contents.
    expect(text.match(/40\s*ml/g)).toHaveLength(5);
    expect(text.match(/120\s*ml/g)).toHaveLength(2);
  });

  test("are put on record by lot, added to what was printed before, and listed where a lot is called back", async () => {
    const { home: kept, content } = contentFolder({
      ...RECORDS,
      "prices.csv": "colour,ml,price\nlamp-black,40 ml,8\nlamp-black,120 ml,20\n",
      "lots/lb-1.yaml":
        "number: LB-1\ncolour: lamp-black\ndate: 2026-04-01\npigments: [{ pigment: lamp-black, massG: 100 }]\ntubes: [{ ml: 40, count: 5 }]\n",
    });
    const at = (date: string, ...options: string[]): Promise<CommandRun> =>
      commandHere(["labels", "--lot", "LB-1", "--date", date, ...options], { cwd: kept });
    const record = join(content, "printed-labels.json");
    expect((await at("2026-04-02", "--filled")).code).toBe(0);
    expect((await at("2026-05-03", "--size", "jar-120", "--copies", "2")).code).toBe(0);
    const whole = readFileSync(record, "utf8");
    expect(JSON.parse(whole)).toEqual({
      kind: "mullstone-printed-labels",
      prints: [
        {
          date: "2026-04-02",
          lot: "LB-1",
          colour: "lamp-black",
          size: "tube-40",
          ml: 40,
          copies: 5,
        },
        {
          date: "2026-05-03",
          lot: "LB-1",
          colour: "lamp-black",
          size: "jar-120",
          ml: 120,
          copies: 2,
        },
      ],
    });
    const { output, code } = await commandHere(["check", "--uses", "lb-1"], { cwd: kept });
    expect(code).toBe(0);
    expect(output).toContain(
      "    7 labels printed\n      2026-04-02: 5 labels of lamp-black, tube-40, 40 ml\n      2026-05-03: 2 labels of lamp-black, jar-120, 120 ml\n",
    );
    // The folder's own check takes it for no stray file.
    expect((await commandHere(["check", "--strict"], { cwd: kept })).complaints).not.toContain(
      "printed-labels",
    );

    // A label that could not be put on record is not printed, and what is on record stays.
    rmSync(join(kept, "labels.pdf"));
    writeFileSync(record, whole.slice(0, -20));
    expect(await at("2026-05-04")).toMatchObject({
      code: 1,
      complaints: expect.stringMatching(
        /\ncontent\/printed-labels\.json can't be read as what labels were printed: put it right, or move it elsewhere\n$/,
      ) as string,
    });
    expect(readFileSync(record, "utf8")).toBe(whole.slice(0, -20));
    expect(existsSync(join(kept, "labels.pdf"))).toBe(false);
    writeFileSync(record, whole);

    // What could not be written is not on record: a folder stands where its bytes go first.
    mkdirSync(join(kept, "labels.pdf.building"));
    expect((await at("2026-05-05")).code).toBe(1);
    expect(readFileSync(record, "utf8")).toBe(whole);
    rmdirSync(join(kept, "labels.pdf.building"));
    const lock = takenLock(join(content, ".printed-labels.json.lock"), record);
    expect(() => keepPrintedLabels(content, [])).toThrow(OutputFault);
    lock.release();
    expect(readFileSync(record, "utf8")).toBe(whole);
  });

  test("bear the newest lot that agrees with its standard, or the one that is asked for", async () => {
    const lot = (number: string, date: string, further: string): string =>
      `number: ${number}\ncolour: lamp-black\ndate: ${date}\npigments: [{ pigment: lamp-black, massG: 100 }]\n${further}\n`;
    const read = (column: string): string =>
      `masstone: { reading: lots, column: ${column}, scale: factor, geometry: "45/0" }`;
    const { home: lots } = contentFolder({
      ...RECORDS,
      "prices.csv": "colour,ml,price\nlamp-black,40 ml,8\n",
      "readings/lots.csv": flatReadings({ alike: 0.02, grey: 0.2, "as-it": 0.02 }),
      "lots/lb-1.yaml": lot("LB-1", "2026-04-01", read("alike")),
      "lots/lb-2.yaml": lot("LB-2", "2026-05-01", read("grey")),
      "lots/lb-3.yaml": lot("LB-3", "2026-06-01", "planned: true"),
      "lots/lb-4.yaml": lot(
        "LB-4",
        "2026-04-02",
        `${read("alike").replace("alike", "as-it")}\nstate: { is: recalled, since: 2026-05-01, why: too much drier }`,
      ),
    });
    const printed = async (...options: string[]): Promise<readonly string[]> => {
      const { code, output, complaints } = await commandHere(
        ["labels", "--output", "one.pdf", ...options],
        { cwd: lots },
      );
      if (code !== 0) return [complaints];
      const { pages } = await readPdf(readFileSync(join(lots, "one.pdf")));
      const [page] = pages;
      return [
        /LB-\d/.exec(page === undefined ? "" : pageText(page))?.[0] ?? "",
        output,
        complaints,
      ];
    };
    expect((await printed())[0]).toBe("LB-1");
    const [failed, , warned] = await printed("--lot", "lb-2");
    expect(failed).toBe("LB-2");
    expect(warned).toBe(
      "warning: lot LB-2 fails against its standard: its page in the workshop says by what; its labels are printed all the same\n",
    );
    const [sound, said, nothing] = await printed("--lot", "lb-1");
    expect([sound, nothing]).toEqual(["LB-1", ""]);
    expect(said).toContain("lot LB-1 agrees with its standard");
    expect(await printed("--lot", "lb-4")).toEqual([
      "lot LB-4 is recalled since 2026-05-01: no labels of it are printed\n",
    ]);
    const unfilled = await printed("--lot", "lb-1", "--filled");
    expect(unfilled[1]).toMatch(
      /^the record of lot LB-1 gives no tubes: a list of \{ ml, count \} says how many\nno labels to print/m,
    );
    expect(await printed("--lot", "LB-9")).toEqual([
      expect.stringMatching(/^There is no lot LB-9 in lots\/; nearest: LB-\d\n$/),
    ]);
    expect(await printed("--lot", "LB-1", "--only", "soot")).toEqual([
      "The lot LB-1 is one of lamp-black, and --only asks for soot\n",
    ]);
  });

  test("a workshop that gives no labels is told which there are", async () => {
    const plain = contentFolder(SMALLEST_WORKSHOP);
    const { code, complaints } = await commandHere(["labels"], { cwd: plain.home });
    expect(code).toBe(1);
    expect(complaints).toContain(
      "workshop.yaml gives no labels: a list of { name, kind: tube | jar, ml }",
    );
  });
});
