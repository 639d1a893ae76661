/** Narrows the range to what is ticked: any of the families, all of the rest; without script every colour stands there. */
const form = document.querySelector<HTMLElement>("[data-filters]");
const families = [...document.querySelectorAll<HTMLElement>(".family")];

function narrow(filters: HTMLElement): void {
  const status = filters.querySelector<HTMLElement>("[data-status]");
  const boxes = [...filters.querySelectorAll<HTMLInputElement>("input[type=checkbox]")];
  const ticked = (isFamily: boolean): string[] =>
    boxes
      .filter((box) => box.checked && box.hasAttribute("data-family") === isFamily)
      .map(({ value }) => value);
  const apply = (): void => {
    const [chosen, tags] = [ticked(true), ticked(false)];
    let [count, all] = [0, 0];
    for (const family of families) {
      const isChosen = chosen.length === 0 || chosen.includes(family.id);
      let shown = 0;
      for (const card of family.querySelectorAll<HTMLElement>(".colour-card")) {
        const own = new Set((card.dataset["tags"] ?? "").split(" "));
        card.hidden = !(isChosen && tags.every((tag) => own.has(tag)));
        all += 1;
        if (!card.hidden) shown += 1;
      }
      family.hidden = shown === 0;
      count += shown;
    }
    if (status !== null)
      status.textContent =
        tags.length + chosen.length === 0
          ? ""
          : count === 0
            ? (filters.dataset["none"] ?? "")
            : (filters.dataset["found"] ?? "")
                .replace("{count}", String(count))
                .replace("{all}", String(all));
  };
  filters.addEventListener("input", apply);
  filters.hidden = false;
  apply();
}

if (form !== null) narrow(form);

export {};
