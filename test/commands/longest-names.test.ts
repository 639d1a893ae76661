import { join } from "node:path";
import { expect, inject, test } from "vitest";
import { printedSite } from "../../lib/site/printed-site.ts";
import { siteOf } from "../../lib/site/site-of-records.ts";
import { soundWorkshops } from "../fuzz/sound-workshops.ts";
import { soundRecords } from "../support/sound-records.ts";

/** As many letters as a name may have, the widest that there is, without a place to break. */
const longName = (path: string): string => path.replace(/\W/g, "").slice(-20).padEnd(80, "W");

test.each(soundWorkshops().map((texts, i) => ({ i, texts })))(
  "pages, pictures and paper of workshop $i hold names of 80 letters",
  async ({ texts }) => {
    const named = Object.fromEntries(
      Object.entries(texts).map(([path, text]) => [
        path,
        text.replace(/^name: .*$/m, `name: ${longName(path)}`),
      ]),
    );
    const records = soundRecords(named, "2026-12-31");
    const { site } = siteOf(records, "2026-12-31");
    expect(site.pages.length).toBeGreaterThan(10);
    const { site: printed } = await printedSite(site, join(inject("scratch"), "none"));
    expect(printed.papers?.length).toBeGreaterThan(2);
  },
);
