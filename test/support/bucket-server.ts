/**
 * A store that speaks the four calls of S3 that a publish makes, GET, PUT and DELETE of an object and its errors, and takes
 * none that is not signed. basis: published, AWS Signature Version 4 ("Create a signed AWS API request": canonical request,
 * string to sign, signing key), worked out here with Node's HMAC alone.
 */
import { createHash, createHmac } from "node:crypto";
import { createServer, type IncomingMessage } from "node:http";

export interface StoredObject {
  readonly bytes: Buffer;
  readonly headers: Readonly<Record<string, string | undefined>>;
}

export interface BucketServer {
  readonly address: string;
  /** By path of the address: `/bucket/folder/index.html`. */
  readonly objects: Map<string, StoredObject>;
  /** Requests in the order in which they came: `PUT /bucket/index.html`. */
  readonly log: string[];
  /** Answer the next PUT of this path with 503 so many times. */
  readonly fail: (path: string, times: number) => void;
  readonly close: () => Promise<void>;
}

export const KEYS = {
  AWS_ACCESS_KEY_ID: "AKIDEXAMPLE",
  AWS_SECRET_ACCESS_KEY: "wJalrXUtnFEMI/K7MDENG+bPxRfiCYEXAMPLEKEY",
  AWS_REGION: "eu-west-1",
} as const;

export async function bucketServer(): Promise<BucketServer> {
  const objects = new Map<string, StoredObject>();
  const log: string[] = [];
  const failing = new Map<string, number>();
  const server = createServer((request, response) => {
    void body(request).then((bytes) => {
      const { method = "", url = "" } = request;
      const path = decodeURIComponent(url.split("?")[0] ?? "");
      const answer = (status: number, code = ""): void => {
        response.writeHead(status, { "content-type": "application/xml" });
        response.end(code === "" ? "" : `<Error><Code>${code}</Code></Error>`);
      };
      if (!isSigned(request, bytes)) return answer(403, "SignatureDoesNotMatch");
      log.push(`${method} ${path}`);
      const left = failing.get(path) ?? 0;
      if (method === "PUT" && left > 0) {
        failing.set(path, left - 1);
        return answer(503, "SlowDown");
      }
      if (method === "PUT") {
        objects.set(path, {
          bytes,
          headers: {
            type: request.headers["content-type"],
            cache: request.headers["cache-control"],
          },
        });
        return answer(200);
      }
      if (method === "DELETE") {
        objects.delete(path);
        return answer(204);
      }
      const found = objects.get(path);
      if (found === undefined) return answer(404, "NoSuchKey");
      response.writeHead(200);
      response.end(found.bytes);
    });
  });
  await new Promise<void>((done) => server.listen(0, "127.0.0.1", done));
  const address = server.address();
  if (typeof address !== "object" || address === null) throw new Error("There is no port");
  return {
    address: `http://127.0.0.1:${address.port}`,
    objects,
    log,
    fail: (path, times) => failing.set(path, times),
    close: async () =>
      new Promise((done) => {
        server.close(() => done());
        server.closeAllConnections();
      }),
  };
}

async function body(request: IncomingMessage): Promise<Buffer> {
  const chunks: Buffer[] = [];
  for await (const chunk of request) chunks.push(chunk as Buffer);
  return Buffer.concat(chunks);
}

const sha256 = (text: string | Buffer): string => createHash("sha256").update(text).digest("hex");
const hmac = (key: string | Buffer, text: string): Buffer =>
  createHmac("sha256", key).update(text).digest();

function isSigned({ method = "", url = "", headers }: IncomingMessage, bytes: Buffer): boolean {
  const [, access, day = "", region = "", signed = "", signature] =
    /^AWS4-HMAC-SHA256 Credential=([^/]+)\/(\d{8})\/([^/]+)\/s3\/aws4_request, ?SignedHeaders=([^,]+), ?Signature=([0-9a-f]{64})$/.exec(
      headers.authorization ?? "",
    ) ?? [];
  const hash = headers["x-amz-content-sha256"];
  if (access !== KEYS.AWS_ACCESS_KEY_ID || region !== KEYS.AWS_REGION) return false;
  if (hash !== "UNSIGNED-PAYLOAD" && hash !== sha256(bytes)) return false;
  const [path = "", query = ""] = url.split("?");
  const canonical = [
    method,
    path,
    query,
    ...signed.split(";").map((name) => `${name}:${String(headers[name] ?? "").trim()}`),
    "",
    signed,
    hash,
  ].join("\n");
  const toSign = [
    "AWS4-HMAC-SHA256",
    headers["x-amz-date"],
    `${day}/${region}/s3/aws4_request`,
    sha256(canonical),
  ].join("\n");
  const key = ["aws4_request"].reduce(
    hmac,
    hmac(hmac(hmac(`AWS4${KEYS.AWS_SECRET_ACCESS_KEY}`, day), region), "s3"),
  );
  return hmac(key, toSign).toString("hex") === signature;
}
