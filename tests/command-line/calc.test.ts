import { describe, expect, it } from 'vitest';
import { gloveside } from '../support/fake-terminal.ts';

const calc = (...words: string[]) => gloveside(['calc', ...words]);

async function printed(...words: string[]): Promise<unknown> {
  const { status, printed: lines, complaints } = await calc(...words);
  expect([status, complaints, lines.length]).toEqual([0, [], 1]);
  return JSON.parse(lines[0] ?? '');
}

describe('calc', () => {
  // Printed R-134a charts put 20 psi between 22 and 23 °F (from memory): 40 − 22.5 = 17.5, to half a degree.
  it('prints the value with its unit, inputs and where it comes from', async () => {
    const result = await printed(
      'superheat',
      'refrigerant=R-134a',
      'suctionPressure=20psi',
      'suctionLineTemp=40F',
    );
    expect(result).toMatchObject({
      name: 'superheat',
      unit: 'dF',
      inputs: { refrigerant: 'R-134a', suctionPressure: { value: 20, unit: 'psi' } },
    });
    expect(result).toHaveProperty('value', expect.closeTo(17.5, 0));
    for (const key of ['formula', 'range', 'source', 'cautions']) {
      expect(result).toHaveProperty(key);
    }
  });

  it('takes values below zero', async () => {
    const result = await printed(
      'saturationPressure',
      'refrigerant=R-404A',
      'temperature=-20F',
      'phase=dew',
    );
    expect(result).toMatchObject({ inputs: { temperature: { value: -20, unit: 'degF' } } });
  });

  it('prints a refusal as an answer, with status 0', async () => {
    const result = await printed(
      'saturationPressure',
      'refrigerant=R-134a',
      'temperature=300F',
      'phase=dew',
    );
    expect(result).toHaveProperty('refused.reason', 'aboveCritical');
  });

  it.each([
    [['sperheat'], /no calculation "sperheat".*superheat/],
    [['superheat', 'refrigerant=R-134a'], /suctionPressure is missing/],
    [['superheat', 'refrigerant'], /"refrigerant" as key=value/],
    [['superheat', 'colour=red'], /no key "colour"/],
    [['superheat', 'altitude=1m', 'altitude=2m'], /altitude is given twice/],
    [['superheat', 'refrigerant=R-9'], /R-134a.*not "R-9"/],
    [
      ['saturationPressure', 'refrigerant=R-134a', 'temperature=40psi'],
      /temperature is written in/,
    ],
    [['saturationPressure', 'refrigerant=R-134a', 'temperature=warm'], /"warm".*number/],
    [['superheat', '__proto__=1'], /no key/],
    [['--list', 'superheat'], /--list stands alone/],
  ])('refuses %j in one line with status 2', async (words, says) => {
    const { status, printed: lines, complaints } = await calc(...words);
    expect([status, lines]).toEqual([2, []]);
    expect(complaints).toHaveLength(1);
    expect(complaints[0]).toMatch(says);
    expect(complaints[0]).not.toContain('\n');
  });

  it('lists the calculations by the names that are agreed, with keys, units and source', async () => {
    const { status, printed: lines } = await calc('--list');
    expect(status).toBe(0);
    const rows = lines.map((line): unknown => JSON.parse(line));
    for (const row of rows) {
      for (const key of ['name', 'keys', 'units', 'source']) expect(row).toHaveProperty(key);
    }
    const text = lines.join('\n');
    for (const name of AGREED) expect(text).toContain(`{"name":"${name}"`);
  });
});

const AGREED = [
  'saturationPressure',
  'saturationTemperature',
  'superheat',
  'subcooling',
  'condensingTarget',
  'evaporatingTarget',
  'compressionRatio',
  'nitrogenPressure',
  'voltageImbalance',
  'runCapacitance',
  'leakRate',
  'cylinderFill',
];
