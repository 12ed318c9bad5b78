import { existsSync } from "node:fs";

/** Where Debian and its kin put the browser; another place is named by WITNESSMARK_BROWSER. */
export const browserPath = [
  process.env.WITNESSMARK_BROWSER,
  "/usr/bin/chromium",
  "/usr/bin/chromium-browser",
  "/usr/bin/google-chrome",
].find((path) => path !== undefined && existsSync(path));
