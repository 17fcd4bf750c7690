declare module 'number-to-words' {
  /** English for a whole number, with hyphens, and with a comma behind each group of three figures. */
  export function toWords(value: number): string;
}
