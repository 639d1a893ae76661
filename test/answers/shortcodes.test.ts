import { describe, expect, test } from "vitest";
import { renderedAnswer } from "../../lib/answers/rendered-answer.ts";
import { shortcodeCall, shortcodeEnd } from "../../lib/answers/shortcode-syntax.ts";
import { pagePlace } from "../../lib/pages/page-context.ts";
import { answered, answerWith } from "../claims/answered-workshop.ts";

describe("the form of a shortcode", () => {
  test.each<[string, string, Record<string, string>]>([
    ["{% figure a.b.c %}", "figure", { "": "a.b.c" }],
    ["{%figure a.b.c%}", "figure", { "": "a.b.c" }],
    [`{% table colours="a, b" figures=x.y %}`, "table", { colours: "a, b", figures: "x.y" }],
    ["{% ladder\n  colour=a\n  white=b %}", "ladder", { colour: "a", white: "b" }],
    ["{% endfold %}", "endfold", {}],
  ])("%s", (raw, name, args) => {
    const call = shortcodeCall(raw);
    expect("args" in call && [call.name, Object.fromEntries(call.args)]).toEqual([name, args]);
  });

  test.each([
    ["{% %}", "the name of a shortcode first"],
    ["{% figure a b %}", "one value without a name"],
    ["{% t a=1 a=2 %}", "each value once"],
    [`{% t a="x %}`, "values such as"],
    ["{% t a= %}", "values such as"],
  ])("%s is none", (raw, expected) => {
    const call = shortcodeCall(raw);
    expect("expected" in call && call.expected).toContain(expected);
  });

  test("ends at its own close, and not at that of the next", () => {
    expect(shortcodeEnd("x {% a %} {% b %}", 2)).toBe(9);
    expect(shortcodeEnd("{% a {% b %}", 0)).toBe(-1);
    expect(shortcodeEnd("{% a", 0)).toBe(-1);
  });
});

/** Lines of the body begin at line 6: four of front matter, two of its hyphens. */
const told = (body: string, summary = "It is so."): readonly string[] =>
  answered(answerWith([], { body, summary }).replace("claims:\n", "")).lines;

describe("a shortcode that leads nowhere is told at its line and column", () => {
  test.each([
    [
      "So {% figre soot-black.drying.class %}.",
      "so.md:5:4 error Unexpected shortcode `figre`, expected `figure | ",
    ],
    [
      "One.\n\nTwo, {% figure sot-black.drying.class %}.",
      "so.md:7:6 error Unexpected figure `sot-black.drying.class`, expected `a colour and a figure path, as in the evidence of sheet.json`; nearest `soot-black` answers/shortcode",
    ],
    [
      "One\ntwo {% figure soot-black.drying.clas %}.",
      "so.md:6:5 error Unexpected figure `soot-black.drying.clas`, expected `a colour and a figure path, as in the evidence of sheet.json`; nearest `soot-black.drying.class` answers/shortcode",
    ],
    [
      "It is {% figure bare-black.oil.oilIndexGPer100g %}.",
      "so.md:5:7 error Unexpected figure that is not stated `bare-black.oil.oilIndexGPer100g`, expected `a figure that is stated`; ",
    ],
    [
      "A {% figure soot-black.drying.class and more.",
      "so.md:5:3 error Unexpected shortcode `{%`, expected `its end, %}, before the next begins` answers/shortcode",
    ],
    [
      `In a sentence {% table colours=soot-black figures=drying.class %}.`,
      "so.md:5:15 error Unexpected place of a shortcode `table in a sentence or list`, expected `on a line of its own` answers/shortcode",
    ],
    [
      `- {% table colours=soot-black figures=drying.class %}`,
      "so.md:5:3 error Unexpected place of a shortcode `table in a sentence or list`",
    ],
    [
      "{% table colours=soot-black %}",
      "so.md:5:1 error Unexpected figures `nothing`, expected `figure paths without the colour, by commas` answers/shortcode",
    ],
    [
      `{% table colours="soot-black, coal" figures=drying.class %}`,
      "so.md:5:1 error Unexpected colour `coal`, expected `the slug of a colour`",
    ],
    [
      "{% table colours=soot-black figures=drying.clas %}",
      "so.md:5:1 error Unexpected figure `drying.clas`, expected `a figure path without the colour, as in the evidence of sheet.json`; nearest `drying.class` answers/shortcode",
    ],
    [
      "{% table colours=soot-black figures=drying.class captoin=x %}",
      "so.md:5:1 error Unexpected name of a value `captoin`, expected `colours, figures, caption`; nearest `caption` answers/shortcode",
    ],
    [
      "{% ladder colour=soot-black white=chalk %}",
      "so.md:5:1 error Unexpected white `chalk`, expected `a white that colours were let down in` answers/shortcode",
    ],
    [
      "See {% answer sow %}.",
      "so.md:5:5 error Unexpected answer `sow`, expected `the slug of an answer`; nearest `so` answers/shortcode",
    ],
  ])("%s", (body, line) => {
    expect(told(body)).toHaveLength(1);
    expect(told(body)[0]).toContain(line);
  });

  test("in the summary at the summary's line", () => {
    expect(told("Because.", "It is {% figure soot-black.drying.clas %}.")).toEqual([
      "content/answers/so.md:3:10 error Unexpected figure `soot-black.drying.clas` at summary, expected `a colour and a figure path, as in the evidence of sheet.json`; nearest `soot-black.drying.class` answers/shortcode",
    ]);
  });

  test("in a reply, a figure that none of its colours has", () => {
    const answer = answerWith([]).replace(
      "claims:\n",
      "reply: { colours: [soot-black], figures: [drying.clas] }\n",
    );
    expect(answered(answer).lines).toEqual([
      "content/answers/so.md:4:43 error Unexpected figure `drying.clas` at reply.figures[0], expected `a figure path without the colour, as in the evidence of sheet.json`; nearest `drying.class` answers/reply",
    ]);
  });
});

test("an answer's text is text: raw HTML, templates and hostile links are shown or dropped, figures come with their mark", () => {
  const { worked } = answered(
    answerWith([], {
      body: '<b>It</b> is {{ 7 * 7 }}, [here](javascript:alert(1)).\n\n{% colour soot-black %} dries in {% figure soot-black.drying.touchDryDays %}.\n\nA `{% figure x.y.z %}` in code stays.\n\n{% table colours="soot-black, bare-black" figures=oil.oilIndexGPer100g %}\n',
    }).replace("claims:\n", ""),
  );
  if (worked === undefined) throw new Error("Unexpected faults of the records");
  const { answers, context } = worked;
  const answer = context.records.answers.get("so");
  if (answer === undefined) throw new Error("Unexpected workshop without its answer");
  const { parts, faults } = renderedAnswer(
    answer,
    context,
    pagePlace("answers/so/index.html"),
    answers.index,
  );
  expect(faults).toEqual([]);
  expect(parts.map(({ kind }) => kind)).toEqual(["prose", "table"]);
  const [prose, table] = parts;
  const html = prose?.kind === "prose" ? prose.body : "";
  expect(html).toContain("&lt;b&gt;It&lt;/b&gt; is {{ 7 * 7 }}");
  expect(html).not.toContain(`href="javascript`);
  expect(html).toContain(
    `<a href="../../colours/soot-black/">Soot black</a> dries in <span class="live">8\u00a0days<span class="standing standing--brief">`,
  );
  expect(html).toContain('<use href="#mark-measured">');
  expect(html).toContain("<code>{% figure x.y.z %}</code>");
  expect(
    table?.kind === "table" && table.table.rows.map((row) => row.map(({ text }) => text)),
  ).toEqual([
    ["Soot Black", "90"],
    ["Bare Black", "\u2013"],
  ]);
});
