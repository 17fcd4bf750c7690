import type { HostPage } from '../host-page.ts';

const POLICY = 'on-device-speech-recognition';

/** The document that the recogniser was loaded into. */
export const documentPage: HostPage = {
  isActive: () => document.defaultView !== null,
  // Whether, not when: a person may think longer over the browser's question for the microphone than the five
  // seconds that a press counts as fresh.
  wasTouched: () => !('userActivation' in navigator) || navigator.userActivation.hasBeenActive,
  allowsOnDevice: () => {
    const policy: unknown = Reflect.get(document, 'featurePolicy');
    return (
      !asks(policy, 'features').includes(POLICY) || asks(policy, 'allowedFeatures').includes(POLICY)
    );
  },
  isCrossOrigin: () => window.parent !== window && window.frameElement === null,
  language: () => document.documentElement.lang,
};

/** Chromium alone tells of policies, by an interface that no type library has. */
function asks(policy: unknown, method: 'features' | 'allowedFeatures'): readonly unknown[] {
  if (typeof policy !== 'object' || policy === null) return [];
  const ask: unknown = Reflect.get(policy, method);
  if (typeof ask !== 'function') return [];
  const answer: unknown = Reflect.apply(ask, policy, []);
  return Array.isArray(answer) ? answer : [];
}
