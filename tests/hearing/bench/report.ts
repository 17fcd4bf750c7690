import { ENGINE_CHOICES, type EngineChoice } from '../../../server/hearing/open-hearer.ts';
import { isFitted } from './calibrate.ts';
import type { Ears } from './ears.ts';
import type { Row } from './rows.ts';
import { isTaken, type Verdict, verdictOn } from './verdict.ts';
import { wilson } from './wilson.ts';

export interface ReportOptions {
  readonly engines: readonly EngineChoice[];
  /** Only the half of the sentences that thresholds were not chosen on. */
  readonly half: boolean;
}

/** The tables, as lines of text. */
export function report(
  rows: readonly Row[],
  ears: Ears,
  { engines, half }: ReportOptions,
): readonly string[] {
  const counted = rows.filter((each) => !half || !isFitted(each));
  const ours = counted.filter(({ kind }) => kind === 'ours');
  return [
    'shares in %, with 95 % intervals by Wilson; right: understood as said, asked about or not',
    row(['engine', 'voices', 'condition', 'of', 'right', 'wrong', 'asked', 'rejected', 'time']),
    ...groups(ours).flatMap(([name, group]) =>
      engines.map((engine) => sentenceLine(name, group, { engine, ears })),
    ),
    '',
    'readings invented',
    ...groups(counted.filter(({ kind }) => kind !== 'ours')).flatMap(([name, group]) =>
      engines.map((engine) => inventedLine(name, group, { engine, ears })),
    ),
  ];
}

/** By voices and condition, or by what it is that nobody said to the product. */
function groups(rows: readonly Row[]): readonly (readonly [name: string, rows: readonly Row[]])[] {
  const found = new Map<string, Row[]>();
  for (const each of rows) {
    const { kind, heldOut, condition, voice } = each;
    const who = kind === 'noise' ? voice : heldOut ? 'held out' : 'known';
    const what = kind === 'ours' ? condition : kind;
    const name = `${who}|${what}`;
    found.set(name, [...(found.get(name) ?? []), each]);
  }
  return [...found];
}

interface Judging {
  readonly engine: EngineChoice;
  readonly ears: Ears;
}

function sentenceLine(name: string, rows: readonly Row[], { engine, ears }: Judging): string {
  const counts = countVerdicts(rows, { engine, ears });
  const share = (...verdicts: readonly Verdict[]): string =>
    percent(
      verdicts.reduce((sum, each) => sum + counts[each], 0),
      rows.length,
    );
  return row([
    engine,
    ...name.split('|'),
    String(rows.length),
    share('exact', 'checked'),
    share('wrong'),
    share('asked', 'checked'),
    share('rejected'),
    timeShare(rows, engine),
  ]);
}

function countVerdicts(rows: readonly Row[], { engine, ears }: Judging): Record<Verdict, number> {
  const counts = { exact: 0, checked: 0, asked: 0, wrong: 0, rejected: 0 };
  for (const each of rows) counts[verdictOn(each.said, ears.judge(engine, each))] += 1;
  return counts;
}

/** Processor time by sound time. */
function timeShare(rows: readonly Row[], engine: EngineChoice): string {
  const spent = rows.reduce((sum, { cpuSeconds }) => {
    const { neural, opinion, embedded } = cpuSeconds;
    return sum + { neural, embedded, both: neural + opinion }[engine];
  }, 0);
  return (spent / rows.reduce((sum, { seconds }) => sum + seconds, 0)).toFixed(2);
}

function inventedLine(name: string, rows: readonly Row[], { engine, ears }: Judging): string {
  const taken = rows.filter((each) => isTaken(ears.judge(engine, each)));
  const minutes = rows.reduce((sum, { seconds }) => sum + seconds, 0) / 60;
  const cells = [engine, ...name.split('|'), `${taken.length} of ${rows.length}`];
  return row([...cells, `${minutes.toFixed(1)} minutes`]);
}

function percent(hits: number, of: number): string {
  const [low, high] = wilson(hits, of).map((each) => (100 * each).toFixed(1));
  return `${((100 * hits) / of).toFixed(1)} (${low}–${high})`;
}

function row(cells: readonly string[]): string {
  return cells.map((cell, at) => cell.padEnd(at === 2 ? 14 : at < 4 ? 10 : 18)).join(' ');
}

export const isEngine = (name: string): name is EngineChoice =>
  ENGINE_CHOICES.some((choice) => choice === name);
