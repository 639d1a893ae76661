import sharp from "sharp";
import { expect, test } from "vitest";
import type { PageContext } from "../../lib/pages/page-context.ts";
import { photographView } from "../../lib/pages/photograph-view.ts";
import { certain } from "../../lib/quantities/at.ts";
import { ENGLISH } from "../../lib/words/english.ts";
import { colourText, photographedWorkshop } from "./photographed-workshop.ts";

test("what a photograph shows and what lit it are sentences of their own", async () => {
  const jpeg = await sharp({
    create: { width: 400, height: 300, channels: 3, background: "#445566" },
  })
    .jpeg()
    .toBuffer();
  const { records, told } = await photographedWorkshop(
    {
      "colours/bone-black.md": colourText(
        "photographs:\n  - { file: drawdown.jpg, of: drawdown, date: 2026-05-18, light: north window, shows: browner where it is thin }\n",
      ),
    },
    { "drawdown.jpg": jpeg },
  );
  expect(told).toEqual([]);
  const of = certain(records);
  const [photograph] = of.photographs;
  const { pictures } = certain(photograph);
  const [view] = photographView(
    {
      photograph: certain(photograph),
      pictures: certain(pictures),
      name: "Bone Black",
      remarks: [],
    },
    0,
    { words: ENGLISH, records: of, folder: "" } as unknown as PageContext,
    { root: "" } as never,
  );
  expect(certain(view).caption.map(({ text }) => text)).toEqual([
    "Drawdown over black and white.",
    "Browner where it is thin.",
    "North window, 18 May 2026.",
  ]);
});
