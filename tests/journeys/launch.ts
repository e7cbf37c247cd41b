/** How Chromium is started: alone, unseen, and without its own traffic. */
export const LAUNCH_ARGS: readonly string[] = [
  "--headless",
  "--no-sandbox",
  "--disable-gpu",
  "--disable-quic",
  "--no-first-run",
  "--disable-background-networking",
  "--disable-component-update",
  "--disable-sync",
]
