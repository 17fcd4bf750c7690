import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';

const css = readFileSync(new URL('../../../client/page.css', import.meta.url), 'utf8');
const [bright = '', dark = ''] = css.split('@media (prefers-color-scheme: dark)');

function colour(name: string, block: string): string {
  const found = new RegExp(`--${name}: (#[0-9a-f]{6})`).exec(block)?.[1];
  if (!found) throw new Error(`no --${name}`);
  return found;
}

/** Relative luminance and contrast ratio as WCAG 2.2 defines them. */
function luminance(hex: string): number {
  const [r = 0, g = 0, b = 0] = [1, 3, 5].map((at) => {
    const channel = parseInt(hex.slice(at, at + 2), 16) / 255;
    return channel <= 0.04045 ? channel / 12.92 : ((channel + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * r + 0.7152 * g + 0.0722 * b;
}

function contrast(a: string, b: string): number {
  const [high = 0, low = 0] = [luminance(a), luminance(b)].toSorted((x, y) => y - x);
  return (high + 0.05) / (low + 0.05);
}

describe.each([
  ['bright', bright],
  ['dark', dark],
])('on %s ground', (_name, block) => {
  it.each(['ink', 'quiet'])('%s text has at least 7:1', (text) => {
    expect(contrast(colour(text, block), colour('ground', block))).toBeGreaterThanOrEqual(7);
    expect(contrast(colour(text, block), colour('raised', block))).toBeGreaterThanOrEqual(7);
  });

  it('lines have at least 4.5:1', () => {
    expect(contrast(colour('line', block), colour('ground', block))).toBeGreaterThanOrEqual(4.5);
  });
});

describe('the signal colour', () => {
  it('carries text at 7:1', () => {
    expect(contrast(colour('on-signal', bright), colour('signal', bright))).toBeGreaterThanOrEqual(
      7,
    );
  });

  it('is used for the asking field and nothing else', () => {
    const uses = [...css.matchAll(/([^{}]+)\{[^{}]*var\(--signal\)[^{}]*\}/g)];
    expect(uses.map(([, selector]) => selector?.trim())).toEqual([".field[data-mode='asking']"]);
  });
});

it('the measure itself: black on white is 21, and WCAG’s own grey example 4.54', () => {
  expect(contrast('#000000', '#ffffff')).toBeCloseTo(21, 5);
  expect(contrast('#767676', '#ffffff')).toBeCloseTo(4.54, 2);
});
