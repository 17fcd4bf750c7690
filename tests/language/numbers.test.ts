import { describe, expect, it } from 'vitest';
import { EMPTY_CONTEXT } from '../../core/language/context.ts';
import { understand } from '../../core/language/understand.ts';
import { spell, spellClipped } from './speller.ts';

/** Vacuum in microns may be anything up to an atmosphere, so only values below zero are doubted. */
const heard = (words: string): number | undefined => {
  const { readings, doubts } = understand(`vacuum ${words} microns`, EMPTY_CONTEXT);
  return [...readings, ...doubts][0]?.value;
};

const upTo = (count: number): readonly number[] => Array.from({ length: count + 1 }, (_, n) => n);
const misread = (values: readonly number[], say: (value: number) => string) =>
  values.filter((value) => heard(say(value)) !== value).map(say);

describe('numbers', { timeout: 180_000 }, () => {
  it('reads every whole number to 9,999 in full words', () => {
    expect(misread(upTo(9999), spell)).toEqual([]);
  });

  it('reads every whole number to 2,000 with "and" after the hundreds', () => {
    const withAnd = (value: number) => spell(value).replace(/hundred (?=\w)/, 'hundred and ');
    expect(misread(upTo(2000), withAnd)).toEqual([]);
  });

  it('reads every number from 101 to 999 with its hundred dropped', () => {
    const values = upTo(999).filter((value) => value > 100 && value % 100 > 0);
    expect(misread(values, spellClipped)).toEqual([]);
  });

  it('reads tenths behind a dropped hundred: "one oh six point two"', () => {
    const values = upTo(9999).filter((value) => value > 1010 && value % 10 > 0 && value % 1000 > 9);
    const clipped = (value: number) =>
      `${spellClipped(Math.trunc(value / 10))} point ${spell(value % 10)}`;
    const each = values.filter((value) => Math.trunc(value / 10) % 100 > 0 && value % 7 === 0);
    expect(each.length).toBeGreaterThan(1000);
    expect(each.filter((value) => heard(clipped(value)) !== value / 10).map(clipped)).toEqual([]);
  });

  it('reads every three figures said one by one', () => {
    const byFigure = (value: number) =>
      Array.from(String(value), (each) => spell(Number(each))).join(' ');
    expect(
      misread(
        upTo(999).filter((value) => value > 99),
        byFigure,
      ),
    ).toEqual([]);
  });

  it('reads every tenth from −100 to 1,000, in words and in figures', () => {
    const tenths = upTo(11_000)
      .map((value) => (value - 1000) / 10)
      .filter((value) => value % 1 !== 0);
    const pointed = (value: number) => {
      const [whole = '', tenth = ''] = String(Math.abs(value)).split('.');
      return `${value < 0 ? 'minus ' : ''}${spell(Number(whole))} point ${spell(Number(tenth))}`;
    };
    expect(misread(tenths, pointed)).toEqual([]);
    expect(misread(tenths, String)).toEqual([]);
  });

  it('reads whole numbers to 9,999 in figures, with a comma or without', () => {
    const values = upTo(1400).map((value) => value * 7);
    expect(misread(values, String)).toEqual([]);
    expect(misread(values, (value) => value.toLocaleString('en-US'))).toEqual([]);
  });
});

describe('a number with more figures than can be reckoned with', () => {
  it('stays one that can be kept and sent', () => {
    const { doubts, readings, unclaimed } = understand(`head ${'9'.repeat(400)}`, EMPTY_CONTEXT);
    const values = [...doubts, ...readings].flatMap(({ value }) => value ?? []);
    expect([...values, ...unclaimed.map(Number)].every(Number.isFinite)).toBe(true);
    expect(values.length + unclaimed.length).toBe(1);
  });
});
