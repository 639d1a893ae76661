import { chromium, type Browser } from "playwright-core";
import { afterAll, beforeAll, inject } from "vitest";

/** The run's browser for one test file: connected before its first test, let go after its last. */
export function connectedBrowser(): () => Browser {
  let browser: Browser | undefined;
  beforeAll(async () => {
    browser = await chromium.connect(inject("browserAddress"));
  });
  afterAll(() => browser?.close());
  return () => {
    if (browser === undefined)
      throw new Error("Unexpected use of the browser before the first test");
    return browser;
  };
}
