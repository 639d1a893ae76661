import { describe, expect, test } from "vitest";
import { formatDiagnostic } from "../../lib/diagnostics/diagnostic.ts";
import { allSheets } from "../../lib/sheet/all-sheets.ts";
import { hazardNotes } from "../../lib/site/hazard-notes.ts";
import { WORDED } from "../support/worded.ts";
import { recordsIn } from "../../lib/records/records-in-language.ts";
import { soundRecords } from "../support/sound-records.ts";

const DRIER = `name: Drier
kind: drier
components:
  - { name: cobalt soap, massFraction: 0.6, hazards: [H317] }
  - { name: spirit, massFraction: REST }
`;

function notes(files: Readonly<Record<string, string>>, languages = "[en]"): string[] {
  const records = soundRecords({
    "workshop.yaml": `name: My workshop\nvehicle: linseed\nlanguages: ${languages}\naddress: The Loft\ntelephone: 020 7946 0000\n`,
    "vehicles/linseed.yaml": "name: Linseed oil\nkind: oil\nhazards: []\n",
    "pigments/earth.yaml": "name: Earth\nhazards: []\n",
    "colours/earth.md":
      "---\nname: Earth\npigments: [{ pigment: earth }]\noilIndexGPer100g: 50\n---\n",
    ...files,
  });
  const found = hazardNotes(allSheets(records), records, WORDED[records.language]);
  for (const { severity, rule } of found)
    expect(severity, rule).toBe(rule === "hazard/name-missing" ? "warning" : "note");
  return found.map(formatDiagnostic);
}

test("nothing to complete where every record speaks of its hazards", () => {
  expect(notes({})).toEqual([]);
});

test("ingredients without hazard data, whole or as components, each at its line", () => {
  expect(
    notes({
      "pigments/earth.yaml": "# mine\nname: Earth\n",
      "vehicles/drier.yaml": DRIER.replace("REST", "0.4"),
    }).slice(0, 2),
  ).toEqual([
    "content/pigments/earth.yaml:2:1 note The record is silent about the hazards of Earth: give hazards, or an empty list where the supplier states none; treated as hazardous until then hazard/no-data",
    "content/vehicles/drier.yaml:5:5 note The record is silent about the hazards of spirit: give hazards, or an empty list where the supplier states none; treated as hazardous until then hazard/no-data",
  ]);
});

test.each([
  ["0.4", 0],
  ["0.3995", 0],
  ["0.398", 1],
  ["[0.1, 0.4]", 0],
  ["[0.1, 0.3]", 1],
])("components of .6 and %s: short of the whole %s times", (rest, times) => {
  const written = rest.startsWith("[") ? `{ value: ${rest} }` : rest;
  const short = notes({
    "vehicles/drier.yaml": DRIER.replace("REST }", `${written}, hazards: [] }`),
  }).filter((line) => line.endsWith("hazard/short-of-the-whole"));
  expect(short).toHaveLength(times);
  if (times > 0)
    expect(short[0]).toMatch(
      /^content\/vehicles\/drier\.yaml:4:3 note The components add up to 0\.(9|998), not to 1; what is left is treated as hazardous/,
    );
});

describe("label texts", () => {
  const hazardous = { "pigments/earth.yaml": "name: Earth\nhazards: [H302, H410]\n" };

  test("from memory or ours are listed in the language that they were put into, at its place in the record", () => {
    const found = notes(hazardous, "[en, fr]").filter((line) =>
      line.endsWith("hazard/text-to-review"),
    );
    expect(found).toEqual([
      expect.stringMatching(
        /^content\/workshop\.yaml:3:17 note The French text of “Contains …” is from memory or ours/,
      ),
    ]);
  });

  test("that complete an official one are listed apart", () => {
    const found = notes(hazardous, "[en, fr]").filter((line) =>
      line.endsWith("hazard/text-completed"),
    );
    expect(found).toHaveLength(2);
    expect(found[1]).toMatch(/^content\/workshop\.yaml:3:17 note The French texts? of .*P501/);
    expect(found[1]).not.toContain("H302");
  });

  test("on metals are listed with the metal and what to leave", () => {
    const [found] = notes(
      { "pigments/earth.yaml": "name: Vermilion\ncolourIndexName: PR 106\nhazards: []\n" },
      "[de]",
    ).filter((line) => line.endsWith("hazard/text-to-review"));
    expect(found).toContain(
      "The German texts of “Contains …”, “Do not spray, sand dry or heat”, “mercury”",
    );
  });

  test("that a language lacks are listed, and stay English on the sheet", () => {
    const records = soundRecords({
      "workshop.yaml": "name: My workshop\nframe: UN GHS\nlanguages: [en, de]\n",
      "pigments/earth.yaml": "name: Earth\nhazards: [H350]\n",
      "colours/earth.md": "---\nname: Earth\npigments: [{ pigment: earth }]\n---\n",
    });
    const sheets = allSheets(records);
    expect(sheets[0]?.cautions.texts["P318"]).toEqual({
      en: "IF exposed or concerned, get medical advice.",
    });
    expect(
      hazardNotes(sheets, records, WORDED[records.language])
        .filter(({ rule }) => rule === "hazard/text-missing")
        .map((note) => [formatDiagnostic(note).includes("P318"), note.place.path]),
    ).toEqual([[true, "languages[1]"]]);
  });
});

describe("names of substances", () => {
  const drier = (name: string): Readonly<Record<string, string>> => ({
    "vehicles/drier.yaml": `name: Drier\nkind: drier\ncomponents:\n  - { name: ${name}, massFraction: 1, hazards: [{ statement: H317, hazardClass: Skin Sens. 1A }] }\n`,
    "colours/earth.md":
      "---\nname: Earth\npigments: [{ pigment: earth }]\noilIndexGPer100g: 50\nadditions: [{ vehicle: drier, percentOfOil: 0.1 }]\n---\n",
  });

  test("that a language lacks are a warning at that language", () => {
    const found = notes(drier("some soap"), "[en, de]").filter((line) =>
      line.endsWith("hazard/name-missing"),
    );
    expect(found).toHaveLength(1);
    expect(found[0]).toMatch(
      /^content\/workshop\.yaml:3:17 warning No German name is known here for some soap: /,
    );
  });

  test("that are from memory are a note", () => {
    const found = notes(drier("cobalt naphthenate"), "[en, de]");
    expect(found.filter((line) => line.endsWith("hazard/name-missing"))).toEqual([]);
    expect(found.find((line) => line.endsWith("hazard/name-to-review"))).toContain(
      "The German name of cobalt naphthenate is from memory",
    );
  });

  describe("of a workshop that writes in French", () => {
    const french = {
      ...drier("octoate de cobalt"),
      "workshop.yaml":
        "name: Atelier\nvehicle: linseed\nlanguages: [fr, en]\npageLanguages: [fr, en]\naddress: Le grenier\ntelephone: 01 99 00 00 00\n",
      "vehicles/drier.yaml":
        "name: Siccatif\nkind: drier\ncomponents:\n  - { name: octoate de cobalt, casNumber: 136-52-7, massFraction: 1, hazards: [{ statement: H317, hazardClass: Skin Sens. 1A }] }\n",
      "pigments/earth.yaml":
        "name: Terre d'ombre\ncolourIndexName: PBr 7\nmanganeseDioxideFraction: 0.1\nhazards: []\n",
      "vehicles/linseed.yaml": "name: Huile de lin\nkind: oil\nhazards: []\n",
    };
    const records = soundRecords(french);
    const named = (language: "fr" | "en"): string =>
      JSON.stringify(allSheets(recordsIn(records, language, "fr"))[0]?.cautions);

    test("stand as its records have them on French labels, and by the table on English ones", () => {
      for (const cautions of [named("fr"), named("en")]) {
        expect(cautions).toContain("Contient octoate de cobalt.");
        expect(cautions).toContain("Contains cobalt bis(2-ethylhexanoate).");
      }
    });

    test("stand in reasons in the language of the page", () => {
      expect(named("fr")).toContain('"name":"dioxyde de manganèse"');
      expect(named("en")).toContain('"name":"manganese dioxide"');
      expect(named("en")).not.toMatch(/"(?:name|substance)":"octoate de cobalt"/);
    });

    test("are missed in other languages alone", () => {
      const missed = (texts: Readonly<Record<string, string>>): string[] =>
        notes(texts).filter((line) => line.endsWith("hazard/name-missing"));
      expect(missed(french)).toEqual([]);
      const resin = { ...french, ...drier("une résine") };
      expect(missed({ ...resin, "workshop.yaml": french["workshop.yaml"] })).toEqual([
        expect.stringContaining("Aucun nom en anglais n’est connu ici pour une résine\u202f: "),
      ]);
    });

    test("are missed in the languages of labels, and at these, where no others ask for them", () => {
      const workshop = `${french["workshop.yaml"]}labels: [{ name: tube, kind: tube, ml: 40, languages: [fr, de] }]\n`;
      const resin = { ...french, ...drier("une résine"), "workshop.yaml": workshop };
      expect(notes(resin).filter((line) => line.includes("Aucun nom en allemand"))).toEqual([
        expect.stringMatching(/^content\/workshop\.yaml:7:\d+ warning /),
      ]);
    });
  });

  test("that a pigment's record gives in a language are printed in it, and are missed by name of their key before", () => {
    const pigment = (further: string): Readonly<Record<string, string>> => ({
      "pigments/earth.yaml": `name: Ochre of Tarn\nhazards: [H350]\n${further}`,
    });
    const missed = notes(pigment(""), "[en, de]").filter((line) =>
      line.endsWith("hazard/name-missing"),
    );
    expect(missed).toHaveLength(1);
    expect(missed[0]).toContain(
      "No German name is known here for Ochre of Tarn (translations.de.name of pigments/earth.yaml): ",
    );
    expect(missed[0]).not.toContain("lib/");
    const named = pigment("translations: { de: { name: Tarnocker } }\n");
    expect(notes(named, "[en, de]").filter((line) => line.includes("hazard/name-"))).toEqual([]);
    const records = soundRecords({
      "workshop.yaml": "name: My workshop\nlanguages: [en, de]\n",
      "colours/earth.md": "---\nname: Earth\npigments: [{ pigment: earth }]\n---\n",
      ...named,
    });
    const lineOf = (those: typeof records) =>
      Object.values(allSheets(those)[0]?.cautions.texts ?? {}).find(({ de }) =>
        de?.includes("Tarnocker"),
      );
    expect(lineOf(records)).toEqual({
      en: expect.stringContaining("ochre of Tarn") as string,
      de: expect.stringContaining("Tarnocker") as string,
    });
    // Told in German, the English line still names it in English.
    expect(lineOf(recordsIn(records, "de", "en"))).toEqual(lineOf(records));
  });
});

test("a workshop that writes in German is told in German, keys of its records as they are", () => {
  const told = notes({
    "workshop.yaml":
      "name: Werkstatt\nvehicle: linseed\nlanguages: [de, en, fr]\npageLanguages: [de]\n",
    "vehicles/drier.yaml": DRIER.replace("REST", "0.3"),
    "pigments/earth.yaml": "name: Erde\ncolourIndexName: PBr 7\nhazards: [H302, H410]\n",
  }).map((line) => line.replace(/^content\S+ note /, ""));
  expect(told).toEqual([
    "Ein Etikett muss die Anschrift seines Lieferanten nennen, und in workshop.yaml steht keine (address); bis dahin fehlt sie im Etikettentext hazard/supplier-incomplete",
    "Ein Etikett muss die Telefonnummer seines Lieferanten nennen, und in workshop.yaml steht keine (telephone); bis dahin fehlt sie im Etikettentext hazard/supplier-incomplete",
    "Erde kann eine Siena sein, mit etwa 1\u00a0% Mangandioxid, oder eine Umbra, mit 5 bis 20\u00a0%: manganeseDioxideFraction oder earth angeben; bis dahin gilt die Gefahr einer Umbra hazard/earth-not-told",
    "Die Aufzeichnung schweigt über die Gefahren (spirit): hazards angeben oder eine leere Liste, wo der Lieferant keine nennt; bis dahin wie ein gefährlicher Stoff behandelt hazard/no-data",
    "Die Bestandteile ergeben zusammen 0,9 und nicht 1; was übrig bleibt, wird wie ein gefährlicher Stoff behandelt hazard/short-of-the-whole",
    expect.stringMatching(/^Der Text auf Deutsch zu „Enthält …“ stammt aus dem Gedächtnis /),
    expect.stringMatching(/^Der Text auf Deutsch zu P501 ist amtlich; /),
    expect.stringMatching(/^Der Text auf Englisch zu P501 ist amtlich; /),
    expect.stringMatching(
      / warning Kein Name auf Englisch ist hier bekannt für Erde \(translations\.en\.name von pigments/,
    ),
    expect.stringMatching(/^Der Name auf Englisch \(Mangandioxid\) stammt aus dem Gedächtnis: /),
    expect.stringMatching(/^Der Text auf Französisch zu „Enthält …“ stammt /),
    expect.stringMatching(/^Der Text auf Französisch zu P501 ist amtlich; /),
    expect.stringMatching(/ warning Kein Name auf Französisch ist hier bekannt für Erde \(/),
    expect.stringMatching(/^Der Name auf Französisch \(Mangandioxid\) stammt /),
  ]);
});
