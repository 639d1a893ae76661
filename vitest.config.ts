import { defineConfig } from "vitest/config";

export default defineConfig({
  test: {
    include: ["test/**/*.test.ts"],
    env: { TZ: "UTC", LC_ALL: "C" },
    testTimeout: 60_000,
    hookTimeout: 120_000,
  },
});
