import { cautionsToWrite } from '../advice/cautions.ts';
import { CAUTIONS } from '../advice/caution-data.ts';
import { CAUTION_SENTENCES } from '../replies/caution-sentences.ts';
import type { VisitState } from '../visit/state.ts';
import { complaintLines } from './complaint.ts';
import { changeSection } from './change.ts';
import { findingLines } from './findings.ts';
import type { Note, NoteSection, NoteSectionId } from './note.ts';
import { asSaidLines } from './kept-as-said.ts';
import { openSection } from './open-questions.ts';
import { productLines, readingsSection, testsSection } from './readings.ts';
import { refrigerantSection } from './refrigerant.ts';
import { paragraphLines } from './paragraphs/paragraphs.ts';
import { seenBeforeLines } from './seen-before.ts';
import { unitLines } from './unit.ts';
import { watchedLines } from './watched.ts';
import { recommendationLines, workLines } from './work.ts';

type Written = Pick<NoteSection, 'lines' | 'table' | 'aloud'>;

const HEADINGS: Record<NoteSectionId, string> = {
  customer: 'For the customer',
  office: 'For the office',
  unit: 'Unit',
  complaint: 'Complaint',
  before: 'Before work',
  findings: 'Found',
  seenBefore: 'Seen before',
  work: 'Work done',
  tests: 'Measured and tested',
  after: 'After work',
  change: 'What changed',
  watched: 'Watched',
  recommendations: 'Recommended',
  refrigerant: 'Refrigerant in and out',
  product: 'Product',
  asSaid: 'Kept in the words it was said in',
  cautions: 'Cautions',
  open: 'Still open',
};

type Write = (state: VisitState, past: readonly VisitState[]) => Written;
const WRITERS: Record<NoteSectionId, Write> = {
  customer: (state, past) => ({ lines: paragraphLines('customer', state, past) }),
  office: (state, past) => ({ lines: paragraphLines('office', state, past) }),
  unit: (state) => ({ lines: unitLines(state) }),
  complaint: (state) => ({ lines: complaintLines(state) }),
  before: (state) => readingsSection('before', state),
  findings: (state) => ({ lines: findingLines(state) }),
  seenBefore: (state, past) => ({ lines: seenBeforeLines(state, past) }),
  work: (state) => ({ lines: workLines(state) }),
  tests: testsSection,
  after: (state) => readingsSection('after', state),
  change: changeSection,
  watched: (state) => ({ lines: watchedLines(state) }),
  recommendations: (state) => ({ lines: recommendationLines(state) }),
  refrigerant: refrigerantSection,
  product: (state) => ({ lines: productLines(state) }),
  asSaid: (state) => ({ lines: asSaidLines(state) }),
  cautions: (state) => ({ lines: cautionLines(state) }),
  open: openSection,
};

const isSection = (id: string): id is NoteSectionId => id in WRITERS;

/** In the order a reader wants them. */
const ORDER: readonly NoteSectionId[] = Object.keys(WRITERS).filter(isSection);

/**
 * The note as the visit stands: it can be read at any moment, and says what is missing. `past`: earlier visits, for
 * what was seen before.
 */
export function draftNote(state: VisitState, past: readonly VisitState[] = []): Note {
  const sections = ORDER.flatMap((id) => sectionOf(id, WRITERS[id](state, past)));
  return { title: titleOf(state), sections };
}

/** A section that wrote nothing is left out; one whose absence matters writes that instead. */
function sectionOf(id: NoteSectionId, { lines, ...rest }: Written): readonly NoteSection[] {
  if (lines.length === 0 && rest.table === undefined) return [];
  return [{ id, heading: HEADINGS[id], lines, ...rest }];
}

function titleOf({ unit: { name, site } }: VisitState): string {
  const place = [name, site].filter((part) => part !== null).join(', ');
  return place === '' ? 'Service visit' : `Service visit: ${place}`;
}

function cautionLines(state: VisitState): readonly string[] {
  return cautionsToWrite(state).map((id) => `${CAUTION_SENTENCES[id]} ${CAUTIONS[id].detail}`);
}
