/**
 * Whether a sentence could end here. extendable: it could, or go on ("one forty", "one forty six");
 * closed: it could, and only another sentence may follow.
 */
export type Standing = 'incomplete' | 'extendable' | 'closed';
