/** Addresses of the server alone, which no page of a site has. */
export const RELOAD_EVENTS = "/-/builds";
export const RELOAD_SCRIPT = "/-/reload.js";

/**
 * Loads the page again when the server says that there is a newer build, and lays what keeps a
 * newer one from being made over the foot of the page, line by line.
 */
export const RELOAD_SOURCE = `const builds = new EventSource("${RELOAD_EVENTS}?" + new URLSearchParams({ page: location.pathname }));
builds.addEventListener("built", () => location.reload());
builds.addEventListener("fault", ({ data }) => {
  const told = document.getElementById("build-fault") ?? document.createElement("pre");
  told.id = "build-fault";
  told.setAttribute("role", "alert");
  told.textContent = JSON.parse(data);
  told.style.cssText =
    "position:fixed;inset:auto 0 0 0;z-index:9;max-height:50vh;overflow:auto;margin:0;padding:1rem;" +
    "white-space:pre-wrap;font:0.9rem/1.4 monospace;background:#fff;color:#8b0000;border-top:4px solid #8b0000";
  document.body.append(told);
});
`;

/** A page that follows the builds while it is open; its policy allows a script of its own origin. */
export function followingBuilds(html: string): string {
  const end = html.lastIndexOf("</body>");
  return end === -1
    ? html
    : `${html.slice(0, end)}<script src="${RELOAD_SCRIPT}"></script>${html.slice(end)}`;
}
