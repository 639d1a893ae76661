import { describe, expect, test } from "vitest";
import type { AnyPageView } from "../../lib/site/all-pages.ts";
import type { KeptSteps, Step } from "../../lib/kept/kept-steps.ts";
import { noteRead, readBy } from "../../lib/kept/reads.ts";
import { viewKey, type FilledPage } from "../../lib/site/filled-page.ts";
import { pageEntry, pageWith } from "../../lib/site/page-entry.ts";
import type { OwnTexts } from "../../lib/records/own-texts.ts";

function filledWith(view: object, ownTexts: OwnTexts = new Map()): FilledPage {
  return { site: { root: "../", ownTexts }, view } as unknown as FilledPage;
}

const NOTHING_KEPT = { made: <V>(_: Step, made: () => V): V => made() } as unknown as KeptSteps;

/** A page of a kind that counts how often it is filled. */
function counted(kind: AnyPageView["kind"]) {
  const count = { filled: 0 };
  const page = pageEntry("colours/black/index.html", () => {
    count.filled++;
    noteRead("records/colours/black");
    return filledWith({ kind, lead: ["as it was"] });
  });
  return { page, count };
}

describe.each(["sheet", "bench", "text"] as const)("a page of the kind %s", (kind) => {
  test("is filled once for all that look into it, and reads the same each time", () => {
    const { page, count } = counted(kind);
    const [first, key] = [page.view, page.key()];
    const again = readBy(() => page.view);
    expect(again.value).toEqual(first);
    expect([...again.names]).toEqual(["records/colours/black"]);
    expect(page.key()).toBe(key);
    expect(count.filled).toBe(1);
  });

  test("that was let go keeps its key, and is filled again as it was", () => {
    const { page, count } = counted(kind);
    const [first, key] = [page.view, page.key()];
    page.letGo();
    expect(page.key()).toBe(key);
    expect(count.filled).toBe(1);
    expect(page.view).toEqual(first);
    expect(count.filled).toBe(2);
  });

  test("that is let go tells its key without being filled again, where keys are kept", () => {
    const count = { filled: 0 };
    const fill = (): FilledPage => {
      count.filled++;
      return filledWith({ kind });
    };
    const page = pageEntry("colours/black/index.html", fill, { steps: NOTHING_KEPT, of: "a site" });
    page.letGo();
    expect(count.filled).toBe(0);
    expect(page.view).toMatchObject({ kind });
    page.letGo();
    expect(page.key()).toBe(viewKey(fill()));
    expect(count.filled).toBe(2);
  });

  test("lets go what was put into it, too", () => {
    const { page, count } = counted(kind);
    const changed = pageWith(
      page,
      ({ site, view }) => ({ site, view: { ...view, lead: ["changed"] } as AnyPageView }),
      ["a feed"],
    );
    expect(changed.view).toMatchObject({ lead: ["changed"] });
    changed.letGo();
    expect(changed.view).toMatchObject({ lead: ["changed"] });
    expect(count.filled).toBe(2);
  });
});

test("of a colour's pages those that were looked into last are held, and no others", () => {
  const [first, ...others] = Array.from({ length: 9 }, () => counted("sheet").page);
  const view = first?.view;
  expect(first?.view).toBe(view);
  for (const other of others) expect(other.view).toBe(other.view);
  expect(first?.view).not.toBe(view);
  expect(first?.view).toEqual(view);
});

test("is another where another text is marked as of another language", () => {
  const page = { kind: "text", lead: ["Lampenruß"] };
  const keyOf = (text: string): string =>
    viewKey(filledWith(page, new Map([[text, { language: "de", isWithin: false }]])));
  expect(keyOf("Lampenruß")).toBe(keyOf("Lampenruß"));
  expect(keyOf("Lampenruß")).not.toBe(keyOf("Beinschwarz"));
  expect(keyOf("Lampenruß")).not.toBe(viewKey(filledWith(page)));
});
