import { inject, describe, expect, test } from "vitest";
import type { Page } from "playwright-core";
import { emptyPage, type Visit } from "../support/visited-page.ts";

/** Opens a sheet, and tells what its browser complains of. */
async function opened(slug: string, javaScriptEnabled = true): Promise<Visit> {
  const site = inject("workshopAddress");
  const visit = await emptyPage(site, { javaScriptEnabled });
  await visit.page.goto(`${site}/colours/${slug}/`);
  return visit;
}

async function line(page: Page, figure: string): Promise<string> {
  return (await page.locator(`[data-figure="${figure}"]`).textContent()) ?? "";
}

describe("a batch of any size, in the browser", () => {
  test("comes to what the table says for a size that stands there, and to ten times it for ten times the pigment", async () => {
    const { page, complaints } = await opened("iron-oxide-black");
    expect(await page.locator(".reckoner").isVisible()).toBe(true);
    await page.locator("[data-amount]").fill("1000");
    // 33 g of oil to 100 g; its four lots weigh 2.3475 g/ml in the mean: 133 / 2.3475 = 56.66 ml to 100 g (by hand).
    expect(await line(page, "oilG")).toBe("330");
    expect(await line(page, "oilHeldBackG")).toBe("33\u201366");
    expect(await line(page, "paintMl")).toBe("567");
    await page.locator("[data-amount]").fill("10000");
    expect(await line(page, "oilG")).toBe("3300");
    expect(complaints).toEqual([]);
  });

  test("by tubes weighs enough for the most that may be lost", async () => {
    const { page } = await opened("iron-oxide-black");
    await page.locator("[data-by]").selectOption("tubes");
    await page.locator("[data-amount]").fill("12");
    await page.locator("[data-tube]").fill("40");
    // 12 tubes of 40 ml; of 2667.7 g the lot of February 2026 lost most, 148.7 g: 480 / (1 - .05574) / .5666 = 897.2 g.
    expect(await line(page, "tubes")).toMatch(/^12(?:\u2013\d+)?$/);
    expect(Number(await line(page, "pigments.0"))).toBeCloseTo(897, 0);
  });

  test.each(["0", "-5", ""])(
    "says so when the amount is `%s`, and shows no figure",
    async (amount) => {
      const { page, complaints } = await opened("lamp-black");
      await page.locator("[data-amount]").fill(amount);
      expect(await page.locator("[data-fault]").textContent()).toBe("Give an amount above 0.");
      expect(await line(page, "oilG")).toBe("\u2013");
      expect(complaints).toEqual([]);
    },
  );

  test("without script the table stands and the reckoner is not there", async () => {
    const { page } = await opened("lamp-black", false);
    expect(await page.locator("#batch table").first().isVisible()).toBe(true);
    expect(await page.locator(".reckoner").isVisible()).toBe(false);
  });

  test("a colour whose parts nobody wrote down has neither, and says why", async () => {
    const { page, complaints } = await opened("slate-grey");
    expect(await page.locator(".reckoner").count()).toBe(0);
    expect(await page.locator("#batch").textContent()).toContain("No batch can be worked out.");
    expect(complaints).toEqual([]);
  });
});
