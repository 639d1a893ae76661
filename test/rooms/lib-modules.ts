import { readdirSync, readFileSync } from "node:fs";
import { join, relative, resolve } from "node:path";
import { parseSync, Visitor, type Expression, type ImportDeclaration } from "oxc-parser";

const ROOT = join(import.meta.dirname, "../..");
const LIB = join(ROOT, "lib");

/** One import, re-export or import() of a module. */
export interface ModuleImport {
  readonly specifier: string;
  /** Of a module of ours: its path from the root, and its room; a file at the root is a room of its own name. */
  readonly target?: { readonly file: string; readonly room: string };
  /** Leaves nothing behind when types are stripped. */
  readonly typeOnly: boolean;
}

export interface LibModule {
  /** From the root: `lib/optics/films/film.ts`. */
  readonly file: string;
  readonly room: string;
  readonly text: string;
  readonly imports: readonly ModuleImport[];
}

let all: readonly LibModule[] | undefined;

/** Every module of lib/, in order of name, with what it imports: read once a worker. */
export function libModules(): readonly LibModule[] {
  return (all ??= readModules());
}

function readModules(): LibModule[] {
  return readdirSync(LIB, { recursive: true, encoding: "utf8" })
    .filter((file) => file.endsWith(".ts"))
    .sort()
    .map((file) => {
      const path = join(LIB, file);
      const text = readFileSync(path, "utf8");
      return { file: fromRoot(path), room: roomOf(path), text, imports: importsOf(path, text) };
    });
}

/** What a module imports, in the order of its text. */
export function importsOf(path: string, text: string): ModuleImport[] {
  const { program, errors } = parseSync(path, text);
  const [fault] = errors;
  if (fault !== undefined) throw new SyntaxError(`${path}: ${fault.message}`);
  const found: ModuleImport[] = [];
  const add = (specifier: string, typeOnly: boolean): void => {
    const target = specifier.startsWith(".") ? resolve(path, "..", specifier) : undefined;
    found.push({
      specifier,
      typeOnly,
      ...(target === undefined ? {} : { target: { file: fromRoot(target), room: roomOf(target) } }),
    });
  };
  new Visitor({
    ImportDeclaration: (node) => {
      add(node.source.value, isTypeImport(node));
    },
    ExportNamedDeclaration: ({ source, exportKind }) => {
      if (source !== null) add(source.value, exportKind === "type");
    },
    ExportAllDeclaration: ({ source, exportKind }) => {
      add(source.value, exportKind === "type");
    },
    TSImportType: ({ source }) => {
      add(source.value, true);
    },
    ImportExpression: ({ source }) => {
      const name = withoutCast(source);
      if (name.type === "Literal" && typeof name.value === "string") add(name.value, false);
    },
  }).visit(program);
  return found;
}

/** `import type {...}`, or `import { type A, type B }` alone. */
function isTypeImport({ importKind, specifiers }: ImportDeclaration): boolean {
  return (
    importKind === "type" ||
    (specifiers.length > 0 &&
      specifiers.every((one) => one.type === "ImportSpecifier" && one.importKind === "type"))
  );
}

function withoutCast(node: Expression): Expression {
  return node.type === "TSAsExpression" ? withoutCast(node.expression) : node;
}

function fromRoot(path: string): string {
  return relative(ROOT, path).replaceAll("\\", "/");
}

/** `optics` of lib/optics/films/film.ts; of a file that is in no room, its name. */
function roomOf(path: string): string {
  const [top = "", room = ""] = fromRoot(path).split("/");
  return top === "lib" ? room : top;
}
