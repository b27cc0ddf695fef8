import type { TermsEs } from '../../drawing/words/termsEs.ts';
import { boardsEs } from './boardsEs.ts';
import { jointsEs } from './jointsEs.ts';
import { layoutTradeEs } from './layoutTradeEs.ts';
import { mixEs } from './mixEs.ts';
import type { notes } from './notesEn.ts';
import { orderNotesEs } from './orderNotesEs.ts';
import { placingEs } from './placingEs.ts';
import { stakesEs } from './stakesEs.ts';
import { steelEs } from './steelEs.ts';
import { thickenedEs } from './thickenedEs.ts';
import { weatherEs } from './weatherEs.ts';

/** What must be known before anyone acts on a figure: what is wrong or taken as so, then how to mend or check it. */
export function notesEs(terms: TermsEs): typeof notes {
  const { form, bag } = terms;
  return {
    // No deja seguir: el contorno.
    'no-pad': 'Todavía no hay plancha ni parche. Dibuje uno, o empiece con un rectángulo.',
    'broken-number':
      'Un número de esta figura no se puede leer. Escriba otra vez sus esquinas, o quite la figura y dibújela de nuevo.',
    'too-few-corners':
      'Esta figura tiene {corners}. Necesita tres por lo menos, o dos donde una orilla es curva. Ponga una esquina, o quite la figura.',
    'not-closed': 'Este contorno no está cerrado. Ciérrelo hasta su primera esquina.',
    'no-size': 'Esta figura no tiene medida. Dele una medida de más que nada.',
    'no-area':
      'Este contorno no encierra nada: todas sus esquinas están en una línea. Saque una esquina de esa línea.',
    'arc-without-chord':
      'Una orilla curva empieza y termina en el mismo lugar. Mueva una de sus esquinas, o haga recta la orilla.',
    'crosses-itself':
      'El contorno se cruza donde está marcado, así que no se sabe de qué lado se cuela. Mueva una esquina para que ninguna orilla cruce otra. No se pierde nada.',
    'too-large':
      'Esto mide {extent} de lado a lado. Un trabajo puede ser de 200 m (656 ft) a lo más. Busque un número mal escrito.',
    'pad-inside-existing-slab':
      'La plancha queda toda dentro de una losa existente, así que no hay nada que colar. Muévala, o dibuje como parche el pedazo que le falta a esa losa.',
    'pad-covered':
      'Lo dibujado encima de la plancha la tapa toda, así que no hay nada que colar. Mueva o achique lo que la tapa.',
    'clip-failed':
      'Este contorno no se pudo calcular con seguridad, así que no se dan cifras. Mueva una esquina 1/16 in (1 mm) y vea otra vez. Su croquis queda guardado.',
    // No deja seguir: los oficios.
    'thickness-zero': `El volumen y ${bag.theMany} no se pueden calcular: el espesor debe ser más que nada. Póngalo en las prácticas.`,
    'form-depth-zero': `La ${form.one} no da espesor. Ponga la tabla y el espacio debajo, de modo que sumen más que nada.`,
    'waste-below-zero': `No se pueden contar ${bag.theMany}: el margen por desperdicio es menos que nada. Póngalo en 0 o más.`,
    'blend-no-parts': `No se pueden contar ${bag.theMany}: la combinación no tiene partes. Dé partes enteras, por lo menos una de una mezcla.`,
    'mix-not-listed':
      'La combinación pide una mezcla que no está en su lista ({mix}). Escoja una que esté, o agréguela.',
    'bag-yield-zero': `No se pueden contar ${bag.theMany}: “{mix}” dice que no rinde nada. Escriba lo que rinde ${bag.a}, como viene impreso.`,
    'bag-weight-zero': `No se pueden pesar ${bag.theMany}: “{mix}” no tiene peso. Escríbalo como viene impreso.`,
    'bags-too-many':
      'Esto llevaría más de {most}. Busque una medida o un rendimiento mal escrito, o pida concreto premezclado.',

    // Revise antes de construir: el contorno.
    'zone-ignored':
      'Una zona sin estacas no es una figura completa, así que puede haber estacas en ella. Corrija su contorno, o quítela.',
    'line-ignored':
      'Una línea enterrada no se puede leer, así que puede haber estacas sobre ella. Corrija sus esquinas, o quítela y dibújela de nuevo.',
    'separate-pieces': 'El colado viene en {pieces} que no se tocan. Si debe ser uno, júntelos.',
    'pads-overlap': 'Dos planchas se enciman. Lo que comparten se cuela, y se cuenta, una vez.',
    'adds-nothing': 'Esta plancha no agrega nada: otras la cubren. Quítela si no hace falta.',
    'patch-apart':
      'Este parche no toca ni una plancha ni una losa existente. Se calcula como un colado aparte.',
    'building-line-crosses-pad':
      'Una línea de pared atraviesa la plancha. Una línea no recorta nada: ciérrela alrededor del edificio, o muévala a la orilla.',
    'block-out-outside':
      'Este hueco no le quita nada al colado. Muévalo dentro de la plancha, o quítelo.',
    'narrow-neck':
      'Aquí el colado no es más ancho que unos {closeEnough}. Vea las esquinas: ¿debe ir separado, o más ancho?',
    'clip-retried':
      'Las esquinas se redondearon a 1/20 mm para calcular este contorno. Ninguna cinta lo nota.',
    'second-engine':
      'La manera usual de recortar este contorno falló, y se usó otra. Revise a mano el área neta antes de pedir.',
    // Revise antes de construir: los oficios.
    'form-gap': `Las tablas de ${form.one} quedan a {gap} del suelo. Apisone tierra contra el espacio por fuera, o el concreto se sale por debajo.`,
    'form-cut': `Para {thickness} de concreto hay que rebajar el suelo dentro de la ${form.one} {cut} más de lo que dan una {board} ({depth} de alto) y el espacio debajo. Rebaje sin tocar donde apoyan las tablas, y no rellene ningún bajo con tierra suelta.`,
    'form-proud': `Una {board} tiene {depth} de alto, la losa {thickness}: puesta sobre el suelo, su canto queda {proud} muy alto. Éntrela eso en el suelo, o suba el suelo por dentro y apisónelo.`,
    'form-deeper': `Una {board} con el espacio debajo da {depth}, pero el volumen se calcula a {thickness}. Colado hasta el canto de la ${form.one} lleva {difference} más. Cambie el espesor o el espacio si eso es lo que quiere.`,
    'form-shallower': `Una {board} con el espacio debajo da solo {depth}, pero el volumen se calcula a {thickness}. Colado hasta el canto de la ${form.one} lleva {difference} menos. Suba la ${form.one}, excave más, o cambie el espesor.`,
    'nominal-depth':
      'Una {board} no es tan alta como se llama: cepillada y seca, y puesta sobre el suelo, da {depth}, no {thickness}.',
    'cement-burns':
      'El concreto fresco quema la piel y los ojos. Use guantes y botas impermeables y protección en los ojos, enjuáguese luego luego con agua limpia, y cámbiese la ropa mojada.',
    'silica-dust': `La mezcla seca y el concreto cortado sueltan polvo de sílice, que daña los pulmones para siempre. Abra ${bag.theMany} abajo y despacio, póngase con el viento a la espalda, moje, y use un respirador que le ajuste.`,
    'heavy-bags': `Cada ${bag.one} pesa {weight}. Más de {limit} es demasiado para una persona, aun pegado al cuerpo: levante entre dos, o compre ${bag.many} más chic${bag.end}s.`,

    // Se da por hecho: el contorno.
    'close-enough':
      'Orillas a no más de {closeEnough} se toman como una sola línea. Lo más que se movió una línea es {farthest}.',
    'slivers-dissolved':
      'Se quitaron sobras muy angostas para ser a propósito: {slivers}, {area} en total.',
    // Se da por hecho: los oficios.
    'local-code':
      'El código local decide el espesor, el acero, las juntas, la pendiente y la helada. Aquí nada se revisa contra él, y nada es diseño estructural: pregunte a su departamento de construcción.',
    'forms-inside-face': `Los largos de ${form.one} son de la cara de adentro, la que toca el concreto. Las tablas que pasan una esquina son más largas.`,
    'form-none-against-old': `Sin ${form.one} contra losa existente, escalones o pared en la que se puede colar: {length} de la orilla.`,
    'edges-not-thickened': `Las orillas se toman no más gruesas que la losa. Una orilla engrosada se excava como zanja dentro de la ${form.one}: dígalo en las prácticas, y se cuenta su concreto.`,
    'thickness-used':
      'La losa tiene {thickness} de espesor en todas partes, también en las orillas.',
    'flat-ground': `El suelo se toma plano y a su profundidad. Si en conjunto está {depth} más bajo, lleva {more} más: revise con un hilo de lado a lado de la ${form.one}.`,
    'allowance-used':
      'El margen por desperdicio es {share} del neto, o {bags} donde eso es más. Es una línea aparte, nunca va en el neto.',
    'yield-nominal': `Lo que rinde ${bag.a} es lo que trae impreso. En la obra varía unos cuantos por ciento, y más con el agua.`,
    'blend-whole-bags': `Combinado por ${bag.many}: {mainParts} de “{main}” por {otherParts} de “{other}”, lo más cerca que dan ${bag.theMany} enter${bag.end}s. Los fabricantes no responden por combinaciones: haga una prueba primero.`,
    ...boardsEs(terms).notes,
    ...jointsEs.notes,
    ...layoutTradeEs(terms).notes,
    ...mixEs(terms).notes,
    ...steelEs.notes,
    ...orderNotesEs(terms),
    ...stakesEs(terms).notes,
    ...thickenedEs(terms).notes,
    ...weatherEs(terms).notes,
    ...placingEs(terms).notes,
  };
}
