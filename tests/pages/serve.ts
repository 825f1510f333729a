/** A plain server for a finished site, for tests in a browser. */
import { createReadStream, existsSync, statSync } from "node:fs";
import { createServer } from "node:http";
import type { AddressInfo } from "node:net";
import { extname, join, normalize } from "node:path";

const contentTypes: Readonly<Record<string, string>> = {
  ".html": "text/html; charset=utf-8",
  ".css": "text/css; charset=utf-8",
  ".js": "text/javascript; charset=utf-8",
  ".json": "application/json",
  ".svg": "image/svg+xml",
  ".csv": "text/csv; charset=utf-8",
};

export type Server = { readonly origin: string; close(): Promise<void> };

/** Serves a folder on a free port of this machine; what is missing gets 404.html, as static hosts do. */
export async function serve(siteDir: string): Promise<Server> {
  const server = createServer((request, response) => {
    const path = normalize(decodeURIComponent(new URL(request.url ?? "/", "http://site").pathname));
    const file = join(siteDir, path.endsWith("/") ? `${path}index.html` : path);
    const found = existsSync(file) && statSync(file).isFile();
    response.writeHead(found ? 200 : 404, { "content-type": contentTypes[extname(found ? file : ".html")] ?? "application/octet-stream" });
    createReadStream(found ? file : join(siteDir, "404.html")).pipe(response);
  });
  await new Promise<void>((resolve) => server.listen(0, "127.0.0.1", resolve));
  return {
    origin: `http://127.0.0.1:${(server.address() as AddressInfo).port}`,
    close: () => new Promise((resolve) => server.close(() => resolve())),
  };
}
