import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { beforeAll, describe, expect, test } from "vitest";
import { contentFolder, SMALLEST_WORKSHOP } from "../support/content-folder.ts";
import { htmlFaults } from "../support/html-faults.ts";
import { commandHere } from "../support/command-here.ts";
import { assetFile } from "../support/asset-file.ts";

/** What a record might hold and no page may run: a template, an element, an attribute's end, a script's end. */
const HOSTILE = `{{ 7919 * 7919 }} {% include "x" %} \${7919*7919} <script>alert(1)</script> </script><img src=x onerror=alert(1)> " ' &amp; <!--`;
const quoted = JSON.stringify(HOSTILE);
/** The same in the length that a name may have. */
const NAME = `{{ 7919 * 7919 }}<script>alert(1)</script><img src=x onerror=alert(1)>" '&amp;`;
const name = JSON.stringify(NAME);

/** Others of the kind: a colour that is mixed, one that is made no more, their white. */
const [black, umber, white] = ["b", "u", "w"].map((letter) =>
  JSON.stringify(`{{ 7919 * 7919 }}<script>alert(1)</script><img src=x>" '&amp;${letter}`),
);
const reading = (file: string): string =>
  readFileSync(new URL(`../../content/readings/${file}.csv`, import.meta.url), "utf8");
const letDown = (file: string): string =>
  ["1:1", "1:5", "1:20"]
    .map(
      (ratio) =>
        `  - { white: white, massRatio: "${ratio}", ratioKind: paint, reading: ${file}, column: "titanium-white ${ratio}" }\n`,
    )
    .join("");

const { home } = contentFolder({
  "workshop.yaml": `name: ${name}\nabout: ${quoted}\ncontact: ${quoted}\nreadings: { scale: factor, geometry: 45/0 }\n`,
  "pigments/lamp-black.yaml": `name: ${name}\nwhatItIs: ${quoted}\norigin: ${quoted}\nchemistry: ${quoted}\nbenchTest: ${quoted}\nnote: ${quoted}\noilAbsorptionGPer100g: { value: 90, method: ${quoted}, standing: measured, source: book }\n`,
  "vehicles/oil.yaml": `name: ${name}\nkind: oil\nwhatItIs: ${quoted}\n`,
  "sources/book.yaml": `citation: ${quoted}\nnote: ${quoted}\n`,
  "readings/lamp-black.csv": SMALLEST_WORKSHOP["readings/lamp-black.csv"],
  "readings/bone-black.csv": reading("bone-black"),
  "readings/raw-umber.csv": reading("raw-umber"),
  "readings/titanium-white.csv": reading("titanium-white"),
  "pigments/black.yaml": `name: ${black}\nfamily: black\n`,
  "pigments/umber.yaml": `name: ${umber}\nfamily: brown\n`,
  "pigments/white.yaml": `name: ${white}\nfamily: white\n`,
  "colours/black.md": `---
name: ${black}
pigments: [{ pigment: black }]
masstone: { reading: bone-black, column: masstone 1 }
tints:
${letDown("bone-black")}---
`,
  "colours/umber.md": `---
name: ${umber}
pigments: [{ pigment: umber }]
discontinued: 2026-01-01
masstone: { reading: raw-umber, column: masstone }
tints:
${letDown("raw-umber")}---
`,
  "colours/white.md": `---
name: ${white}
pigments: [{ pigment: white }]
masstone: { reading: titanium-white, column: masstone 1 }
---
`,
  "colours/lamp-black.md": `---
name: ${name}
pigments: [{ pigment: lamp-black }]
vehicle: oil
lot: ${quoted}
masstone: { reading: lamp-black, column: masstone }
exposures: [{ deltaEab: 1, form: masstone, standard: ${quoted}, exposure: ${quoted} }]
---
${HOSTILE}

[a link](javascript:alert(1)) [another](data:text/html,x) [a sound one](https://example.org/) ![a picture](https://example.org/x.png)
<a href="javascript:alert(1)">raw</a>
`,
});
const site = join(home, "site");

beforeAll(async () => {
  const { code, complaints } = await commandHere(["build", "--output", "site"], { cwd: home });
  // Such a name finds no room on a small card, and that is told.
  const [left, ...more] = [
    complaints
      .split("\n")
      .filter(
        (line) =>
          line !== "" && !/ warning The card of .* does not fit in .* print\/card$/.test(line),
      ),
  ];
  expect([code, left, more]).toEqual([0, [], []]);
});

/** Every HTML page of the site. */
function pages(): { readonly file: string; readonly html: string }[] {
  return readdirSync(site, { recursive: true, encoding: "utf8" })
    .filter((file) => file.endsWith(".html"))
    .sort()
    .map((file) => ({ file, html: readFileSync(join(site, file), "utf8") }));
}

describe("a record's text", () => {
  test("is shown as it was written, on the pages that tell of it", () => {
    for (const file of [
      "index.html",
      "colours/lamp-black/index.html",
      "pigments/lamp-black/index.html",
      "sources/index.html",
    ]) {
      const html = readFileSync(join(site, file), "utf8");
      expect(html, file).toContain("{{ 7919 * 7919 }} {% include");
      expect(html, file).toContain(
        "&lt;script&gt;alert(1)&lt;/script&gt; &lt;/script&gt;&lt;img src=x onerror=alert(1)&gt;",
      );
    }
  });

  test("is nowhere run as a template, nor as HTML", () => {
    expect(pages().length).toBeGreaterThan(10);
    for (const { file, html } of pages()) {
      expect(html, file).not.toContain("62710561");
      expect(html, file).not.toMatch(/<script>alert|<img\b|<a href="javascript|<!--(?!\s*$)/i);
      expect(html, file).not.toMatch(/href="(?:javascript|data):/i);
    }
  });

  test("reaches the pages that mix, and is run there no more than anywhere", () => {
    const mixing = pages().filter(({ file }) => file.startsWith("bench/"));
    expect(mixing.map(({ file }) => file)).toEqual([
      "bench/index.html",
      "bench/map/index.html",
      "bench/palette/index.html",
      "bench/recipes/index.html",
    ]);
    for (const { file, html } of mixing)
      expect(html, file).toContain("&lt;script&gt;alert(1)&lt;/script&gt;&lt;img src=x&gt;");
    for (const name of ["mixing-paints", "mixing-reach"]) {
      const script = readFileSync(
        join(site, assetFile(site, `assets/scripts/${name}.js`) ?? ""),
        "utf8",
      );
      expect(script, name).not.toContain("<");
    }
  });

  test("ends no script element that holds data", () => {
    for (const { file, html } of pages()) {
      for (const [, json = ""] of html.matchAll(
        /<script type="application\/ld\+json">([\s\S]*?)<\/script>/g,
      ))
        expect(() => JSON.parse(json) as unknown, file).not.toThrow();
    }
  });

  test("spoils no page: they stay valid", async () => {
    for (const { file, html } of pages()) expect(await htmlFaults(html), file).toEqual([]);
  });

  test("keeps a sound link and no other", () => {
    const html = readFileSync(join(site, "colours/lamp-black/index.html"), "utf8");
    expect(html).toContain(`<a href="https://example.org/">a sound one</a>`);
    expect(html).toContain("[a link](javascript:alert(1))");
    expect(html).toContain("[another](data:text/html,x)");
  });

  test("stands in the data as it was written", () => {
    const sheet = JSON.parse(readFileSync(join(site, "colours/lamp-black/sheet.json"), "utf8")) as {
      name: string;
    };
    expect(sheet.name).toBe(NAME);
  });
});
