import type { cli } from './cliEn.ts';

/** What the command line says. Options keep their names. */
export const cliEs: typeof cli = {
  takeoffUsage: `Uso: npm run takeoff -- <trabajo.json> [--text [--workings]] [--search <segundos>] [--language <código>]
                                   [--csv <carpeta>] [--link <dirección>]
  <trabajo.json>  un archivo de trabajo exportado de Notchpad; - lo lee de la entrada estándar
  --text          imprime boletas para leer en vez de JSON
  --workings      con --text: el cálculo debajo de cada cantidad
  --search        busca tantos segundos mejores planes de tablas, varillas, malla y juntas; sin esto, las primeras respuestas
  --language      en o es; sin esto, en
  --csv           escribe cada tabla como archivo CSV en esta carpeta, en vez de JSON
  --link          imprime un enlace que abre una copia del trabajo en el Notchpad de esta dirección, en vez de JSON
  --help          imprime esto
Códigos de salida: 0 todo calculado, 1 algunas cantidades no se dan, 2 archivo rechazado, 3 mal uso.`,
  schemaUsage: `Uso: npm run schema [-- <archivo>]
  <archivo>   escribe ahí el JSON Schema del archivo de trabajo; sin esto, a la salida estándar
  --help      imprime esto
Códigos de salida: 0 escrito, 2 el archivo no se puede escribir, 3 mal uso.`,
  sheetUsage: `Uso: npm run sheet -- <trabajo.json> --out <hoja.pdf|hoja.svg> [opciones]
  <trabajo.json>  un archivo de trabajo exportado de Notchpad; - lo lee de la entrada estándar
  --out           un PDF de todas las páginas, o un SVG por página (hoja-1.svg, hoja-2.svg…)
  --paper         letter, tabloid, a4 o a3; sin esto, letter, o a4 si el trabajo es métrico
  --turn          upright (parado) o sideways (acostado); sin esto, como quepa a mayor escala
  --scale         de los planos, como '1/2"' o 1:50; sin esto, la mayor que cabe en una página.
                  La que no cabe ocupa varias páginas con líneas de empalme
  --pages         cuáles, como layout,forms,set-out; sin esto, todas
  --one-page      lo que una plancha chica necesita, en vez de --pages
  --both          títulos, encabezados y nombres en inglés y español, frases en español
  --date          se escribe tal cual en el cuadro de datos
  --search        busca tantos segundos mejores planes de tablas, varillas, malla y juntas; sin esto, las primeras respuestas
  --language      en o es; sin esto, en
  --help          imprime esto
Códigos de salida: 0 escrito, 1 escrito con algunas cantidades que no se dan, 2 archivo rechazado o que no se puede escribir, 3 mal uso.`,
  outFile: 'Dé a --out un archivo que termine en .pdf o .svg.',
  unknownChoice: '--{option} puede ser {those}, no “{typed}”.',
  oneFile: 'Dé un solo archivo de trabajo.',
  unknownOption: 'No hay opción {option}.',
  unknownLanguage: '--language puede ser {languages}, no “{typed}”.',
  csvFolder: '--csv lleva una carpeta donde escribir.',
  linkAddress: '--link lleva una dirección que empieza con https:// o http://, no “{typed}”.',
  linkTooLong:
    'El enlace tendría {length} letras y signos; solo hasta {most} es seguro que llegue. Mande mejor el archivo de trabajo.',
  searchSeconds: '--search lleva segundos de 0 a {most}, no “{typed}”.',
  searchFailed:
    'Una búsqueda de un mejor plan falló, y los planes son las primeras respuestas: {why}',
  cantRead: 'El archivo {file} no se puede leer: {why}',
  cantWrite: 'El archivo {file} no se puede escribir: {why}',
  refused: 'El archivo {file} se rechaza. No se calculó nada:',
  withheld: 'Algunas cantidades no se dan:',
  standardInput: 'de la entrada estándar',
  codes: {
    ENOENT: 'no existe ese archivo.',
    EACCES: 'no hay permiso de abrirlo.',
    EISDIR: 'es una carpeta.',
  },
  notNamed: 'Trabajo sin nombre',
};
