import { useRef } from 'preact/hooks';

interface TypingProps {
  readonly onWords: (words: string) => void;
  readonly onTooLong: (words: number, most: number) => void;
}

/** A sentence of 10,000 words held the page still for 2 s; nobody types or says a tenth of that in one breath. */
const MOST_WORDS = 1_000;

/** The same as talking, by hand: a plain field that grows over the row as it is entered. */
export function Typing({ onWords, onTooLong }: TypingProps) {
  const field = useRef<HTMLInputElement>(null);
  const submit = (event: Event): void => {
    event.preventDefault();
    const words = field.current?.value.trim() ?? '';
    const count = words.split(/\s+/).length;
    if (count > MOST_WORDS) {
      onTooLong(count, MOST_WORDS);
      return;
    }
    if (words !== '') onWords(words);
    if (field.current) field.current.value = '';
  };
  return (
    <form class="typing" onSubmit={submit}>
      <input
        ref={field}
        data-testid="typed"
        type="text"
        aria-label="Type what you would say"
        placeholder="type"
        autocomplete="off"
        autocapitalize="off"
        enterkeyhint="send"
      />
      <button type="submit">say it</button>
    </form>
  );
}
