import { describe, expect, it } from 'vitest';
import { cautionsFor, safetyCautions } from '../../core/advice/cautions.ts';
import type { CautionId } from '../../core/advice/verdict.ts';
import type { SafetyTopic } from '../../core/language/utterance.ts';
import { CAUTION_SENTENCES } from '../../core/replies/caution-sentences.ts';
import { takeTurn } from '../../core/turn/take-turn.ts';
import { EMPTY_MEMORY, type Turn } from '../../core/turn/turn.ts';
import { EMPTY_VISIT } from '../../core/visit/empty-visit.ts';
import { createStamp } from '../support/stamp.ts';

function speak(...lines: readonly string[]): readonly Turn[] {
  const stamp = createStamp();
  return lines.reduce<readonly Turn[]>((before, words) => {
    const { state, memory } = before.at(-1) ?? { state: EMPTY_VISIT, memory: EMPTY_MEMORY };
    return [...before, takeTurn({ state, memory, words, stamp })];
  }, []);
}

const stateAfter = (...lines: readonly string[]) => speak(...lines).at(-1)?.state ?? EMPTY_VISIT;

describe('hazards by the state of the visit', () => {
  const cases: readonly (readonly [CautionId, readonly string[], string | null])[] = [
    [
      'frontSeatedDischarge',
      ['front seated the discharge service valve'],
      'back seated the discharge service valve',
    ],
    [
      'trappedLiquid',
      ['closed the king valve', 'liquid line solenoid is closed'],
      'opened the king valve',
    ],
    ['openUnderVacuum', ['suction two inches of vacuum'], 'suction four'],
    ['noPowerInVacuum', ['down to four hundred microns'], 'suction ten'],
    ['bypassedSafety', ['i jumped out the high pressure switch'], 'jumper is off'],
    ['liquidBurns', ['put my gauges on'], 'gauges are off'],
    ['pressureTest', ['one fifty psi of dry nitrogen at seventy'], null],
    ['neverOverfill', ['recovered three pounds'], null],
    ['capacitorCharge', ['run capacitor thirty four microfarads'], null],
    ['deadAndDisconnected', ['common to run one point two ohms'], null],
    ['airDisplaced', ["it's a walk-in cooler", 'evaporator is leaking'], null],
    ['toxicAmmonia', ["it's on ammonia"], null],
    ['flammable', ["it's on propane"], null],
    ['highPressureCarbonDioxide', ["it's on co2"], null],
  ];

  it.each(cases)('%s stands while its state does', (id, said, ends) => {
    expect(cautionsFor(stateAfter(...said))).toContain(id);
    expect(cautionsFor(stateAfter(...said.slice(0, -1)))).not.toContain(id);
    if (ends !== null) expect(cautionsFor(stateAfter(...said, ends))).not.toContain(id);
  });

  it('is told once while it stands, and again when it comes back', () => {
    const told = CAUTION_SENTENCES.frontSeatedDischarge;
    const close = 'front seated the discharge service valve';
    const turns = speak(close, 'head ninety', 'back seated the discharge service valve', close);
    expect(turns.map(({ reply }) => reply.text.includes(told))).toEqual([true, false, false, true]);
  });
});

describe('asked whether it is safe', () => {
  it.each<[SafetyTopic, string]>([
    ['nitrogen', 'can i use oxygen to test it'],
    ['capacitor', 'can i short the capacitor'],
    ['terminals', 'can i check the terminals'],
    ['cylinder', 'is it safe to heat the cylinder'],
    ['air', 'is it safe to work in here'],
    ['touching', 'can i touch the discharge line'],
    ['lockOut', 'do i need to lock it out'],
    ['handling', 'is this gas flammable'],
    ['underVacuum', 'can i meg the compressor under vacuum'],
  ])(
    '%s: the caution comes first and the answer defers, however often it is asked',
    (topic, said) => {
      const replies = speak(said, said).map(({ reply }) => reply.text);
      const [first] = safetyCautions(topic, EMPTY_VISIT);
      if (first === undefined) throw new Error(`${topic} has no caution`);
      for (const reply of replies) {
        expect(reply.startsWith(CAUTION_SENTENCES[first])).toBe(true);
        expect(reply).toContain('I cannot clear that for you.');
      }
    },
  );

  it('tells of a fire and of a vacuum though the visit knows of neither', () => {
    const burns = speak('do i need to worry about a spark on r two ninety').at(-1)?.reply.text;
    expect(burns).toContain(CAUTION_SENTENCES.mayBurn);
    const empty = speak('can i meg it under vacuum').at(-1)?.reply.text;
    expect(empty).toContain(CAUTION_SENTENCES.noPowerInVacuum);
    const known = speak("it's on propane", 'is this gas flammable').at(-1)?.reply.text;
    expect(known).toContain(CAUTION_SENTENCES.flammable);
    expect(known).not.toContain(CAUTION_SENTENCES.mayBurn);
  });

  it('tells what holds for this unit now', () => {
    const shut = stateAfter('front seated the discharge service valve');
    expect(safetyCautions('energising', shut)).toContain('frontSeatedDischarge');
    expect(safetyCautions('opening', stateAfter('suction two inches of vacuum'))).toContain(
      'openUnderVacuum',
    );
    expect(safetyCautions('opening', stateAfter("it's on co2"))).toContain('dryIce');
    expect(safetyCautions('opening', EMPTY_VISIT)).not.toContain('openUnderVacuum');
  });
});
