/** Every page's whole address, for search engines; the page for lost visitors left out. */
export function sitemap(siteAddress: string, paths: readonly string[]): string {
  const base = siteAddress.endsWith("/") ? siteAddress : `${siteAddress}/`;
  const entries = paths
    .filter((path) => path !== "404.html")
    .map(
      (path) =>
        `  <url><loc>${escaped(new URL(path.replace(/index\.html$/, ""), base).href)}</loc></url>`,
    );
  return `<?xml version="1.0" encoding="UTF-8"?>\n<urlset xmlns="http://www.sitemaps.org/schemas/sitemap/0.9">\n${entries.join("\n")}\n</urlset>\n`;
}

function escaped(text: string): string {
  return text.replaceAll("&", "&amp;").replaceAll("<", "&lt;");
}
