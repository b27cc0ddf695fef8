/**
 * Trade words that crews who share a language say otherwise by where they come from. The user says once which is theirs,
 * and it stands everywhere. English crews say the same, so only Spanish has such words yet.
 */
export const FORM_WORDS = ['cimbra', 'forma', 'formaleta'] as const;
export const BAG_WORDS = ['bulto', 'saco', 'funda'] as const;

export interface TermChoice {
  /** Cimbra: Mexico. Forma: US crews. Formaleta: Central America, Colombia. */
  readonly form: (typeof FORM_WORDS)[number];
  /** Bulto: Mexico. Saco: understood everywhere. Funda: Caribbean. */
  readonly bag: (typeof BAG_WORDS)[number];
}

export const USUAL_TERMS: TermChoice = { form: 'cimbra', bag: 'bulto' };
