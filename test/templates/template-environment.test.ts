import { expect, test } from "vitest";
import { pageEnvironment, templateEnvironment } from "../../lib/site/template-environment.ts";

interface Template {
  readonly rootRenderFunc: (...args: readonly unknown[]) => void;
}

test("a file of macros is run once, however many pages import it", () => {
  const environment = templateEnvironment();
  const runs: string[] = [];
  for (const name of ["macros/swatch.njk", "macros/links.njk"]) {
    const template = environment.getTemplate(name, true) as unknown as Template;
    const run = template.rootRenderFunc;
    Object.assign(template, {
      rootRenderFunc: (...args: readonly unknown[]) => {
        runs.push(name);
        run(...args);
      },
    });
  }
  const page = `{% from "macros/links.njk" import linkRow %}{% from "macros/swatch.njk" import swatch %}{{ text }}`;
  const rendered = ["one", "<two>"].map((text) => environment.renderString(page, { text }));
  expect(rendered).toEqual(["one", "&lt;two&gt;"]);
  expect(runs.sort()).toEqual(["macros/links.njk", "macros/swatch.njk"]);
});

test("all pages are rendered by one environment, which holds of the tags of one name the latest alone", () => {
  const environment = pageEnvironment();
  expect(pageEnvironment()).toBe(environment);
  const tag = () => ({ tags: ["setAsync"], parse: () => undefined });
  const [first, latest] = [tag(), tag()];
  const listed = (): unknown =>
    (environment as unknown as { readonly extensionsList: readonly unknown[] }).extensionsList;
  environment.addExtension("setAsync", first);
  environment.addExtension("setAsync", latest);
  expect(listed()).toEqual([latest]);
  expect(environment.getExtension("setAsync")).toBe(latest);
});
