/** Addresses of the server alone, which no page of a site has. */
export const RELOAD_EVENTS = "/-/builds";
export const RELOAD_SCRIPT = "/-/reload.js";

/** Loads the page again when the server says that there is a newer build. */
export const RELOAD_SOURCE = `new EventSource("${RELOAD_EVENTS}").addEventListener("built", () => location.reload());\n`;

/** A page that follows the builds while it is open; its policy allows a script of its own origin. */
export function followingBuilds(html: string): string {
  const end = html.lastIndexOf("</body>");
  return end === -1
    ? html
    : `${html.slice(0, end)}<script src="${RELOAD_SCRIPT}"></script>${html.slice(end)}`;
}
