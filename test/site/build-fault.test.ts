import { mkdtempSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { afterAll, beforeAll, expect, inject, test } from "vitest";
import { followingBuilds, RELOAD_EVENTS } from "../../lib/site/reload-script.ts";
import { siteServer, type SiteServer } from "../../lib/site/site-server.ts";
import { startedBrowser } from "../support/started-browser.ts";

/** As pages of a site have it. */
const POLICY = `<meta http-equiv="Content-Security-Policy" content="default-src 'self'">`;
const FAULT = 'content/colours/lamp-black.md:3:7 error body can\'t be "longish" <b>';

function folder(text: string): string {
  const dir = mkdtempSync(join(inject("scratch"), "shown-"));
  writeFileSync(
    join(dir, "index.html"),
    followingBuilds(
      `<!doctype html><html lang="en"><head><title>x</title>${POLICY}</head><body><p>${text}</p></body></html>`,
    ),
  );
  return dir;
}

let server: SiteServer;
beforeAll(async () => {
  server = await siteServer(folder("first"), 0);
});
afterAll(async () => server.close());

test("an open page shows a fault over itself, in place and as text, until there is a newer one; so does a page opened meanwhile", async () => {
  const browser = await startedBrowser();
  const page = await browser.newPage();
  // The line to the server opens after the page has loaded.
  const line = page.waitForResponse((response) => response.url().includes(RELOAD_EVENTS));
  await page.goto(server.address);
  await line;
  server.tell(FAULT);
  const told = page.getByRole("alert");
  await told.waitFor();
  expect(await told.textContent()).toBe(FAULT);
  expect((await told.boundingBox())?.y).toBeGreaterThan(300);
  expect(await page.getByText("first").isVisible()).toBe(true);
  const later = await browser.newPage();
  await later.goto(server.address);
  await later.getByRole("alert").waitFor();
  server.show(folder("second"));
  for (const one of [page, later]) {
    await one.getByText("second").waitFor();
    expect(await one.getByRole("alert").count()).toBe(0);
    await one.close();
  }
});
