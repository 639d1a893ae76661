import type { Browser, BrowserContextOptions, Page } from "playwright-core";

/** A page in a context of its own, and what its browser complains of or asks of another host than `site`. */
export async function visitedPage(
  browser: Browser,
  site: string,
  use: (page: Page, complaints: readonly string[]) => Promise<void>,
  options: BrowserContextOptions = {},
): Promise<void> {
  const context = await browser.newContext(options);
  try {
    const page = await context.newPage();
    const complaints: string[] = [];
    page.on("console", (message) => {
      if (message.type() === "error") complaints.push(message.text());
    });
    page.on("pageerror", (error) => complaints.push(error.message));
    page.on("request", (request) => {
      if (new URL(request.url()).origin !== site) complaints.push(request.url());
    });
    await use(page, complaints);
  } finally {
    await context.close();
  }
}
