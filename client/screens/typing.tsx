import { useRef } from 'preact/hooks';

/** The same as talking, by hand: a plain field that grows over the row as it is entered. */
export function Typing({ onWords }: { onWords: (words: string) => void }) {
  const field = useRef<HTMLInputElement>(null);
  const submit = (event: Event): void => {
    event.preventDefault();
    const words = field.current?.value.trim() ?? '';
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
