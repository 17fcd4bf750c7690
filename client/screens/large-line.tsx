import type { Large } from '../../core/replies/reply.ts';

/**
 * The one thing that is large. Its size follows the number of characters, between 96 and 160 px,
 * so that its unit stays beside it.
 */
export function LargeLine({ large }: { large: Large }) {
  return (
    <p
      class="large"
      style={{ '--characters': large.value.length, '--unit-characters': large.unit.length }}
    >
      {large.name && <span class="large-name">{large.name}</span>}
      <span class="large-number">
        <span class="large-value" data-testid="large-value">
          {large.value}
        </span>
        <span class="large-unit">{large.unit}</span>
      </span>
    </p>
  );
}
