import { spawn } from "node:child_process";
import { serialize } from "node:v8";
import { Worker } from "node:worker_threads";
import { deflateRawSync } from "node:zlib";
import { afterEach, describe, expect, test } from "vitest";
import type { CardsOnPaper } from "../../lib/print/paper-work.ts";
import { workProcess } from "../../lib/site/work-process.ts";
import {
  endAllThreads,
  WORK_BEGINS,
  workThreads,
  type WorkThreads,
} from "../../lib/site/work-threads.ts";

/** A document without a card in it, named for its workshop: the least that a thread can be asked for. */
const empty = (workshop: string): CardsOnPaper => ({
  laid: deflateRawSync(serialize([])),
  size: {
    name: "90x55",
    widthMm: 90,
    heightMm: 55,
    twoSided: true,
    languages: ["en"],
    paper: "A4",
    chip: false,
  },
  said: { workshop, date: "2026-05-18", language: "en" },
});
/** What no thread can unpack. */
const SPOILT = {
  slug: "lamp-black",
  pages: {
    sheet: Buffer.from("no deflated text"),
    bench: Buffer.from("no deflated text"),
  },
  caution: "",
  said: { workshop: { name: "Test Workshop" }, date: undefined, language: "en" },
  paper: { widthMm: 210, heightMm: 297 },
  photographs: new Map<string, Uint8Array>(),
} as const;
const NAMES = Array.from({ length: 5 }, (_, i) => `Workshop ${i}`);

const begun: WorkThreads[] = [];
/** Ended soon, whatever they are at. */
const threadsOf = (count: number, begins?: () => Worker): WorkThreads => {
  const own = workThreads(count, begins, 1);
  begun.push(own);
  return own;
};
afterEach(async () => {
  for (const one of begun.splice(0)) await one.end();
});

/** A thread that never answers. */
const silent = (): Worker => new Worker("setInterval(() => 0, 1000)", { eval: true });
/** One that ends by itself, as one does that finds no memory. */
const dying = (): Worker =>
  new Worker('require("node:worker_threads").parentPort.once("message", () => process.exit(3))', {
    eval: true,
  });
const none = (): Worker => {
  throw new Error("a thread was begun");
};

describe("work beside the thread that asks", () => {
  test("comes out as it does where it is asked, each for its own", async () => {
    const threads = threadsOf(2);
    const here = workThreads(0);
    const asked = NAMES.map((name) => threads.ask("cards", empty(name)));
    for (const [i, name] of NAMES.entries()) {
      const made = await asked[i]?.result;
      expect(made?.length).toBeGreaterThan(500);
      const same = await here.ask("cards", empty(name)).here();
      expect(Buffer.compare(made ?? new Uint8Array(), same)).toBe(0);
    }
  });

  test("that is spoilt says what it says where it is asked", async () => {
    const said = /invalid block type/;
    await expect(workThreads(0).ask("sheet", SPOILT).here()).rejects.toThrow(said);
    await expect(threadsOf(1).ask("sheet", SPOILT).result).rejects.toThrow(said);
  });

  test("is done here where its thread is at something else", async () => {
    const threads = threadsOf(1, silent);
    threads.ask("cards", empty("There"));
    expect(await threads.ask("cards", empty("Here")).here()).toBeInstanceOf(Uint8Array);
  });

  test("is a fault where its thread ends, and where one has ended", async () => {
    const threads = threadsOf(1, dying);
    const broken = "The work was broken off";
    await expect(threads.ask("cards", empty("First")).result).rejects.toThrow(broken);
    await expect(threads.ask("cards", empty("Second")).result).rejects.toThrow(broken);
  });

  test("is a fault where its thread is told to end and doesn't hear of it", async () => {
    const threads = threadsOf(1, silent);
    const { result } = threads.ask("cards", empty("Ended"));
    await threads.end();
    await expect(result).rejects.toThrow("The work was broken off");
  });

  test("is at rest once all is there that was asked for, and what was asked for upon that", async () => {
    const threads = threadsOf(1);
    const there: string[] = [];
    const asked = async (name: string): Promise<void> => {
      await threads.ask("cards", empty(name)).result;
      there.push(name);
    };
    void asked("First").then(async () => asked("Second"));
    await threads.atRest();
    expect(there).toEqual(["First", "Second"]);
    await threadsOf(0, none).atRest();
  });

  test("is at rest, too, where it is spoilt or done by nobody else", async () => {
    const threads = threadsOf(0, none);
    const [spoilt, sound] = [threads.ask("sheet", SPOILT), threads.ask("cards", empty("Sound"))];
    const atRest = threads.atRest();
    await expect(spoilt.here()).rejects.toThrow();
    await sound.here();
    await atRest;
  });

  // Node 20 may abort where a thread is ended by another, and tells that by another code than that of one that exits.
  test("is broken off where its thread is told to end, which then ends by itself", async () => {
    const codes: number[] = [];
    const begun = (): Worker =>
      new Worker(WORK_BEGINS).on("exit", (code) => {
        codes.push(code);
      });
    const [one, other] = [workThreads(1, begun), workThreads(1, begun)];
    await one.ask("ready", null).result;
    const asked = NAMES.map((name) => other.ask("cards", empty(name)));
    await endAllThreads();
    expect(codes).toEqual([0, 0]);
    for (const { result, here } of asked) {
      await expect(result).rejects.toThrow("The work was broken off");
      await expect(here()).rejects.toThrow("The work was broken off");
    }
  });

  test("begins no thread on one core", async () => {
    const threads = threadsOf(0, none);
    const asked = NAMES.map((name) => threads.ask("cards", empty(name)));
    for (const one of asked) expect((await one.here()).length).toBeGreaterThan(500);
  });

  test("begins a further thread only for more than a few pieces", () => {
    let count = 0;
    const threads = threadsOf(2, () => {
      count += 1;
      return silent();
    });
    for (const name of NAMES) threads.ask("cards", empty(name));
    expect(count).toBe(1);
    for (const name of NAMES) threads.ask("cards", empty(name));
    expect(count).toBe(2);
  });
});

describe("work in a process of its own", () => {
  const NO_PICTURE = {
    name: "stroke.jpg",
    bytes: Buffer.from("no picture"),
    known: undefined,
    paint: undefined,
    read: undefined,
    parts: ["taken"],
  } as const;

  test("comes out as it does where it is asked, one piece after the other", async () => {
    const beside = workProcess();
    const asked = ["a.jpg", "b.jpg"].map(async (name) =>
      beside.ask("photograph", { ...NO_PICTURE, name }),
    );
    expect(await Promise.all(asked)).toEqual(
      ["a.jpg", "b.jpg"].map((name) => ({
        fault: `${name} is no JPEG, PNG, WebP, AVIF or TIFF, whatever its name says`,
      })),
    );
    beside.end();
  });

  // Of an emitter with more than ten listeners Node says on standard error that memory may leak.
  test("is heard by one listener, however many pieces it is asked for", async () => {
    const child = spawn(process.execPath, ["-e", "setInterval(() => {}, 1000)"], {
      stdio: ["ignore", "ignore", "ignore", "ipc"],
      serialization: "advanced",
    });
    const beside = workProcess(() => child);
    const asked = NAMES.map(async () => beside.ask("photograph", NO_PICTURE));
    expect(["message", "exit", "error"].map((event) => child.listenerCount(event))).toEqual([
      1, 1, 1,
    ]);
    beside.end();
    for (const one of await Promise.allSettled(asked)) expect(one.status).toBe("rejected");
  });

  test("is ended at once, though whoever ends it has no time to hear of it", async () => {
    const child = spawn(process.execPath, ["-e", "setInterval(() => {}, 1000)"], {
      stdio: ["ignore", "ignore", "ignore", "ipc"],
      serialization: "advanced",
    });
    const beside = workProcess(() => child);
    const asked = beside.ask("photograph", NO_PICTURE);
    beside.end();
    expect(child.killed).toBe(true);
    await expect(asked).rejects.toThrow("The work was broken off");
  });

  test("is a fault where the process ends", async () => {
    const beside = workProcess(() =>
      spawn(process.execPath, ["-e", "setTimeout(() => process.exit(3), 50)"], {
        stdio: ["ignore", "ignore", "ignore", "ipc"],
        serialization: "advanced",
      }),
    );
    await expect(beside.ask("photograph", NO_PICTURE)).rejects.toThrow("The work was broken off");
  });
});
