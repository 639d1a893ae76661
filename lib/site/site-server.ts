import {
  createServer,
  type IncomingMessage,
  type RequestListener,
  type Server,
  type ServerResponse,
} from "node:http";
import type { AddressInfo } from "node:net";
import { posix } from "node:path";
import type { Duplex } from "node:stream";
import send from "send";
import { OutputFault } from "./output-fault.ts";
import { pagesInWork, type PagesInWork } from "./served-pages.ts";
import type { PagesMade } from "./site-task.ts";
import { RELOAD_EVENTS, RELOAD_SCRIPT, RELOAD_SOURCE } from "./reload-script.ts";

/** A folder of pages served on this machine alone. */
export interface SiteServer {
  readonly address: string;
  /** Serve this folder from now on, and tell open pages to load again that were not told yet. */
  readonly show: (dir: string) => void;
  /** Serve these pages of a folder that is being written, and tell those of them that are open to load again. */
  readonly made: (dir: string, pages: PagesMade) => void;
  /** These folders of pages have no record any more: `colours/bone-black/`. */
  readonly gone: (folders: readonly string[]) => void;
  /** Pages that are open in a browser or waited for, below the root: `colours/bone-black/index.html`. */
  readonly wanted: () => readonly string[];
  /** Say over open pages, and those opened until the next folder is shown, what keeps newer ones from being made. */
  readonly tell: (fault: string) => void;
  readonly close: () => Promise<void>;
}

/** A port that cannot be had. */
class PortFault extends OutputFault {}

/** This machine's own addresses: nobody else reaches them. */
const LOOPBACK = ["127.0.0.1", "::1"] as const;
const MOST_CONNECTIONS = 256;
const MOST_TRIES = 20;
const LAST_PORT = 65535;
const NO_SUCH_ADDRESS = new Set(["EADDRNOTAVAIL", "EAFNOSUPPORT"]);

/**
 * Serve `dir` on 127.0.0.1 and ::1: GET and HEAD, asked by this machine's own pages.
 * A page of another site is refused by its Host (DNS rebinding) or its Origin.
 * @param port 0 takes a free one.
 * @param base the folder of this host that the site stands in; what is asked for outside of it is not there.
 * @throws OutputFault when the port is taken.
 */
export async function siteServer(dir: string, port: number, base = "/"): Promise<SiteServer> {
  return serverOn(LOOPBACK, dir, port, base);
}

/**
 * Serve the workshop's own pages on 127.0.0.1 and nowhere else, at the port after the site's.
 * @param sitePort as the site was given it: 0 takes any free one here too.
 * @throws OutputFault when the port is taken.
 */
export async function workshopServer(dir: string, sitePort: number): Promise<SiteServer> {
  const { address, ...server } = await serverOn(
    [LOOPBACK[0]],
    dir,
    sitePort === 0 || sitePort === LAST_PORT ? 0 : sitePort + 1,
  );
  return { ...server, address: address.replace("localhost", LOOPBACK[0]) };
}

async function serverOn(
  hosts: readonly [string, string?],
  dir: string,
  port: number,
  base = "/",
): Promise<SiteServer> {
  let fault: string | undefined;
  const pages = pagesInWork(dir);
  const open = new Map<ServerResponse, OpenPage>();
  let waiting: WaitingRequest[] = [];
  const serveWaiting = (): void => {
    const those = waiting;
    waiting = [];
    for (const { again } of those) again();
  };
  const reload = (isMeant: (page: OpenPage) => boolean): void => {
    for (const [response, page] of open) {
      if (!isMeant(page)) continue;
      page.isTold = true;
      response.write("event: built\ndata:\n\n");
    }
  };
  const answer: RequestListener = (request, response) => {
    const wait = (path: string): void => {
      const one: WaitingRequest = { path, again: () => answer(request, response) };
      waiting.push(one);
      response.once("close", () => {
        waiting = waiting.filter((other) => other !== one);
      });
    };
    try {
      answerRequest(request, response, { pages, base, fault, open, wait });
    } catch {
      refuse(response, 500, "This could not be answered");
    }
  };
  const servers = await listening(answer, hosts, port);
  const taken = (servers[0]?.address() as AddressInfo).port;
  return {
    address: `http://localhost:${taken}${base}`,
    made: (next, some) => {
      pages.made(next, some);
      fault = undefined;
      const there = new Set(some.made);
      reload(({ path }) => there.has(path));
      serveWaiting();
    },
    gone: (folders) => {
      pages.gone(folders);
      reload(({ path, isTold }) => !isTold && folders.some((folder) => path.startsWith(folder)));
    },
    wanted: () => [
      ...new Set([
        ...waiting.map(({ path }) => path),
        ...[...open.values()].map(({ path }) => path),
      ]),
    ],
    show: (next) => {
      pages.show(next);
      fault = undefined;
      reload(({ isTold }) => !isTold);
      for (const page of open.values()) page.isTold = false;
      serveWaiting();
    },
    tell: (what) => {
      fault = what;
      pages.giveUp();
      for (const [response, page] of open) {
        page.isTold = false;
        response.write(faultEvent(what));
      }
      serveWaiting();
    },
    close: async () => {
      for (const response of open.keys()) response.end();
      await Promise.all(servers.map(closed));
    },
  };
}

/** One server an address, all on one port: `localhost` is the one or the other. */
async function listening(
  answer: RequestListener,
  [host, other]: readonly [string, string?],
  port: number,
): Promise<Server[]> {
  for (let tries = 1; ; tries++) {
    const first = serverOf(answer);
    await bound(first, host, port);
    if (other === undefined) return [first];
    const second = serverOf(answer);
    try {
      await bound(second, other, (first.address() as AddressInfo).port);
      return [first, second];
    } catch (error) {
      if (error instanceof PortFault && (port !== 0 || tries === MOST_TRIES)) {
        await closed(first);
        throw error;
      }
      if (!(error instanceof PortFault)) return [first];
      await closed(first);
    }
  }
}

async function bound(server: Server, host: string, port: number): Promise<void> {
  return new Promise((done, failed) => {
    server.once("error", (error: NodeJS.ErrnoException) => {
      const { code = "" } = error;
      failed(
        NO_SUCH_ADDRESS.has(code)
          ? error
          : new PortFault(
              code === "EADDRINUSE"
                ? `Port ${port} is taken by another program: name another with --port`
                : `Port ${port} can't be had: ${code === "EACCES" ? "permission denied" : error.message}`,
            ),
      );
    });
    server.listen({ host, port, ipv6Only: true }, () => {
      server.removeAllListeners("error");
      server.on("error", () => undefined);
      done();
    });
  });
}

function serverOf(answer: RequestListener): Server {
  const server = createServer(
    { headersTimeout: 10_000, requestTimeout: 10_000, keepAliveTimeout: 5_000 },
    answer,
  );
  server.maxConnections = MOST_CONNECTIONS;
  server.on("clientError", ({ code = "" }: NodeJS.ErrnoException, socket) =>
    endSocket(socket, NOT_UNDERSTOOD[code] ?? "400 Bad Request"),
  );
  // A tunnel, or another protocol on this connection: neither is spoken here.
  server.on("connect", (_, socket) => endSocket(socket, "405 Method Not Allowed"));
  return server;
}

const NOT_UNDERSTOOD: Readonly<Record<string, string>> = {
  HPE_HEADER_OVERFLOW: "431 Request Header Fields Too Large",
  ERR_HTTP_REQUEST_TIMEOUT: "408 Request Timeout",
};

function endSocket(socket: Duplex, status: string): void {
  socket.on("error", () => undefined);
  if (socket.writable)
    socket.end(`HTTP/1.1 ${status}\r\nConnection: close\r\nContent-Length: 0\r\n\r\n`);
  else socket.destroy();
}

async function closed(server: Server): Promise<void> {
  return new Promise((done) => {
    server.close(() => done());
    server.closeAllConnections();
  });
}

/** A page in a browser, by its path below the root. */
interface OpenPage {
  readonly path: string;
  /** That it is to load again for the build that is at work; it is another page then. */
  isTold: boolean;
}

/** A request for a page that is being made. */
interface WaitingRequest {
  readonly path: string;
  readonly again: () => void;
}

/** What is served just now. */
interface Served {
  readonly pages: PagesInWork;
  readonly base: string;
  /** What keeps newer pages from being made. */
  readonly fault: string | undefined;
  readonly open: Map<ServerResponse, OpenPage>;
  /** Answer again once there is more. */
  readonly wait: (path: string) => void;
}

function answerRequest(
  request: IncomingMessage,
  response: ServerResponse,
  { pages, base, fault, open, wait }: Served,
): void {
  response.on("error", () => undefined);
  response.setHeader("X-Content-Type-Options", "nosniff");
  response.setHeader("Cross-Origin-Resource-Policy", "same-origin");
  response.setHeader("Cache-Control", "no-cache");
  const { method = "", url = "" } = request;
  if (method !== "GET" && method !== "HEAD") {
    response.setHeader("Allow", "GET, HEAD");
    return refuse(response, 405, "Pages are read here, and nothing else is done");
  }
  if (!isOurs(request)) return refuse(response, 403, "Only this machine's own pages may ask");
  const [path = "", asked = ""] = url.split(/[?#]/);
  if (!path.startsWith("/") || path.startsWith("//"))
    return refuse(response, 400, "An address here begins with one slash");
  if (path === RELOAD_EVENTS) {
    const page = new URLSearchParams(asked).get("page") ?? "/";
    const shown = pageAt(belowBase(page, base));
    // It was loaded just now, and need not be once more for the build that is at work.
    const own = { path: shown, isTold: pages.isNewer(shown) };
    return announceBuilds(method, response, open, { page: own, fault });
  }
  if (path === RELOAD_SCRIPT) {
    response.setHeader("Content-Type", "text/javascript; charset=utf-8");
    response.end(RELOAD_SOURCE);
    return;
  }
  const below = belowBase(path, base);
  const folders = pages.foldersOf(pageAt(below));
  if (folders === undefined) return wait(pageAt(below));
  sendFile(request, below, folders, response, (status) => {
    if (status !== 404) return refuse(response, status, "This could not be answered");
    if (below.endsWith(".pdf"))
      return refuse(response, 404, "start draws no PDF; npm run build does");
    const lost = "404.html";
    const found = pages.foldersOf(lost);
    if (found === undefined) return wait(lost);
    response.statusCode = 404;
    sendFile(request, `/${lost}`, found, response, () =>
      refuse(response, 404, "There is no such page"),
    );
  });
}

/** What is asked for, below the site's own folder; what lies outside of it is no file of the site. */
function belowBase(path: string, base: string): string {
  return path.startsWith(base) ? path.slice(base.length - 1) : "/-/";
}

/** The path of a file below the root, of a folder that of its page. */
function pageAt(below: string): string {
  const path = posix.normalize(decoded(below)).slice(1);
  return path === "" || path.endsWith("/") ? `${path}index.html` : path;
}

function decoded(path: string): string {
  try {
    return decodeURIComponent(path);
  } catch {
    return path;
  }
}

/** @param roots folders to look for it in, one after the other. */
function sendFile(
  request: IncomingMessage,
  path: string,
  [root, ...others]: readonly string[],
  response: ServerResponse,
  failed: (status: number) => void,
): void {
  if (root === undefined) return failed(404);
  send(request, path, { root, cacheControl: false })
    .on("error", ({ status = 500 }: { readonly status?: number }) => {
      if (status === 404 && others.length > 0) sendFile(request, path, others, response, failed);
      else failed(status);
    })
    .pipe(response);
}

/** Asked by its own name, and by no page of another site. */
function isOurs({ headers, socket }: IncomingMessage): boolean {
  const port = socket.localPort ?? 0;
  const hosts = ["localhost", "127.0.0.1", "[::1]"].flatMap((name) => [
    `${name}:${port}`,
    ...(port === 80 ? [name] : []),
  ]);
  const { host = "", origin } = headers;
  return (
    hosts.includes(host.toLowerCase()) &&
    (origin === undefined || hosts.some((own) => origin.toLowerCase() === `http://${own}`))
  );
}

function refuse(response: ServerResponse, status: number, sentence: string): void {
  if (response.headersSent) {
    response.destroy();
    return;
  }
  response.statusCode = status;
  response.setHeader("Connection", "close");
  response.setHeader("Content-Type", "text/plain; charset=utf-8");
  response.end(`${sentence}\n`);
}

/** A line that stays open, on which each build is told (server-sent events of the HTML standard). */
function announceBuilds(
  method: string,
  response: ServerResponse,
  open: Map<ServerResponse, OpenPage>,
  { page, fault }: { readonly page: OpenPage; readonly fault: string | undefined },
): void {
  response.setHeader("Content-Type", "text/event-stream");
  if (method === "HEAD") {
    response.end();
    return;
  }
  open.set(response, page);
  response.on("close", () => open.delete(response));
  response.write(fault === undefined ? ":\n\n" : faultEvent(fault));
}

function faultEvent(fault: string): string {
  return `event: fault\ndata: ${JSON.stringify(fault)}\n\n`;
}
