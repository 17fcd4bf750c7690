import { Unbroken } from './unbroken.tsx';
import { widthOf } from './width-of.ts';

export interface ReplyTextProps {
  readonly text: string;
  /** Which speech it belongs to. */
  readonly number: number;
  /** Something larger stands above it: what was measured or asked, or the title of what the page tells of itself. */
  readonly beside: 'figure' | 'title' | null;
}

/** Words are as large as they can be read at once: a short reply alone is a headline, a long one a list. */
export function ReplyText({ text, number, beside }: ReplyTextProps) {
  return (
    <p
      class="reply"
      role="status"
      data-testid="reply"
      data-number={number}
      data-size={sizeOf(text, beside)}
      style={{ '--longest': Math.max(...text.split(/\s/).map(widthOf)) }}
    >
      {beside === 'title'
        ? text
        : sentencesOf(text).map((sentence, index) => (
            <span key={index} class="sentence">
              <Unbroken text={sentence} />{' '}
            </span>
          ))}
    </p>
  );
}

type Size = 'headline' | 'large' | 'plain' | 'long';

const HEADLINE = 40;
const LARGE = 120;
const PLAIN = 140;

function sizeOf({ length }: string, beside: ReplyTextProps['beside']): Size {
  if (beside === 'title') return 'plain';
  if (length > PLAIN) return 'long';
  if (beside === 'figure') return 'plain';
  return length <= HEADLINE ? 'headline' : length <= LARGE ? 'large' : 'plain';
}

function sentencesOf(text: string): readonly string[] {
  return text.split(/\n+|(?<=[.!?])\s+(?=\p{Lu}|\d)/u).filter((sentence) => sentence !== '');
}
