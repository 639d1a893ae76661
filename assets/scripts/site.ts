/** On every page: a link into a fold, or to what holds one, opens it. */
const opened = (): void => {
  const id = decodeURIComponent(location.hash.slice(1));
  const target = id === "" ? null : document.getElementById(id);
  const held =
    target?.querySelector<HTMLDetailsElement>(
      ":scope > details, :scope > .section__body > details:only-child",
    ) ?? null;
  if (held !== null) held.open = true;
  for (let fold = target?.closest("details") ?? null; fold !== null;) {
    fold.open = true;
    fold = fold.parentElement?.closest("details") ?? null;
  }
  if (target !== null && target.closest("details") !== null) target.scrollIntoView();
};

addEventListener("hashchange", opened);
opened();

export {};
