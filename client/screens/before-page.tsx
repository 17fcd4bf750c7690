import type { Told } from './words.ts';
import { widthOf } from './width-of.ts';

interface BeforePageProps {
  readonly told: Told;
  readonly onPress?: () => void;
}

/** What stands there while there is no session to show: the field alone. */
export function BeforePage({ told: { title, sentence }, onPress }: BeforePageProps) {
  return (
    <main class="before-page">
      <section class="field" role={onPress ? 'alert' : 'status'} data-testid="before-page">
        {onPress && <button type="button" class="talk" onClick={onPress} aria-label="Reload" />}
        <div class="field-text">
          <p
            class="announced"
            style={{ '--characters': Math.max(...title.split(' ').map(widthOf)) }}
          >
            {title}
          </p>
          <p class="reply" data-size="large">
            {sentence}
          </p>
        </div>
      </section>
    </main>
  );
}
