/**
 * How trade words sound that a general English dictionary lacks: ARPABET without stress, most usual
 * first. Spoken by the letter or by ear; common practice, no published table. `'s` forms are derived.
 */
export const PRONUNCIATIONS: Readonly<Record<string, readonly string[]>> = {
  amps: ['AE M P S'],
  contactor: ['K AA N T AE K T ER', 'K AH N T AE K T ER'],
  evap: ['IY V AE P', 'IH V AE P'],
  microfarads: ['M AY K R OW F EH R AE D Z', 'M AY K R OW F AE R AH D Z'],
  psig: ['P IY EH S AY JH IY', 'S IH G'],
  setpoint: ['S EH T P OY N T'],
  subcooling: ['S AH B K UW L IH NG'],
  superheat: ['S UW P ER HH IY T'],
  txv: ['T IY EH K S V IY'],
};
