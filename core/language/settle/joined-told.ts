import type { Token } from '../../grammar/tokens.ts';
import { saysTwoWords, type TokenRange } from '../words/clause.ts';
import { isJobTalk } from '../words/job-words.ts';

/** From one pause to the next, and what of it is kept. */
export interface Section extends TokenRange {
  readonly told: readonly TokenRange[];
  /** Nothing of it was read, asked or supposed. */
  readonly isFree: () => boolean;
}

/**
 * "Voltage goes through the disconnect, through the fuses, stops at the contactor": one story, whose parts tell less each
 * alone. What nobody read beside what is kept is kept with it.
 */
export function joinedTold(
  tokens: readonly Token[],
  sections: readonly Section[],
): readonly TokenRange[] {
  const kept: TokenRange[] = [];
  let from = 0;
  while (from < sections.length) {
    let to = from;
    while (to < sections.length && isOfRun(sections[to])) to += 1;
    kept.push(...ofRun(tokens, sections.slice(from, to)), ...(sections[to]?.told ?? []));
    from = to + 1;
  }
  return kept;
}

const isOfRun = (section: Section | undefined): boolean => section?.isFree() === true;

/** Of sections side by side of which nothing was read. */
function ofRun(tokens: readonly Token[], run: readonly Section[]): readonly TokenRange[] {
  const [first, last] = [run[0], run.at(-1)];
  if (first === undefined || last === undefined) return [];
  if (run.every(({ told }) => told.length === 0)) {
    const all = { start: first.start, end: last.end };
    return run.length > 1 && isJobTalk(tokens, all) ? [all] : [];
  }
  const kept: { start: number; end: number }[] = [];
  let waiting: number | null = null;
  for (const { start, end, told } of run) {
    const [begun, ...more] = told;
    const before = kept.at(-1);
    if (begun !== undefined) {
      kept.push(
        { start: waiting ?? begun.start, end: begun.end },
        ...more.map((each) => ({ ...each })),
      );
      waiting = null;
    } else if (!saysTwoWords(tokens, { start, end })) waiting = null;
    else if (before?.end === start) before.end = end;
    else waiting ??= start;
  }
  return kept;
}
