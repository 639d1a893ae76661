import { defineConfig } from "vitest/config";

const WHOLE_SITE = ["test/contract/**/*.test.ts", "test/site/**/*.test.ts"];

// Each project names these itself: one that extends the root would run its global setup a second time.
const SHARED = {
  env: { TZ: "UTC", LC_ALL: "C" },
  testTimeout: 60_000,
  hookTimeout: 120_000,
};

/** Only a run with a test of the whole site builds the demonstration and starts a browser, both once. */
export default defineConfig({
  test: {
    globalSetup: ["test/support/scratch-folder.ts"],
    projects: [
      { test: { ...SHARED, name: "units", include: ["test/**/*.test.ts"], exclude: WHOLE_SITE } },
      { test: { ...SHARED, name: "site", include: WHOLE_SITE, globalSetup: ["test/support/demonstration-site.ts", "test/support/browser-server.ts"] } },
    ],
  },
});
