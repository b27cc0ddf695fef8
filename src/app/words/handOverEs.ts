import type { Job } from '../../job/job.ts';
import type { handOverEn } from './handOverEn.ts';

/** What a part of a job is called where a link is too long for it. */
const parts: Readonly<Record<keyof Job, string>> = {
  name: 'el nombre',
  site: 'la obra',
  notes: 'las notas para la cuadrilla',
  title: 'el cuadro de datos',
  units: 'las unidades',
  features: 'el croquis',
  practices: 'las prácticas',
  lumber: 'las tablas disponibles',
  meshStock: 'la malla disponible',
  weather: 'el clima',
  handStakes: 'las estacas puestas a mano',
  pourLog: 'el colado como fue',
  closeOut: 'el cierre',
  ground: 'las lecturas del suelo',
  bid: 'la oferta',
  nextId: 'números',
};

/** Handing the job over: as a link, as files, as tables. Link: enlace; also liga, link. */
export const handOverEs: typeof handOverEn = {
  title: 'Entregar',
  open: 'Entregar…',
  close: 'Cerrar',
  wait: 'Las cantidades todavía no están al día. Lo que se hace con ellas espera.',
  opened: {
    copy: (name) =>
      `“${name}” llegó con un enlace y se abrió como copia. Lo que estaba abierto antes está en Trabajos, sin tocar.`,
    refused: 'El enlace no se pudo abrir. No se cambió nada.',
    close: 'Cerrar',
  },
  link: {
    title: 'Enlace',
    says: 'Todo el trabajo va en el enlace mismo; nada se guarda en un servidor. Quien lo abre recibe una copia del trabajo como está ahora.',
    label: 'Enlace a una copia de este trabajo',
    length: (count) => `${count} letras y signos.`,
    notEasy: (most) =>
      `Hay servicios que cortan un mensaje a ${most} letras y signos: mándelo por correo, o mande el archivo de trabajo.`,
    reach: {
      device:
        'Esta página se abrió en una dirección de este aparato nada más: el enlace no abre en ningún otro.',
      network: 'Esta página se abrió en una dirección de su propia red: el enlace abre solo ahí.',
      anywhere: '',
    },
    copy: 'Copiar enlace',
    send: 'Mandar enlace…',
    copied: 'Copiado.',
    copyByHand: 'El navegador no lo copió. El enlace está marcado arriba: cópielo a mano.',
    making: 'Empacando…',
    failed: (why) => `El enlace no se pudo hacer (${why}). Mande mejor el archivo de trabajo.`,
    tooLong: (length, most) =>
      `Un enlace a este trabajo tendría ${length} letras y signos. Solo hasta ${most} es seguro que llegue a todas partes, así que no se hace. Mande mejor el archivo de trabajo.`,
    makesLong: (which) => `Lo que lo hace largo: ${which}.`,
    part: (part, count) => `${parts[part]} (${count})`,
  },
  files: {
    title: 'Archivos',
    job: 'Archivo de trabajo',
    jobSays: 'Todo el trabajo, para abrirlo otra vez en Notchpad.',
    pdf: 'Hoja de la cuadrilla, PDF',
    pdfSays: 'Como se escogió en la estación Hoja.',
    save: 'Guardar',
    send: 'Mandar…',
    making: 'Haciéndolo…',
    tapAgain: 'Ya está. Toque “Mandar…” otra vez.',
  },
  sketch: {
    title: 'Croquis',
    says: (scale) => `A ${scale} en papel. Para construir, imprima la hoja de la cuadrilla.`,
    station: 'Capa encima',
    svg: 'SVG',
    svgSays: 'Un dibujo: a escala, se pueden buscar sus palabras.',
    png: 'PNG',
    pngSays: 'Una imagen, para un mensaje.',
    tooLarge: 'La obra es más grande que cualquier escala en papel.',
  },
  tables: {
    title: 'Tablas de datos',
    says: 'CSV, para cualquier hoja de cálculo: cada cantidad como se lee y como puro número.',
    all: 'Todas las tablas (zip)',
    csv: 'CSV',
    saveTable: (table) => `Guardar “${table}” como CSV`,
    none: 'Todavía no hay tablas: nada está calculado.',
  },
  outcome: {
    sent: 'Entregado.',
    putAway: 'No se mandó.',
    failed: (why) => `Eso no funcionó (${why}).`,
    saved: 'Guardado donde el navegador pone las descargas.',
  },
};
