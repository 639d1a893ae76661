import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { beforeAll, describe, expect, test } from "vitest";
import { formatDiagnostic } from "../../lib/diagnostics/diagnostic.ts";
import { loadRecords } from "../../lib/records/load-records.ts";
import { siteOf } from "../../lib/site/site-of-records.ts";
import { commandHere } from "../support/command-here.ts";
import { contentFolder, type RecordTexts } from "../support/content-folder.ts";
import { mullstone, type CommandRun } from "../support/mullstone.ts";
import { pageText, readPdf } from "../support/read-pdf.ts";
import { fourColourWorkshop, partOfDemonstration } from "./demonstration-part.ts";
import { dataAt } from "../support/site-data.ts";

/** A workshop whose colours have each a price in its record. */
function priced(texts: RecordTexts): RecordTexts {
  return Object.fromEntries(
    Object.entries(texts).map(([path, text]) => [
      path,
      path.startsWith("colours/")
        ? text.replace(/^name: .*$/m, "$&\nsizes: [{ ml: 40, price: 8.50 }]")
        : text,
    ]),
  );
}

const FOUR_COLOURS = priced(fourColourWorkshop());
/** Less to work out, where what is told of one colour is told of any. */
const TWO_WHITES = priced(partOfDemonstration(["titanium-white", "zinc-white"]));

/** Complaints but for the warnings of records that these few colours leave unused. */
const faults = ({ complaints }: CommandRun): string[] =>
  complaints.split("\n").filter((line) => line !== "" && !line.includes(" warning "));
const { home } = contentFolder(FOUR_COLOURS);
const run = (...options: string[]): Promise<CommandRun> =>
  commandHere(["cards", ...options], { cwd: home });
const file = (name: string): string => join(home, name);

/** What a build would keep of these records. */
function manifestOf(content: string): string {
  const { records } = loadRecords(content, home);
  return records === undefined
    ? ""
    : (dataAt(siteOf(records, records.newestDate).site, "manifest.json") ?? "");
}

describe("cards of a workshop", () => {
  let first: CommandRun;
  beforeAll(async () => {
    first = await mullstone(["cards"], { cwd: home });
  });

  test("are printed into cards.pdf, and a colour without one is named", async () => {
    expect([first.code, faults(first)]).toEqual([0, []]);
    expect(first.output).toMatch(
      /^lead-white: no card, since it may be sold in EU, GB on a legal basis alone or not at all\n3 cards in 90x55 on 2 pages of A4, to print on both sides, turned on the long edge, \d+\.\d s: cards\.pdf\n$/,
    );
    const { pages } = await readPdf(readFileSync(file("cards.pdf")));
    expect(pages).toHaveLength(2);
    expect(pages[0] && pageText(pages[0])).toContain("Lamp Black");
    expect(readdirSync(home).filter((name) => name.includes("building"))).toEqual([]);
  });

  test("can be chosen by slug, family, size and paper", async () => {
    const { code, output } = await run(
      "--family",
      "whites",
      "--size",
      "strip",
      "--paper",
      "Letter",
      "--only",
      "zinc-white,lamp-black",
      "--output",
      "some.pdf",
    );
    expect([code, output.replace(/, \d+\.\d s/, "")]).toEqual([
      0,
      "1 card in strip on 1 page of Letter, to fold: some.pdf\n",
    ]);
    const { pages } = await readPdf(readFileSync(file("some.pdf")));
    // Folded strips of 110 x 76 mm: four of them where it lies, three upright.
    expect(
      pages.map(({ widthPt, heightPt }) => [Math.round(widthPt), Math.round(heightPt)]),
    ).toEqual([[792, 612]]);
  });

  test.each([
    [
      ["--only", "lamp-blak"],
      "--only can't be lamp-blak: it takes lamp-black, lead-white, titanium-white, zinc-white; nearest: lamp-black",
    ],
    [["--output", "folder"], "--output of cards is a file, and folder is a folder"],
    [
      ["--output", "content/workshop.yaml"],
      "--output of cards can't be content/workshop.yaml: it lies in the content folder, where only records are",
    ],
  ])("%j is said in one line, and nothing is written", async (options, complaint) => {
    mkdirSync(file("folder"), { recursive: true });
    const before = readdirSync(home).sort();
    const refused = await run(...options);
    expect([refused.code, faults(refused)]).toEqual([1, [complaint]]);
    expect(readdirSync(home).sort()).toEqual(before);
  });

  test("keep what they say beside the records, and are named to be printed again when it changes", async () => {
    const { content, home: own } = contentFolder(TWO_WHITES);
    const inOwn = (...options: string[]) => commandHere(options, { cwd: own });
    const due = async () =>
      (await inOwn("next")).output.split("\n").filter((line) => line.includes("Shelf card"));
    const kept = (): { slug: string }[] =>
      (
        JSON.parse(readFileSync(join(content, "printed-cards.json"), "utf8")) as {
          cards: { slug: string }[];
        }
      ).cards;
    expect(await due()).toEqual([]);
    expect(faults(await inOwn("cards", "--only", "titanium-white"))).toEqual([]);
    expect(kept().map(({ slug }) => slug)).toEqual(["titanium-white"]);
    expect((await due()).map((line) => line.split(":")[1])).toEqual([" colours/zinc-white"]);
    await inOwn("cards");
    expect(kept().map(({ slug }) => slug)).toEqual(["titanium-white", "zinc-white"]);
    expect(await due()).toEqual([]);
    const record = join(content, "colours/zinc-white.md");
    writeFileSync(record, readFileSync(record, "utf8").replace("price: 8.50", "price: 9.25"));
    expect(await due()).toEqual([
      "due: colours/zinc-white: Shelf card to print again: Sizes and prices: no longer \u201c40 ml \u00a38.50 (\u00a3212.50/l)\u201d; Sizes and prices: now \u201c40 ml \u00a39.25 (\u00a3231.25/l)\u201d",
    ]);
    const again = await inOwn("cards", "--since", "content/printed-cards.json");
    expect(again.output).toContain("1 card in 90x55");
    expect(await due()).toEqual([]);
    writeFileSync(join(content, "printed-cards.json"), "{");
    const broken = await inOwn("next");
    expect([broken.code, faults(broken)]).toEqual([
      1,
      [
        "content/printed-cards.json can't be read as what cards said when they were printed: put it right, or delete it and print them anew",
      ],
    ]);
  });

  test("are printed again only where they say something else than the manifest that was kept", async () => {
    mkdirSync(file("site"));
    writeFileSync(file("site/manifest.json"), manifestOf(file("content")));
    const same = await run("--since", "site/manifest.json", "--output", "again.pdf");
    expect([same.code, same.output.replace(/, \d+\.\d s/, "")]).toEqual([
      0,
      "lead-white: no card, since it may be sold in EU, GB on a legal basis alone or not at all\nno card says anything else than in site/manifest.json: nothing was written\n",
    ]);
    expect(existsSync(file("again.pdf"))).toBe(false);

    const record = file("content/colours/zinc-white.md");
    writeFileSync(record, readFileSync(record, "utf8").replace(/price: [\d.]+/, "price: 9.25"));
    const { output } = await run("--since", "site/manifest.json", "--output", "again.pdf");
    expect(output).toContain(
      "zinc-white: Sizes and prices: no longer \u201c40 ml \u00a38.50 (\u00a3212.50/l)\u201d\nzinc-white: Sizes and prices: now \u201c40 ml \u00a39.25 (\u00a3231.25/l)\u201d\n1 card in 90x55 on 2 pages of A4",
    );
    const { pages } = await readPdf(readFileSync(file("again.pdf")));
    expect(pages[0] && pageText(pages[0])).toContain("\u00a39.25");
  });
});

describe("sizes on record", () => {
  const withCards = (cards: string) =>
    contentFolder({
      ...TWO_WHITES,
      "workshop.yaml": `${TWO_WHITES["workshop.yaml"]?.replace(/^cards:\n(?: .*\n)+/m, "") ?? ""}\n${cards}\n`,
    });

  test.each([
    ["cards: [{ name: mine, widthMm: 69, heightMm: 40 }]", "cards[0].widthMm is 69, and takes"],
    ["cards: [{ name: mine, widthMm: 80, heightMm: 121 }]", "cards[0].heightMm is 121, and takes"],
    [
      "cards: [{ name: mine, widthMm: 80, heightMm: 50 }, { name: mine, widthMm: 90, heightMm: 50 }]",
      "a name that no other size has",
    ],
    ["cards: [{ name: mine, widthMn: 80, heightMm: 50 }]", "nearest: widthMm"],
  ])("%s is refused at its line", (cards, complaint) => {
    const { records, diagnostics } = loadRecords(join(withCards(cards).home, "content"));
    expect(records).toBeUndefined();
    expect(diagnostics.map(formatDiagnostic).join("\n")).toContain(complaint);
  });

  test("of the workshop's own take the place of ours, and without an address no code is printed", async () => {
    const { home: own } = withCards("cards: [{ name: mine, widthMm: 80, heightMm: 50 }]");
    const workshop = join(own, "content/workshop.yaml");
    writeFileSync(workshop, readFileSync(workshop, "utf8").replace(/^siteAddress:.*\n/m, ""));
    const { code, output } = await commandHere(
      ["cards", "--only", "zinc-white", "--output", "mine.pdf"],
      { cwd: own },
    );
    expect([code, output.replace(/, \d+\.\d s/, "")]).toEqual([
      0,
      "no QR codes: workshop.yaml gives no siteAddress\n1 card in mine on 2 pages of A4, to print on both sides, turned on the long edge: mine.pdf\n",
    ]);
    expect(readFileSync(join(own, "mine.pdf")).toString("latin1")).not.toContain("QR code");
  });
});

test("a colour without hazard data is named with what lacks them, markets or none", async () => {
  const { home: folder } = contentFolder({
    "workshop.yaml": "name: My workshop\nvehicle: linseed\naddress: The Loft\n",
    "vehicles/linseed.yaml": "name: Linseed oil\nkind: oil\nhazards: []\n",
    "pigments/earth.yaml": "name: Earth of the Ford\n",
    "colours/earth.md":
      "---\nname: Earth\npigments: [{ pigment: earth }]\noilIndexGPer100g: 50\n---\n",
  });
  const { output } = await commandHere(["cards"], { cwd: folder });
  expect(output.split("\n")[0]).toBe(
    "earth: no card, since it is not classified yet, for want of hazard data of Earth of the Ford",
  );
});

describe("a proof", () => {
  test("has every paint in process inks and says on each page what it is not", async () => {
    const { code, output } = await run("--proof", "cmyk", "--only", "lamp-black,zinc-white");
    expect(code).toBe(0);
    expect(output).toMatch(/a preview in process inks of 2 colours on \d+ pages/);
    expect(output).toMatch(/beyond these inks.*: lamp-black: /);
    const bytes = readFileSync(file("proof.pdf"));
    const { pages } = await readPdf(bytes);
    expect(pages.length).toBeGreaterThan(3);
    for (const page of pages) {
      expect(pageText(page)).toContain("Preview of process inks, not a colour to match");
      expect(page.content).not.toContain("/CSLab");
    }
    expect(pages[0]?.content).toMatch(/\/CSInks cs( [01](\.\d+)?){4} sc/);
    const text = bytes.toString("latin1");
    expect(text).toContain("/ICCBased");
    expect(text).not.toMatch(/\/Separation|\/DeviceN\b/);
  });

  test("is of process inks alone", async () => {
    const { code, complaints } = await run("--proof", "spot");
    expect([code, complaints]).toEqual([1, "--proof can't be spot: it takes cmyk\n"]);
  });
});
