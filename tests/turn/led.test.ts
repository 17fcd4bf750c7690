import { describe, expect, it } from 'vitest';
import { draftNote } from '../../core/note/draft-note.ts';
import { EXPLAINED_PARTS, EXPLAINS } from '../../core/terms/explained-parts.ts';
import { PART_SENTENCES } from '../../core/replies/part-sentences.ts';
import { timedVisit, type TimedLine } from '../support/timed-visit.ts';

const heard = (...said: readonly string[]) =>
  timedVisit(...said.map((words, at): TimedLine => [at, words])).last;
const reply = (...said: readonly string[]): string => heard(...said).reply.text;

const REACH_IN = "it's a reach in on one thirty four a with a txv";

describe('whoever asks where something sits that can hurt', () => {
  it.each([
    ['where is the run capacitor', /[Bb]leed|charge/],
    ['where do i find the contactor', /live/],
    ['where is the transformer', /live/],
    ['where is the defrost heater', /live/],
  ])('hears the caution before the place: "%s"', (question, caution) => {
    const { text } = heard(REACH_IN, question).reply;
    expect(text).toMatch(caution);
    expect(text.search(caution)).toBeLessThan(text.search(/[Ii]n the|Near its|In or under/));
  });

  it('hears none where nothing hurts', () => {
    expect(heard(REACH_IN, 'where is the sight glass').reply.text).toMatch(/^In the liquid line/);
  });
});

describe('whoever asks whether it is safe', () => {
  it.each([
    'is it safe to open the panel',
    'how do i make it safe',
    'can i take the cover off the panel',
    'is it safe to stick my hand in the panel',
  ])('hears the usual order and who decides: "%s"', (question) => {
    expect(reply(REACH_IN, question)).toMatch(/I cannot clear it for you/);
  });

  // 29 CFR 1910.147: isolate, lock and tag, relieve what is stored, verify.
  it('is told to lock, to prove the meter and the unit, and to bleed the capacitors', () => {
    const text = reply('how do i make it safe');
    for (const part of [
      'locked at the disconnect',
      'Prove the meter',
      'prove the unit dead',
      'Bleed',
    ])
      expect(text).toContain(part);
  });

  it.each([
    'can i just change it without recovering',
    'can i replace the drier without pumping it down',
    'do i really have to recover to change the drier',
    'can i swap the drier without pulling the charge',
  ])('is told no before a line is opened: "%s"', (question) => {
    const text = reply(REACH_IN, question);
    expect(text).toContain('No: it is under pressure. Pump it down or recover it first');
    expect(text).toContain('gloves and goggles');
    expect(text).toContain('the maker’s procedure');
  });

  // 500 micron, held: a maker's manual at manualarchiveguide.com, page 36.
  it.each([
    'how deep a vacuum do i need',
    'how many microns do i need',
    'what vacuum should i pull',
  ])('hears how deep, that it has to hold, and the maker first: "%s"', (question) => {
    expect(reply(REACH_IN, question)).toContain(
      'The maker’s figure first. Without one five hundred microns',
    );
    expect(heard(REACH_IN, question, 'where does that number come from').reply.text).toContain(
      'manualarchiveguide.com',
    );
  });
});

describe('whoever asks what to make of it', () => {
  const READ = [REACH_IN, 'ambient eighty', 'head one ninety, suction four, box fifty'];

  it.each(['what would tell me which', 'what would tell them apart', 'how do i tell them apart'])(
    'hears the next check: "%s"',
    (question) => {
      expect(heard(...READ, question).verdicts).toMatchObject([{ answer: 'nextCheck' }]);
    },
  );

  it.each(['so what is it', 'so is it low on charge or not'])(
    'hears the causes: "%s"',
    (question) => {
      expect(heard(...READ, question).verdicts).toMatchObject([{ answer: 'causes' }]);
    },
  );

  it.each(['how am i doing', "how's that", 'how does everything look', 'what should i see now'])(
    'hears everything that has a target: "%s"',
    (question) => {
      const [verdict] = heard(...READ, question).verdicts;
      expect(verdict).toMatchObject({ answer: 'overall' });
      const rows = verdict?.kind === 'known' && verdict.answer === 'overall' ? verdict.rows : [];
      expect(rows.map(({ about }) => about)).toEqual(
        expect.arrayContaining(['headPressure', 'suctionPressure', 'superheat']),
      );
      expect(rows.find(({ about }) => about === 'suctionPressure')).toMatchObject({ measured: 4 });
    },
  );

  it('hears no reading of before the work as how it runs now', () => {
    const [verdict] = heard(...READ, 'brushed the condenser', 'what should i see now').verdicts;
    const rows = verdict?.kind === 'known' && verdict.answer === 'overall' ? verdict.rows : [];
    expect(rows.length).toBeGreaterThan(1);
    expect(rows.every(({ measured }) => measured === null)).toBe(true);
  });

  it('is not told of a vacuum that is over', () => {
    expect(
      reply(...READ, 'vacuum four hundred microns', 'king valve open', 'what should i see now'),
    ).not.toContain('vacuum');
  });

  it.each(['how long do i wait', 'how long should i let it run'])(
    'hears how long: "%s"',
    (question) => {
      expect(reply(REACH_IN, question)).toContain('Ten to twenty minutes after a change');
      expect(reply(REACH_IN, 'ten minutes on the vacuum', question)).not.toContain('Ten to twenty');
    },
  );
});

describe('whoever asks what to tell and what to come back for', () => {
  const DONE = [
    REACH_IN,
    "condenser's plugged",
    'brushed the condenser',
    'they should replace the door gasket',
  ];

  it.each(['what do i tell the manager', 'should i tell them anything', 'what do i tell them'])(
    'hears what the customer gets of the note: "%s"',
    (question) => {
      const text = reply(...DONE, question);
      expect(text).toContain('the coil that gets rid of the heat was clogged');
      expect(text).not.toContain('screen');
    },
  );

  it('hears what is recommended and left open, and judges it', () => {
    const text = reply(...DONE, 'jumped out the low pressure switch', 'should i come back');
    expect(text).toContain('That is yours to judge.');
    expect(text).toContain('replace the door gasket');
    expect(text).toContain('jumped out');
    expect(reply(REACH_IN, 'should i come back')).toContain('nothing you told me is recommended');
  });

  it.each(['can they keep it', 'can they sell it', 'is it still good'])(
    'hears the rule for the food that was probed: "%s"',
    (question) => {
      const text = reply(REACH_IN, 'lettuce is forty four', question);
      expect(text).toContain('for the operator and the health authority');
      // 41 °F: WAC 246-215-03525.
      expect(text).toContain('over the usual limit of 41');
      expect(reply(REACH_IN, 'ambient eighty', question)).not.toContain('41');
    },
  );
});

describe('whoever asks of a part', () => {
  it.each([
    ["what's a solenoid do", 'shuts the liquid line'],
    ['what does the receiver do', 'holds the liquid'],
    ["where's the nameplate usually", 'condensing unit’s side'],
    ['where do i find the receiver', 'behind the condenser’s outlet'],
    ['where do i find the low pressure switch', 'Near the compressor'],
    ['where is the sight glass', 'right behind the drier'],
    ["what's the accumulator for", 'catches liquid'],
    ['what is a contactor', 'switches the compressor’s power'],
  ])('hears what it does or where it usually sits: "%s"', (question, says) => {
    expect(reply(question)).toContain(says);
  });

  it('is told of the same one by "it"', () => {
    expect(reply("what's a solenoid do", 'where do i find it')).toContain('In the liquid line');
  });

  it('hears that it is common practice', () => {
    expect(reply('what does the receiver do', 'where does that come from')).toContain(
      'common practice',
    );
  });

  it('is refused of what has no words here, with what can be asked', () => {
    expect(reply('what does the hinge do')).toContain('Ask what one of the circuit does');
  });

  it('hears a sentence of each', () => {
    for (const part of EXPLAINED_PARTS)
      for (const of of EXPLAINS) expect(PART_SENTENCES[part][of]).toMatch(/^[A-Z][^.]+\.$/);
  });

  it('is not meant where a value is asked for', () => {
    expect(heard(REACH_IN, 'suction is nine', 'where is suction').verdicts).toMatchObject([
      { answer: 'value' },
    ]);
  });
});

describe('what is not to be had', () => {
  const LOOKED = [REACH_IN, "condenser's clean", 'evaporator fan is running'];

  it.each(["i haven't got gauges on", 'no gauges on yet', "gauges aren't on"])(
    'steers the next check away from the gauges: "%s"',
    (said) => {
      const { verdicts, state } = heard(...LOOKED, said);
      expect(verdicts).toMatchObject([{ answer: 'nextCheck' }]);
      expect(verdicts).not.toMatchObject([{ need: 'headPressure' }]);
      expect(state.preparations).toEqual([]);
    },
  );

  it('leaves the check that cannot be got at', () => {
    const next = heard(...LOOKED, 'what next').verdicts;
    const other = heard(...LOOKED, 'what next', "i can't get to it").verdicts;
    expect(other).toMatchObject([{ answer: 'nextCheck' }]);
    expect(other).not.toEqual(next);
  });

  it('lets a stopped compressor only be looked at without a meter', () => {
    const text = reply("it's a reach in", "compressor isn't running", "i don't have a meter");
    expect(text).toContain('Nothing is proved dead without a meter.');
  });

  it('is not what gauges that were taken off are', () => {
    expect(reply(REACH_IN, 'gauges are off')).toBe('Gauges taken off.');
  });
});

describe('a coil with its voltage that does nothing', () => {
  // Rated voltage and no action is the load itself: achrnews.com/articles/165272.
  it.each(["but it's not, uh, it isn't clicking", "it isn't clicking", "i don't hear it click"])(
    'is the coil itself: "%s"',
    (said) => {
      const { reply: told, state } = heard(
        "it's a walk in cooler",
        'two thirty two on the line side',
        'got two thirty one at the solenoid coil',
        said,
      );
      expect(told.text).toContain('If it does nothing, it is the liquid-line solenoid itself.');
      expect(state.findings).toEqual([]);
    },
  );

  it('is only kept where no coil was metered', () => {
    expect(reply("it's a walk in cooler", "it isn't clicking")).toBe('Kept for the note.');
  });
});

describe('"nothing" on a meter', () => {
  const SENT = [
    "it's a walk in cooler on r twenty two with a txv and a remote condensing unit",
    "compressor isn't running",
    'two thirty two on the line side and zero on the load side',
    'what next',
  ];

  it('is no voltage where the leads were sent', () => {
    expect(heard(...SENT, 'nothing').state.readings.at(-1)?.reading).toMatchObject({
      place: 'contactor',
      value: 0,
    });
  });

  it('is none of it once something else was told', () => {
    const { state } = heard(...SENT, 'locked out the disconnect', 'meter says no voltage');
    expect(state.readings.map(({ reading }) => reading.place)).toEqual(['lineSide', 'loadSide']);
  });
});

describe('whoever asks in general', () => {
  it('hears what brings high head about, and of this unit once its head was read over', () => {
    expect(reply('what would cause high head pressure')).toMatch(/^Mostly a dirty condenser/);
    const read = [REACH_IN, 'ambient seventy five', 'head two sixty, suction fourteen, box forty'];
    expect(reply(...read, 'what would cause high head pressure')).toMatch(/head \d+ psi over/);
    expect(reply('what causes low suction')).toMatch(/^Mostly a low charge/);
  });

  // The directions of the symptom matrix: achrnews.com, troubleshooting a refrigerant undercharge.
  it.each(['low charge would show what', 'what does a low charge look like'])(
    'hears what a low charge shows, and what tells it from a restriction: "%s"',
    (question) => {
      const text = reply(question);
      expect(text).toMatch(/^Low suction and low head, high superheat, low subcooling/);
      expect(text).toContain('read subcooling before any gas goes in');
    },
  );

  it('is told to leave a small sealed unit sealed where something else tells', () => {
    const text = reply(REACH_IN, 'should i put gauges on it');
    expect(text).toContain('not unless nothing else tells');
    expect(text).toContain('the hoses take some of the charge');
  });
});

describe('a vacuum that is begun', () => {
  it('is acknowledged, and counts as no vacuum that was pulled', () => {
    const { reply: said, state } = heard(REACH_IN, 'vacuum pump is on');
    expect(said.text).toBe('Kept for the note.');
    expect(state.work).toEqual([]);
    const kept = draftNote(state).sections.find(({ id }) => id === 'asSaid');
    expect(kept?.lines).toEqual(['Vacuum pump is on.']);
  });
});
