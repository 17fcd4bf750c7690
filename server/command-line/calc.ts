import { listCalculations, runCalculation } from '../../core/calculations/catalogue.ts';
import type { Command } from './command.ts';
import { parseOptions, unusable } from './options.ts';
import type { ExitStatus, Terminal } from './terminal.ts';
import { wrongCall } from './wrong-call.ts';

const USAGE = `gloveside calc NAME key=value …
gloveside calc --list
  One calculation, as a JSON object with its formula, range, source and cautions, or with the reason
  why it has no answer. Values carry their units, as in
    gloveside calc superheat refrigerant=R-134a suctionPressure=20psi suctionLineTemp=40F altitude=5000ft
  Pressures are gauge unless the unit ends in a (psia); temperatures F, C; differences dF, dC.

  --list   every calculation, one JSON object a line: its keys, units, source and a worked example`;

export const calcCommand: Command = {
  usage: USAGE,
  run: async (args, terminal) => {
    const parsed = parseOptions(args, { list: { type: 'boolean', default: false } });
    if (parsed.kind === 'unusable') return wrongCall(terminal, 'calc', parsed.why);
    const [name, ...pairs] = parsed.words;
    if (!parsed.values.list) return calculate(name, pairs, terminal);
    if (name === undefined) return list(terminal);
    return wrongCall(terminal, 'calc', '--list stands alone');
  },
};

async function list(terminal: Terminal): Promise<ExitStatus> {
  for (const row of listCalculations()) await terminal.print(JSON.stringify(row));
  return 0;
}

async function calculate(
  name: string | undefined,
  pairs: readonly string[],
  terminal: Terminal,
): Promise<ExitStatus> {
  if (name === undefined) {
    return wrongCall(terminal, 'calc', 'name a calculation; --list prints them all');
  }
  const inputs = parsePairs(pairs);
  if (inputs.kind === 'unusable') return wrongCall(terminal, 'calc', inputs.why);
  const result = runCalculation(name, inputs.values);
  if ('badInput' in result) return wrongCall(terminal, 'calc', result.badInput.message);
  await terminal.print(JSON.stringify(result));
  return 0;
}

type Pairs =
  | { readonly kind: 'pairs'; readonly values: Readonly<Record<string, string>> }
  | { readonly kind: 'unusable'; readonly why: string };

function parsePairs(pairs: readonly string[]): Pairs {
  const values = new Map<string, string>();
  for (const pair of pairs) {
    const [, key, value] = /^([^=]+)=(.+)$/s.exec(pair) ?? [];
    if (key === undefined || value === undefined) return unusable(`write "${pair}" as key=value`);
    if (values.has(key)) return unusable(`${key} is given twice`);
    values.set(key, value);
  }
  return { kind: 'pairs', values: Object.fromEntries(values) };
}
