import { posix } from "node:path";
import { contentHash } from "../kept/content-hash.ts";

/** A style, script, font or picture below the site's root, as it is made. */
export interface Asset {
  /** `assets/scripts/site.js` */
  readonly path: string;
  readonly bytes: Uint8Array;
}

/** Assets under names that change with what they hold, and the new path of each old one. */
export interface HashedAssets {
  readonly files: readonly Asset[];
  readonly paths: ReadonlyMap<string, string>;
}

/** Hex digits in a name: 40 bits, of some dozens of files. */
const DIGITS = 10;

/**
 * Files under names that change with what they hold, so that a browser may keep each for good:
 * `assets/scripts/site.js` becomes `assets/scripts/site.3f09c1d2ab.js`, and the German
 * `de/assets/scripts/site.js` stands beside it under a name of its own. What a style or script names of
 * the others by its path from `assets/`, it names anew. Licences keep their names: nobody loads them.
 * @throws RangeError when files name one another round in a circle
 */
export function hashedAssets(assets: readonly Asset[]): HashedAssets {
  const byPath = new Map(assets.map((asset) => [asset.path, asset]));
  const done = new Map<string, Asset>();
  const hashed = (asset: Asset, trail: readonly string[]): Asset => {
    const known = done.get(asset.path);
    if (known !== undefined) return known;
    if (trail.includes(asset.path))
      throw new RangeError(`Assets name one another in a circle: ${trail.join(", ")}`);
    const bytes = NAMES_OTHERS.test(asset.path)
      ? renamed(asset, byPath, (other) => hashed(other, [...trail, asset.path]))
      : asset.bytes;
    const made = {
      path: asset.path.endsWith(".txt") ? asset.path : hashedPath(asset.path, bytes),
      bytes,
    };
    done.set(asset.path, made);
    return made;
  };
  const files = new Map(assets.map((asset) => hashed(asset, [])).map((made) => [made.path, made]));
  return {
    files: [...files.values()],
    paths: new Map([...done].map(([path, made]) => [path, made.path])),
  };
}

const NAMES_OTHERS = /\.(?:css|js)$/;

/** As scripts and styles name another: from `assets/` or from the folder beside their own. */
const MENTION = /(?:\.\.|assets)\/((?:fonts|scripts|styles)\/[\w.-]+\.(?:woff2|js|css))/g;

function renamed(
  { path, bytes }: Asset,
  byPath: ReadonlyMap<string, Asset>,
  hashed: (asset: Asset) => Asset,
): Uint8Array {
  const folder = path.slice(0, path.lastIndexOf("assets/") + "assets/".length);
  return Buffer.from(
    Buffer.from(bytes)
      .toString("utf8")
      .replace(MENTION, (mention, named: string) => {
        const other = byPath.get(folder + named) ?? byPath.get(`assets/${named}`);
        return other === undefined
          ? mention
          : mention.slice(0, -posix.basename(named).length) + posix.basename(hashed(other).path);
      }),
  );
}

function hashedPath(path: string, bytes: Uint8Array): string {
  const ending = posix.extname(path);
  const hash = contentHash([bytes]).toString("hex").slice(0, DIGITS);
  return `${path.slice(path.lastIndexOf("assets/"), -ending.length)}.${hash}${ending}`;
}

/** What leads from a page to a file: an attribute of its markup. */
const ADDRESS = /(\b(?:href|src)=")([^"?#]+)/g;

/**
 * A page whose addresses of styles, scripts, fonts and pictures are the new ones.
 * @param page its own address below the site's root, `colours/bone-black/`
 * @param base the folder of its host that the site stands in, for a page whose addresses begin there
 * @param names is told the old path of each that the page names.
 */
export function withHashedNames(
  html: string,
  page: string,
  base: string,
  { paths }: HashedAssets,
  names: (asset: string) => void = () => undefined,
): string {
  return html.replace(ADDRESS, (found, attribute: string, address: string) => {
    if (!address.includes("assets/")) return found;
    const { host, pathname } = new URL(address, `http://site${base}${page}`);
    const asset = pathname.slice(base.length);
    const named = host === "site" ? paths.get(asset) : undefined;
    if (named === undefined) return found;
    names(asset);
    return `${attribute}${address.startsWith("/") ? `${base}${named}` : posix.relative(page.slice(0, page.lastIndexOf("/") + 1), named)}`;
  });
}
