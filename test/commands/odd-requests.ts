/** One request as bytes on the wire, and the status that answers it. */
export interface OddRequest {
  readonly name: string;
  readonly bytes: (port: number) => string | Buffer;
  readonly status: number;
}

type Headers = Readonly<Record<string, string>>;

function request(
  line: string,
  headers: Headers = {},
  body: string | Buffer = "",
): OddRequest["bytes"] {
  return (port) => {
    const all: Headers = { Host: `localhost:${port}`, Connection: "close", ...headers };
    const head = [line, ...Object.entries(all).map(([name, value]) => `${name}: ${value}`)];
    return Buffer.concat([
      Buffer.from(`${head.join("\r\n")}\r\n\r\n`, "latin1"),
      Buffer.from(body),
    ]);
  };
}

const get = (path: string, status: number): OddRequest => ({
  name: `GET ${path.length > 60 ? `${path.slice(0, 20)}... of ${path.length} letters` : path}`,
  bytes: request(`GET ${path} HTTP/1.1`),
  status,
});

const withHeader = (name: string, value: string, status: number): OddRequest => ({
  name: `${name}: ${value.slice(0, 60)}`,
  bytes: (port) =>
    request("GET / HTTP/1.1", { [name]: value.replaceAll("PORT", String(port)) })(port),
  status,
});

const method = (name: string, status = 405, body = ""): OddRequest => ({
  name: `${name}${body === "" ? "" : " with a body"}`,
  bytes: request(
    `${name} / HTTP/1.1`,
    body === "" ? {} : { "Content-Length": `${body.length}` },
    body,
  ),
  status,
});

const raw = (name: string, text: string | Buffer, status: number): OddRequest => ({
  name,
  bytes: () => text,
  status,
});

const UPGRADE: Headers = {
  Connection: "Upgrade",
  Upgrade: "websocket",
  "Sec-WebSocket-Key": "dGhlIHNhbXBsZSBub25jZQ==",
  "Sec-WebSocket-Version": "13",
};

/**
 * What a page of another site, a scanner or a broken program may send.
 * @source RFC 9110 and 9112 for methods, targets and Host; RFC 6454 for Origin; RFC 6455 for the frames.
 */
export const ODD_REQUESTS: readonly OddRequest[] = [
  get("/%", 400),
  get("/%zz", 400),
  get("/%c0%ae%c0%ae/", 400),
  get("/%ff", 400),
  get("/%00", 400),
  get("/page%00.html", 400),
  get("//", 400),
  get("///", 400),
  get("//evil.example/", 400),
  get("//evil.example/%2f..", 400),
  get("/..", 403),
  get("/../", 403),
  get("/../secret.txt", 403),
  get("/..%2f", 403),
  get("/..%2fsecret.txt", 403),
  get("/%2e%2e/secret.txt", 403),
  get("/%2e%2e%2fsecret.txt", 403),
  get("/a/../../secret.txt", 403),
  get("/a/..%2f..%2f..%2fsecret.txt", 403),
  get("/..%5csecret.txt", 403),
  get("/\\secret.txt", 404),
  get("/.hidden", 404),
  get("/.git/config", 404),
  get("/link/secret.txt/", 404),
  get("/page.html/", 404),
  get("/page.html/x", 404),
  get("/nothing-here", 404),
  get("/folder", 301),
  get("/%2f%2fevil.example/..", 301),
  get(`/${"a".repeat(5_000)}`, 404),
  get(`/${"a/".repeat(4_000)}`, 404),
  get(`/${"a".repeat(70_000)}`, 431),
  get("/?%", 200),
  get("/?a=<script>", 200),
  get("/#/../..", 200),
  get("*", 400),
  get("http://", 400),
  get("http://evil.example/", 400),
  get("http://[::1", 400),
  get("https:///:0", 400),
  get("nothing", 400),
  get("?", 400),
  method("POST"),
  method("POST", 405, "x".repeat(100)),
  method("PUT"),
  method("DELETE"),
  method("PATCH"),
  method("OPTIONS"),
  method("TRACE"),
  method("PROPFIND"),
  { name: "CONNECT", bytes: request("CONNECT evil.example:443 HTTP/1.1"), status: 405 },
  { name: "OPTIONS *", bytes: request("OPTIONS * HTTP/1.1"), status: 405 },
  method("GET", 200, "a body that nobody asked for"),
  withHeader("Host", "evil.example", 403),
  withHeader("Host", "evil.example:PORT", 403),
  withHeader("Host", "localhost.evil.example:PORT", 403),
  withHeader("Host", "localhost:1", 403),
  withHeader("Host", "0.0.0.0:PORT", 403),
  withHeader("Host", "", 403),
  withHeader("Host", "LOCALHOST:PORT", 200),
  withHeader("Host", "127.0.0.1:PORT", 200),
  withHeader("Host", "[::1]:PORT", 200),
  withHeader("Origin", "http://evil.example", 403),
  withHeader("Origin", "null", 403),
  withHeader("Origin", "https://localhost:PORT", 403),
  withHeader("Origin", "http://localhost:PORT", 200),
  withHeader("Range", "bytes=999999-", 416),
  withHeader("Range", `bytes=${"0-1,".repeat(500)}0-1`, 206),
  withHeader("If-None-Match", `"${"x".repeat(4_000)}`, 200),
  withHeader("Expect", "a miracle", 417),
  withHeader("Transfer-Encoding", "sideways", 400),
  withHeader("Content-Length", "-1", 400),
  {
    name: "an upgrade to WebSocket, then a frame that is not masked",
    bytes: request("GET / HTTP/1.1", UPGRADE, Buffer.from([0x81, 0x02, 0x68, 0x69])),
    status: 200,
  },
  {
    name: "an upgrade to WebSocket, then a frame of a length past what is",
    bytes: request(
      "GET / HTTP/1.1",
      UPGRADE,
      Buffer.from([0x82, 0xff, ...Array<number>(8).fill(0xff)]),
    ),
    status: 200,
  },
  raw("no Host", "GET / HTTP/1.1\r\nConnection: close\r\n\r\n", 400),
  raw("HTTP/1.0 without Host", "GET / HTTP/1.0\r\n\r\n", 403),
  raw("HTTP/0.9", "GET /\r\n\r\n", 403),
  raw("a version that is not", "GET / HTTP/9.9\r\n\r\n", 400),
  raw("HTTP/2 without a word before", "PRI * HTTP/2.0\r\n\r\nSM\r\n\r\n", 400),
  raw("TLS", Buffer.from("16030100c8010000c40303", "hex"), 400),
  raw("no HTTP at all", "hello\r\n\r\n", 400),
  raw("bytes past ASCII", Buffer.from([0xff, 0xfe, 0x00, 0x0a, 0x0d, 0x0a]), 400),
  raw("a header without a name", "GET / HTTP/1.1\r\n: x\r\n\r\n", 400),
  raw("a header with a bare line feed", "GET / HTTP/1.1\r\nA: b\u0000c\r\n\r\n", 400),
];
