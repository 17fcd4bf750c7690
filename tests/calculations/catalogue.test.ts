import { describe, expect, it } from 'vitest';
import { listCalculations, runCalculation } from '../../core/calculations/catalogue.ts';
import { superheatFormula } from '../../core/calculations/superheat.ts';

/** The ids and keys that the command line's contract fixes. */
const CONTRACT: Record<string, readonly string[]> = {
  saturationPressure: ['refrigerant', 'temperature', 'phase', 'altitude'],
  saturationTemperature: ['refrigerant', 'pressure', 'phase', 'altitude'],
  superheat: ['refrigerant', 'suctionPressure', 'suctionLineTemp', 'altitude'],
  subcooling: ['refrigerant', 'headPressure', 'liquidLineTemp', 'altitude'],
  condensingTarget: ['ambientTemp', 'split', 'equipment'],
  evaporatingTarget: ['metering', 'boxTemp', 'setpointTemp', 'temperatureDifference', 'equipment'],
  compressionRatio: ['suctionPressure', 'headPressure'],
  nitrogenPressure: ['pressure', 'from', 'to'],
  voltageImbalance: ['ab', 'bc', 'ca'],
  runCapacitance: ['current', 'voltage', 'frequency'],
  leakRate: ['added', 'charge', 'days'],
  cylinderFill: ['refrigerant', 'waterCapacity', 'tare'],
};

const SUPERHEAT = { refrigerant: 'R-134a', suctionPressure: '20psi', suctionLineTemp: '30F' };

function knownResult(name: string, inputs: Record<string, string>) {
  const result = runCalculation(name, inputs);
  if (!('value' in result)) throw new Error(`no value: ${JSON.stringify(result)}`);
  return result;
}

describe('the catalogue', () => {
  it.each(Object.entries(CONTRACT))('knows %s by its keys', (name, keys) => {
    const listed = listCalculations().find((each) => each.name === name);
    expect(listed?.keys.map(({ key }) => key)).toEqual(expect.arrayContaining([...keys]));
  });

  it('takes the air at the gauge from a barometer as well, in whatever it is marked', () => {
    const at5000ft = knownResult('superheat', { ...SUPERHEAT, altitude: '5000ft' }).value;
    for (const barometer of ['12.228psia', '24.896inHg', '84.307kPa', '0.84307bara']) {
      expect(knownResult('superheat', { ...SUPERHEAT, barometer }).value).toBeCloseTo(at5000ft, 2);
    }
    const every = listCalculations().map(({ keys }) => keys.map(({ key }) => key));
    const takesAltitude = every.filter((keys) => keys.includes('altitude'));
    expect(takesAltitude.length).toBeGreaterThan(10);
    expect(takesAltitude.filter((keys) => !keys.includes('barometer'))).toEqual([]);
  });

  it('says with the caution by how much printed charts differ, and which', () => {
    const inputs = { refrigerant: 'R-407C', pressure: '138psi', phase: 'bubble' };
    expect(knownResult('saturationTemperature', inputs)).toMatchObject({
      cautions: ['chartsDiffer'],
      chartsDiffer: { upTo: { value: 1.1, unit: 'dF' }, fromMemory: false },
    });
    const metric = { ...inputs, pressure: '9.5bar' };
    expect(knownResult('saturationTemperature', metric)).toMatchObject({
      chartsDiffer: { upTo: { value: 0.6, unit: 'dC' } },
    });
    expect(knownResult('superheat', SUPERHEAT)).not.toHaveProperty('chartsDiffer');
  });

  it('stands each entry beside its equation, range and source', () => {
    for (const { name, formula, range, source, symbols } of listCalculations()) {
      expect([name, formula.length > 3, range.length > 3, source.length > 3]).toEqual([
        name,
        true,
        true,
        true,
      ]);
      expect(symbols.every(({ meaning, unit }) => meaning !== '' && unit !== '')).toBe(true);
    }
  });

  it('answers with everything needed to check it', () => {
    const { value, ...rest } = knownResult('superheat', { ...SUPERHEAT, altitude: '5000ft' });
    // 30 °F less 18.7 °F, the dew point of 20 psig under 12.23 psia of air.
    expect(value).toBeCloseTo(11.3, 1);
    expect(rest).toEqual({
      name: 'superheat',
      unit: 'dF',
      inputs: {
        refrigerant: 'R-134a',
        suctionPressure: { value: 20, unit: 'psi' },
        suctionLineTemp: { value: 30, unit: 'degF' },
        altitude: { value: 5000, unit: 'ft' },
      },
      formula: 'SH = T − Tdew(P)',
      range: superheatFormula.range,
      source: 'achrnews.com/articles/96890, Understanding superheat',
      standing: 'published',
      cautions: [],
    });
  });

  it('is metric for metric inputs, and reads an absolute unit as absolute', () => {
    const at = (pressure: string) =>
      knownResult('saturationTemperature', { refrigerant: 'R-134a', pressure });
    expect(at('1.379bar').unit).toBe('degC');
    expect(at('1.379bar').value).toBeCloseTo(at('2.39225bara').value, 4);
  });

  it.each(['r134a', '134A', 'R134A', 'r-134a'])('takes %s for R-134a', (refrigerant) => {
    const inputs = { ...SUPERHEAT, refrigerant };
    expect(runCalculation('superheat', inputs)).toMatchObject({
      inputs: { refrigerant: 'R-134a' },
    });
  });
});

describe('inputs that cannot be used', () => {
  it.each([
    ['superheat', { ...SUPERHEAT, head: '200psi' }, ['head', 'use refrigerant, suctionPressure']],
    ['superheat', { refrigerant: 'R-134a' }, ['suctionPressure', 'add suctionPressure=…']],
    ['superheat', { ...SUPERHEAT, suctionLineTemp: '30dF' }, ['suctionLineTemp', 'one of F, C']],
    ['superheat', { ...SUPERHEAT, suctionPressure: '20' }, ['suctionPressure', 'psi, inHg']],
    ['superheat', { ...SUPERHEAT, suctionPressure: 'low' }, ['suctionPressure', 'a number']],
    ['superheat', { ...SUPERHEAT, refrigerant: 'R-999' }, ['refrigerant', 'R-448A']],
    ['superheat', { ...SUPERHEAT, altitude: '90000ft' }, ['altitude', 'between -500 and 6000 m']],
    ['superheat', { ...SUPERHEAT, barometer: '14psi', altitude: '1ft' }, ['barometer', 'not both']],
    ['superheat', { ...SUPERHEAT, barometer: '3psi' }, ['barometer', 'between 45 and 112 kPa']],
    ['saturationPressure', { refrigerant: 'R-448A', temperature: '30F' }, ['phase', 'phase=dew']],
    ['condensingTarget', { ambientTemp: '95F' }, ['split', 'equipment=']],
    [
      'evaporatingTarget',
      { metering: 'txv', temperatureDifference: '10dF' },
      ['boxTemp', 'give boxTemp'],
    ],
    [
      'evaporatingTarget',
      { metering: 'orifice', boxTemp: '38F', temperatureDifference: '10dF' },
      ['setpointTemp', 'give setpointTemp'],
    ],
    [
      'split',
      { ambientTemp: '95F', headPressure: '200psi' },
      ['condensingTemp', 'both refrigerant'],
    ],
    ['nosuch', {}, ['name', 'use one of saturationPressure']],
    ['toString', {}, ['name', 'use one of']],
    ['superheat', { ...SUPERHEAT, constructor: '1' }, ['constructor', 'no key']],
  ])('%s %o', (name, inputs, [key, part]) => {
    const result = runCalculation(name, inputs);
    expect(result).toMatchObject({ name, badInput: { key } });
    if ('badInput' in result) expect(result.badInput.message).toContain(part);
  });
});

describe('refusals', () => {
  it.each([
    [
      'saturationPressure',
      { refrigerant: 'R-744', temperature: '95F' },
      { reason: 'aboveCritical', refrigerant: 'R-744', limit: 87.7608, unit: 'degF' },
    ],
    [
      'saturationPressure',
      { refrigerant: 'R-744', temperature: '35C' },
      { reason: 'aboveCritical', refrigerant: 'R-744', limit: 30.9782, unit: 'degC' },
    ],
    [
      'saturationTemperature',
      { refrigerant: 'R-134a', pressure: '-28inHg' },
      { reason: 'belowRange', refrigerant: 'R-134a', limit: 2.307, unit: 'psia' },
    ],
    [
      'superheat',
      { ...SUPERHEAT, suctionPressure: '-30inHg' },
      {
        reason: 'impossibleVacuum',
        value: -0.0387,
        unit: 'psia',
        likely: ['instrumentOrProbeSlipped', 'otherAltitude'],
      },
    ],
    [
      'superheat',
      { ...SUPERHEAT, suctionLineTemp: '10F' },
      {
        reason: 'belowZeroSuperheat',
        value: -12.188,
        unit: 'dF',
        likely: ['instrumentOrProbeSlipped', 'otherRefrigerant', 'liquidComingBack'],
      },
    ],
    [
      'compressionRatio',
      { suctionPressure: '200psi', headPressure: '20psi' },
      {
        reason: 'suctionAboveHead',
        likely: ['hosesSwapped', 'compressorOff', 'instrumentOrProbeSlipped'],
      },
    ],
    ['superheatTarget', { equipment: 'iceMachine' }, { reason: 'noTargetKnown' }],
    ['leakRate', { added: '5lb', charge: '50lb', days: '0' }, { reason: 'ruleDoesNotApply' }],
    ['leakRate', { added: '5lb', charge: '0lb', days: '30' }, { reason: 'notPositive' }],
    [
      'cylinderFill',
      { refrigerant: 'R-744', waterCapacity: '50lb', tare: '30lb' },
      { reason: 'ruleDoesNotApply' },
    ],
    ['voltageImbalance', { ab: '230V', bc: '0V', ca: '230V' }, { reason: 'notPositive' }],
  ])('%s %o', (name, inputs, refused) => {
    expect(runCalculation(name, inputs)).toEqual({ name, refused });
  });
});
