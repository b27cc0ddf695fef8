import type { bounds, expected, problems } from './problemsEn.ts';

/** Why something that was typed, done or opened wasn't taken, and how to mend it. `{where}` is what was typed. */
export const problemsEs: typeof problems = {
  // Typed values.
  'length-empty': 'Escriba un largo, como 12\'-4 1/2" o 3760 mm.',
  'length-unreadable':
    '“{where}” no es un largo que pueda leer. Escríbalo como 12\'-4 1/2", 12-4.5, 148.5in, 3.76m o 3760 mm.',
  'length-comma':
    'La coma en “{where}” puede separar miles o decimales. Escriba punto para decimales, y los miles sin coma.',
  'length-fraction':
    'La fracción en “{where}” no está en ninguna cinta. Use medios, cuartos, octavos, dieciseisavos, 32avos o 64avos, menos que uno.',
  'length-inches':
    '“{where}” tiene doce pulgadas o más además de los pies. Páselas: 12 in es 1 ft.',
  'length-ambiguous': '“{where}” puede ser {one} o {other}. Escriba el que quiere decir.',
  'length-unit-needed': '“{where}” necesita unidad: escriba in, ft, mm o m después.',
  'length-absurd': '“{where}” es más de 2 km. Busque una unidad o un dígito de más.',
  'number-empty': 'Escriba un número.',
  'number-unreadable': '“{where}” no es un número que pueda leer. Use dígitos y un punto.',
  'number-comma':
    'La coma en “{where}” puede separar miles o decimales. Escriba punto para decimales, y los miles sin coma.',
  'volume-empty': 'Escriba un volumen, como 0.6 ft³ o 17 L.',
  'volume-unreadable':
    '“{where}” no es un volumen que pueda leer. Escríbalo como 0.6 ft³, 2 yd³, 17 L o 0.5 m³.',
  'volume-comma':
    'La coma en “{where}” puede separar miles o decimales. Escriba punto para decimales, y los miles sin coma.',
  'weight-empty': 'Escriba un peso, como 80 lb o 25 kg.',
  'weight-unreadable': '“{where}” no es un peso que pueda leer. Escríbalo como 80 lb o 25 kg.',
  'weight-comma':
    'La coma en “{where}” puede separar miles o decimales. Escriba punto para decimales, y los miles sin coma.',
  'share-empty': 'Escriba un porcentaje, como 10%.',
  'share-unreadable': '“{where}” no es un porcentaje que pueda leer. Escríbalo como 10% o 7.5%.',
  'share-comma': 'La coma en “{where}” no es clara. Escriba punto para decimales.',
  'money-empty': 'Escriba un precio, como 12.50.',
  'money-unreadable': '“{where}” no es un precio que pueda leer. Escríbalo como 12.50.',
  'money-comma':
    'La coma en “{where}” puede separar miles o decimales. Escriba punto para decimales, y los miles sin coma.',
  'money-places': '“{where}” tiene más de dos lugares después del punto. Un precio lleva dos.',
  'money-range': '“{where}” es menos que nada, o más que cualquier precio. Escríbalo otra vez.',
  'angle-empty': 'Escriba un ángulo en grados, como 90 o 22.5.',
  'angle-unreadable':
    "“{where}” no es un ángulo que pueda leer. Escriba grados, como 90, 22.5 o 22°30'.",
  'angle-range': '“{where}” es más de una vuelta completa. Use 360° a lo más.',

  // Commands.
  'no-such-feature': 'Esa figura ya no está en el trabajo. Escójala otra vez.',
  'no-such-corner': 'Esa esquina ya no está. Escójala otra vez.',
  'no-such-stake': 'Esa estaca ya no está puesta a mano. Escójala otra vez.',
  'stake-there-already':
    'Ya hay una estaca puesta a mano en este mismo lugar. Mueva esa, o suéltela.',
  'too-many-hand-stakes':
    'No se pueden poner a mano más de {most} estacas. Suelte algunas primero.',
  'no-such-edge':
    'No hay orilla después de la última esquina de una línea abierta. Escoja otra orilla.',
  'id-taken': 'Dos cosas de un trabajo no pueden tener el mismo id. Dibújela otra vez.',
  'not-an-outline': 'Esta figura es redonda y no tiene esquinas. Cambie su centro o su diámetro.',
  'not-round': 'Esta figura no es redonda. Mueva sus esquinas.',
  'not-for-this-kind': 'Ese ajuste no es de esta clase de figura. No se cambió nada.',
  'too-few-corners':
    'Una figura cerrada necesita tres esquinas por lo menos, o dos donde una orilla es curva; una línea abierta, dos. Ponga otra primero, o quite toda la figura.',
  'size-not-positive': 'Una medida debe ser más que nada.',
  'edge-turns-over':
    'Con ese largo una orilla vecina desaparece o corre al revés. Mueva la otra punta, o cambie primero la vecina.',
  'attached-to-itself': 'Una esquina no se puede fijar en una orilla de su propia figura.',
  'attachment-lost':
    'La orilla donde debe quedarse esta esquina ya no está. Mueva la esquina libre, o escoja otra orilla.',
  'attachment-circle':
    'Estas esquinas se fijan unas a otras en círculo, así que ninguna tiene lugar. Saque primero una de su orilla.',
  'corners-coincide': 'Dos esquinas seguidas están en el mismo lugar. Mueva una, o quítela.',
  'joint-not-straight':
    'Una junta va recta: no puede ser curva. Ponga una esquina donde deba dar vuelta.',
  'too-large': 'El trabajo pasaría de 200 m (656 ft) de lado a lado. Busque un número mal escrito.',
  'too-far': 'Un lugar a más de 2 km no puede ser. Busque un número mal escrito.',
  'not-on-grid': 'Ese número no sirve. Escríbalo otra vez.',
  'notch-too-large': 'El recorte es tan largo o tan ancho como toda la plancha. Hágalo más chico.',

  // Boards of truck and yard.
  'board-too-short':
    'Una tabla de la lista debe tener 1 ft (305 mm) de largo por lo menos. Busque una unidad que falta: un 12 solo se lee como pulgadas. Cuando ya no quede ninguna, quite el renglón.',
  'board-too-long':
    'Una tabla de más de 20 m (65 ft) no cabe en ningún camión. Busque una unidad o un dígito de más.',
  'board-count':
    'Cuántas tablas debe ser un número entero de 1 a 1000. Cuando ya no quede ninguna, quite el renglón.',
  'board-price': 'Un precio no puede ser menos que nada, ni tanto como eso. Escríbalo otra vez.',

  // Files.
  'file-empty': 'El archivo está vacío. Escoja otro.',
  'file-not-json':
    'El archivo no se puede leer: está dañado, o no es de trabajo. (El lector dice: {says})',
  'file-not-ours':
    'Este no es un archivo de trabajo de Notchpad. Escoja uno que se haya exportado aquí.',
  'file-newer':
    'Este archivo lo escribió un Notchpad más nuevo (versión {version} del archivo; este conoce la {known}). Consiga la versión nueva, luego ábralo.',
  'file-version':
    'El archivo dice que su versión es {seen}, que no existe. Se cambió o se dañó: use otra copia.',
  'file-too-big': 'El archivo es muy grande para ser de trabajo. Escoja otro.',
  'field-missing': 'Aquí falta algo.',
  'field-unknown': 'Un archivo de trabajo no tiene nada con este nombre.',
  'field-type': 'Esto debe ser {expected}, pero el archivo tiene {seen}.',
  'field-choice': '{seen} no es una de las opciones: {choices}.',
  'field-range': '{seen} está fuera de límites. {bound}',
  'field-order': 'Lo mínimo o primero es más que lo máximo o último. Cámbielos de lugar.',
  'field-long': 'Esto es más largo de lo que puede ser: {most} a lo más.',
  'field-none': 'Esta lista no puede estar vacía.',
  'field-id': '{seen} no es un id: solo letras, dígitos, - y _.',
  'field-id-twice': 'El id {id} se usa dos veces.',
  'field-next-id': 'El siguiente número libre es {seen}, pero {least} y menores están en uso.',
  'field-not-closed':
    'Solo una línea de pared, una línea enterrada o una junta puede quedar abierta.',
  'field-not-open':
    'Una línea enterrada o una junta debe quedar abierta: va de su primera esquina a la última y no rodea nada.',
  'field-no-such-mix': 'La combinación nombra una mezcla que no está en la lista ({mix}).',
  'file-more-problems': '… y {count} más.',

  // Jobs kept on the device.
  'no-such-job': 'Ese trabajo ya no está en este aparato.',
  'storage-full':
    'El aparato no tiene más espacio. Exporte ya el archivo de trabajo, luego haga lugar.',
  'storage-blocked':
    'Otra pestaña tiene abiertos los trabajos de una versión vieja. Cierre esa pestaña, luego intente otra vez.',
  'storage-unavailable':
    'Este navegador no guarda nada de esta página ({says}). Puede trabajar, pero exporte el archivo de trabajo antes de salir.',

  // Links that carry a job.
  'link-not-read':
    'El enlace no se pudo leer ({says}). Sigue en la dirección: cargue esta página otra vez.',
  'link-cut-short':
    'Al enlace le falta el final: se cortó en el camino. Copie el enlace completo, o pida mejor el archivo de trabajo.',
  'link-broken':
    'El enlace no está como se hizo: un signo se cambió o se perdió. Cópielo otra vez, o pida mejor el archivo de trabajo.',
  'link-newer':
    'El enlace lo hizo un Notchpad más nuevo (empaque {packing}; este conoce hasta {known}). Cargue esta página otra vez con señal, luego abra el enlace de nuevo.',
  'link-too-long':
    'El enlace tiene {length} letras y signos; lo más que se lee es {most}. Pida mejor el archivo de trabajo.',
};

/** The bound that a number in a file is beyond: one of the two is told. */
export const boundsEs: typeof bounds = { least: 'Por lo menos {least}.', most: 'A lo más {most}.' };

/** What a file's field should have been. */
export const expectedEs: typeof expected = {
  text: 'texto',
  number: 'un número',
  'whole-number': 'un número entero',
  list: 'una lista',
  object: 'un grupo de campos',
  'true-false': 'verdadero o falso',
};
