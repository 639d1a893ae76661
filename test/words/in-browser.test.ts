import { join } from "node:path";
import { runInNewContext } from "node:vm";
import { build } from "esbuild";
import { expect, test } from "vitest";
import { LANGUAGES, type Language } from "../../lib/quantities/languages.ts";
import { rowsInOneLanguage } from "../../lib/site/rows-in-one-language.ts";
import { WORDS } from "../../lib/words/languages.ts";
import { textsOf } from "./said.ts";

const ROOT = join(import.meta.dirname, "../..");

/** As long as no two languages share, nor a key of ours is [characters]. */
const TELLING = 20;

/** What scripts are sent of the words, as a browser runs it. */
async function sentIn(language: Language): Promise<{ script: string; said: Sent }> {
  const modules = ["compare", "language", "mixing"];
  const { outputFiles } = await build({
    stdin: {
      contents: modules
        .map((name) => `export * from "./lib/words/in-browser/${name}.ts";`)
        .join("\n"),
      resolveDir: ROOT,
    },
    bundle: true,
    write: false,
    format: "iife",
    globalName: "said",
    charset: "utf8",
    minifyWhitespace: true,
    tsconfigRaw: {},
    plugins: [await rowsInOneLanguage(language)],
    define: { "import.meta.language": JSON.stringify(language) },
  });
  const script = outputFiles[0]?.text ?? "";
  return { script, said: runInNewContext(`${script}; said`) as Sent };
}

interface Sent {
  readonly LANGUAGE: Language;
  readonly COMPARE_PAGES: object;
  readonly MIXING_PAGES: object;
  readonly NUMBERS: { readonly decimal: (value: number, places: number) => string };
  readonly COMPARISON_RULINGS: Readonly<Record<string, (values: object) => string>>;
}

/** What a script does not say as the page does, of all that the page can be made to say. */
function otherwiseSaid(script: object, page: object): string[] {
  const said = textsOf(script, "");
  const asked = [...textsOf(page, "")].filter(([, text]) => text !== "");
  expect(asked.length).toBeGreaterThan(80);
  return asked.flatMap(([path, text]) => (said.get(path) === text ? [] : [path]));
}

test.for(LANGUAGES)(
  "a script of %s says what pages do, and carries no other's texts",
  async (language) => {
    const { script, said } = await sentIn(language);
    const { pages, numbers, comparisons } = WORDS[language];
    expect(said.LANGUAGE).toBe(language);
    expect(otherwiseSaid(said.COMPARE_PAGES, pages.compare)).toEqual([]);
    expect(otherwiseSaid(said.MIXING_PAGES, pages.mixing)).toEqual([]);
    expect(said.NUMBERS.decimal(1234.56, 1)).toBe(numbers.decimal(1234.56, 1));
    const apart = {
      one: "Alba",
      other: "Zinc White",
      a: 0,
      b: 0,
      lighter: 9,
      redder: 0,
      yellower: 0,
      distance: 9,
    };
    expect(said.COMPARISON_RULINGS["compared-masstones"]?.(apart)).toBe(
      comparisons["compared-masstones"](apart),
    );
    const textsIn = (other: Language): string[] => {
      const { compare, mixing } = WORDS[other].pages;
      return [...textsOf({ compare, mixing }, "").values()];
    };
    const own = textsIn(language);
    // A few words may be a key of ours, or the same in two languages.
    const foreign = LANGUAGES.flatMap(textsIn).filter(
      (text) => text.length > TELLING && !own.includes(text),
    );
    expect(foreign.length).toBeGreaterThan(300);
    expect(foreign.filter((text) => script.includes(text))).toEqual([]);
  },
);
