import type { PartId } from '../../terms/names.ts';
import type { Context } from '../context.ts';
import type { Finding } from '../utterance.ts';
import type { DraftUtterance } from './told.ts';

/** "Disconnect's off and I locked it out": nobody found it off who has just switched it. */
export function tellWhoOpened(all: DraftUtterance, { workBegun }: Context): void {
  const ours = all.findings.find((found) => isOff(found) && (isIsolated(all) || workBegun));
  if (ours === undefined) return;
  const { part, words } = ours;
  all.findings = all.findings.filter((each) => each !== ours);
  const others = all.work.filter(({ did }) => did !== 'isolate');
  const [own] = all.work.filter(({ did }) => did === 'isolate');
  all.work = [...others, { did: 'isolate', part, words: own?.words ?? words }];
}

const SWITCHES: ReadonlySet<PartId> = new Set<PartId>(['disconnect', 'breaker']);
/** "Was off", "found it off": as it stood before anybody came to it. */
const isOff = ({ part, state, words }: Finding): boolean =>
  SWITCHES.has(part) && state === 'open' && !/\b(?:was|were|found|been|trip\w*)\b/i.test(words);

const isIsolated = ({ work }: DraftUtterance): boolean =>
  work.some(({ did, part }) => did === 'isolate' && (part === null || SWITCHES.has(part)));
