import { readdirSync, readFileSync } from "node:fs";
import { join, sep } from "node:path";
import { compileFunction } from "node:vm";
import nunjucks from "nunjucks";
import { keptBesideProgram } from "../kept/beside-program.ts";
import type { OwnTexts } from "../records/own-texts.ts";
import { markedTexts } from "./marked-texts.ts";
import { PACKAGE_ROOT } from "./package-root.ts";
import { typeset } from "./typeset.ts";

const TEMPLATES = join(PACKAGE_ROOT, "templates");

const OPTIONS: nunjucks.ConfigureOptions = {
  autoescape: true,
  throwOnUndefined: true,
  trimBlocks: true,
  lstripBlocks: true,
};

let ofAllPages: nunjucks.Environment | undefined;

/** The one that all pages of this thread are rendered by: Eleventy holds each that it was ever handed, and what that holds. */
export function pageEnvironment(): nunjucks.Environment {
  return (ofAllPages ??= templateEnvironment());
}

/**
 * Nunjucks over templates/: a missing figure stops the build, a record's text is escaped.
 */
export function templateEnvironment(): nunjucks.Environment {
  const environment = withOneOfEachTag(
    importingOnce(new nunjucks.Environment(compiledTemplates(), OPTIONS)),
  );
  return environment.addFilter(
    "typeset",
    (page: unknown, ownTexts: OwnTexts) =>
      new nunjucks.runtime.SafeString(typeset(markedTexts(String(page), ownTexts))),
  );
}

/** Each run of Eleventy adds its tags, which hold that run: one takes the place of the one of its name. */
function withOneOfEachTag(environment: nunjucks.Environment): nunjucks.Environment {
  const add = environment.addExtension.bind(environment);
  environment.addExtension = (name, extension) => {
    environment.removeExtension(name);
    return add(name, extension);
  };
  return environment;
}

/** A template as those that import it see it, which Nunjucks' types leave out. */
interface ImportedTemplate {
  getExported: (done: Exported) => void;
}
type Exported = (error: unknown, macros: unknown) => void;
type GetTemplate = (...asked: unknown[]) => unknown;

/** Macros are imported without the page's context, so that they are the same for every page: Nunjucks would run each of their files again for each page. */
function importingOnce(environment: nunjucks.Environment): nunjucks.Environment {
  const own = environment as unknown as { getTemplate: GetTemplate };
  const getTemplate = own.getTemplate.bind(environment);
  const seen = new WeakSet<object>();
  own.getTemplate = (...asked) =>
    getTemplate(
      ...asked.map((one) =>
        typeof one === "function"
          ? (error: unknown, template: ImportedTemplate | undefined) => {
              if (template !== undefined && !seen.has(template)) rememberExported(template);
              if (template !== undefined) seen.add(template);
              (one as (error: unknown, template: unknown) => void)(error, template);
            }
          : one,
      ),
    );
  return environment;
}

function rememberExported(template: ImportedTemplate): void {
  const getExported = template.getExported.bind(template);
  let known: readonly [macros: unknown] | undefined;
  template.getExported = (done) => {
    if (known !== undefined) return done(null, known[0]);
    getExported((error, macros) => {
      if (error === null) known = [macros];
      done(error, macros);
    });
  };
}

/** What Nunjucks makes of a template: its root and blocks as functions. */
type CompiledTemplate = Readonly<Record<string, (...args: readonly unknown[]) => void>>;

/** Scripts by the name of their template, and what became of those that a page has asked for. */
interface Compiled {
  readonly scripts: ReadonlyMap<string, string>;
  readonly templates: Map<string, CompiledTemplate>;
}

let ofProgram: Compiled | undefined;

/** A loader of its own for each environment, over templates that are compiled once a version of them. */
function compiledTemplates(): nunjucks.ILoader {
  const { scripts, templates } = (ofProgram ??= {
    scripts: keptScripts(),
    templates: new Map<string, CompiledTemplate>(),
  });
  const getSource = (name: string): unknown => {
    const script = scripts.get(name);
    if (script === undefined) return null;
    const obj = templates.get(name) ?? ran(script, name);
    templates.set(name, obj);
    return { src: { type: "code", obj }, path: name };
  };
  return { getSource } as nunjucks.ILoader;
}

function ran(script: string, filename: string): CompiledTemplate {
  return (compileFunction(script, [], { filename }) as () => CompiledTemplate)();
}

function keptScripts(): ReadonlyMap<string, string> {
  const texts = readdirSync(TEMPLATES, { recursive: true, encoding: "utf8" })
    .filter((file) => file.endsWith(".njk"))
    .sort()
    .map((file): [name: string, text: string] => [
      file.replaceAll(sep, "/"),
      readFileSync(join(TEMPLATES, file), "utf8"),
    ]);
  const env = new nunjucks.Environment(null, OPTIONS);
  // Of a list of one, which its types call the one itself.
  const wrapper = (compiled: unknown): string =>
    (compiled as readonly { readonly template: string }[]).map(({ template }) => template).join("");
  return keptBesideProgram(
    "templates",
    texts.flat(),
    () =>
      new Map(
        texts.map(([name, text]) => [
          name,
          nunjucks.precompileString(text, { name, env, wrapper }),
        ]),
      ),
  );
}
