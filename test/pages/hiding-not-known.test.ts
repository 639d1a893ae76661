import { expect, test } from "vitest";
import { siteOf } from "../../lib/site/site-of-records.ts";
import { WORDED } from "../support/worded.ts";
import type { RecordTexts } from "../support/content-folder.ts";
import { soundRecords } from "../support/sound-records.ts";
import { steps } from "../package/readme.ts";

// Plain logic and no source: whoever has read films is not asked for these again, nor told that they were read otherwise.

/** The README's workshop with films of its red earth, which hide because they are dark. */
const DARK = steps()[3]?.files ?? {};

const { opacity, filmSpectra, filmsOfWhite } = WORDED.en.pages.sheetPage.unknown;

/** All that the red earth's page says, with blanks that a line may break at. */
function redEarth(files: RecordTexts): string {
  const page = siteOf(soundRecords(files), undefined).site.pages.find(
    ({ path }) => path === "colours/red-earth/index.html",
  );
  return JSON.stringify(page?.view).replaceAll("\u00a0", " ");
}

/** Which of the lines on what would tell how it hides stand on the red earth's page. */
function asked(files: RecordTexts): readonly string[] {
  const told = redEarth(files);
  return [opacity, filmSpectra, filmsOfWhite]
    .map(({ takes }) => takes)
    .filter((line) => told.includes(line));
}

function withEarth(edit: (record: string) => string): RecordTexts {
  const path = "colours/red-earth.md";
  return { ...DARK, [path]: edit(DARK[path] ?? "") };
}

const LAB = "illuminant: D65, observer: 10, geometry: d/8 excluded";
const FILMS = /^films:\n(?: .*\n)+/m;

test("of films that hide by their darkness, those of the white are asked for", () => {
  expect(asked(DARK)).toEqual([filmsOfWhite.takes]);
});

test("what film hides is told at first sight, though how transparent the paint is nobody knows", () => {
  expect(redEarth(DARK)).toMatch(
    /"word":"\u2013","detail":"swallows so much light that at most \d+ \u00b5m of dry film hides black and white"/,
  );
});

test("films without a spectrum are asked for their spectra", () => {
  const read = withEarth((record) =>
    record.replace(
      FILMS,
      `films:
  - { ground: black, filmThicknessUm: 50, lab: [9, 20, 12], ${LAB} }
  - { ground: white, filmThicknessUm: 50, lab: [9.1, 20, 12], ${LAB} }
`,
    ),
  );
  expect(asked(read)).toEqual([filmSpectra.takes]);
});

test("without films they are asked for, and of flakes that mirror never, since they would tell nothing", () => {
  const unread = withEarth((record) => record.replace(FILMS, ""));
  expect(asked(unread)).toEqual([opacity.takes]);
  const path = "pigments/red-earth.yaml";
  expect(asked({ ...unread, [path]: `${DARK[path]}effect: metallic\n` })).toEqual([]);
});
