import { useEffect, useRef } from 'preact/hooks';

interface TypingProps {
  readonly onWords: (words: string) => void;
  readonly onTooLong: (words: number, most: number) => void;
}

/** A sentence of 10,000 words held the page still for 2 s; nobody types or says a tenth of that in one breath. */
const MOST_WORDS = 1_000;

/** The same as talking, by hand: a plain field that gives the page back as soon as its sentence is sent. */
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
    field.current?.blur();
  };
  useEffect(() => {
    const enter = (event: KeyboardEvent): void => {
      if (beginsTyping(event)) field.current?.focus();
    };
    addEventListener('keydown', enter);
    return () => removeEventListener('keydown', enter);
  }, []);
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
      <button type="submit" onMouseDown={keepFocus}>
        say it
      </button>
    </form>
  );
}

/** On a keyboard the next sentence needs no press: its first letter or digit opens the field and lands in it. */
function beginsTyping({ key, target, ctrlKey, altKey, metaKey }: KeyboardEvent): boolean {
  const isElsewhere = target instanceof Element && target.closest(TAKES_KEYS) !== null;
  return !isElsewhere && /^[\p{L}\d]$/u.test(key) && !ctrlKey && !altKey && !metaKey;
}

/** What is typed there is meant for it. */
const TAKES_KEYS = 'input, textarea, select, [contenteditable]';

/** A press on the button must not close the field first: the button would be gone before the press is over. */
function keepFocus(event: Event): void {
  event.preventDefault();
}
