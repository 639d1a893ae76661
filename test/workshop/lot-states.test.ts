/** A lot that is recalled, and one that is conceded: where that is said, and what is no longer done with it. */
import { beforeAll, describe, expect, test } from "vitest";
import { loadRecords } from "../../lib/records/load-records.ts";
import type { Records } from "../../lib/records/records.ts";
import { siteOf } from "../../lib/site/site-of-records.ts";
import { dueLots } from "../../lib/planning/due.ts";
import { lotOnSale } from "../../lib/sheet/lots/lot-on-sale.ts";
import { lotsSection } from "../../lib/sheet/lots/lots-section.ts";
import { lotsText } from "../../lib/present/lots-text.ts";
import { certain } from "../../lib/quantities/at.ts";
import { LANGUAGES } from "../../lib/quantities/languages.ts";
import { WORDED } from "../support/worded.ts";
import { fourColourWorkshop } from "../commands/demonstration-part.ts";
import { contentFolder } from "../support/content-folder.ts";
import { soundRecords } from "../support/sound-records.ts";

const WHY = "weighed with the drier of another colour";
const lot = (number: string, date: string, state = ""): string =>
  `number: ${number}\ncolour: lamp-black\ndate: ${date}\n${state}pigments: [{ pigment: lamp-black, massG: 400 }]\n`;
const RECALLED = `state: { is: recalled, since: 2026-05-10, why: ${WHY} }\n`;
const CONCEDED = `state: { is: conceded, since: 2026-05-11, why: a little weak }\n`;

const withLots = (newest: string, older: string): Readonly<Record<string, string>> => ({
  ...fourColourWorkshop(),
  "lots/lb-2700.yaml": lot("LB-2700", "2026-05-05", newest),
  "lots/lb-2699.yaml": lot("LB-2699", "2026-05-01", older),
});

describe("a recalled lot", () => {
  let records: Records;
  let shown: (path: string) => string;
  let workshop: (path: string) => string;
  beforeAll(() => {
    records = soundRecords(withLots(RECALLED, CONCEDED));
    const made = siteOf(records, "2026-05-18");
    const own = made.workshop({ isPrinted: false, printedCards: undefined }).pages;
    const viewAt = (pages: typeof own) => (path: string) =>
      JSON.stringify(certain(pages.find((page) => page.path === path)).view);
    shown = viewAt(made.site.pages);
    workshop = viewAt(own);
  });

  test("is said on its colour's sheet, with the day and not with the reason", () => {
    const page = shown("colours/lamp-black/index.html");
    expect(page).toContain("Lot LB-2700 was recalled on 10 May 2026: do not use it");
    expect(page).not.toContain(WHY);
    expect(lotsSection("lamp-black", records)).toMatchObject({
      recalled: [{ number: "LB-2700", since: "2026-05-10" }],
      conceded: [{ number: "LB-2699", since: "2026-05-11" }],
    });
  });

  test("is said with its reason on its own page, and on the workshop's first", () => {
    const page = workshop("lots/lb-2700/index.html");
    expect(page).toContain("Recalled: none of it is to be sold or used.");
    expect(page).toContain(`Since 10 May 2026: ${WHY}`);
    expect(page).toContain("npm run check -- --uses LB-2700");
    expect(page).not.toContain("npm run labels");
    expect(workshop("index.html")).toContain(
      "Lot LB-2700 is recalled: call back what went out of it",
    );
    expect(workshop("lots/index.html")).toContain('"recalled"');
  });

  test("stands first of what presses, and the conceded one that is on sale among it", () => {
    const said = (text: string): number => workshop("index.html").indexOf(text);
    const [recalled, conceded] = [
      said("Lot LB-2700 is recalled"),
      said("Lot LB-2699 is sold by concession: see that the next one passes"),
    ];
    expect(recalled).toBeGreaterThan(0);
    expect(conceded).toBeGreaterThan(recalled);
    expect(dueLots(records).map(({ due, number }) => `${number} ${due}`)).toEqual([
      "LB-2699 lot-conceded",
      "LB-2700 lot-recalled",
    ]);
    // One that a later lot has taken the place of is not sold any more.
    const passed = soundRecords(withLots(CONCEDED, CONCEDED));
    expect(dueLots(passed).map(({ number }) => number)).toEqual(["LB-2700"]);
  });

  test("is on sale no more, though it is the newest: the conceded one is", () => {
    const colour = certain(records.colours.get("lamp-black"));
    expect(lotOnSale(colour, records)).toBe("LB-2699");
    const both = soundRecords(withLots(RECALLED, RECALLED));
    expect(["LB-2700", "LB-2699"]).not.toContain(
      lotOnSale(certain(both.colours.get("lamp-black")), both),
    );
  });

  test("is told by check, with its reason, as the conceded one is", () => {
    const { content, home } = contentFolder(withLots(RECALLED, CONCEDED));
    const told = loadRecords(content, home).notes.filter(
      ({ rule }) => rule === "records/lot-state",
    );
    expect(told.map(({ severity, message }) => `${severity} ${message}`).sort()).toEqual([
      "note Lot LB-2699 is conceded since 2026-05-11: a little weak",
      `note Lot LB-2700 is recalled since 2026-05-10: ${WHY}`,
    ]);
  });

  test.each(LANGUAGES)("and a conceded one have their sentences in %s", (language) => {
    const text = lotsText(certain(lotsSection("lamp-black", records)), WORDED[language]);
    expect(text).toContain("LB-2700");
    expect(text).toContain("LB-2699");
    expect(text === lotsText(certain(lotsSection("lamp-black", records)), WORDED.en)).toBe(
      language === "en",
    );
  });
});

test("a lot of which nothing is ruled is said nowhere", () => {
  const section = lotsSection("lamp-black", soundRecords(withLots("", "")));
  expect(section ?? {}).not.toHaveProperty("recalled");
  expect(section ?? {}).not.toHaveProperty("conceded");
});
