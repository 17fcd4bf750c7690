import { describe, expect, it } from 'vitest';
import { answer } from '../../../core/advice/answer.ts';
import { circuitOf } from '../../../core/advice/circuit/circuit-of.ts';
import type { Verdict } from '../../../core/advice/verdict.ts';
import type { Question, Reading, Utterance } from '../../../core/language/utterance.ts';
import { verdictSaid } from '../../../core/replies/verdict-said.ts';
import type { FindingStateId, PartId, PlaceId } from '../../../core/terms/names.ts';
import { utteranceOf } from '../../support/utterances.ts';
import { read, readings, unitIs, visitOf } from '../visits.ts';

const volts = (place: PlaceId, value: number): Utterance =>
  readings({ ...read('voltage', value, 'V'), place } satisfies Reading);
const found = (part: PartId, state: FindingStateId): Utterance =>
  utteranceOf({ findings: [{ part, state, words: '' }] });
const CONDENSING_UNIT = unitIs(
  { fact: 'refrigerant', value: 'R-448A' },
  { fact: 'equipment', value: 'remoteCondensingUnit' },
  { fact: 'metering', value: 'txv' },
);
const STANDS = found('compressor', 'notRunning');

const ask = (ask_: 'causes' | 'nextCheck', ...said: readonly Utterance[]): Verdict =>
  answer({ ask: ask_ } satisfies Question, visitOf(said), { lastAnswer: null });
const POLES = { next: 'step', step: 'readPoles' };

/** Partial voltage across a closed contact, from a few percent of the supply, is a resistive contact: common practice. */
describe('voltage lost across the contactor', () => {
  const lost = [CONDENSING_UNIT, STANDS, volts('lineSide', 234), volts('loadSide', 190)];

  it('leads to its poles and its coil, and to no charge', () => {
    expect(ask('nextCheck', ...lost)).toMatchObject(POLES);
    const causes = ask(
      'causes',
      ...lost,
      found('contactor', 'closed'),
      found('contactor', 'noisy'),
    );
    expect(causes).toMatchObject({ causes: [], next: POLES });
    expect(verdictSaid(causes).text).toBe(
      'The contactor loses voltage pulled in: burnt contacts, or a loose lug. Read across each pole, and the coil voltage.',
    );
  });

  it('has what was read for its inputs, and the caution for live work', () => {
    expect(ask('nextCheck', ...lost)).toMatchObject({
      inputs: [
        { name: 'voltage', value: 234, place: 'lineSide' },
        { name: 'voltage', value: 190, place: 'loadSide' },
      ],
      cautions: ['liveWork'],
    });
  });

  it.each([
    ['nothing to speak of', 234, 231],
    ['all of it: the contacts are open', 234, 0],
    ['what leaks past open contacts', 234, 60],
    ['without a supply', 3, 1],
  ])('is not it where that is %s', (_what, line, load) => {
    const said = [CONDENSING_UNIT, STANDS, volts('lineSide', line), volts('loadSide', load)];
    expect(ask('nextCheck', ...said)).not.toMatchObject(POLES);
  });

  it.each<[string, Utterance]>([
    ['it was told not pulled in', found('contactor', 'open')],
    [
      'it was replaced since',
      utteranceOf({ work: [{ did: 'replace', part: 'contactor', words: '' }] }),
    ],
  ])('is not it where %s', (_why, said) => {
    expect(ask('nextCheck', ...lost, said)).not.toMatchObject(POLES);
  });

  it('is not the load side of a switch that was just named', () => {
    const said = [volts('lineSide', 234), volts('highPressureSwitch', 2), volts('loadSide', 190)];
    expect(ask('nextCheck', CONDENSING_UNIT, STANDS, ...said)).not.toMatchObject(POLES);
  });
});

describe('a condensing unit on one phase', () => {
  const plate = (words: string): Utterance =>
    utteranceOf({ facts: [{ fact: 'nameplate', item: 'voltage', value: 208, unit: 'V', words }] });
  const traced = (...said: readonly Utterance[]): string | undefined =>
    circuitOf(visitOf([CONDENSING_UNIT, ...said]))?.id;

  it.each<[string, Utterance]>([
    ['its plate', plate('tag says two oh eight two thirty single phase')],
    ['its run capacitor', readings({ ...read('capacitance', 33, 'uF'), place: 'runCapacitor' })],
    ['its start relay', found('startRelay', 'ok')],
    ['its 115 V', unitIs({ fact: 'nameplate', item: 'voltage', value: 115, unit: 'V' })],
  ])('is known by %s, and has no third leg to put leads on', (_by, said) => {
    expect(traced(said)).toBe('condensingUnitSinglePhase');
    const asked = ask('nextCheck', CONDENSING_UNIT, said, STANDS, volts('lineSide', 234));
    expect(verdictSaid(asked).text).not.toMatch(/line two|line three|leg/i);
  });

  it('is not taken for granted', () => {
    expect(traced()).toBe('remoteCondensingUnit');
    expect(traced(plate('two oh eight three phase'))).toBe('remoteCondensingUnit');
    expect(traced(found('startRelay', 'ok'), volts('lineTwoThree', 208))).toBe(
      'remoteCondensingUnit',
    );
  });
});
