import { chromium } from 'playwright-core';
import { chromiumPath } from '../chromium.mjs';

/** Without the last four, Chromium looks for its maker's hosts at every start. */
const QUIET = ['--disable-gpu', '--no-first-run', '--disable-quic', '--disable-background-networking'];
const QUIETER = ['--disable-component-update', '--disable-sync'];

/** One Chromium without a window and with an empty profile of its own. */
export function launch() {
  const isRoot = process.getuid?.() === 0;
  const args = [...QUIET, ...QUIETER, ...(isRoot ? ['--no-sandbox'] : [])];
  return chromium.launch({ executablePath: chromiumPath(), args, chromiumSandbox: !isRoot });
}

/**
 * The same person at the same desk in every run: language, time zone and motion are pinned.
 *
 * @param {import('playwright-core').BrowserContextOptions} [options] - what differs
 * @returns {import('playwright-core').BrowserContextOptions} options of a context
 */
export function desk(options = {}) {
  return {
    viewport: { width: 1440, height: 900 },
    locale: 'en-GB',
    timezoneId: 'Europe/Lisbon',
    reducedMotion: 'reduce',
    ...options,
  };
}
