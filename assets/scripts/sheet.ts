/** Ladders one at a time, chosen by white; without script all of them stand below each other. */

const group = document.querySelector<HTMLElement>("#ladders");
const ladders = [...(group?.querySelectorAll<HTMLElement>("[data-ladder]") ?? [])];

if (group !== null && ladders.length > 1) {
  const list = document.createElement("div");
  list.className = "tabs";
  list.setAttribute("role", "tablist");
  const tabs = ladders.map((ladder, i) => {
    const tab = document.createElement("button");
    tab.type = "button";
    tab.textContent = ladder.dataset["ladder"] ?? "";
    tab.setAttribute("role", "tab");
    tab.id = `tab-${ladder.id}`;
    tab.setAttribute("aria-controls", ladder.id);
    ladder.setAttribute("role", "tabpanel");
    ladder.setAttribute("aria-labelledby", tab.id);
    ladder.querySelector("h3")?.remove();
    tab.addEventListener("click", () => show(i));
    tab.addEventListener("keydown", (event) => {
      const step = event.key === "ArrowRight" ? 1 : event.key === "ArrowLeft" ? -1 : 0;
      if (step === 0) return;
      event.preventDefault();
      show((i + step + tabs.length) % tabs.length);
      tabs[(i + step + tabs.length) % tabs.length]?.focus();
    });
    return tab;
  });
  const show = (chosen: number): void => {
    ladders.forEach((ladder, i) => {
      ladder.hidden = i !== chosen;
    });
    tabs.forEach((tab, i) => {
      tab.setAttribute("aria-selected", String(i === chosen));
      tab.tabIndex = i === chosen ? 0 : -1;
    });
  };
  const asked = (): number => ladders.findIndex(({ id }) => location.hash === `#${id}`);
  list.append(...tabs);
  group.prepend(list);
  show(Math.max(0, asked()));
  addEventListener("hashchange", () => asked() >= 0 && show(asked()));
}

export {};
