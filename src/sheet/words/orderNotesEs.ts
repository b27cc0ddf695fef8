import type { TermsEs } from '../../drawing/words/termsEs.ts';
import type { orderNotes } from './orderNotesEn.ts';

export function orderNotesEs({ bag }: TermsEs): typeof orderNotes {
  return {
    // No deja seguir.
    'retarder-lap-wide':
      'La barrera de vapor no se puede contar: un traslape de {lap} no deja nada de un rollo de {width} de ancho. Corrija el rollo o el traslape en las prácticas.',
    'haul-nothing-left':
      'No se puede planear ningún viaje: lo que va a bordo pesa tanto como la carga útil o más. Revise los dos números en las prácticas.',
    'haul-piece-heavy':
      'No se puede planear ningún viaje: una pieza de “{what}” pesa {each}, y {most} es lo más que se puede cargar en un lugar. Pídala con entrega, o revise las cargas útiles en las prácticas.',
    'haul-trips-many':
      'No se planean viajes: serían más de mil. Busque una carga útil mal escrita, o pida entrega.',
    'order-too-dear':
      'Una suma es mayor que cualquiera que se escribe. Busque un precio, una cantidad o unas horas mal escritas.',
    // Revise antes de construir.
    'order-incomplete':
      'Esta lista no está completa: una boleta anterior no se pudo calcular. Ahí se dice qué lo impide. No se hace oferta con ella.',
    'haul-below-pallet': `Una tarima completa pesa {pallet}, más que los {most} que se pueden cargar. Hay que repartirla: se carga ${bag.one} por ${bag.one}.`,
    'haul-axles':
      'Los viajes van solo por carga útil. No se calcula la carga de cada eje, el peso en la bola ni las llantas: lea las etiquetas, reparta la carga baja y sobre los ejes, y amárrela.',
    'spare-no-end': `Que sobre ${bag.a} no cuesta nada, así que ninguna cantidad es bastante. Diga lo que cuesta devolver, en tiempo y cargo, o que no se aceptan devoluciones.`,
    // Se da por hecho.
    'order-unpriced':
      '{lines} sin precio, y en ninguna suma: {items}. Escriba lo que pide su proveedor, o cero si no cuesta nada.',
    'order-unweighed': '{lines} de peso desconocido, y en ninguna carga: {items}.',
    'order-on-truck':
      'Lo que ya está en la camioneta no está en esta lista. Cuente su peso en lo que va a bordo.',
    'order-delivered':
      'Se da por hecho que la base se entrega: no está en ninguna carga. Se cuenta solo bajo el área neta.',
    'base-means-swell':
      'Una contracción de {share} se toma como suelto = compactado × {factor}. Otros la escriben como suelto = compactado ÷ (1 − s), que es más: pregunte cuál usa su proveedor.',
    'base-means-shrink':
      'Una contracción de {share} se toma como suelto = compactado × {factor}, que es 1 ÷ (1 − s). Otros la escriben como suelto = compactado × (1 + s), que es menos: pregunte cuál usa su proveedor.',
    'retarder-by-area':
      'La barrera de vapor se cuenta por área y traslapes. En una losa de muchas esquinas se recorta más.',
    'cure-by-can':
      'El compuesto de curado se cuenta para una mano con su cobertura. Un acabado escobillado toma más: lea la lata.',
    'spare-asked':
      'No se calcula reserva. Escriba lo que cuesta: {items}. Si falta, es un viaje y una junta en mal lugar; si sobra, es el regreso y el cargo del proveedor.',
    'spare-guessed':
      'La reserva va por un cálculo aproximado: {over} más que el neto, y los trabajos varían en {spread}. Ponga sus propios trabajos en las prácticas.',
    'spare-from-jobs':
      'La reserva va por {jobs} de usted: {over} más que el neto, con variación de {spread}.',
    'spare-covered':
      'El margen de la boleta de mezcla ya es más de lo que conviene llevar ({take}).',
    'bags-returned': `Se da por hecho que ${bag.theMany} enter${bag.end}s, sec${bag.end}s y sin abrir se devuelven. Pregunte antes de comprar.`,
    'bags-not-returned': `Se da por hecho que no hay devoluciones: ${bag.a} que sobra cuesta todo su precio.`,
    'pallets-asked': `Las tarimas no se cuentan: diga en las prácticas cuánt${bag.end}s ${bag.many} trae una de las suyas.`,
    'ready-mix-quarter': 'El concreto premezclado va al cuarto siguiente, nunca para abajo.',
    'compare-asked': `Todavía no se comparan ${bag.many} y camión. Escriba sus propias tarifas (cero donde no se cobra): {items}.`,
    'compare-smooth': `Dónde cuestan lo mismo se calcula con fracciones de ${bag.one} y cualquier cantidad de premezclado; los costos de este trabajo, con ${bag.many} enter${bag.end}s y cuartos. Colar y acabar es el mismo trabajo de las dos maneras y no está en ninguna.`,
    'haul-asked':
      'No se planean viajes: escriba la carga útil de la camioneta o del remolque, de su etiqueta.',
    'bid-asked': 'Todavía no hay oferta. Escriba primero: {items}.',
    'bid-needs-prices': 'Todavía no hay oferta: {lines} sin precio la harían demasiado baja.',
    'bid-before-deposit':
      'El depósito por tarimas, {deposit}, se devuelve, así que no está en la oferta.',
  };
}
