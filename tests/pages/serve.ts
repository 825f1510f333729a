/** Serves a built site on this machine for the browser tests, with nothing but Node, plain or compressed as a static host would. */
import { existsSync, readFileSync, statSync } from "node:fs";
import { createServer } from "node:http";
import type { AddressInfo } from "node:net";
import { extname, join, normalize } from "node:path";
import { gzipSync } from "node:zlib";

const contentTypes: Readonly<Record<string, string>> = {
  ".html": "text/html; charset=utf-8",
  ".css": "text/css; charset=utf-8",
  ".js": "text/javascript; charset=utf-8",
  ".json": "application/json",
  ".svg": "image/svg+xml",
  ".csv": "text/csv; charset=utf-8",
  ".txt": "text/plain; charset=utf-8",
};

export type Server = { readonly origin: string; close(): Promise<void> };

/**
 * Serves a folder on a free port of this machine; what is missing gets 404.html, as static hosts do.
 * @param gzip compresses everything with a known type, whatever the browser says it accepts
 */
export async function serve(siteDir: string, { gzip = false } = {}): Promise<Server> {
  const server = createServer((request, response) => {
    const path = normalize(decodeURIComponent(new URL(request.url ?? "/", "http://site").pathname));
    const file = join(siteDir, path.endsWith("/") ? `${path}index.html` : path);
    const found = existsSync(file) && statSync(file).isFile();
    const type = contentTypes[extname(found ? file : ".html")];
    const body = readFileSync(found ? file : join(siteDir, "404.html"));
    const packed = gzip && type !== undefined;
    response.writeHead(found ? 200 : 404, {
      "content-type": type ?? "application/octet-stream",
      ...(packed ? { "content-encoding": "gzip" } : {}),
    });
    response.end(packed ? gzipSync(body) : body);
  });
  await new Promise<void>((resolve) => server.listen(0, "127.0.0.1", resolve));
  return {
    origin: `http://127.0.0.1:${(server.address() as AddressInfo).port}`,
    close: () => new Promise((resolve) => server.close(() => resolve())),
  };
}
