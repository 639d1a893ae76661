import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { workCacheOf } from "../../lib/kept/work-cache.ts";
import { loadRecords } from "../../lib/records/load-records.ts";
import { keptParsers } from "../../lib/records/kept-parsers.ts";
import { contentFolder, SMALLEST_WORKSHOP } from "../support/content-folder.ts";

test("records read again are those of the files as they are now, and what was not edited is not parsed again", () => {
  const { content, home } = contentFolder(SMALLEST_WORKSHOP);
  const parsers = keptParsers();
  const read = () => loadRecords(content, home, undefined, parsers);
  const write = (path: string, text: string): void => writeFileSync(join(content, path), text);
  const [first, again] = [read().records, read().records];
  expect(again?.pigments.get("lamp-black")?.record).toBe(first?.pigments.get("lamp-black")?.record);

  write("pigments/lamp-black.yaml", "name: Soot\n");
  expect(read().records?.pigments.get("lamp-black")?.record.name).toBe("Soot");
  expect(read().records?.colours.get("lamp-black")?.record).toBe(
    first?.colours.get("lamp-black")?.record,
  );

  write("pigments/lamp-black.yaml", "name: [Soot\n");
  expect(read().records).toBeUndefined();
  expect(read().diagnostics).toEqual(loadRecords(content, home).diagnostics);

  write("pigments/lamp-black.yaml", SMALLEST_WORKSHOP["pigments/lamp-black.yaml"]);
  const readings = readFileSync(join(content, "readings/lamp-black.csv"), "utf8");
  write("readings/lamp-black.csv", readings.replaceAll("0.02", "0.03"));
  expect(read().records?.colours.get("lamp-black")?.masstone).toEqual(
    loadRecords(content, home).records?.colours.get("lamp-black")?.masstone,
  );
});

test("a record that says what it said before is the same one, price and all, until something of it is edited", () => {
  const { content, home } = contentFolder({
    ...SMALLEST_WORKSHOP,
    "prices.csv": "colour,ml,price\nlamp-black,40,5\n",
  });
  const parsers = keptParsers();
  const black = () =>
    loadRecords(content, home, undefined, parsers).records?.colours.get("lamp-black");
  const write = (path: string, text: string): void => writeFileSync(join(content, path), text);
  const first = black();
  expect(first?.sizes.map(({ price }) => price)).toEqual([5]);
  expect(black()).toBe(first);
  write("prices.csv", "colour,ml,price\nlamp-black,40,6\n");
  const dearer = black();
  expect(dearer?.sizes.map(({ price }) => price)).toEqual([6]);
  expect(black()).toBe(dearer);
  const readings = readFileSync(join(content, "readings/lamp-black.csv"), "utf8");
  write("readings/lamp-black.csv", readings.replaceAll("0.02", "0.03"));
  const lighter = black();
  expect(lighter).not.toBe(dearer);
  expect(lighter?.masstone).toEqual(
    loadRecords(content, home).records?.colours.get("lamp-black")?.masstone,
  );
});

test("what is wrong is told at its line as it is now, however often the files were read before", () => {
  const { content, home } = contentFolder(SMALLEST_WORKSHOP);
  const parsers = keptParsers();
  const write = (path: string, text: string): void => writeFileSync(join(content, path), text);
  const told = () => {
    const { diagnostics } = loadRecords(content, home, "2026-01-01", parsers);
    expect(diagnostics).toEqual(loadRecords(content, home, "2026-01-01").diagnostics);
    return diagnostics.map(({ rule, place }) => `${rule} ${place.line}`);
  };
  const rows = ["lamp-black,40,5", "lamp-black,40,6", "soot,40,5", "lamp-black,60,free"];
  const list = (...more: readonly string[]): string =>
    `${["colour,ml,price", ...more, ...rows].join("\n")}\n`;
  write("prices.csv", list());
  const first = told();
  expect(first).toContain("records/price 5");
  expect(told()).toEqual(first);
  write("prices.csv", list("lamp-black,80,7"));
  expect(told()).toContain("records/price 6");
  const pigment = SMALLEST_WORKSHOP["pigments/lamp-black.yaml"];
  write("prices.csv", "colour,ml,price\nlamp-black,40,5\n");
  write("pigments/lamp-black.yaml", `${pigment}source: nobody\n`);
  const unknown = told();
  write("pigments/lamp-black.yaml", `# A line more.\n${pigment}source: nobody\n`);
  expect(told()).not.toEqual(unknown);
  write("pigments/lamp-black.yaml", pigment);
  expect(told()).toEqual(
    loadRecords(content, home, "2026-01-01").diagnostics.map(
      ({ rule, place }) => `${rule} ${place.line}`,
    ),
  );
});

test("what is wrong with a record by itself goes by the day and by the languages of labels, however often it was told", () => {
  const { content, home } = contentFolder({
    ...SMALLEST_WORKSHOP,
    "pigments/lamp-black.yaml": "name: Lamp black\nwhatItIs: Soot, ungiftig.\ndate: 2026-05-01\n",
  });
  const cache = { ...workCacheOf(content), programPart: () => "of this test" };
  const told = (today: string, languages: string): string[] => {
    writeFileSync(
      join(content, "workshop.yaml"),
      `${SMALLEST_WORKSHOP["workshop.yaml"]}languages: ${languages}\n`,
    );
    // Each is a run of its own, out of what the last one kept.
    const parsers = keptParsers();
    parsers.begin(cache);
    const found = loadRecords(content, home, today, parsers).diagnostics;
    parsers.keep(cache);
    expect(found).toEqual(loadRecords(content, home, today).diagnostics);
    return found
      .filter(({ place }) => place.file === "content/pigments/lamp-black.yaml")
      .map(({ rule }) => rule);
  };
  for (const _ of [1, 2]) {
    expect(told("2026-06-01", "[en]")).toEqual([]);
    expect(told("2026-04-01", "[en]")).toEqual(["records/date-to-come"]);
    expect(told("2026-06-01", "[en, de]")).toEqual(["records/claim"]);
  }
});

/** Reflectance by wavelength, invented. */
function columnOf(name: string, of: (nm: number) => number): string {
  const wavelengths = Array.from({ length: 31 }, (_, i) => 400 + 10 * i);
  return [`nm,${name}`, ...wavelengths.map((nm) => `${nm},${of(nm).toFixed(4)}`)].join("\n");
}
const blue = (nm: number): number => (nm < 500 ? 0.3 : 0.01);

test("what readings say beside others is found again of those alone whose files were read for it", () => {
  const texts = {
    "workshop.yaml": "name: Test\nreadings: { scale: factor, geometry: d/8 excluded }\n",
    "pigments/blue.yaml": "name: Blue\n",
    "pigments/zinc.yaml": "name: Zinc\n",
    "readings/blue.csv": columnOf("masstone", blue),
    "readings/pale.csv": columnOf("pale", (nm) => 0.2 + blue(nm)),
    "readings/white.csv": columnOf("white", () => 0.9),
    "colours/zinc.md":
      "---\nname: Zinc White\npigments: [{ pigment: zinc }]\nmasstone: { reading: white, column: white }\n---\n",
    "colours/blue.md":
      '---\nname: Blue\npigments: [{ pigment: blue }]\nmasstone: { reading: blue, column: masstone }\ntints:\n  - { white: zinc, massRatio: "1:1", ratioKind: paint, reading: pale, column: pale }\n---\n',
  };
  const { content, home } = contentFolder(texts);
  const cache = { ...workCacheOf(content), programPart: () => "of this test" };
  const edit = (path: keyof typeof texts | "colours/another.md", text: string): void =>
    writeFileSync(join(content, path), text);
  /** Out of what the run before kept: whose readings were looked at anew, and by what rules something was said of the blue. */
  const told = (): readonly [string[], string[]] => {
    const looked: string[] = [];
    const parsers = keptParsers();
    parsers.begin(cache);
    const { diagnostics } = loadRecords(content, home, undefined, {
      ...parsers,
      checks: (part) => {
        const check = parsers.checks(part);
        return (name, of, made) =>
          check(name, of, () => {
            if (name === "readings of colours beside others")
              looked.push(of.replace(/^.*\/|\.md$/g, ""));
            return made();
          });
      },
    });
    parsers.keep(cache);
    expect(diagnostics).toEqual(loadRecords(content, home).diagnostics);
    const ofBlue = diagnostics.filter(({ place }) => place.file === "content/colours/blue.md");
    return [looked, ofBlue.map(({ rule }) => rule)];
  };
  expect(told()).toEqual([["blue", "zinc"], []]);
  expect(told()).toEqual([[], []]);
  edit(
    "readings/white.csv",
    columnOf("white", () => 0.25),
  );
  expect(told()).toEqual([["blue", "zinc"], ["records/dark-white"]]);
  edit("pigments/zinc.yaml", "name: Zinc\nfamily: extender\n");
  expect(told()).toEqual([["blue", "zinc"], []]);
  edit("pigments/zinc.yaml", texts["pigments/zinc.yaml"]);
  edit("colours/zinc.md", texts["colours/zinc.md"].replace("pigment: zinc", "pigment: blue"));
  expect(told()[0]).toEqual(["blue", "zinc"]);
  // A note touches its own colour alone; and another colour, which nothing was let down in, its own.
  edit("colours/blue.md", `${texts["colours/blue.md"]}A note.\n`);
  expect(told()[0]).toEqual(["blue"]);
  edit("colours/another.md", texts["colours/zinc.md"].replace("Zinc White", "Another"));
  expect(told()[0]).toEqual(["another"]);
  edit("workshop.yaml", texts["workshop.yaml"].replace("d/8 excluded", "d/8 included"));
  expect(told()).toEqual([
    ["another", "blue", "zinc"],
    expect.arrayContaining(["records/gloss-told-wrongly"]),
  ]);
});

test("a white that is named by its pigment is the colour that is made of that alone, as it is by now", () => {
  const zinc = (name: string, pigment: string, column: string): string =>
    `---\nname: ${name}\npigments: [{ pigment: ${pigment} }]\nmasstone: { reading: all, column: ${column} }\n---\n`;
  const texts = {
    "workshop.yaml": "name: Test\nreadings: { scale: factor, geometry: d/8 excluded }\n",
    "pigments/blue.yaml": "name: Blue\n",
    "pigments/zinc.yaml": "name: Zinc\n",
    "readings/blue.csv": columnOf("masstone", blue),
    "readings/pale.csv": columnOf("pale", (nm) => 0.2 + blue(nm)),
    "readings/white.csv": columnOf("white", () => 0.9),
    "readings/dark.csv": columnOf("dark", () => 0.1),
    "colours/light.md": zinc("Light", "zinc", "white").replace("all", "white"),
    "colours/grey.md": zinc("Grey", "blue", "dark").replace("all", "dark"),
    "colours/blue.md":
      '---\nname: Blue\npigments: [{ pigment: blue }]\nmasstone: { reading: blue, column: masstone }\ntints:\n  - { white: zinc, massRatio: "1:1", ratioKind: paint, reading: pale, column: pale }\n---\n',
  };
  const { content, home } = contentFolder(texts);
  const cache = { ...workCacheOf(content), programPart: () => "of this test" };
  const darkWhites = (): number => {
    const parsers = keptParsers();
    parsers.begin(cache);
    const { diagnostics } = loadRecords(content, home, undefined, parsers);
    parsers.keep(cache);
    expect(diagnostics).toEqual(loadRecords(content, home).diagnostics);
    return diagnostics.filter(({ rule }) => rule === "records/dark-white").length;
  };
  expect(darkWhites()).toBe(0);
  writeFileSync(
    join(content, "colours/grey.md"),
    texts["colours/grey.md"].replace("pigment: blue", "pigment: zinc"),
  );
  // By name, grey comes before light.
  expect(darkWhites()).toBe(1);
});

test("of an edited workshop that file alone is looked at anew, once, whatever was written down before with all others", () => {
  const { content, home } = contentFolder(SMALLEST_WORKSHOP);
  const cache = { ...workCacheOf(content), programPart: () => "of this test" };
  const black = "pigments/lamp-black.yaml";
  /** Each a run of its own, out of what the last one kept: the files of which something was found anew. */
  const lookedAt = (text: string): string[] => {
    writeFileSync(join(content, black), text);
    const looked = new Set<string>();
    const parsers = keptParsers();
    parsers.begin(cache);
    const { diagnostics } = loadRecords(content, home, undefined, {
      ...parsers,
      follows: (file, name, made) =>
        parsers.follows(file, name, () => {
          looked.add(file);
          return made();
        }),
    });
    parsers.keep(cache);
    expect(diagnostics).toEqual(loadRecords(content, home).diagnostics);
    return [...looked];
  };
  const asItWas = SMALLEST_WORKSHOP[black];
  expect(lookedAt(asItWas).length).toBeGreaterThan(1);
  expect(lookedAt(asItWas)).toEqual([]);
  for (const text of [`${asItWas}# Of soot.\n`, asItWas]) {
    expect(lookedAt(text)).toEqual([`content/${black}`]);
    expect(lookedAt(text)).toEqual([]);
  }
});

test("a rule between records looks again where a key that it read was edited, or moved in its file, and nowhere else", () => {
  const texts = {
    "workshop.yaml": "name: Test\n",
    "pigments/blue.yaml": "name: Blue\n",
    "colours/blue.md": "---\nname: Blue\npigments: [{ pigment: blue }]\n---\nA note.\n",
    "colours/other.md": "---\nname: Other\npigments: [{ pigment: blue }]\n---\nA note.\n",
  };
  const { content, home } = contentFolder(texts);
  const cache = { ...workCacheOf(content), programPart: () => "of this test" };
  const looked = (path?: keyof typeof texts, text = ""): readonly string[] => {
    if (path !== undefined) writeFileSync(join(content, path), text);
    const rules: string[] = [];
    const parsers = keptParsers();
    parsers.begin(cache);
    const { diagnostics } = loadRecords(content, home, "2026-11-30", {
      ...parsers,
      checks: (part) => {
        const check = parsers.checks(part);
        return (name, of, made) =>
          check(name, of, () => {
            if (name === "rules across records") rules.push(of);
            return made();
          });
      },
    });
    parsers.keep(cache);
    expect(diagnostics).toEqual(loadRecords(content, home, "2026-11-30").diagnostics);
    return rules;
  };
  const { "colours/blue.md": blue } = texts;
  expect(looked().length).toBeGreaterThan(12);
  expect(looked()).toEqual([]);
  expect(looked("colours/blue.md", `${blue}Another.\n`)).toEqual(["languages of texts"]);
  // A price is nothing to most of them; a twin of its name none of them has seen.
  const priced = blue.replace("---\nA", "sizes: [{ ml: 40, price: 1.25 }]\n---\nA");
  expect(looked("colours/blue.md", priced)).toEqual(
    expect.not.arrayContaining(["columns", "paints", "trials", "pairs", "markets"]),
  );
  // What is wrong stands two lines farther down now: whoever told its line tells it again.
  const lacking = priced.replace("pigment: blue", "pigment: nothing");
  expect(looked("colours/blue.md", lacking)).toContain("references");
  const moved = lacking.replace("name: Blue", "# One.\n# Two.\nname: Blue");
  expect(looked("colours/blue.md", moved)).toContain("references");
  expect(looked("workshop.yaml", "name: Test\npairs: [[blue, blue]]\n")).toContain("pairs");
  writeFileSync(join(content, "colours/third.md"), blue.replace("name: Blue", "name: Third"));
  expect(looked()).toContain("columns");
});
