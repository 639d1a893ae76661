import { mkdirSync, mkdtempSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { afterEach, beforeEach, describe, expect, inject, test } from "vitest";
import { siteServer, type SiteServer } from "../../lib/site/site-server.ts";

/** A folder of pages, each with a text by which it is known. */
function output(pages: Readonly<Record<string, string>>): string {
  const dir = mkdtempSync(join(inject("scratch"), "served-"));
  for (const [path, text] of Object.entries(pages)) {
    mkdirSync(dirname(join(dir, path)), { recursive: true });
    writeFileSync(join(dir, path), text);
  }
  return dir;
}

const OLD = {
  "index.html": "old home",
  "404.html": "old: no such page",
  "colours/bone/index.html": "old bone",
  "colours/bone/sheet.json": "old bone's data",
  "colours/lamp/index.html": "old lamp",
  "colours/lamp/sheet.json": "old lamp's data",
};
const ALL = ["index.html", "404.html", "colours/bone/index.html"];

let server: SiteServer;
beforeEach(async () => {
  server = await siteServer(output(OLD), 0);
});
afterEach(async () => server.close());

async function got(path: string): Promise<string> {
  const response = await fetch(`${server.address}${path}`);
  const text = await response.text();
  return response.status === 200 ? text : `${response.status} ${text}`;
}

/** What the server tells a browser that shows a page, so far. */
async function openedPage(path: string): Promise<{ readonly told: () => string }> {
  const query = new URLSearchParams({ page: `/${path}` }).toString();
  const { body } = await fetch(`${server.address}-/builds?${query}`);
  let told = "";
  const decoder = new TextDecoder();
  void body?.pipeTo(
    new WritableStream({
      write: (chunk: Uint8Array) => {
        told += decoder.decode(chunk);
      },
    }),
  );
  await until(() => told !== "");
  return { told: () => told };
}

/** Told of a build whose data is there, unless said. */
function made(pages: readonly string[], all: readonly string[] = ALL, isDataThere = true) {
  return { output: "site", made: pages, all, isDataThere } as const;
}

async function until(isSo: () => boolean): Promise<void> {
  while (!isSo()) await new Promise((later) => setTimeout(later, 5));
}

describe("while a newer site is made", () => {
  test("a page that has come is the newer one, and data is the newer where there is any", async () => {
    const next = output({
      "colours/bone/index.html": "new bone",
      "colours/bone/sheet.json": "new",
    });
    server.made(next, made(["colours/bone/index.html"]));
    expect(await got("colours/bone/")).toBe("new bone");
    expect(await got("colours/bone/index.html")).toBe("new bone");
    expect(await got("colours/bone/sheet.json")).toBe("new");
  });

  test("a page that has not come yet is waited for, and wanted meanwhile", async () => {
    const next = output({});
    server.made(next, made([]));
    const page = got("colours/bone/");
    await until(() => server.wanted().includes("colours/bone/index.html"));
    mkdirSync(join(next, "colours", "bone"), { recursive: true });
    writeFileSync(join(next, "colours", "bone", "index.html"), "new bone");
    server.made(next, made(["colours/bone/index.html"]));
    expect(await page).toBe("new bone");
    expect(server.wanted()).toEqual([]);
  });

  test("data that has not come yet is waited for, and styles are there before", async () => {
    const next = output({ "assets/site.1.css": "new", "colours/bone/index.html": "new bone" });
    server.made(next, made(["colours/bone/index.html"], ALL, false));
    expect(await got("colours/bone/")).toBe("new bone");
    expect(await got("assets/site.1.css")).toBe("new");
    const data = got("colours/bone/sheet.json");
    await until(() => server.wanted().includes("colours/bone/sheet.json"));
    writeFileSync(join(next, "colours", "bone", "sheet.json"), "new");
    server.made(next, made([]));
    expect(await data).toBe("new");
  });

  test("a request that is broken off is wanted no more", async () => {
    server.made(output({}), made([]));
    const broken = new AbortController();
    const page = fetch(`${server.address}colours/bone/`, { signal: broken.signal });
    await until(() => server.wanted().length > 0);
    broken.abort();
    await expect(page).rejects.toThrow();
    await until(() => server.wanted().length === 0);
  });

  test("a page that there will not be is not there, nor what lies beside it", async () => {
    const next = output({ "404.html": "new: no such page" });
    server.made(next, made(["404.html"]));
    expect(await got("colours/lamp/")).toBe("404 new: no such page");
    expect(await got("colours/lamp/sheet.json")).toBe("404 new: no such page");
    expect(await got("colours/bone/sheet.json")).toBe("old bone's data");
  });

  test("where it will not come, what there was is served to those who wait", async () => {
    server.made(output({}), made([]));
    const page = got("colours/bone/");
    await until(() => server.wanted().length > 0);
    server.tell("a fault");
    expect(await page).toBe("old bone");
    expect(await got("colours/lamp/")).toBe("old lamp");
  });

  test("those who wait are served from the newer site once it is whole", async () => {
    server.made(output({}), made([]));
    const page = got("colours/bone/");
    await until(() => server.wanted().length > 0);
    server.show(output({ "colours/bone/index.html": "new bone" }));
    expect(await page).toBe("new bone");
  });
});

describe("a page whose record was deleted", () => {
  test.each(["colours/lamp/", "de/colours/lamp/", "colours/lamp/sheet.json"])(
    "is gone before the newer site is made: %s",
    async (path) => {
      server.gone(["colours/lamp/"]);
      expect(await got(path)).toBe("404 old: no such page");
      expect(await got("colours/bone/")).toBe("old bone");
    },
  );

  test("stays away when the newer site does not come, and is back with its record", async () => {
    server.gone(["colours/lamp/"]);
    server.tell("an answer names it");
    expect(await got("colours/lamp/")).toBe("404 old: no such page");
    server.gone([]);
    expect(await got("colours/lamp/")).toBe("old lamp");
  });

  test("is there where the newer site has a page in its place", async () => {
    server.gone(["colours/lamp/"]);
    const former = "colours/lamp/index.html";
    const next = output({ [former]: "is called bone now" });
    server.made(next, made([former], [...ALL, former]));
    expect(await got("colours/lamp/")).toBe("is called bone now");
  });
});

describe("an open page", () => {
  const BUILT = "event: built";
  const times = (told: string): number => told.split(BUILT).length - 1;

  test("is wanted, and told as soon as it has come, and not again when all others have", async () => {
    const [bone, home] = [await openedPage("colours/bone/"), await openedPage("")];
    expect([...server.wanted()].sort()).toEqual(["colours/bone/index.html", "index.html"]);
    const next = output({ ...OLD, "colours/bone/index.html": "new bone" });
    server.made(next, made(["colours/bone/index.html"]));
    await until(() => times(bone.told()) === 1);
    expect(times(home.told())).toBe(0);
    const again = await openedPage("colours/bone/");
    server.show(next);
    await until(() => times(home.told()) === 1);
    expect([times(bone.told()), times(again.told())]).toEqual([1, 0]);
    server.show(output(OLD));
    await until(() => times(home.told()) === 2);
    await until(() => times(bone.told()) === 2 && times(again.told()) === 1);
  });

  test("is told that its record was deleted", async () => {
    const lamp = await openedPage("colours/lamp/");
    server.gone(["colours/lamp/"]);
    await until(() => times(lamp.told()) === 1);
  });
});
