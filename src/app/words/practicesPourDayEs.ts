import type { TermsEs } from '../../drawing/words/termsEs.ts';
import type { practicesPourDayEn } from './practicesPourDayEn.ts';

/** What counts on the day of the pour, in words, and how far practitioners differ. */
export const practicesPourDayEs = ({ bag }: TermsEs): typeof practicesPourDayEn => ({
  units: { minutes: 'min' },
  fields: {
    tripMinutes: { label: `Viaje por más ${bag.many}, ida y vuelta` },
    marginMinutes: { label: 'Se manda este tanto antes' },
    patchDepthError: { label: 'El espesor de un tramo de 2 ft puede fallar por' },
    frontError: { label: 'Un avance tocado puede fallar por' },
  },
  notes: {
    tripMinutes: {
      says: 'De puerta a puerta, con la espera en el mostrador y la carga. Si la tienda cierra temprano, cuente con la que no.',
      source: 'Práctica común, sin fuente.',
    },
    marginMinutes: {
      says: 'Una junta fría cuesta más que un viaje de balde: otros mandan a alguien en cuanto hay duda.',
      source: 'Práctica común, sin fuente.',
    },
    patchDepthError: {
      says: 'Una desviación estándar de tramo a tramo. Rastrillado y apisonado: 1/4 in. Como se excavó: 1/2 in y más.',
      source: 'Práctica común, sin fuente.',
    },
    frontError: {
      says: 'El concreto fresco acaba en talud, no en línea. Medio pie es buen ojo.',
      source: 'Práctica común, sin fuente.',
    },
  },
});
