/** Finds a browser for the page tests: the one that comes as a development dependency, or an installed Chromium. */
import { existsSync } from "node:fs";
import chromium from "@sparticuz/chromium";
import { type Browser, chromium as playwright } from "playwright-core";

const installed = ["/usr/bin/chromium", "/usr/bin/chromium-browser", "/usr/bin/google-chrome"];

const flags = [
  "--headless",
  "--no-sandbox",
  "--disable-gpu",
  "--disable-quic",
  "--no-first-run",
  "--disable-background-networking",
  "--disable-component-update",
  "--disable-sync",
];

async function tryLaunch(executablePath: string, moreFlags: readonly string[]): Promise<Browser | undefined> {
  try {
    return await playwright.launch({ executablePath, args: [...flags, ...moreFlags] });
  } catch {
    return undefined;
  }
}

export const noBrowser =
  "No browser could be started, so the page tests did not run. Install the libraries that the packaged one needs (Debian: libnss3 libnspr4 libexpat1 fontconfig), " +
  "or Chromium itself (Debian: apt-get install chromium).";

/**
 * Starts a browser.
 * @param moreFlags command-line flags besides those of every test
 * @returns undefined where none can be found on a person's own machine; where CI is set that is an error, since no test may pass because something was absent
 */
export async function launchBrowser(moreFlags: readonly string[] = []): Promise<Browser | undefined> {
  const packaged = await chromium.executablePath().catch(() => undefined);
  for (const path of [packaged, ...installed.filter(existsSync)]) {
    const browser = path === undefined ? undefined : await tryLaunch(path, moreFlags);
    if (browser !== undefined) return browser;
  }
  if (process.env.CI) throw new Error(noBrowser);
  process.stderr.write(`${noBrowser}\n`);
  return undefined;
}
