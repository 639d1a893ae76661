import type { BrowserContextOptions, Page } from "playwright-core";
import { startedBrowser } from "./started-browser.ts";

/** A page on a site, and what its browser complains of: errors, exceptions, what came with an error or was asked of another host. */
export interface Visit {
  readonly page: Page;
  readonly complaints: readonly string[];
}

/** What is waited for in vain is told by name, before the test is ended; a busy machine may take minutes. */
const AGAINST_A_HANG_MS = 300_000;

interface SharedPage {
  readonly page: Page;
  site: string;
  complaints: string[];
}

/** By what is asked of a context. */
const shared = new Map<string, Promise<SharedPage>>();

/**
 * An empty page for a visit to a site, as wide as a screen and by daylight. One page serves all visits of a worker that
 * ask for the same, one after another: a page of one's own has its browser begin a process, and read styles and fonts anew.
 * A click does not wait for the page that it leads to: who clicks waits for that address.
 * @param site its origin: `http://localhost:4000`; `null` for pages that are opened from a folder
 */
export async function emptyPage(site: string, options: BrowserContextOptions = {}): Promise<Visit> {
  const key = JSON.stringify(options);
  const known = shared.get(key) ?? opened(options);
  shared.set(key, known);
  const own = await known;
  const { page } = own;
  await page.unrouteAll();
  await page.goto("about:blank");
  await page.setViewportSize({ width: 1280, height: 720 });
  await page.emulateMedia({ colorScheme: "light" });
  own.site = site;
  own.complaints = [];
  return { page, complaints: own.complaints };
}

/** The same for as long as it is used. */
export async function visitedPage(
  site: string,
  use: (page: Page, complaints: readonly string[]) => Promise<void>,
  options?: BrowserContextOptions,
): Promise<void> {
  const { page, complaints } = await emptyPage(site, options);
  await use(page, complaints);
}

async function opened(options: BrowserContextOptions): Promise<SharedPage> {
  const context = await (await startedBrowser()).newContext(options);
  context.setDefaultTimeout(AGAINST_A_HANG_MS);
  const own: SharedPage = { page: await context.newPage(), site: "", complaints: [] };
  own.page.on("console", (message) => {
    if (message.type() === "error") own.complaints.push(`console: ${message.text()}`);
  });
  own.page.on("pageerror", (error) => own.complaints.push(`exception: ${error.message}`));
  own.page.on("request", (request) => {
    if (request.url() !== "about:blank" && new URL(request.url()).origin !== own.site)
      own.complaints.push(`asked of another host: ${request.url()}`);
  });
  own.page.on("response", (response) => {
    if (response.status() >= 400) own.complaints.push(`${response.status()} ${response.url()}`);
  });
  return own;
}
