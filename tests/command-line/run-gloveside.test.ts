import { describe, expect, it } from 'vitest';
import { gloveside } from '../support/fake-terminal.ts';

const COMMANDS = ['serve', 'understand', 'hear', 'replay', 'calc'];

describe('gloveside', () => {
  it.each(['--help', '-h', 'help'])('%s lists the commands', async (word) => {
    const { status, printed, complaints } = await gloveside([word]);
    expect(status).toBe(0);
    for (const command of COMMANDS) expect(printed.join('\n')).toContain(`  ${command} `);
    expect(complaints).toEqual([]);
  });

  it.each(COMMANDS)('%s --help says how it is called', async (command) => {
    const { status, printed } = await gloveside([command, '--help']);
    expect(status).toBe(0);
    expect(printed.join('\n')).toMatch(new RegExp(`^gloveside ${command} `));
  });

  it.each([
    [[], /no command given.*serve/],
    [['sevre'], /no command "sevre".*serve/],
    [['constructor'], /no command "constructor"/],
    [['--loud'], /no command "--loud"/],
    [['understand', '--loud'], /understand: .*'--loud'/],
    [['understand', 'head one forty six'], /standard input/],
    [['understand', '--units', 'metric'], /us or si, not "metric"/],
    [['understand', '--refrigerant', 'R-9'], /"R-9".*R-134a/],
    [['understand', '--asked', 'mood'], /"mood".*headPressure/],
    [['understand', '--asked'], /asked/],
    [['hear'], /WAV/],
    [['hear', '--loud', 'a.wav'], /'--loud'/],
    [['replay'], /file/],
    [['replay', 'a.txt', 'b.txt'], /one/],
    [['replay', '--loud', 'a.txt'], /'--loud'/],
    [['calc'], /--list/],
    [['calc', '--loud'], /'--loud'/],
    [['serve', '--port', 'eighty'], /--port.*"eighty"/],
    [['serve', '--port', '65536'], /--port.*"65536"/],
    [['serve', '--cert', 'a.pem'], /--cert and --key/],
    [['serve', 'now'], /options only/],
    [['serve', '--loud'], /'--loud'/],
  ])('%j is refused in one line with status 2', async (args, says) => {
    const { status, printed, complaints } = await gloveside(args);
    expect(status).toBe(2);
    expect(printed).toEqual([]);
    expect(complaints).toHaveLength(1);
    expect(complaints[0]).toMatch(says);
    expect(complaints[0]).not.toContain('\n');
  });
});
