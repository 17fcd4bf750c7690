import type { PartId } from '../../terms/names.ts';
import { FAN_OF_MOTOR } from '../words/fans.ts';
import type { Finding } from '../utterance.ts';

const FAN_OF: Partial<Record<PartId, PartId>> = {
  condenser: 'condenserFan',
  evaporator: 'evaporatorFan',
};

/** Whichever fan was spoken of before. */
const isBareFan = ({ part, words }: Finding): boolean =>
  OF_COILS.has(part) && /\bfans?\b/i.test(words) && !NAMES_COIL.test(words);
const OF_COILS: ReadonlySet<PartId> = new Set<PartId>(['fan', 'condenserFan', 'evaporatorFan']);
const NAMES_COIL = /\b(?:cond|condenser|condensing|evap|evaporator|outdoor|indoor|box|coil)\b/i;

/** "Fan's noisy, evap fan bearing's going": named behind it, it is that one. */
const fanNamedIn = (next: Finding | undefined): PartId | undefined =>
  next === undefined ? undefined : FAN_OF_MOTOR[next.part];

/** "Both fans are going, the evaporator one and the condenser one": which both are is told. */
const BOTH = /\b(?:both|two|2)\b.*\bfans?\b/i;
const NAMED_BOTH =
  /\b(?:evap|evaporator|inside|box) (?:(?:fan|one|coil) )?and (?:the )?(?:cond|condenser|condensing|outside)\b|\b(?:cond|condenser|condensing|outside) (?:(?:fan|one|coil) )?and (?:the )?(?:evap|evaporator|inside|box)\b/i;
/** "Evaporator and condenser fans are running" */
const OF_BOTH =
  /\b(?:evap|evaporator) and (?:the )?(?:cond|condenser|condensing) fans\b|\b(?:cond|condenser|condensing) and (?:the )?(?:evap|evaporator) fans\b/i;
export function bothFans(findings: readonly Finding[], text: string): readonly Finding[] {
  if (!NAMED_BOTH.test(text)) return findings;
  return findings.flatMap((finding) => {
    const { unresolved, ...rest } = finding;
    const areBoth =
      unresolved === true
        ? BOTH.test(finding.words)
        : /\bfans\b/i.test(finding.words) && OF_BOTH.test(text);
    if (!areBoth || !OF_COILS.has(finding.part)) return [finding];
    return [
      { ...rest, part: 'condenserFan' },
      { ...rest, part: 'evaporatorFan' },
    ] as const;
  });
}

/** "Evap coil clean, both fans going": right behind its coil an unnamed fan is that coil's. */
export function fansOfCoils(findings: readonly Finding[]): readonly Finding[] {
  return findings.map((finding, at) => {
    const { unresolved: _asked, ...rest } = finding;
    const coil = findings[at - 1]?.part;
    const fan =
      (coil === undefined ? undefined : FAN_OF[coil]) ??
      (finding.unresolved === true ? fanNamedIn(findings[at + 1]) : undefined);
    return fan !== undefined && isBareFan(finding) ? { ...rest, part: fan } : finding;
  });
}
