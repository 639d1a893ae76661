import { expect, test } from "vitest";
import { sentencePatterns } from "../support/sentence-patterns.ts";

const SLUGS = ["one", "two", "three"];
const said = (slug: string, text: string, names: string[] = []) => ({ slug, text, names });

test("a sentence stands once, with what differs beside each sheet", () => {
  expect(
    sentencePatterns(
      [
        said("one", "Ochre is dry in 3–5 days at 20 °C.", ["ochre"]),
        said("two", "Umber is dry in 2 days at 20 °C.", ["umber"]),
        said("two", "Acrylic never goes over oil."),
        said("one", "Acrylic never goes over oil."),
        said("three", "Acrylic never goes over oil."),
      ],
      SLUGS,
    ),
  ).toEqual([
    "  [a] is dry in [b] days at 20 °C.",
    "    one (Ochre; 3–5), two (Umber; 2)",
    "  Acrylic never goes over oil.",
    "    every sheet",
  ]);
});

test("a list of names is one place, however many they are", () => {
  expect(
    sentencePatterns(
      [
        said("one", "Wear gloves with umber and ochre.", ["umber", "ochre"]),
        said("two", "Wear gloves with umber.", ["umber"]),
      ],
      SLUGS,
    ),
  ).toEqual(["  Wear gloves with [a].", "    one (umber and ochre), two (umber)"]);
});

test("a code of a standard is no figure; a hazard statement's may differ", () => {
  expect(
    sentencePatterns(
      [said("one", "By ASTM D281, for H302."), said("two", "By ASTM D281, for H360Df.")],
      SLUGS,
    ),
  ).toEqual(["  By ASTM D281, for [a].", "    one (H302), two (H360Df)"]);
});

test("where all but few say it, those that do not are named", () => {
  expect(
    sentencePatterns([said("one", "So."), said("three", "So.")], [...SLUGS, "four", "five"]),
  ).toEqual(["  So.", "    one, three"]);
  expect(
    sentencePatterns(
      ["one", "two", "three", "four"].map((slug) => said(slug, "So.")),
      [...SLUGS, "four", "five"],
    ),
  ).toEqual(["  So.", "    every sheet but five"]);
});
