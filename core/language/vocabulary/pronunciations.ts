/**
 * How trade words sound that a general English dictionary lacks: ARPABET without stress, most usual
 * first. Spoken by the letter or by ear; common practice, no published table. `'s` forms are derived.
 *
 * The grammar writes "condenser's" as "condenser is", so the short words also have their endings' sounds.
 */
export const PRONUNCIATIONS: Readonly<Record<string, readonly string[]>> = {
  am: ['AE M', 'M'],
  amps: ['AE M P S'],
  are: ['AA R', 'ER', 'R'],
  braze: ['B R EY Z'],
  contactor: ['K AA N T AE K T ER', 'K AH N T AE K T ER'],
  crankcase: ['K R AE NG K K EY S', 'K R AE NG K EY S'],
  defrosted: ['D IH F R AO S T AH D', 'D IY F R AO S T IH D'],
  evap: ['IY V AE P', 'IH V AE P'],
  gages: ['G EY JH IH Z', 'G EY JH AH Z'],
  have: ['HH AE V', 'V'],
  is: ['IH Z', 'Z', 'S'],
  megohms: ['M EH G OW M Z'],
  microfarads: ['M AY K R OW F EH R AE D Z', 'M AY K R OW F AE R AH D Z'],
  // The dictionary has only the Greek letter.
  psi: ['P IY EH S AY'],
  psig: ['P IY EH S AY JH IY', 'S IH G'],
  setpoint: ['S EH T P OY N T'],
  solenoid: ['S OW L AH N OY D', 'S AA L AH N OY D'],
  subcooling: ['S AH B K UW L IH NG'],
  superheat: ['S UW P ER HH IY T'],
  tare: ['T EH R'],
  txv: ['T IY EH K S V IY'],
};
