import type { Tab } from '../state/session.ts';
import { Typing } from './typing.tsx';
import { TAB_WORDS } from './words.ts';

interface BarProps {
  readonly tab: Tab;
  readonly onTab: (tab: Tab) => void;
  readonly onWords: (words: string) => void;
  readonly onTooLong: (words: number, most: number) => void;
}

const TABS: readonly Tab[] = ['sheet', 'note', 'visit'];

export function Bar({ tab, onTab, onWords, onTooLong }: BarProps) {
  return (
    <nav class="bar" aria-label="What to look at">
      {TABS.map((each) => (
        <button
          key={each}
          type="button"
          class="tab"
          data-testid={`tab-${each}`}
          aria-pressed={each === tab}
          onClick={() => onTab(each)}
        >
          {TAB_WORDS[each]}
        </button>
      ))}
      <Typing onWords={onWords} onTooLong={onTooLong} />
    </nav>
  );
}
