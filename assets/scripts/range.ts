/** Narrows the range to what is searched for and ticked; without script every colour stands there. */
const form = document.querySelector<HTMLElement>("[data-filters]");
const cards = [...document.querySelectorAll<HTMLElement>(".family .colour-card")];

function narrow(filters: HTMLElement): void {
  const status = filters.querySelector<HTMLElement>("[data-status]");
  const search = filters.querySelector<HTMLInputElement>("input[type=search]");
  const ticked = [...filters.querySelectorAll<HTMLInputElement>("input[type=checkbox]")];
  const apply = (): void => {
    const words = (search?.value ?? "").toLowerCase().split(/\s+/).filter(Boolean);
    const tags = ticked.filter(({ checked }) => checked).map(({ value }) => value);
    let count = 0;
    for (const card of cards) {
      const own = new Set((card.dataset["tags"] ?? "").split(" "));
      const text = card.dataset["search"] ?? "";
      card.hidden = !(
        tags.every((tag) => own.has(tag)) && words.every((word) => text.includes(word))
      );
      if (!card.hidden) count += 1;
    }
    for (const family of document.querySelectorAll<HTMLElement>(".family"))
      family.hidden = family.querySelector(".colour-card:not([hidden])") === null;
    if (status !== null)
      status.textContent =
        tags.length + words.length === 0
          ? ""
          : count === 0
            ? (filters.dataset["none"] ?? "")
            : (filters.dataset["found"] ?? "")
                .replace("{count}", String(count))
                .replace("{all}", String(cards.length));
  };
  filters.addEventListener("input", apply);
  search?.addEventListener("keydown", ({ key }) => {
    if (key === "Enter")
      document.querySelector<HTMLAnchorElement>(".colour-card:not([hidden]) a")?.click();
  });
  filters.hidden = false;
  apply();
}

if (form !== null) narrow(form);

export {};
