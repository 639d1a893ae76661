import { afterEach, expect, test, vi } from "vitest";
import { printedDate } from "../../lib/site/printed-date.ts";

afterEach(() => vi.unstubAllEnvs());

test.each<[string, string | undefined, string | undefined, string | undefined, string | undefined]>(
  [
    ["the date asked for goes first", "2026-07-01", "1767225600", "2026-05-18", "2026-07-01"],
    [
      "then SOURCE_DATE_EPOCH: 1767225600 s after 1970 is 2026-01-01 UTC",
      undefined,
      "1767225600",
      "2026-05-18",
      "2026-01-01",
    ],
    ["then the newest date in the records", undefined, undefined, "2026-05-18", "2026-05-18"],
    ["an epoch that is no number is passed over", undefined, "soon", "2026-05-18", "2026-05-18"],
    ["never the clock", undefined, undefined, undefined, undefined],
  ],
)("%s", (_, asked, epoch, newest, printed) => {
  vi.stubEnv("SOURCE_DATE_EPOCH", epoch);
  expect(printedDate(asked, newest)).toBe(printed);
});
