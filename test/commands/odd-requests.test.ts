import { mkdirSync, mkdtempSync, symlinkSync, writeFileSync } from "node:fs";
import { connect } from "node:net";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, inject, test } from "vitest";
import { siteServer, type SiteServer } from "../../lib/site/site-server.ts";
import { ODD_REQUESTS } from "./odd-requests.ts";

const SECRET = "not for any page to read";

let server: SiteServer;
let port = 0;
let folder = "";

beforeAll(async () => {
  const home = mkdtempSync(join(inject("scratch"), "served-"));
  folder = join(home, "pages");
  mkdirSync(join(folder, "folder"), { recursive: true });
  writeFileSync(join(home, "secret.txt"), SECRET);
  writeFileSync(join(folder, "index.html"), "<!doctype html><title>home</title>");
  writeFileSync(join(folder, "page.html"), "<!doctype html><title>page</title>");
  writeFileSync(join(folder, "404.html"), "<!doctype html><title>lost</title>");
  writeFileSync(join(folder, ".hidden"), SECRET);
  symlinkSync("page.html", join(folder, "link"));
  server = await siteServer(folder, 0);
  port = Number(new URL(server.address).port);
});
afterAll(async () => server.close());

/** What comes back for bytes on a connection of their own, until the server ends it or has answered. */
async function answered(bytes: string | Buffer, host = "127.0.0.1"): Promise<string> {
  return new Promise((done) => {
    let heard = "";
    const socket = connect({ host, port }, () => socket.write(bytes));
    socket.on("data", (chunk: Buffer) => (heard += chunk.toString("latin1")));
    socket.on("error", () => undefined);
    socket.on("close", () => done(heard));
  });
}

const statusOf = (heard: string): number | "none" =>
  heard === "" ? "none" : Number(/^HTTP\/1\.1 (\d{3}) /.exec(heard)?.[1]);

describe("the server at the bench", () => {
  test("is asked at least the 72 things that ended an earlier one", () => {
    expect(ODD_REQUESTS.length).toBeGreaterThanOrEqual(72);
    expect(new Set(ODD_REQUESTS.map(({ name }) => name)).size).toBe(ODD_REQUESTS.length);
  });

  test.concurrent.each(ODD_REQUESTS)("answers $name and goes on", async ({ bytes, status }) => {
    const heard = await answered(bytes(port));
    expect(statusOf(heard), heard.slice(0, 200)).toBe(status);
    expect(heard).not.toContain(SECRET);
    const after = await fetch(server.address);
    expect([after.status, await after.text()]).toEqual([200, "<!doctype html><title>home</title>"]);
  });

  test("says of a PDF that is not there which command draws it", async () => {
    const told = await fetch(`${server.address}colours/ochre/sheet.pdf`);
    expect([told.status, await told.text()]).toEqual([
      404,
      expect.stringContaining("npm run build does"),
    ]);
  });

  test("listens on this machine's own addresses and no other", async () => {
    const home = `GET / HTTP/1.1\r\nHost: localhost:${port}\r\nConnection: close\r\n\r\n`;
    for (const host of ["127.0.0.1", "::1"])
      expect(statusOf(await answered(home, host)), host).toBe(200);
    // Another address of the loopback net reaches a server that listens on every interface.
    expect(await answered(home, "127.0.0.2")).toBe("");
  });

  test("gives HEAD the head alone, and a page that is not there its own page", async () => {
    const head = await fetch(server.address, { method: "HEAD" });
    expect([head.status, head.headers.get("content-length"), await head.text()]).toEqual([
      200,
      "34",
      "",
    ]);
    const lost = await fetch(new URL("nowhere/", server.address));
    expect([lost.status, await lost.text()]).toEqual([404, "<!doctype html><title>lost</title>"]);
  });

  test("lets no other site's page take what it serves", async () => {
    const { headers } = await fetch(server.address);
    expect(headers.get("cross-origin-resource-policy")).toBe("same-origin");
    expect(headers.get("access-control-allow-origin")).toBe(null);
  });

  test("tells open pages of a new build, and serves it", async () => {
    const next = join(folder, "..", "next");
    mkdirSync(next);
    writeFileSync(join(next, "index.html"), "<!doctype html><title>next</title>");
    const events = await fetch(new URL("-/builds", server.address));
    const reader = events.body?.getReader();
    const heard = async (): Promise<string> =>
      new TextDecoder().decode((await reader?.read())?.value as Uint8Array | undefined);
    expect(await heard()).toBe(":\n\n");
    server.show(next);
    expect(await heard()).toContain("event: built");
    expect(await (await fetch(server.address)).text()).toContain("next");
    expect((await fetch(new URL("page.html", server.address))).status).toBe(404);
    server.show(folder);
    await reader?.cancel();
  });

  test("says so when its port is taken", async () => {
    await expect(siteServer(folder, port)).rejects.toThrow(
      `Port ${port} is taken by another program: name another with --port`,
    );
  });
});
