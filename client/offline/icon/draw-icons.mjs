// Draws the PNG sizes of client/public/icon.svg, for phones that take no SVG: node client/offline/icon/draw-icons.mjs
import { readFile } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import { chromium } from 'playwright-core';

const publicFile = (name) => fileURLToPath(new URL(`../../public/${name}`, import.meta.url));
// 180: the size an iPhone's home screen asks for; 192 and 512: what Chromium asks of an installable page.
const SIZES = [180, 192, 512];

const svg = await readFile(publicFile('icon.svg'), 'utf8');
const browser = await chromium.launch({
  executablePath: process.env.CHROMIUM ?? '/usr/bin/chromium',
  args: ['--no-sandbox', '--disable-gpu'],
});
const page = await browser.newPage();
for (const size of SIZES) {
  await page.setViewportSize({ width: size, height: size });
  await page.setContent(`<style>body{margin:0}svg{display:block}</style>${svg}`);
  await page.screenshot({ path: publicFile(`icon-${size}.png`) });
}
await browser.close();
