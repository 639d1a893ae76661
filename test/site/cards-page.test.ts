import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, inject, test } from "vitest";

const read = (path: string): string => readFileSync(join(inject("siteDir"), path), "utf8");
const manifest = JSON.parse(read("manifest.json")) as {
  readonly cards: readonly {
    readonly slug: string;
    readonly revision: string;
    readonly states: Readonly<Record<string, string>>;
  }[];
  readonly withoutCard: readonly { readonly slug: string; readonly markets: readonly string[] }[];
};

const complete = manifest.cards.filter(
  ({ states }) => states["masstone"] !== undefined && /\d\.\d\d/.test(states["sizes"] ?? ""),
);

describe.each(["cards/index.html", "cards/105x74/index.html", "cards/strip/index.html"])(
  "%s",
  (path) => {
    const html = read(path);
    const section = (slug: string): string =>
      new RegExp(`<section class="card-sheet" id="card-${slug}".*?</section>`, "s").exec(
        html,
      )?.[0] ?? "";

    test("shows every card of the manifest that has a colour and a price, front and back, with its revision", () => {
      for (const { slug, revision, states } of complete) {
        const shown = section(slug);
        expect(shown, slug).toContain(revision);
        expect(shown.match(/<svg /g)?.length, slug).toBeGreaterThanOrEqual(2);
        // A name may stand in two lines.
        for (const word of (states["name"] ?? "").split(" ")) expect(shown, slug).toContain(word);
      }
      expect(html.match(/<section class="card-sheet"/g)).toHaveLength(complete.length);
    });

    test("names what has no card, and has its PDF beside it", () => {
      expect(manifest.withoutCard.map(({ slug }) => slug)).toEqual(["lead-white", "vine-black"]);
      expect(section("lead-white")).toBe("");
      expect(html).toMatch(/<section id="without".*colours\/lead-white\/.*on a legal basis alone/s);
      expect(html).toMatch(/<section id="without".*colours\/vine-black\//s);
      expect(manifest.cards.length).toBeGreaterThan(complete.length);
      for (const { slug } of manifest.cards.filter((card) => !complete.includes(card))) {
        expect(section(slug)).toBe("");
        expect(html).toMatch(new RegExp(`<section id="without".*colours/${slug}/`, "s"));
      }
      expect(html).toContain('href="cards.pdf"');
      expect(read(path.replace("index.html", "cards.pdf")).slice(0, 5)).toBe("%PDF-");
    });

    test("draws cards in their true size, with no style attribute", () => {
      expect(html).toMatch(/<svg [^>]*class="card-face"[^>]*width="(?:90|105|110)mm"/);
      expect(html).not.toMatch(/<[^>]+ style=/);
    });
  },
);

test("what a card states in the manifest is in its sheet's own words", () => {
  const bone = manifest.cards.find(({ slug }) => slug === "bone-black");
  const sheet = JSON.parse(read("colours/bone-black/sheet.json")) as {
    evidence: { figure: string; text: string }[];
  };
  // A manifest keeps no no-break spaces: they are a matter of lines, not of what is stated.
  const days = sheet.evidence.find(({ figure }) => figure === "drying.touchDryDays")?.text ?? "";
  expect(bone?.states["drying"]).toBe(`Slowly, ${days.replaceAll("\u00a0", " ")}`);
  expect(bone?.states["sizes"]).toBe(
    "40 ml \u00a38.00 (\u00a3200.00/l); 120 ml \u00a318.00 (\u00a3150.00/l)",
  );
});
