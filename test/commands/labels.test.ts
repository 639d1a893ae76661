import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { beforeAll, describe, expect, test } from "vitest";
import { contentFolder, SMALLEST_WORKSHOP } from "../support/content-folder.ts";
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
const { home } = contentFolder({
  ...SMALLEST_WORKSHOP,
  "workshop.yaml": WORKSHOP,
  "pigments/lamp-black.yaml": "name: Lamp black\ncolourIndexName: PBk 6\nhazards: []\n",
  "vehicles/linseed-oil.yaml": "name: Linseed oil\nkind: oil\noil: linseed\nhazards: []\n",
  "prices.csv": "colour,size,price,code,ean\nlamp-black,40 ml,8,A,6291041500213\n",
});
const run = (...options: string[]): Promise<CommandRun> =>
  mullstone(["labels", ...options], { cwd: home });

describe("labels of a workshop", () => {
  let first: CommandRun;
  beforeAll(async () => {
    first = await run("--copies", "3");
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
    [["--paper", "A4"], "labels has no --paper: it belongs to cards\n"],
  ])("%j is refused in one line", async (options, complaint) => {
    const { code, complaints } = await run(...options, "--output", "none.pdf");
    expect([code, complaints]).toEqual([1, complaint]);
    expect(existsSync(join(home, "none.pdf"))).toBe(false);
  });

  test("a workshop that gives no labels is told which there are", async () => {
    const plain = contentFolder(SMALLEST_WORKSHOP);
    const { code, complaints } = await mullstone(["labels"], { cwd: plain.home });
    expect(code).toBe(1);
    expect(complaints).toContain(
      "workshop.yaml gives no labels: a list of { name, kind: tube | jar, ml }",
    );
  });
});
