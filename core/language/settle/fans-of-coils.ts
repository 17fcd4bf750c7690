import type { PartId } from '../../terms/names.ts';
import type { Finding } from '../utterance.ts';

const FAN_OF: Partial<Record<PartId, PartId>> = {
  condenser: 'condenserFan',
  evaporator: 'evaporatorFan',
};

/** "Evap coil clean, both fans going": right behind its coil an unnamed fan is that coil's. */
export function fansOfCoils(findings: readonly Finding[]): readonly Finding[] {
  return findings.map((finding, at) => {
    const { unresolved, ...rest } = finding;
    const coil = findings[at - 1]?.part;
    const fan = coil === undefined ? undefined : FAN_OF[coil];
    const isBare = unresolved === true && finding.part === 'fan';
    return isBare && fan !== undefined ? { ...rest, part: fan } : finding;
  });
}
