import { readFileSync } from "node:fs";
import { join } from "node:path";
import { AwsClient } from "aws4fetch";
import { lookup } from "mrmime";
import { isLongLived, LONG_LIVED } from "../site/host-files.ts";
import { MANIFEST } from "../site/output-manifest.ts";
import { OutputFault } from "../site/output-fault.ts";
import type { PublishTarget } from "./publish-target.ts";

/** Requests at once. */
const AT_ONCE = 6;
const RETRIES = 4;

/**
 * A bucket of a store that speaks as S3 does. Each file appears whole; first what pages load, then pages and data, then
 * manifest.json, and only then what is no longer of the site is deleted: so no page ever asks for what is not there.
 * @param place BUCKET, or BUCKET/FOLDER
 */
export function bucketTarget(
  place: string,
  endpoint: string | undefined,
  env: Readonly<Record<string, string | undefined>>,
): PublishTarget {
  const [bucket = "", ...folders] = place.split("/").filter((part) => part !== "");
  const accessKeyId = env["AWS_ACCESS_KEY_ID"] ?? "";
  const secretAccessKey = env["AWS_SECRET_ACCESS_KEY"] ?? "";
  if (accessKeyId === "" || secretAccessKey === "")
    throw new OutputFault(
      `There are no keys for s3:${place}: they are read from AWS_ACCESS_KEY_ID and AWS_SECRET_ACCESS_KEY of the environment`,
    );
  const region = env["AWS_REGION"] ?? env["AWS_DEFAULT_REGION"] ?? "us-east-1";
  const token = env["AWS_SESSION_TOKEN"];
  const client = new AwsClient({
    accessKeyId,
    secretAccessKey,
    service: "s3",
    region,
    retries: RETRIES,
    ...(token !== undefined && { sessionToken: token }),
  });
  const root = bucketRoot(
    endpoint ?? env["AWS_ENDPOINT_URL"] ?? `https://s3.${region}.amazonaws.com`,
    [bucket, ...folders],
  );
  const asked = async (
    path: string,
    init: NonNullable<Parameters<AwsClient["fetch"]>[1]>,
    fine: (status: number) => boolean,
  ): Promise<Response> => {
    let response: Response;
    try {
      response = await client.fetch(
        `${root}${path.split("/").map(encodeURIComponent).join("/")}`,
        init,
      );
    } catch (error) {
      throw new OutputFault(
        `${new URL(root).host} can't be reached: ${(error as { cause?: Error }).cause?.message ?? String(error)}`,
      );
    }
    if (!fine(response.status))
      throw new OutputFault(
        `${new URL(root).host} answered ${response.status} to ${init.method ?? "GET"} of ${path}: ${errorCode(await response.text())}`,
      );
    return response;
  };
  return {
    read: async (path) => {
      const response = await asked(path, {}, (status) => status === 200 || status === 404);
      const bytes = new Uint8Array(await response.arrayBuffer());
      return response.status === 404 ? undefined : bytes;
    },
    ship: async ({ outputDir, sent, removed }) => {
      const put = async (path: string): Promise<void> => {
        await asked(
          path,
          {
            method: "PUT",
            body: readFileSync(join(outputDir, path)),
            headers: {
              "content-type": contentType(path),
              "cache-control": isLongLived(path) ? LONG_LIVED : "no-cache",
            },
          },
          (status) => status === 200,
        );
      };
      const isLoaded = (path: string): boolean =>
        path.startsWith("assets/") || !/\.(?:html|json|xml|txt|csv)$/.test(path);
      await each(sent.filter(isLoaded), put);
      await each(
        sent.filter((path) => !isLoaded(path)),
        put,
      );
      await put(MANIFEST);
      await each(removed, async (path) => {
        await asked(path, { method: "DELETE" }, (status) => [200, 204, 404].includes(status));
      });
    },
  };
}

/** Texts are all in UTF-8; of CxF, which no table has, it is known that it is XML. */
function contentType(path: string): string {
  const type = lookup(path.replace(/\.cxf$/, ".xml")) ?? "application/octet-stream";
  return /^text\/|javascript/.test(type) ? `${type}; charset=utf-8` : type;
}

function bucketRoot(endpoint: string, folders: readonly string[]): string {
  if (!URL.canParse(endpoint) || !/^https?:$/.test(new URL(endpoint).protocol))
    throw new OutputFault(`--endpoint can't be ${endpoint}: it takes an http or https address`);
  return `${endpoint.replace(/\/+$/, "")}/${folders.map(encodeURIComponent).join("/")}/`;
}

/** The store's own word for what is wrong. */
function errorCode(text: string): string {
  return /<Code>([\w.]+)<\/Code>/.exec(text)?.[1] ?? "it gave no reason";
}

async function each(paths: readonly string[], use: (path: string) => Promise<void>): Promise<void> {
  const left = [...paths];
  const worker = async (): Promise<void> => {
    for (let path = left.shift(); path !== undefined; path = left.shift()) await use(path);
  };
  await Promise.all(Array.from({ length: Math.min(AT_ONCE, left.length) }, worker));
}
