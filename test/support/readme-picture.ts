/** `npm run readme-picture`: a photograph of the first screen of one of the demonstration's sheets, for the README. */
import { mkdirSync, statSync } from "node:fs";
import { join } from "node:path";
import { chromium } from "playwright-core";
import sharp from "sharp";
import { mullstone } from "./mullstone.ts";
import { servedFolder } from "./served-folder.ts";
import { unpackedChromium } from "./unpacked-chromium.ts";
import { runFolder } from "./run-folder.ts";

const SHEET = "colours/bone-black/";
const PICTURE = join(import.meta.dirname, "../../assets/readme/sheet.png");
const LARGEST_BYTES = 200_000;

/** The Chromium that MULLSTONE_CHROMIUM names, else the one from npm. */
async function program(): Promise<{
  executablePath: string;
  env: Readonly<Record<string, string>>;
}> {
  const named = process.env["MULLSTONE_CHROMIUM"] ?? "";
  return named === "" ? unpackedChromium() : { executablePath: named, env: {} };
}

async function photograph(address: string): Promise<Buffer> {
  const { executablePath, env } = await program();
  const browser = await chromium.launch({
    executablePath,
    args: ["--no-sandbox", "--disable-dev-shm-usage", "--disable-gpu"],
    env: { ...process.env, ...env },
  });
  try {
    const page = await browser.newPage({
      viewport: { width: 1100, height: 812 },
      deviceScaleFactor: 1.5,
      colorScheme: "light",
      reducedMotion: "reduce",
    });
    await page.goto(address, { waitUntil: "load" });
    const faults = await page.evaluate(
      "document.fonts.ready.then((faces) => [...faces].filter(({ status }) => status === 'error').map(({ family }) => family))",
    );
    if (!Array.isArray(faults) || faults.length > 0)
      throw new Error(`Unexpected failure of fonts: ${String(faults)}`);
    return await page.screenshot();
  } finally {
    await browser.close();
  }
}

const { folder: scratch, remove } = runFolder("picture");
try {
  const { code, complaints } = await mullstone(["build", "--output", join(scratch, "site")]);
  if (code !== 0)
    throw new Error(`Unexpected exit ${code} of the demonstration's build\n${complaints}`);
  const site = await servedFolder(join(scratch, "site"));
  try {
    const picture = await photograph(`${site.address}/${SHEET}`);
    mkdirSync(join(PICTURE, ".."), { recursive: true });
    await sharp(picture)
      .png({ palette: true, colours: 128, dither: 0, compressionLevel: 9, effort: 10 })
      .toFile(PICTURE);
  } finally {
    await site.close();
  }
} finally {
  remove();
}
const { size } = statSync(PICTURE);
process.stdout.write(`${PICTURE}, ${Math.ceil(size / 1000)} kB\n`);
if (size > LARGEST_BYTES)
  throw new Error(`The size of the picture ${size} bytes, expected at most ${LARGEST_BYTES}`);
