import { describe, expect, it } from 'vitest';
import { runCalculation } from '../../core/calculations/catalogue.ts';

describe('cautions', () => {
  it.each([
    ['saturationPressure', { refrigerant: 'R-290', temperature: '70F' }, 'flammable'],
    ['saturationPressure', { refrigerant: 'R-717', temperature: '70F' }, 'toxicAmmonia'],
    [
      'saturationPressure',
      { refrigerant: 'R-744', temperature: '70F' },
      'highPressureCarbonDioxide',
    ],
    [
      'saturationPressure',
      { refrigerant: 'R-407C', temperature: '70F', phase: 'bubble' },
      'chartsDiffer',
    ],
    ['voltageImbalance', { ab: '230V', bc: '240V', ca: '232V' }, 'aboveCompressorLimit'],
    ['voltageImbalance', { ab: '200V', bc: '240V', ca: '232V' }, 'doNotOperate'],
    ['runCapacitance', { current: '1A', voltage: '370V', frequency: '60' }, 'liveWork'],
    ['nitrogenPressure', { pressure: '500psi', from: '95F', to: '60F' }, 'pressureTest'],
    [
      'compressionRatio',
      { suctionPressure: '0psi', headPressure: '250psi' },
      'compressionRatioHigh',
    ],
    ['leakRate', { added: '5lb', charge: '50lb', days: '90' }, 'verifyWithAuthority'],
    [
      'cylinderFill',
      { refrigerant: 'R-134a', waterCapacity: '47.7lb', tare: '28lb' },
      'neverOverfill',
    ],
  ])('%s of %o says %s', (name, inputs, caution) => {
    const result = runCalculation(name, inputs);
    expect('cautions' in result && result.cautions).toContain(caution);
  });

  it('are absent where nothing needs one', () => {
    const inputs = { refrigerant: 'R-134a', temperature: '70F' };
    expect(runCalculation('saturationPressure', inputs)).toMatchObject({ cautions: [] });
  });
});
