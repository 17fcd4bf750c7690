import { describe, expect, it } from 'vitest';
import { parseVisitFile } from '../../server/command-line/visit-file.ts';

describe('a visit file', () => {
  it('is sentences, comments, clock times and recordings', () => {
    const text =
      '# a comment\n\nhead one forty six\n@ 14:05\n  suction twelve  \r\n> front door.wav\n';
    expect(parseVisitFile(text)).toEqual({
      kind: 'visit',
      steps: [
        { kind: 'say', line: 3, words: 'head one forty six' },
        { kind: 'clock', line: 4, minutes: 14 * 60 + 5 },
        { kind: 'say', line: 5, words: 'suction twelve' },
        { kind: 'play', line: 6, file: 'front door.wav' },
      ],
    });
  });

  it('lists the parts that the van carries, by their names', () => {
    expect(parseVisitFile('* Copperline 012 contactor\nhead forty')).toMatchObject({
      steps: [{ kind: 'part', line: 1, name: 'Copperline 012 contactor' }, { kind: 'say' }],
    });
  });

  it('names the days that its visits were on', () => {
    expect(parseVisitFile('@ 2026-08-03\nhead forty\n@ 2026-11-20')).toMatchObject({
      steps: [{ kind: 'day', day: { year: 2026, month: 8, day: 3 } }, {}, { kind: 'day' }],
    });
  });

  it.each([
    ['head forty\n@ 25:00', 2, /@ 14:05, .*not "25:00"/],
    ['@ noon', 1, /not "noon"/],
    ['@ 9:5', 1, /not "9:5"/],
    ['@ 2026-02-30', 1, /not "2026-02-30"/],
    ['@ 2026-08-20\nhead forty\n@ 2026-08-20', 3, /later day/],
    ['\n\n>', 3, /> front\.wav/],
    ['head forty\n*', 2, /\* Copperline 012 contactor/],
  ])('%j is refused at its line', (text, line, why) => {
    const parsed = parseVisitFile(text);
    expect(parsed).toMatchObject({ kind: 'unreadable', line });
    expect('why' in parsed && parsed.why).toMatch(why);
  });
});
