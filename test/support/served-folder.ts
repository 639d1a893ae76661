import { createReadStream, statSync } from "node:fs";
import { createServer } from "node:http";
import { extname, join, normalize } from "node:path";

const TYPES: Readonly<Record<string, string>> = {
  ".html": "text/html; charset=utf-8",
  ".css": "text/css",
  ".json": "application/json",
  ".svg": "image/svg+xml",
  ".js": "text/javascript",
  ".woff2": "font/woff2",
  ".xml": "application/xml",
  ".csv": "text/csv; charset=utf-8",
  ".webp": "image/webp",
  ".png": "image/png",
  ".pdf": "application/pdf",
};

export interface ServedFolder {
  /** `http://127.0.0.1:PORT`, on any free port. */
  readonly address: string;
  readonly close: () => Promise<void>;
}

/** Serve a folder as a plain web host does: index.html for a folder, 404 for what is not there. */
export async function servedFolder(dir: string): Promise<ServedFolder> {
  const server = createServer(({ url = "/" }, response) => {
    const file = fileOf(dir, decodeURIComponent(new URL(url, "http://host").pathname));
    if (file === undefined) {
      response.writeHead(404).end();
      return;
    }
    response.writeHead(200, { "content-type": TYPES[extname(file)] ?? "application/octet-stream" });
    createReadStream(file).pipe(response);
  });
  await new Promise<void>((listening) => {
    server.listen(0, "127.0.0.1", listening);
  });
  const address = server.address();
  if (typeof address !== "object" || address === null)
    throw new Error("Unexpected absence of a port");
  return {
    address: `http://127.0.0.1:${address.port}`,
    close: () =>
      new Promise((closed) => {
        server.close(() => closed());
        server.closeAllConnections();
      }),
  };
}

function fileOf(dir: string, path: string): string | undefined {
  const file = join(dir, normalize(path));
  const stats = statSync(file, { throwIfNoEntry: false });
  if (stats?.isFile() === true) return file;
  return stats?.isDirectory() === true && path.endsWith("/")
    ? fileOf(dir, `${path}index.html`)
    : undefined;
}
