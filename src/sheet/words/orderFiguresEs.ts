import type { TermsEs } from '../../drawing/words/termsEs.ts';
import type { orderFigures, orderFormulas, orderInputs } from './orderFiguresEn.ts';

interface OrderFigureWords {
  readonly figures: typeof orderFigures;
  readonly formulas: typeof orderFormulas;
  readonly inputs: typeof orderInputs;
}

/** Order, pedido: orden. Ready-mix, concreto premezclado. Payload, carga útil. Bid, oferta: presupuesto, estimado. */
export function orderFiguresEs({ bag }: TermsEs): OrderFigureWords {
  return {
    figures: {
      'order-lines': 'Líneas de la lista',
      'order-unpriced': 'De estas, sin precio',
      'order-money': 'La lista, hasta donde tiene precios',
      'base-compacted': 'Base, compactada',
      'base-loose': 'Base, suelta como se compra',
      'retarder-area': 'Barrera de vapor, con traslapes',
      'cure-volume': 'Compuesto de curado',
      'spare-ratio': `Conviene estar seguro de que alcancen ${bag.theMany}`,
      'spare-average': `${bag.Many} que se usan en promedio`,
      'bags-to-take': `${bag.Many} que hay que llevar`,
      'spare-bags': `${bag.Many} de reserva, además de la boleta de mezcla`,
      pallets: 'Tarimas completas',
      'pallet-deposit': 'Depósito por tarimas, se devuelve',
      'ready-mix': 'Concreto premezclado, al cuarto siguiente',
      'bags-cost': `De ${bag.many}, con todo y trabajo`,
      'truck-cost': 'De camión, con todo y trabajo',
      'break-even': 'Cuestan lo mismo en',
      'haul-weight': 'Por acarrear',
      trips: 'Viajes',
      'trips-least': 'Ningún plan tiene menos viajes que',
      'labour-hours': 'Mano de obra',
      'bid-materials': 'Oferta: materiales',
      'bid-labour': 'Oferta: mano de obra',
      'bid-overhead': 'Oferta: gastos generales',
      'bid-profit': 'Oferta: ganancia',
      'bid-tax': 'Oferta: impuesto',
      'bid-rounding': 'Oferta: redondeo',
      'bid-price': 'Oferta: precio',
    },
    formulas: {
      'order-lines':
        'Lo que pide cada boleta, y lo que se escribió además, contado línea por línea.',
      'order-unpriced': 'Líneas para las que no se escribió precio. No están en ninguna suma.',
      'order-money':
        'La cantidad de cada línea por su precio, al centavo; luego se suman las que lo tienen.',
      'base-compacted': 'Área neta por el espesor de la base ya compactada.',
      'base-loose':
        'Lo que la base compactada pide de material suelto. La contracción se escribe de dos maneras: vale la que se eligió en las prácticas.',
      'retarder-area':
        'Área neta, aumentada por lo que los traslapes quitan del ancho de cada rollo. Los bordes doblados no están incluidos.',
      'cure-volume': 'Área neta entre lo que cubre el compuesto.',
      'spare-ratio': `Lo que cuesta que falte ${bag.a}, como parte de eso y de lo que cuesta que sobre: así de seguro conviene estar.`,
      'spare-average': `${bag.Many} para el volumen neto, y lo que en promedio se usa de más.`,
      'bags-to-take':
        'El uso promedio y tantas desviaciones más como convenga para que alcance. Con pocos trabajos propios, la distribución de Student y un trabajo más toman el lugar de la normal.',
      'spare-bags': `${bag.Many} que hay que llevar, menos las cantidades de la boleta de mezcla; nunca menos que nada.`,
      pallets: `${bag.Many} de cada mezcla entre lo que lleva una tarima, solo tarimas completas.`,
      'pallet-deposit': 'Tarimas completas por el depósito de una. No es parte de ninguna suma.',
      'ready-mix':
        'Neto y margen, hasta el cuarto siguiente de la unidad en que se vende, nunca para abajo.',
      'bags-cost': `${bag.Many} por su precio, horas por ${bag.one} a la tarifa de mano de obra, y la renta de la revolvedora.`,
      'truck-cost':
        'Lo que se cobra por su precio, cargos por carga corta, espera después del tiempo gratis, y las horas de los que llevan carretilla.',
      'break-even':
        'Los dos costos como líneas sobre el volumen, con fracciones; donde se cruzan, o donde al acabarse un cargo uno baja del otro.',
      'haul-weight':
        'Peso de lo que se va a traer, línea por línea. Las líneas de peso desconocido no están incluidas.',
      trips: `Primero las piezas más pesadas, cada una en el primer viaje que tiene lugar. Carga útil menos lo que va a bordo; las tarimas se reparten por ${bag.one}.`,
      'trips-least':
        'Todo el peso entre la carga útil de un viaje, y cuántas de las piezas más pesadas caben en uno; hacia arriba. Si los viajes son tan pocos, está probado.',
      'labour-hours': 'Horas de una persona, tarea por tarea: escritas, o según sus tarifas.',
      'bid-materials': 'Todas las líneas de la lista, también cargos y extras.',
      'bid-labour': 'Horas de cada tarea a la tarifa de mano de obra, al centavo, sumadas.',
      'bid-overhead': 'Una parte de materiales y mano de obra.',
      'bid-profit':
        'El recargo es una parte de lo que cuesta el trabajo; el margen es una parte de lo que se cobra, antes de impuesto.',
      'bid-tax': 'Sobre materiales, o sobre todo, o ninguno: según se eligió.',
      'bid-rounding': 'Hacia arriba, hasta un paso entero.',
      'bid-price': 'Las líneas de arriba, sumadas.',
    },
    inputs: {
      'base-depth': 'Base, ya compactada',
      'base-shrink': 'Contracción',
      'base-means': 'Que significa',
      'retarder-width': 'Rollo, ancho',
      'retarder-length': 'Rollo, largo',
      'retarder-lap': 'Traslape',
      'cure-coverage': 'Una lata cubre',
      'cure-can': 'Una lata trae',
      'short-cost': `Que falte ${bag.a} cuesta`,
      'over-cost': `Que sobre ${bag.a} cuesta`,
      'bags-over': 'Se usa más que el neto',
      'bags-spread': 'Los trabajos varían en',
      'spread-jobs': 'De tantos trabajos',
      'spare-quantile': 'Desviaciones',
      'bags-per-pallet': `${bag.Many} por tarima`,
      'deposit-one': 'Depósito por una',
      'bag-price': `${bag.One}, en promedio`,
      'bag-hours': `Trabajo por ${bag.one}`,
      'labour-rate': 'Una hora de mano de obra',
      'mixer-hire': 'Renta de la revolvedora',
      'ready-price': 'Una yarda o un metro de premezclado',
      'ready-least': 'Se cobra por lo menos',
      'ready-step': 'Paso',
      'short-below': 'Es carga corta abajo de',
      'short-fee': 'Cargo por carga corta',
      'missing-fee': 'Cargo por cada unidad que falta',
      'on-site': 'El camión en la obra',
      'free-time': 'Gratis',
      'waiting-rate': 'Un minuto de más',
      wheelers: 'Llevan carretilla',
      'truck-payload': 'Camioneta, carga útil',
      'trailer-payload': 'Remolque, carga útil',
      'riding-weight': 'Va a bordo',
      'overhead-share': 'Gastos generales',
      'profit-share': 'Ganancia',
      'profit-by': 'Calculada como',
      'tax-share': 'Impuesto',
      'tax-on': 'Impuesto sobre',
      'price-step': 'Se redondea hacia arriba a',
    },
  };
}
