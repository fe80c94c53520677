#!/bin/sh
# Finds a Chromium for the browser tests, or installs one, and writes its path.
# usage: ensure-chromium.sh OUTFILE TEST_CLASSPATH
set -u
out=$1
classpath=$2
found() { mkdir -p "$(dirname "$out")"; printf '%s' "$1" > "$out"; echo "browser for the tests: $1"; exit 0; }
look() {
  for name in chromium chromium-browser google-chrome google-chrome-stable; do
    path=$(command -v "$name" 2>/dev/null) && found "$path"
  done
}
[ -n "${CHROMIUM:-}" ] && [ -x "$CHROMIUM" ] && found "$CHROMIUM"
look
if [ "$(id -u)" = 0 ] && command -v apt-get >/dev/null 2>&1; then
  echo "no Chromium on the PATH: installing Debian's"
  apt-get update -qq >/dev/null 2>&1
  DEBIAN_FRONTEND=noninteractive apt-get install -y -qq --no-install-recommends chromium fonts-liberation >/dev/null 2>&1
  look
fi
echo "no Chromium on the PATH: letting Playwright fetch its own"
java -cp "$classpath" com.microsoft.playwright.CLI install chromium >/dev/null 2>&1
for path in "${PLAYWRIGHT_BROWSERS_PATH:-$HOME/.cache/ms-playwright}"/chromium-*/chrome-linux/chrome \
            "$HOME"/Library/Caches/ms-playwright/chromium-*/chrome-mac/Chromium.app/Contents/MacOS/Chromium; do
  [ -x "$path" ] && found "$path"
done
echo "The browser tests need Chromium: install it, or set CHROMIUM to its path, then run again." >&2
exit 1
