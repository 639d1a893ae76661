import { expect, test } from "vitest";
import { nameComplaint } from "../../lib/permanence/traditional-names.ts";
import { RECORDS } from "../sheet/demonstration-sheets.ts";
import { KNOWN } from "../support/known.ts";

const { traditionalNames } = KNOWN.tables;

test("the demonstration bears no name that its pigments do not bear out", () => {
  for (const { record } of RECORDS.colours.values())
    expect(
      nameComplaint(
        record.name,
        record.pigments.map(({ pigment }) => RECORDS.pigments.get(pigment)?.record.colourIndexName),
        traditionalNames,
      ),
      record.name,
    ).toBeUndefined();
});
