import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';
import { chromium, type Page } from 'playwright-core';

export const framesPerSecond = 12;

const launch = {
  executablePath: '/usr/bin/chromium',
  args: [
    '--headless',
    '--no-sandbox',
    '--disable-gpu',
    '--disable-quic',
    '--no-first-run',
    '--disable-background-networking',
    '--disable-component-update',
    '--disable-sync',
  ],
};

/** Bends straight lines by a few pixels, as a hand does. */
const tremble = `<svg width="0" height="0"><filter id="tremble" x="0" y="0" width="100%" height="100%">
<feTurbulence type="fractalNoise" baseFrequency="0.013" numOctaves="2" seed="4"/>
<feDisplacementMap in="SourceGraphic" scale="9" xChannelSelector="R" yChannelSelector="G"/></filter></svg>`;

/** A page that can draw any moment of any take; `close` ends the browser behind it. */
export async function openStage(): Promise<{ page: Page; close: () => Promise<void> }> {
  const entry = fileURLToPath(new URL('./scene/page.ts', import.meta.url));
  const bundle = await build({ entryPoints: [entry], bundle: true, format: 'iife', write: false });
  const browser = await chromium.launch(launch);
  const page = await browser.newPage();
  await page.setContent(`<!doctype html><meta charset="utf-8">${tremble}`);
  await page.addScriptTag({ content: bundle.outputFiles[0]?.text ?? '' });
  return { page, close: () => browser.close() };
}

/** One drawn moment as the bytes of a JPEG or PNG file. */
export async function drawMoment(page: Page, takeIndex: number, ms: number, type: string): Promise<Buffer> {
  const base64 = await page.evaluate(`frame(${takeIndex}, ${ms}, ${JSON.stringify(type)})`);
  if (typeof base64 !== 'string' || base64 === '')
    throw new Error(`take ${takeIndex} drew nothing at ${ms} ms`);
  return Buffer.from(base64, 'base64');
}
