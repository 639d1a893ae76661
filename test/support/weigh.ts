/** `npm run weigh`: how heavy and how tall the demonstration's pages are, as a table for README or a note. */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { gzipSync } from "node:zlib";
import { chromium } from "playwright-core";
import { mullstone } from "./mullstone.ts";
import { servedFolder } from "./served-folder.ts";
import { unpackedChromium } from "./unpacked-chromium.ts";
import { runFolder } from "./run-folder.ts";

const PAGES = [
  "index.html",
  "colours/index.html",
  "colours/bone-black/index.html",
  "colours/bone-black/bench/index.html",
  "colours/titanium-white/index.html",
  "colours/slate-grey/index.html",
  "compare/bone-black-and-spinel-black/index.html",
  "answers/which-black-for-a-neutral-grey/index.html",
  "colours/in-the-whites/index.html",
  "bench/index.html",
  "bench/recipes/index.html",
  "bench/map/index.html",
  "bench/palette/index.html",
];
/** Screens that heights are told in [px]. */
const SCREENS = [
  { width: 1440, height: 900 },
  { width: 390, height: 844 },
] as const;

const { folder: scratch, remove } = runFolder("weigh");
try {
  const dir = join(scratch, "site");
  const { code, complaints } = await mullstone(["build", "--output", dir]);
  if (code !== 0) throw new Error(`The demonstration did not build (exit ${code})\n${complaints}`);
  const site = await servedFolder(dir);
  const { executablePath, env } = await unpackedChromium();
  const browser = await chromium.launch({
    executablePath,
    args: ["--no-sandbox", "--disable-dev-shm-usage", "--disable-gpu"],
    env: { ...process.env, ...env },
  });
  try {
    const rows: string[] = [];
    for (const path of PAGES) {
      const html = readFileSync(join(dir, path), "utf8");
      const heights: string[] = [];
      for (const viewport of SCREENS) {
        const page = await browser.newPage({ viewport });
        await page.goto(`${site.address}/${path}`);
        await page.evaluate("document.fonts.ready.then(() => true)");
        const height = await page.evaluate<number>("document.documentElement.scrollHeight");
        heights.push((height / viewport.height).toFixed(1));
        await page.close();
      }
      const elements = (html.match(/<[a-z]/g) ?? []).length;
      rows.push(
        `| ${path.replace(/index\.html$/, "")} | ${(gzipSync(html).length / 1000).toFixed(1)} | ${elements} | ${heights.join(" | ")} |`,
      );
    }
    process.stdout.write(
      [
        `| page | kB gzipped | elements | ${SCREENS.map(({ width }) => `screens at ${width}`).join(" | ")} |`,
        "|---|---|---|---|---|",
        ...rows,
        "",
      ].join("\n"),
    );
  } finally {
    await browser.close();
    await site.close();
  }
} finally {
  remove();
}
