/** The engine knows American English; another English is heard as well as it can be. '' is the page's own. */
export function isSupportedLanguage(tag: string): boolean {
  return tag === '' || /^en(-|$)/i.test(tag);
}

/** A well-formed BCP 47 tag. */
export function isLanguageTag(tag: string): boolean {
  try {
    return Intl.getCanonicalLocales(tag).length === 1;
  } catch {
    return false;
  }
}
