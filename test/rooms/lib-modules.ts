import { readdirSync, readFileSync } from "node:fs";
import { join, relative, resolve } from "node:path";
import ts from "typescript";

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

/** Every module of lib/, in order of name, with what it imports. */
export function libModules(): LibModule[] {
  return readdirSync(LIB, { recursive: true, encoding: "utf8" })
    .filter((file) => file.endsWith(".ts"))
    .sort()
    .map((file) => {
      const path = join(LIB, file);
      const text = readFileSync(path, "utf8");
      return { file: fromRoot(path), room: roomOf(path), text, imports: importsOf(path, text) };
    });
}

/** What a module imports, read with TypeScript's own parser. */
export function importsOf(path: string, text: string): ModuleImport[] {
  const source = ts.createSourceFile(path, text, ts.ScriptTarget.ES2023, true);
  const found: ModuleImport[] = [];
  const add = (specifier: ts.Node | undefined, typeOnly: boolean): void => {
    if (specifier === undefined || !ts.isStringLiteralLike(specifier)) return;
    const { text: name } = specifier;
    const target = name.startsWith(".") ? resolve(path, "..", name) : undefined;
    found.push({
      specifier: name,
      typeOnly,
      ...(target === undefined ? {} : { target: { file: fromRoot(target), room: roomOf(target) } }),
    });
  };
  const visit = (node: ts.Node): void => {
    if (ts.isImportDeclaration(node)) add(node.moduleSpecifier, isTypeImport(node.importClause));
    else if (ts.isExportDeclaration(node)) add(node.moduleSpecifier, node.isTypeOnly);
    else if (ts.isImportTypeNode(node) && ts.isLiteralTypeNode(node.argument))
      add(node.argument.literal, true);
    else if (ts.isCallExpression(node) && node.expression.kind === ts.SyntaxKind.ImportKeyword)
      add(withoutCast(node.arguments[0]), false);
    ts.forEachChild(node, visit);
  };
  visit(source);
  return found;
}

/** `import type {...}`, or `import { type A, type B }` alone. */
function isTypeImport(clause: ts.ImportClause | undefined): boolean {
  if (clause === undefined) return false;
  if (clause.phaseModifier === ts.SyntaxKind.TypeKeyword) return true;
  const { name, namedBindings } = clause;
  return (
    name === undefined &&
    namedBindings !== undefined &&
    ts.isNamedImports(namedBindings) &&
    namedBindings.elements.length > 0 &&
    namedBindings.elements.every(({ isTypeOnly }) => isTypeOnly)
  );
}

function withoutCast(node: ts.Expression | undefined): ts.Expression | undefined {
  return node !== undefined && ts.isAsExpression(node) ? withoutCast(node.expression) : node;
}

function fromRoot(path: string): string {
  return relative(ROOT, path).replaceAll("\\", "/");
}

/** `optics` of lib/optics/films/film.ts; of a file that is in no room, its name. */
function roomOf(path: string): string {
  const [top = "", room = ""] = fromRoot(path).split("/");
  return top === "lib" ? room : top;
}
