import type { DeviceChoice } from '../offline/device-choice.ts';

export interface PartsFormProps {
  /** A name a line. */
  readonly carried: DeviceChoice<string>;
  readonly onCarried: (text: string) => void;
}

/** What the van carries, by the names that its owner calls them: they are heard and written down as they stand here. */
export function PartsForm({ carried, onCarried }: PartsFormProps) {
  return (
    <section aria-label="Parts you carry">
      <h2>parts you carry</h2>
      <textarea
        class="parts"
        data-testid="parts"
        aria-label="Parts you carry, a name a line"
        placeholder={'A part’s name a line, as you call it'}
        rows={4}
        onChange={({ currentTarget }) => {
          carried.choose(currentTarget.value);
          onCarried(currentTarget.value);
        }}
      >
        {carried.read()}
      </textarea>
      <p>
        Say them by these names: “put in a new …”. They are heard, and stand in the note, as you
        write them here.
      </p>
    </section>
  );
}
