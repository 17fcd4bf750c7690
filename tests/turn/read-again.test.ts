import { describe, expect, it } from 'vitest';
import { type TimedLine, timedVisit } from '../support/timed-visit.ts';

const reply = (...words: readonly string[]): string =>
  timedVisit(...words.map((each, minute): TimedLine => [minute, each])).last.reply.text;

describe('a value that is read again without its name', () => {
  it.each([
    ['box is down to twenty six and dropping', 'eighteen now', 'Box 18.'],
    ['box is down to twenty six', 'twenty two and still dropping', 'Box 22.'],
    ['box is down to twenty six', "it's at twenty two now", 'Box 22.'],
    ['box is at forty', 'thirty eight and holding', 'Box 38.'],
    ['suction line is fifty', 'forty four now', 'Suction line 44.'],
    [
      'suction forty four, head two twenty',
      "it's settling forty six now and two fifteen",
      'Suction 46, head 215.',
    ],
    ['suction forty four, head two twenty', 'two fifteen now', 'Head 215.'],
    ['suction forty four, head two twenty', 'forty six and holding', 'Suction 46.'],
    ['two thousand microns', 'eight fifty and coming down slow', 'Vacuum 850 micron.'],
    ['two thousand microns', 'four ten', 'Vacuum 410 micron.'],
    ['two thousand microns', 'six hundred and still crawling down', 'Vacuum 600 micron.'],
    ['compressor is pulling six point two', "now it's four point one", 'Compressor 4.1 A.'],
    ['compressor is pulling six point two', "now it's four one", 'Compressor 4.1 A.'],
    ['compressor is pulling forty one', "now it's thirty eight", 'Compressor 38 A.'],
    ["condenser fan's pulling one point two", "it's down to one even", 'Condenser fan 1 A.'],
    ['voltage is two oh eight', "now it's one ninety", 'Voltage 190 V.'],
    ['compressor is pulling six point two', "now it's two ten", '210? Say what that is of.'],
    [
      'put two fifty of nitrogen on it',
      "it's ten forty five still two fifty",
      'Test pressure 250.',
    ],
  ])('%s, then: %s', (first, words, told) => {
    expect(reply(first, words)).toContain(told);
  });

  it.each([
    [["head's coming up one ten", 'one twenty five'], 'Head 125.'],
    [["head's coming up one ten", 'one twenty five', 'one forty'], 'Head 140.'],
    [['suction is dropping thirty eight', 'thirty two'], 'Suction 32.'],
    [["box is coming down it's at fifteen now", 'eleven'], 'Box 11.'],
    [['box is down to twenty six', 'twenty two', 'eighteen'], 'Box 18.'],
  ])('goes on by figures alone behind what was told to move: %j', (words, told) => {
    expect(reply(...words)).toBe(told);
  });

  it.each([
    ['suction is forty', 'fifty'],
    ["head's coming up one ten", 'two twenty'],
    ['box is fifty one', 'forty four'],
    ['box is at forty', 'two hundred now'],
    ['suction forty four, head two twenty', 'ninety now'],
    ['condenser cleaned', 'eighteen now'],
  ])('is asked about where it lies far from it: %s, then: %s', (first, words) => {
    expect(reply(first, words)).toMatch(/\? Say what that is of|\? /);
  });

  it.each([
    ['head two ten', 'two ten', 'Head 210.'],
    ['amps are six point two', 'yeah six point two', 'Current 6.2 A.'],
    ['box is forty', 'forty', 'Box 40.'],
    ['voltage is two oh eight', 'two oh eight', 'Voltage 208 V.'],
    ['charge is five point three ounces', 'five point three', ''],
    ['recovered five point three ounces', 'five point three', ''],
  ])('is the same where it is said again by its number: %s, then: %s', (first, words, told) => {
    expect(reply(first, words)).toBe(told);
  });

  it('is weighed once, however often it is said', () => {
    const gas = "it's a reach-in on two ninety";
    const said = ['recovered five point three ounces', 'five point three'];
    expect(reply(gas, ...said, 'how much did i recover')).toContain('out 5.3 oz');
  });
});
