import { describe, expect, it } from 'vitest';
import { NO_NAMES } from '../../../core/language/names/known-names.ts';
import type { Heard } from '../../../client/ear/ear.ts';
import type {
  RecogniserReport,
  SentenceRecogniser,
} from '../../../client/ear/sentence-recogniser.ts';
import { Supervisor } from '../../../client/ear/supervisor.ts';
import { handClock, offered } from '../scripted.ts';
import { SilentTrack } from './silent-track.ts';

function setUp() {
  const clock = handClock();
  const starts: string[] = [];
  const reports: ((report: RecogniserReport) => void)[] = [];
  const heard: Heard[] = [];
  let aborts = 0;
  const recogniser: SentenceRecogniser = {
    load: () => Promise.resolve(),
    start: ({ grammars, report }) => {
      starts.push(grammars.map(({ text }) => text).join());
      reports.push(report);
    },
    abort: () => {
      aborts += 1;
    },
  };
  const supervisor = new Supervisor({
    recogniser,
    clock,
    grammarsFor: (expectation) => [{ text: `grammar of ${expectation}`, weight: 1 }],
    report: (one) => heard.push(one),
  });
  const track = new SilentTrack();
  return {
    clock,
    starts,
    heard,
    supervisor,
    track,
    aborts: () => aborts,
    listen: (expectation: 'anything' | 'number' = 'anything') =>
      supervisor.listen({ track, expectation, names: NO_NAMES }),
    tell: (...told: RecogniserReport[]) => {
      for (const report of told) reports.at(-1)?.(report);
    },
    tellFirst: (report: RecogniserReport) => reports[0]?.(report),
    /** As a session does that heard silence for as long as it waits. */
    silence: () => {
      clock.advance(8_000);
      reports.at(-1)?.({ kind: 'error', error: 'no-speech' });
      reports.at(-1)?.({ kind: 'ended' });
    },
  };
}

describe('a supervised recogniser', () => {
  it('is started with the grammar of what is expected, and its words are passed on once', () => {
    const { listen, tell, starts, heard } = setUp();
    listen('number');
    tell({ kind: 'hearing' }, offered(' one ninety two '), { kind: 'ended' });
    expect(starts).toEqual(['grammar of number']);
    expect(heard).toEqual([{ kind: 'hearing' }, offered('one ninety two')]);
  });

  it('passes on all that is offered, in its order, without what is empty', () => {
    const { listen, tell, heard } = setUp();
    listen();
    tell(offered('head', ' ', ' bed'), { kind: 'ended' });
    expect(heard).toEqual([offered('head', 'bed')]);
    listen();
    tell(offered(' '), { kind: 'ended' });
    expect(heard.at(-1)).toEqual({ kind: 'unclear' });
  });

  it('hears nothing more after a sentence until it is asked to', () => {
    const { listen, tell, starts } = setUp();
    listen();
    tell(offered('head'), { kind: 'ended' });
    expect(starts).toHaveLength(1);
    listen();
    expect(starts).toHaveLength(2);
  });

  it('goes on through silence, which is no error to the person', () => {
    const { listen, silence, starts, heard } = setUp();
    listen();
    for (let times = 0; times < 20; times += 1) silence();
    expect(starts).toHaveLength(21);
    expect(heard).toEqual([]);
  });

  it('never starts before the last one has ended', () => {
    const { listen, tell, starts, supervisor, aborts } = setUp();
    listen();
    supervisor.gate();
    listen('number');
    expect(aborts()).toBe(1);
    expect(starts).toHaveLength(1);
    tell({ kind: 'error', error: 'aborted' }, { kind: 'ended' });
    expect(starts).toEqual(['grammar of anything', 'grammar of number']);
  });

  it('starts all the same when an end never comes', () => {
    const { listen, starts, supervisor, clock } = setUp();
    listen();
    supervisor.gate();
    listen();
    clock.advance(10_000);
    expect(starts).toHaveLength(2);
  });

  it('takes no notice of a session given up for lost', () => {
    const { listen, starts, supervisor, clock, tellFirst, heard } = setUp();
    listen();
    supervisor.gate();
    listen();
    clock.advance(10_000);
    tellFirst(offered('from before'));
    expect(heard).toEqual([]);
    expect(starts).toHaveLength(2);
  });

  it('lets nothing through that was on its way when the ear was closed', () => {
    const { listen, tell, supervisor, heard } = setUp();
    listen();
    supervisor.gate();
    tell(offered('late'), { kind: 'ended' });
    expect(heard).toEqual([]);
  });

  it('calls speech without words unclear', () => {
    const { listen, tell, heard } = setUp();
    listen();
    tell({ kind: 'noMatch' }, { kind: 'ended' });
    expect(heard).toEqual([{ kind: 'unclear' }]);
  });

  it('waits longer after each failure, then says that it cannot hear', () => {
    const { listen, tell, starts, heard, clock } = setUp();
    const fail = () => tell({ kind: 'error', error: 'service-not-allowed' }, { kind: 'ended' });
    listen();
    fail();
    expect(starts).toHaveLength(1);
    clock.advance(250);
    expect(starts).toHaveLength(2);
    fail();
    clock.advance(250);
    expect(starts).toHaveLength(2);
    for (let times = 0; times < 4; times += 1) {
      clock.advance(10_000);
      fail();
    }
    expect(heard).toEqual([{ kind: 'deaf', why: 'recogniserFailed' }]);
    clock.advance(60_000);
    expect(heard).toHaveLength(1);
  });

  it('does not spin when sessions end at once', () => {
    const { listen, tell, starts } = setUp();
    listen();
    for (let times = 0; times < 50; times += 1) tell({ kind: 'ended' });
    expect(starts).toHaveLength(1);
  });

  it('tells a refused microphone from one that went away', () => {
    const refused = setUp();
    refused.listen();
    refused.tell({ kind: 'error', error: 'not-allowed' });
    expect(refused.heard).toEqual([{ kind: 'deaf', why: 'refused' }]);
    const gone = setUp();
    gone.listen();
    gone.track.stop();
    gone.tell({ kind: 'error', error: 'audio-capture' });
    expect(gone.heard).toEqual([{ kind: 'deaf', why: 'takenAway' }]);
  });

  it('hears nothing out of sight, throws away what was half heard, and goes on in view', () => {
    const { listen, tell, starts, supervisor, heard, clock } = setUp();
    listen('number');
    supervisor.hide();
    tell(offered('half a sent'), { kind: 'error', error: 'aborted' }, { kind: 'ended' });
    clock.advance(600_000);
    expect([starts.length, heard]).toEqual([1, []]);
    expect(supervisor.show()).toBe(true);
    expect(starts).toEqual(['grammar of number', 'grammar of number']);
  });

  it('out of sight keeps in mind what is wanted last, if anything', () => {
    const { listen, tell, starts, supervisor } = setUp();
    supervisor.hide();
    listen('number');
    listen();
    expect(starts).toEqual([]);
    expect(supervisor.show()).toBe(true);
    expect(starts).toEqual(['grammar of anything']);
    supervisor.hide();
    tell({ kind: 'ended' });
    supervisor.gate();
    expect(supervisor.show()).toBe(false);
    expect(starts).toHaveLength(1);
  });

  it('takes up a try that was waiting when the page went out of sight', () => {
    const { listen, tell, starts, supervisor, clock } = setUp();
    listen();
    tell({ kind: 'error', error: 'service-not-allowed' }, { kind: 'ended' });
    supervisor.hide();
    clock.advance(60_000);
    expect(starts).toHaveLength(1);
    expect(supervisor.show()).toBe(true);
    expect(starts).toHaveLength(2);
  });
});
