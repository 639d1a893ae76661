import { describe, expect, test } from "vitest";
import { renderedAnswer } from "../../lib/answers/rendered-answer.ts";
import { figureIndex } from "../../lib/claims/figure-index.ts";
import { pagePlace, type PageContext } from "../../lib/pages/page-context.ts";
import type { Block } from "../../lib/blocks/block.ts";
import { RECORDS, worked } from "../support/demonstration.ts";

const { context } = worked();
const answer = RECORDS.answers.get("why-a-black-changes-hue-by-the-white");
if (answer === undefined) throw new Error("Unexpected demonstration without its answer");
const INDEX = figureIndex(context.sheets.map(({ sheet }) => sheet));

function rendered(body: string, by: PageContext = context): ReturnType<typeof renderedAnswer> {
  if (answer === undefined) throw new Error("Unreachable");
  return renderedAnswer(
    { ...answer, body, bodyLine: 1 },
    by,
    pagePlace("answers/x/index.html"),
    INDEX,
  );
}

const svgIn = (block: Block | undefined): string =>
  block?.kind === "plots" ? block.plots.map(({ svg }) => svg).join("") : "";

describe("shortcodes of blacks, whites and theory", () => {
  test("blacks: a picture, and a table whose cells are the sheets' own figures", () => {
    const {
      blocks: [picture, table],
      faults,
    } = rendered("{% blacks %}\n\n{% blacks show=table %}");
    expect(faults).toEqual([]);
    expect(svgIn(picture)).toContain("Lamp Black");
    if (table?.kind !== "table") throw new Error("Unexpected part");
    const lamp = context.sheets
      .find(({ sheet }) => sheet.slug === "lamp-black")
      ?.plain.evidence.find(({ figure }) => figure === "tints.titanium-white.atL.50.b");
    expect(
      table.table.rows.find(([head]) => head?.text === "Lamp Black")?.[1]?.text.split(", ")[1],
    ).toBe(lamp?.["text"]);
  });

  // basis: practice, no source: light from a surface lifts a dark reading, so that two geometries do not compare as read.
  test("tints of two geometries are shown with a word on which they are", () => {
    const included: PageContext = {
      ...context,
      sheets: context.sheets.map((one) =>
        one.sheet.slug === "lamp-black"
          ? {
              ...one,
              sheet: {
                ...one.sheet,
                tints: one.sheet.tints.map((tint) => ({
                  ...tint,
                  steps: tint.steps.map((step) => ({ ...step, geometry: "d/8 included" as const })),
                })),
              },
            }
          : one,
      ),
    };
    const body =
      "{% swatches colours=lamp-black,bone-black white=titanium-white %}\n\n{% trail colours=lamp-black,bone-black white=titanium-white %}\n\n{% blacks %}\n\n{% blacks show=table %}";
    const said = (by: PageContext): (string | undefined)[] =>
      rendered(body, by).blocks.flatMap((part) =>
        part.kind === "table"
          ? part.table.note
          : part.kind === "plots"
            ? part.plots.map(({ caption }) => caption)
            : [],
      );
    const told = said(included);
    expect(told).toHaveLength(4);
    for (const text of told)
      expect(text).toMatch(/Lamp Black was read with gloss included, .*do not compare\.$/);
    for (const text of said(context)) expect(text).not.toContain("do not compare");
  });

  test("scattering: one picture a white, all on one scale", () => {
    const {
      blocks: [part],
    } = rendered("{% scattering %}");
    expect(part?.kind === "plots" ? part.plots.length : 0).toBe(3);
  });

  test("theory draws bands and no colour of a paint, and says which statements are told", () => {
    const {
      blocks: [picture, told, toldNote, untold, untoldNote, inputs],
      faults,
    } = rendered(
      "{% theory %}\n\n{% theory show=told %}\n\n{% theory show=untold %}\n\n{% theory show=inputs %}",
    );
    expect(faults).toEqual([]);
    expect(svgIn(picture)).not.toMatch(/plot__mark|fill="#(?!939393)(?!111111)[0-9a-f]{6}"|swatch/);
    const items = (part: Block | undefined): string[] =>
      part?.kind === "list" ? part.list.items.map(({ text }) => text) : [];
    // Robust by a calculation of its own (optics reference): bluer in titanium than in lead, coarse carbon bluer than fine.
    expect(
      items(told).some((text) =>
        /a grey in titanium white is bluer than a grey in lead white, with .*lamp black/i.test(
          text,
        ),
      ),
    ).toBe(true);
    expect(
      items(told).some((text) => /lamp black is bluer than furnace black, in/i.test(text)),
    ).toBe(true);
    expect([toldNote?.kind, untoldNote?.kind]).toEqual(["statement", "statement"]);
    expect(items(untold).every((text) => text.startsWith("Theory "))).toBe(true);
    expect(inputs?.kind === "table" ? inputs.table.rows.length : 0).toBe(7);
  });

  test("theory is asked for once, and by nobody who does not show it", () => {
    let asked = 0;
    const counting: PageContext = {
      ...context,
      theory: () => {
        asked += 1;
        return context.theory();
      },
    };
    rendered("A plain answer.\n\n{% blacks %}", counting);
    expect(asked).toBe(0);
    rendered("{% theory %}", counting);
    expect(asked).toBeGreaterThan(0);
  });

  test.each([
    [
      "{% theory show=all %}",
      'The list can\'t be shown as "all": show takes picture, told, untold, inputs',
    ],
    ["{% blacks show=chart %}", 'The list can\'t be shown as "chart"'],
    ["{% blacks level=45 %}", "The lightness is 45, and tints are shown at L* 70, 50 or 30"],
    ["{% scattering white=lead-white %}", "scattering takes no value called white"],
  ])("%s is a fault that names what there is", (body, told) => {
    expect(rendered(body).faults.map(({ message }) => message)).toEqual([
      expect.stringContaining(told),
    ]);
  });
});

describe("folds", () => {
  test("hold what lies between", () => {
    const { blocks, faults } = rendered(
      'Before.\n\n{% fold "The physics" %}\n\nInside.\n\n{% blacks %}\n\n{% endfold %}\n\nAfter.',
    );
    expect(faults).toEqual([]);
    expect(
      blocks.map((part) =>
        part.kind === "fold" ? [part.summary, ...part.blocks.map(({ kind }) => kind)] : part.kind,
      ),
    ).toEqual(["prose", ["The physics", "prose", "plots"], "prose"]);
  });
  test.each([
    ['{% fold "One" %}\n\nInside.', "Missing endfold for the fold that opens here", 1],
    ["Text.\n\n{% endfold %}", "This endfold closes nothing", 3],
    [
      '{% fold "One" %}\n\n{% fold "Two" %}\n\n{% endfold %}',
      'The fold "Two" begins inside another',
      3,
    ],
    ["{% fold %}\n\n{% endfold %}", "fold needs text", 1],
    ['{% fold "One"\n\nInside.\n\n{% endfold %}', "is not closed by %}", 1],
    ["{% ladder colour=soot\n\nMore.", "is not closed by %}", 1],
  ])("%j is one fault at its line", (body, told, line) => {
    const [first, ...others] = rendered(body).faults;
    expect(first?.message).toContain(told);
    expect(first?.place.line).toBe(line);
    expect(others).toEqual([]);
  });
  test("an end too many is told after a fold that was spoilt, too", () => {
    const { faults } = rendered('{% fold "One"\n\n{% endfold %}\n\n{% endfold %}');
    expect(faults.map(({ place }) => place.line)).toEqual([1, 5]);
  });
});
