import { clauseBefore } from './clause-start.ts';
import type { Frame } from '../rule.ts';

const SOMEBODY =
  /\b(?:i|we|he|she|they|you|who|i've|we've|i'm|we're|guy|tech|fella|electrician|plumber|customer|owner|manager|somebody|someone)\b/i;
/** What breaks something else as it goes. */
const FAULT =
  /\b(?:short|shorts|shorted|surge|lightning|storm|burnt|burned|grounded|ground|seized|locked up|locked rotor|melted|arced|arcing|loose|blew|blown|failed|let go|fried|cooked|dead|bad|water|moisture|spike|brownout|single phas\w+)\b/i;
const NAMES_IT =
  /^(?:so |and |but |then |well |what happened (?:was|is) )*(?:a|an|the|that|this|some|one|it|which)\b/i;
const DID_IT =
  /^(?:and |then |also )*(?:found|saw|noticed|got|cut|put|took|pulled|killed|shut|swapped|cleaned|checked|opened|replaced|changed|tightened)\b.* and$/i;

/** "A loose lug burnt up and took out the fuse" broke it; "I took out the fuse" has it in his hand. */
export function isTakenOutByFault(frame: Frame): boolean {
  if (!/\b(?:took|takes|taken|taking) out\b/i.test(frame.wordsOf(frame.span))) return false;
  const before = clauseBefore(frame);
  const own = frame.wordsOf(frame.span).match(/^(?:and|then|and then) /i) === null ? '' : ' and';
  const words = `${before}${own}`.trim();
  if (words === '' || SOMEBODY.test(words) || DID_IT.test(words)) return false;
  return FAULT.test(words) || (NAMES_IT.test(words) && !/\band$/i.test(words));
}
