import { spawn, type ChildProcess } from "node:child_process";
import { mkdirSync, readdirSync, readFileSync, renameSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { contentFolder, SMALLEST_WORKSHOP } from "../support/content-folder.ts";
import { BIN } from "../support/mullstone.ts";

/** Longest that a slow machine may take over one step [ms]. */
const PATIENCE = 60_000;

const { home, content } = contentFolder(SMALLEST_WORKSHOP);
const scratch = join(home, "scratch");
const record = join(content, "colours", "lamp-black.md");
let said = "";
let server: ChildProcess | undefined;
let ended: Promise<number | null> | undefined;

/** Ask until there is an answer; fails with what the server has said. */
async function until<T>(
  what: string,
  answer: () => T | undefined | Promise<T | undefined>,
): Promise<T> {
  const started = Date.now();
  while (Date.now() - started < PATIENCE) {
    const found = await answer();
    if (found !== undefined) return found;
    await new Promise((later) => setTimeout(later, 100));
  }
  throw new Error(`Unexpected wait for ${what}; the server said:\n${said}`);
}

async function fetched(path: string): Promise<string> {
  const address = /^http:\/\/localhost:\d+\/$/m.exec(said)?.[0] ?? "";
  const response = await fetch(new URL(path, address));
  return response.status === 200 ? response.text() : `status ${response.status}`;
}

/** What a page that is opened now is told at once. */
async function firstEvent(): Promise<string> {
  const address = /^http:\/\/localhost:\d+\/$/m.exec(said)?.[0] ?? "";
  const { body } = await fetch(new URL("-/builds", address));
  const reader = (body as ReadableStream<Uint8Array> | null)?.getReader();
  const first = await reader?.read();
  await reader?.cancel();
  return new TextDecoder().decode(first?.value);
}

beforeAll(async () => {
  mkdirSync(scratch);
  // Straight to node: a server started by npm would outlive npm's end.
  const child = spawn(process.execPath, [BIN, "start"], {
    cwd: home,
    env: { ...process.env, TMPDIR: scratch },
    stdio: ["ignore", "pipe", "pipe"],
  });
  server = child;
  ended = new Promise((done) => child.once("exit", (code) => done(code)));
  for (const stream of [child.stdout, child.stderr])
    stream.on("data", (chunk: Buffer) => (said += chunk.toString()));
  await until("its address", () => /^http:\/\/localhost:\d+\/$/m.exec(said) ?? undefined);
}, 2 * PATIENCE);

afterAll(async () => {
  server?.kill("SIGKILL");
  await ended;
});

/** One server, through one edit after the other. */
describe("start", { shuffle: false }, () => {
  test("prints its address and serves pages, styles and data", async () => {
    expect(said).toMatch(/^1 sheet, \d+\.\d s$/m);
    expect(await fetched("index.html")).toContain("Test Workshop");
    expect(await fetched("colours/lamp-black/")).toContain("Lamp Black");
    const [style = ""] =
      /assets\/styles\/site\.[0-9a-f]+\.css/.exec(await fetched("index.html")) ?? [];
    expect(await fetched(style)).toContain("--ground");
    expect(JSON.parse(await fetched("colours/lamp-black/sheet.json"))).toMatchObject({
      name: "Lamp Black",
    });
  });

  test("shows an edited record", async () => {
    writeFileSync(
      record,
      readFileSync(record, "utf8").replace("name: Lamp Black", "name: Soot Black"),
    );
    await until("the new name", async () =>
      (await fetched("colours/lamp-black/")).includes("Soot Black") ? true : undefined,
    );
    await until("the new data", async () =>
      (await fetched("colours/lamp-black/sheet.json")).includes("Soot Black") ? true : undefined,
    );
  });

  test("tells the browser that shows a page only once the newer page is there", async () => {
    const address = /^http:\/\/localhost:\d+\/$/m.exec(said)?.[0] ?? "";
    const { body } = await fetch(new URL("-/builds?page=/colours/lamp-black/", address));
    const reader = (body as ReadableStream<Uint8Array> | null)?.getReader();
    writeFileSync(record, `${readFileSync(record, "utf8")}One more note.\n`);
    const told = async (): Promise<string> => {
      const next = await reader?.read();
      if (next === undefined || next.done)
        throw new Error(`Unexpected end of what is told\n${said}`);
      return new TextDecoder().decode(next.value);
    };
    // The build before may tell of itself first; of this one it is told once, when the page is there.
    for (;;) {
      if (!(await told()).includes("event: built")) continue;
      if ((await fetched("colours/lamp-black/")).includes("One more note.")) break;
    }
    await reader?.cancel();
  });

  test("tells an error in a record, keeps the last good page, and goes on when it is put right", async () => {
    const sound = readFileSync(record, "utf8");
    writeFileSync(record, sound.replace("name: Soot Black", "name: Ink Black\nbody: longish"));
    await until("the complaint", () =>
      said.includes('error body can\'t be "longish": it takes short, long, stiff or ropy')
        ? true
        : undefined,
    );
    await until("its word", () => (said.includes("the last good pages stay") ? true : undefined));
    expect(await fetched("colours/lamp-black/")).toContain("Soot Black");
    expect(await firstEvent()).toMatch(
      /^event: fault\ndata: "content\/colours\/lamp-black\.md:3:7 error body can't be /,
    );
    writeFileSync(record, sound.replace("name: Soot Black", "name: Ink Black"));
    await until("the name put right", async () =>
      (await fetched("colours/lamp-black/")).includes("Ink Black") ? true : undefined,
    );
    expect(await firstEvent()).not.toContain("fault");
  });

  test("has no page of a colour that was deleted, nor its data", async () => {
    writeFileSync(
      join(content, "colours", "second.md"),
      "---\nname: Second Black\npigments: [{ pigment: lamp-black }]\n---\n",
    );
    await until("its page", async () =>
      (await fetched("colours/second/")).includes("Second Black") ? true : undefined,
    );
    rmSync(join(content, "colours", "second.md"));
    await until("its end", async () =>
      (await fetched("colours/second/")) === "status 404" ? true : undefined,
    );
    expect(await fetched("colours/second/sheet.json")).toBe("status 404");
  });

  test("says that the content folder is gone, keeps the last good pages, and sees the folder come back", async () => {
    renameSync(content, join(home, "away"));
    await until("the complaint", () =>
      said.includes("The content folder can't be read, since nothing is there") ? true : undefined,
    );
    expect(await fetched("colours/lamp-black/")).toContain("Ink Black");
    writeFileSync(
      join(home, "away", "colours", "lamp-black.md"),
      readFileSync(join(home, "away", "colours", "lamp-black.md"), "utf8").replace(
        "name: Ink Black",
        "name: Chimney Black",
      ),
    );
    renameSync(join(home, "away"), content);
    await until("the name given meanwhile", async () =>
      (await fetched("colours/lamp-black/")).includes("Chimney Black") ? true : undefined,
    );
  });

  test("says that workshop.yaml is gone, and goes on when it is back", async () => {
    const workshop = join(content, "workshop.yaml");
    rmSync(workshop);
    await until("the complaint", () =>
      said.includes("error workshop.yaml is missing: it gives the workshop's name at least")
        ? true
        : undefined,
    );
    writeFileSync(workshop, "name: Workshop Come Back\n");
    await until("its new name", async () =>
      (await fetched("index.html")).includes("Workshop Come Back") ? true : undefined,
    );
  });

  test("pages follow the builds by a script of their own origin, and no built site has it", async () => {
    expect(await fetched("index.html")).toContain(`<script src="/-/reload.js"></script></body>`);
    expect(await fetched("-/reload.js")).toContain("location.reload()");
  });

  test("ends when told to, and leaves no folder of its own", async () => {
    server?.kill("SIGTERM");
    expect(await ended).toBe(0);
    expect(readdirSync(scratch).filter((name) => name.startsWith("mullstone-"))).toEqual([]);
  });
});
