import AxeBuilder from '@axe-core/playwright';
import type { Browser, BrowserContext, Locator, Page } from 'playwright-core';
import { expect } from 'vitest';

export const sizes = {
  desktop: { width: 1440, height: 900 },
  tablet: { width: 820, height: 1180 },
  phone: { width: 360, height: 740 },
} as const;

/** The style that axe-core puts into a page to measure it: our policy refuses it, as it should. */
const axeProbe = 'sha256-LFzpE6sp9afnzR2SRbtH1VXdI8CAwj1mF5NHGMWOO9I=';

/** A page in a context of its own, which fails the test on any script error or request to elsewhere. */
export async function openPage(
  browser: Browser,
  url: string,
  size: keyof typeof sizes = 'desktop',
): Promise<{ page: Page; context: BrowserContext; troubles: string[] }> {
  const context = await browser.newContext({
    viewport: sizes[size],
    permissions: ['clipboard-read', 'clipboard-write'],
  });
  const page = await context.newPage();
  page.setDefaultTimeout(8_000);
  const troubles: string[] = [];
  page.on('pageerror', (error) => troubles.push(`error: ${error.message}`));
  page.on(
    'console',
    (message) =>
      message.type() === 'error' &&
      !message.text().includes(axeProbe) &&
      troubles.push(`console: ${message.text()} ${message.location().url}`.trim()),
  );
  page.on('request', (request) => {
    const { origin, protocol } = new URL(request.url());
    if (protocol.startsWith('http') && origin !== new URL(url).origin) troubles.push(`request to ${origin}`);
  });
  await page.goto(url);
  return { page, context, troubles };
}

/** What is written or pressed before the page's script has taken an element over is lost: React marks those it has. */
export async function untilLive(wanted: Locator): Promise<void> {
  await expect
    .poll(() =>
      wanted.evaluate((element) => Object.keys(element).some((key) => key.startsWith('__reactProps'))),
    )
    .toBe(true);
}

/** Outside check: axe-core, an independent accessibility checker, with its WCAG 2.2 A and AA rules. */
export async function expectAccessible(page: Page): Promise<void> {
  const { violations } = await new AxeBuilder({ page })
    // What passes is not written out, and one run in the page itself is enough without frames: a third of the time.
    .options({ resultTypes: ['violations'] })
    .setLegacyMode()
    .withTags(['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'])
    .analyze();
  expect(
    violations.map(({ id, nodes }) => `${id}: ${nodes.map((node) => node.target.join(' ')).join(', ')}`),
  ).toEqual([]);
}

/** Nothing may stick out sideways: a phone page that scrolls sideways hides things. */
export async function expectNoSidewaysScroll(page: Page): Promise<void> {
  const { wide, view } = await page.evaluate(() => ({
    wide: document.documentElement.scrollWidth,
    view: innerWidth,
  }));
  expect(wide).toBeLessThanOrEqual(view);
}

/** Escape puts the sheet away; keys reach the page again once it has gone. Notices are dialogs too, but no sheets. */
export async function closeSheet(page: Page): Promise<void> {
  await page.keyboard.press('Escape');
  await page.waitForFunction(() => !document.querySelector('[role="dialog"]:not([aria-modal="false"])'));
}
