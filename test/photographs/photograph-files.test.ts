import sharp, { type Sharp } from "sharp";
import { mkdirSync, mkdtempSync, utimesSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { setTimeout as pause } from "node:timers/promises";
import { crc32, deflateSync } from "node:zlib";
import { describe, expect, inject, test } from "vitest";
import { LARGEST_SCREEN_BYTES } from "../../lib/photographs/picture-sizes.ts";
import { heldValues } from "../../lib/kept/held-values.ts";
import { workCacheOf } from "../../lib/kept/work-cache.ts";
import { withPhotographs } from "../../lib/photographs/taken-photographs.ts";
import { loadRecords } from "../../lib/records/load-records.ts";
import { contentFolder } from "../support/content-folder.ts";
import { photographed } from "../support/painted-scene.ts";
import { colourText, photographedWorkshop, TEXTS } from "./photographed-workshop.ts";

const SIZE = { width: 540, height: 360 };
const SCENE = photographed(
  {
    ...SIZE,
    parts: [
      { left: 60, top: 60, right: 480, bottom: 300, light: [0.3, 0.1, 0.05], texture: "stroke" },
    ],
  },
  { seed: 5, noise: 0.05 },
);
const scene = (): Sharp => sharp(SCENE, { raw: { ...SIZE, channels: 3 } });

const named = (file: string): Record<string, string> => ({
  "colours/bone-black.md": colourText(
    `photographs:\n  - { file: ${file}, of: brush stroke, date: 2026-05-02 }\n`,
  ),
});

describe("a photograph becomes pictures of every size", () => {
  test.each([
    ["JPEG", "paint.jpg", () => scene().jpeg().toBuffer()],
    ["PNG of 16 bits", "paint.png", () => scene().toColourspace("rgb16").png().toBuffer()],
    ["WebP", "paint.webp", () => scene().webp().toBuffer()],
    ["AVIF", "paint.avif", () => scene().avif({ effort: 0 }).toBuffer()],
    ["TIFF", "paint.TIF", () => scene().tiff().toBuffer()],
  ])("%s is read, and comes out light, in its sizes, without metadata", async (_, name, bytes) => {
    const { records, told } = await photographedWorkshop(named(name), { [name]: await bytes() });
    expect(told).toEqual([]);
    const pictures = records?.photographs[0]?.pictures;
    const found = await Promise.all(
      (pictures?.screen ?? []).map(async ({ bytes: own, ...said }) => {
        const { format, width, height, exif, xmp, iptc } = await sharp(own()).metadata();
        expect([width, height]).toEqual([said.widthPx, said.heightPx]);
        expect([exif, xmp, iptc]).toEqual([undefined, undefined, undefined]);
        expect(own().length).toBeLessThanOrEqual(LARGEST_SCREEN_BYTES);
        return `${said.path} ${format}`;
      }),
    );
    expect(found).toEqual([
      "photographs/paint-480.avif heif",
      "photographs/paint-540.avif heif",
      "photographs/paint-480.webp webp",
      "photographs/paint-540.webp webp",
      "photographs/paint-480.jpg jpeg",
      "photographs/paint-540.jpg jpeg",
    ]);
    const paper = await sharp(pictures?.paper.bytes()).metadata();
    expect([paper.format, paper.width, paper.height]).toEqual(["jpeg", 540, 360]);
  });

  test("a file that two colours show has pictures of each, so that none lies over another's", async () => {
    const own = (paint: string): string =>
      `photographs:\n  - { file: both.jpg, of: brush stroke, date: 2026-05-02, paint: ${paint} }\n`;
    const { records, told } = await photographedWorkshop(
      {
        "colours/bone-black.md": colourText(own("[40, 40, 240, 320]")),
        "colours/second-black.md": colourText(own("[300, 40, 500, 320]")).replace(
          "Bone Black",
          "Second Black",
        ),
      },
      { "both.jpg": await scene().jpeg().toBuffer() },
    );
    expect(told).toEqual([]);
    const paths = (records?.photographs ?? []).map(
      ({ pictures }) => pictures?.screen.map(({ path }) => path)[0],
    );
    expect(paths).toEqual([
      "photographs/both-of-bone-black-480.avif",
      "photographs/both-of-second-black-480.avif",
    ]);
  });

  test("one held on its side is turned upright, and its place and camera are gone", async () => {
    const bytes = await scene()
      .withExif({ IFD0: { Make: "a camera" }, IFD3: { GPSLatitude: "51/1 30/1 0/1" } })
      .withMetadata({ orientation: 6 })
      .jpeg()
      .toBuffer();
    const came = await sharp(bytes).metadata();
    expect([came.orientation, came.exif === undefined]).toEqual([6, false]);
    const { records } = await photographedWorkshop(named("paint.jpg"), { "paint.jpg": bytes });
    const [photograph] = records?.photographs ?? [];
    expect(photograph?.taken).toMatchObject({ widthPx: 360, heightPx: 540 });
    for (const { bytes, type } of photograph?.pictures?.screen ?? []) {
      const own = bytes();
      const { width, height, orientation, exif } = await sharp(own).metadata();
      expect(height / width, type).toBeCloseTo(1.5, 2);
      expect([orientation, exif]).toEqual([undefined, undefined]);
    }
  });

  /** Light of (1, 0, 0) in Display P3 is (1.2249, -0.0420, -0.0197) in sRGB: culori's own matrices, below. */
  test("a profile is honoured: what sRGB can't show is offered in Display P3 as well", async () => {
    const flat = sharp({ create: { ...SIZE, channels: 3, background: "#ff0000" } });
    // Stored (255, 0, 0) with the profile of Display P3: the reddest that it has.
    const p3 = (await flat.clone().withIccProfile("p3").png().toBuffer({ resolveWithObject: true }))
      .data;
    const profile = (await sharp(p3).metadata()).icc;
    const bytes = await withProfile(await flat.clone().raw().toBuffer(), profile);
    const { records } = await photographedWorkshop(named("paint.png"), { "paint.png": bytes });
    const screen = records?.photographs[0]?.pictures?.screen ?? [];
    expect(new Set(screen.map(({ gamut, type }) => `${gamut} ${type}`))).toEqual(
      new Set(["Display P3 avif", "sRGB avif", "sRGB webp", "sRGB jpeg"]),
    );
    const stored = async (gamut: string): Promise<number[]> => {
      const own = screen.find((one) => one.gamut === gamut && one.type === "avif");
      const raw = await sharp(own?.bytes()).keepIccProfile().raw().toBuffer();
      return [...raw.subarray(0, 3)];
    };
    const [p3Red, srgbRed] = [await stored("Display P3"), await stored("sRGB")];
    expect(Math.max(...[255, 0, 0].map((c, i) => Math.abs(c - (p3Red[i] ?? NaN))))).toBeLessThan(4);
    expect(Math.max(...[255, 0, 0].map((c, i) => Math.abs(c - (srgbRed[i] ?? NaN))))).toBeLessThan(
      4,
    );
  });

  test("one in sRGB alone is not offered in Display P3", async () => {
    const { records } = await photographedWorkshop(named("paint.png"), {
      "paint.png": await sharp({ create: { ...SIZE, channels: 3, background: "#ff0000" } })
        .png()
        .toBuffer(),
    });
    const gamuts = records?.photographs[0]?.pictures?.screen.map(({ gamut }) => gamut);
    expect(new Set(gamuts)).toEqual(new Set(["sRGB"]));
  });
});

/** A PNG of 8-bit pixels with a profile put on as it is. */
async function withProfile(pixels: Buffer, profile: Buffer | undefined): Promise<Buffer> {
  const file = join(mkdtempSync(join(inject("scratch"), "profile-")), "p3.icc");
  writeFileSync(file, profile ?? Buffer.alloc(0));
  // Of 16 bits sharp works in Display P3, so that putting its profile on changes no channel.
  const wide = new Uint16Array([...pixels].map((value) => value * 257));
  return sharp(wide, { raw: { ...SIZE, channels: 3 } })
    .withIccProfile(file)
    .png()
    .toBuffer();
}

/** A PNG of one bit a pixel, all black: few bytes, and soon made, for any size. Source: PNG (third edition), 5.3 and 11.2. */
function blackPng(widthPx: number, heightPx: number): Buffer {
  const chunk = (type: string, data: Buffer): Buffer => {
    const own = Buffer.concat([Buffer.from(type, "latin1"), data]);
    const [length, check] = [data.length, crc32(own)].map((number) => {
      const bytes = Buffer.alloc(4);
      bytes.writeUInt32BE(number);
      return bytes;
    });
    return Buffer.concat([length ?? own, own, check ?? own]);
  };
  const head = Buffer.from([0, 0, 0, 0, 0, 0, 0, 0, 1, 0, 0, 0, 0]);
  head.writeUInt32BE(widthPx, 0);
  head.writeUInt32BE(heightPx, 4);
  const rows = Buffer.alloc((1 + Math.ceil(widthPx / 8)) * heightPx);
  return Buffer.concat([
    Buffer.from("\x89PNG\r\n\x1a\n", "latin1"),
    chunk("IHDR", head),
    chunk("IDAT", deflateSync(rows)),
    chunk("IEND", Buffer.alloc(0)),
  ]);
}

describe("what is no photograph is one line at the record that names it", () => {
  const line = "content/colours/bone-black.md:5:13 error";
  test.each<[string, string, () => Promise<Uint8Array>, string]>([
    [
      "a text with the name of a picture",
      "paint.jpg",
      () => Promise.resolve(Buffer.from("not a picture")),
      `${line} paint.jpg is no JPEG, PNG, WebP, AVIF or TIFF, whatever its name says records/photograph`,
    ],
    [
      "a drawing in SVG with the name of a picture",
      "paint.png",
      () =>
        Promise.resolve(
          Buffer.from('<svg xmlns="http://www.w3.org/2000/svg" width="9" height="9"/>'),
        ),
      `${line} paint.png is no JPEG, PNG, WebP, AVIF or TIFF, whatever its name says records/photograph`,
    ],
    [
      "half of a file",
      "paint.jpg",
      async () => {
        const whole = await scene().jpeg().toBuffer();
        return whole.subarray(0, whole.length / 2);
      },
      `${line} paint.jpg can't be read to its end as JPEG: it is damaged, or was not copied whole records/photograph`,
    ],
    [
      "a bomb: a few kilobytes that unfold to 144 million pixels",
      "paint.png",
      () => Promise.resolve(blackPng(12_000, 12_000)),
      `${line} paint.png unfolds to 144 million pixels, and at most 100 million are read records/photograph`,
    ],
    [
      "inks of a press",
      "paint.jpg",
      () => scene().toColourspace("cmyk").jpeg().toBuffer(),
      `${line} paint.jpg is separated for printing inks (CMYK), and no photograph comes so from a camera; export it as RGB, with its profile records/photograph`,
    ],
    [
      "a phone's picture renamed",
      "paint.jpg",
      () => Promise.resolve(Buffer.from("\0\0\0\x18ftypheic\0\0\0\0mif1heic", "latin1")),
      `${line} paint.jpg is a phone's compressed picture of another kind than its name says; export it as JPEG records/photograph`,
    ],
  ])("%s", async (_, name, bytes, expected) => {
    const { records, told } = await photographedWorkshop(named(name), { [name]: await bytes() });
    expect(records).toBeUndefined();
    expect(told).toEqual([expected]);
  });
});

describe("names of photographs", () => {
  const jpeg = (): Promise<Buffer> => scene().resize(60).jpeg().toBuffer();

  test("a raw file is refused with what to do", async () => {
    const { told } = await photographedWorkshop(named("paint.NEF"), {
      "paint.NEF": Buffer.from("II*\0"),
    });
    expect(told).toEqual([
      "content/colours/bone-black.md:5:13 error paint.NEF is no picture yet: a photograph ends in .jpg, .jpeg, .png, .webp, .avif, .tif, .tiff; it is a camera's raw file, which is developed first: export it as JPEG or 16-bit TIFF records/photograph-kind",
      "content/photographs/paint.NEF:1:1 warning paint.NEF is left out: photographs/ holds files ending in .jpg, .jpeg, .png, .webp, .avif, .tif, .tiff, and this is a camera's raw file, which is developed first: export it as JPEG or 16-bit TIFF records/folder",
    ]);
  });

  test("a slip of the pen is told with the nearest name, and what nothing names is told", async () => {
    const { told } = await photographedWorkshop(named("piant.jpg"), { "paint.jpg": await jpeg() });
    expect(told).toEqual([
      "content/colours/bone-black.md:5:13 error There is no piant.jpg in photographs/; nearest: paint.jpg records/missing-reference",
      "content/photographs/paint.jpg:1:1 warning No record refers to the photograph paint.jpg, so nothing comes of it records/unused",
    ]);
  });

  test("two that would be published under one name are told", async () => {
    const { told } = await photographedWorkshop(named("paint.jpg"), {
      "paint.jpg": await jpeg(),
      "Paint.png": await scene().resize(60).png().toBuffer(),
    });
    expect(told.filter((line) => line.includes("records/duplicate"))).toEqual([
      "content/photographs/Paint.png:1:1 error There is a second photograph Paint beside content/photographs/paint.jpg: give it another name records/duplicate",
    ]);
  });

  test("pigments and lots have photographs, too", async () => {
    const { records, told } = await photographedWorkshop(
      {
        "pigments/bone-black.yaml":
          "name: Bone black\nphotographs: [{ file: paint.jpg, of: dry pigment }]\n",
        "colours/bone-black.md": colourText(""),
        "lots/bb-1.yaml":
          'number: "1"\ncolour: bone-black\ndate: 2026-01-02\npigments: [{ pigment: bone-black, massG: 100 }]\nphotographs: [{ file: paint.jpg, of: impasto }]\n',
      },
      { "paint.jpg": await jpeg() },
    );
    expect(told).toEqual([]);
    expect(
      records?.photographs.map(({ owner, record }) => [owner.folder, owner.slug, record.of]),
    ).toEqual([
      ["pigments", "bone-black", "dry pigment"],
      ["lots", "bb-1", "impasto"],
    ]);
  });
});

test("photographs that another makes are asked for so many ahead, and told of in their order", async () => {
  const names = Array.from({ length: 5 }, (_, i) => `stroke-${i}.jpg`);
  const { content, home } = contentFolder({
    ...TEXTS,
    "colours/bone-black.md": colourText(
      `photographs:\n${names.map((name) => `  - { file: ${name}, of: brush stroke }\n`).join("")}`,
    ),
    ...Object.fromEntries(names.map((name) => [`photographs/${name}`, "a picture"])),
  });
  let [atWork, most] = [0, 0];
  const { diagnostics } = await withPhotographs(
    loadRecords(content, home),
    undefined,
    "pictures, too",
    {
      ahead: 3,
      made: async ({ name }) => {
        most = Math.max(most, (atWork += 1));
        await pause(name === names[0] ? 20 : 1);
        atWork -= 1;
        return { fault: `${name} is none` };
      },
    },
  );
  expect(diagnostics.map(({ message }) => message)).toEqual(names.map((name) => `${name} is none`));
  expect(most).toBe(3);
});

test("what paper shows of a photograph lies in bytes of its own: whoever sends them on sends nothing beside", async () => {
  const { content, home } = contentFolder({
    ...TEXTS,
    "colours/bone-black.md": colourText("photographs: [{ file: stroke.jpg, of: brush stroke }]\n"),
    "photographs/stroke.jpg": "a picture",
  });
  // As a message of another process gives them: within all else that came.
  const bytes = new Uint8Array(new ArrayBuffer(1000), 100, 5).fill(7);
  const { records } = await withPhotographs(
    loadRecords(content, home),
    undefined,
    "pictures, too",
    {
      ahead: 1,
      made: async () =>
        Promise.resolve({
          taken: { widthPx: 1, heightPx: 1 },
          sizes: { screen: [], paper: { widthPx: 1, heightPx: 1, bytes } },
        }),
    },
  );
  const own = records?.photographs[0]?.pictures?.paper.bytes();
  expect([own, own?.buffer.byteLength]).toEqual([new Uint8Array(5).fill(7), 5]);
});

test("who serves a site reads a photograph again only where its file is another, and in any case where nothing of it is kept", async () => {
  const { content, home } = contentFolder({ ...TEXTS, ...named("paint.png") });
  const file = join(content, "photographs", "paint.png");
  mkdirSync(join(content, "photographs"));
  const served = { ...workCacheOf(content, true, heldValues()), programPart: () => "of this test" };
  const made: string[] = [];
  const told = async (cache = served): Promise<number> => {
    made.length = 0;
    await withPhotographs(loadRecords(content, home), cache, "what they tell", {
      ahead: 1,
      made: async ({ bytes }) => {
        made.push(Buffer.from(bytes).toString());
        return Promise.resolve({ taken: { patches: [] } } as never);
      },
    });
    return made.length;
  };
  const written = (text: string, minute: number): void => {
    writeFileSync(file, text);
    utimesSync(file, 60 * minute, 60 * minute);
  };
  written("one", 1);
  expect([await told(), await told()]).toEqual([1, 0]);
  // The same file by all that tells it: nobody has looked into it.
  written("two", 1);
  expect(await told()).toBe(0);
  written("two", 2);
  expect([await told(), made[0], await told()]).toEqual([1, "two", 0]);
  // Known, and nothing kept of it: what is made then is kept by what the file holds by now.
  written("six", 2);
  const emptied = { ...served, folder: join(home, "another-cache") };
  expect([await told(emptied), await told()]).toEqual([1, 0]);
  expect([await told({ ...emptied, held: undefined }), made]).toEqual([0, []]);
});
