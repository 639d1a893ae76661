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
    ["So {% figre soot-black.drying.class %}.", 'so.md:5:4 error There is no shortcode "figre"'],
    [
      "One.\n\nTwo, {% figure sot-black.drying.class %}.",
      "so.md:7:6 error There is no colour sot-black in colours/; nearest: soot-black answers/shortcode",
    ],
    [
      "One\ntwo {% figure soot-black.drying.clas %}.",
      "so.md:6:5 error No sheet has a figure soot-black.drying.clas; nearest: soot-black.drying.class answers/shortcode",
    ],
    [
      "It is {% figure drying.class %}.",
      "so.md:5:7 error There is no colour drying in colours/; nearest: bare-black.drying.class answers/shortcode",
    ],
    [
      "It is {% figure bare-black.oil.oilIndexGPer100g %}.",
      "so.md:5:7 error bare-black.oil.oilIndexGPer100g is not stated, and can't be shown; ",
    ],
    [
      "One.\n\nIt is { figure soot-black.drying.class }.",
      "so.md:7:7 error A shortcode stands between {% and %}, and { figure soot-black.drying.class } would be printed as it is; written so: {% figure soot-black.drying.class %} answers/shortcode",
    ],
    [
      "It is {{ figure soot-black.drying.class }}.",
      "so.md:5:7 error A shortcode stands between {% and %}, and {{ figure soot-black.drying.class }} would be printed as it is; written so: {% figure",
    ],
    [
      "It is { % colour soot-black % }.",
      "so.md:5:7 error A shortcode stands between {% and %}, and { % colour soot-black % } would be printed as it is; written so: {% colour soot-black %}",
    ],
    [
      "A {% figure soot-black.drying.class and more.",
      "so.md:5:3 error The shortcode {% figure is not closed by %} before the next begins answers/shortcode",
    ],
    [
      `In a sentence {% table colours=soot-black figures=drying.class %}.`,
      "so.md:5:15 error The shortcode table needs a line of its own between empty lines, and stands beside text answers/shortcode",
    ],
    [
      `- {% table colours=soot-black figures=drying.class %}`,
      "so.md:5:3 error The shortcode table needs a line of its own between empty lines, and stands beside text",
    ],
    [
      "{% table colours=soot-black %}",
      "so.md:5:1 error table needs figures: figure paths without the colour, by commas answers/shortcode",
    ],
    [
      `{% table colours="soot-black, coal" figures=drying.class %}`,
      "so.md:5:1 error There is no colour coal in colours/",
    ],
    [
      "{% table colours=soot-black figures=drying.clas %}",
      "so.md:5:1 error No colour named here has a figure drying.clas; nearest: drying.class answers/shortcode",
    ],
    [
      "{% table colours=soot-black figures=drying.class captoin=x %}",
      "so.md:5:1 error table takes no value called captoin; nearest: caption answers/shortcode",
    ],
    [
      "{% ladder colour=soot-black white=chalk %}",
      "so.md:5:1 error No colour was let down in chalk answers/shortcode",
    ],
    [
      "See {% answer sow %}.",
      "so.md:5:5 error There is no answer sow in answers/; nearest: so answers/shortcode",
    ],
  ])("%s", (body, line) => {
    expect(told(body)).toHaveLength(1);
    expect(told(body)[0]).toContain(line);
  });

  test("in the summary at the summary's line", () => {
    expect(told("Because.", "It is {% figure soot-black.drying.clas %}.")).toEqual([
      "content/answers/so.md:3:10 error No sheet has a figure soot-black.drying.clas; nearest: soot-black.drying.class answers/shortcode",
    ]);
  });

  test("in a reply, a figure that none of its colours has", () => {
    const answer = answerWith([]).replace(
      "claims:\n",
      "reply: { colours: [soot-black], figures: [drying.clas] }\n",
    );
    expect(answered(answer).lines).toEqual([
      "content/answers/so.md:4:43 error No colour of the reply has a figure drying.clas; nearest: drying.class answers/reply",
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
  const { blocks, faults } = renderedAnswer(
    answer,
    context,
    pagePlace("answers/so/index.html"),
    answers.index,
  );
  expect(faults).toEqual([]);
  expect(blocks.map(({ kind }) => kind)).toEqual(["prose", "table"]);
  const [prose, table] = blocks;
  const html = prose?.kind === "prose" ? prose.body : "";
  expect(html).toContain("&lt;b&gt;It&lt;/b&gt; is {{ 7 * 7 }}");
  expect(html).not.toContain(`href="javascript`);
  expect(html).toContain(
    `<a href="../../colours/soot-black/">Soot Black</a> dries in <span class="live">8\u00a0days<span class="standing standing--brief">`,
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
