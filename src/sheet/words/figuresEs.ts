import type { TermsEs } from '../../drawing/words/termsEs.ts';
import { boardsEs } from './boardsEs.ts';
import type { columns, figures, formulas, inputs, tables } from './figuresEn.ts';
import { jointsEs } from './jointsEs.ts';
import { layoutTradeEs } from './layoutTradeEs.ts';
import { mixEs } from './mixEs.ts';
import { orderEs } from './orderEs.ts';
import { orderFiguresEs } from './orderFiguresEs.ts';
import { placingEs } from './placingEs.ts';
import { stakesEs } from './stakesEs.ts';
import { steelEs } from './steelEs.ts';
import { thickenedEs } from './thickenedEs.ts';
import { weatherEs } from './weatherEs.ts';

interface FigureWords {
  readonly figures: typeof figures;
  readonly formulas: typeof formulas;
  readonly inputs: typeof inputs;
  readonly tables: typeof tables;
  readonly columns: typeof columns;
}

/** Names of figures as they stand on a ticket, how each is reached, and the heads of tables. */
export function figuresEs(terms: TermsEs): FigureWords {
  const { form, bag } = terms;
  const boards = boardsEs(terms);
  const mix = mixEs(terms);
  const stakes = stakesEs(terms);
  const order = orderEs(terms);
  const orderFigures = orderFiguresEs(terms);
  const thickened = thickenedEs(terms);
  const weather = weatherEs(terms);
  const placing = placingEs(terms);
  const layoutTrade = layoutTradeEs(terms);
  return {
    figures: {
      'net-area': 'Área neta',
      'gross-area': 'Área antes de recortes',
      'cut-out-area': 'Recortado',
      perimeter: 'Perímetro, con huecos',
      'edge-free': 'Orilla libre',
      'edge-existing-slab': 'Orilla contra losa existente',
      'edge-wall': 'Orilla colada contra pared',
      'edge-wall-formed': `Orilla con ${form.one} junto a pared`,
      'edge-steps': 'Orilla contra escalones',
      'edge-block-out': 'Orilla de huecos',
      'edge-patch': 'De estas, orillas de parches',
      'form-depth': `Espesor que da la ${form.one}`,
      'form-length': `${form.One}, cara de adentro`,
      thickness: 'Espesor usado',
      'net-volume': 'Volumen neto',
      'form-depth-volume': `Si la ${form.one} fija el espesor`,
      allowance: 'Margen en total',
      needed: 'Neto y margen',
      'bag-rounding': `Redondeo a ${bag.many} en las partes de la combinación`,
      made: `Concreto que dan est${bag.end}s ${bag.many}`,
      bags: bag.Many,
      'bag-weight': `${bag.Many}, peso`,
      batches: 'Tandas',
      'last-batch': 'En la última tanda',
      ...boards.figures,
      ...jointsEs.figures,
      ...layoutTrade.figures,
      ...mix.figures,
      ...steelEs.figures,
      ...orderFigures.figures,
      ...stakes.figures,
      ...thickened.figures,
      ...weather.figures,
      ...placing.figures,
    },
    formulas: {
      'net-area':
        'Área por coordenadas de lo que queda de planchas y parches al recortar losas existentes, edificios, escalones y huecos; las orillas curvas se cuentan como curvas.',
      'gross-area':
        'Área por coordenadas de planchas y parches juntos, lo encimado una vez, antes de recortes.',
      'cut-out-area': 'Área antes de recortes, menos el área neta.',
      perimeter: 'Todas las orillas del colado sumadas, también las de los huecos.',
      'edge-free': `Orillas que no topan con nada, sumadas. Llevan ${form.one}.`,
      'edge-existing-slab': `Orillas contra una losa existente, sumadas. Sin ${form.one}.`,
      'edge-wall': `Orillas contra una pared en la que se puede colar, sumadas. Sin ${form.one}.`,
      'edge-wall-formed': `Orillas junto a una pared en la que no se puede colar, sumadas. Llevan ${form.one} que no se puede sujetar con estacas por fuera.`,
      'edge-steps': `Orillas contra escalones que se quedan, sumadas. Sin ${form.one}.`,
      'edge-block-out': 'Orillas alrededor de postes, tubos y huecos, sumadas.',
      'edge-patch': 'Orillas donde el concreto nuevo llena un parche. Ya están contadas arriba.',
      'form-depth': 'Alto real de la tabla, más el espacio que se deja debajo.',
      'form-length': `Tramos de ${form.one} sumados, medidos en la cara que toca el concreto.`,
      thickness:
        'Como está en las prácticas, o el promedio de las lecturas del suelo si el trabajo así lo dice.',
      'net-volume': 'Área neta por espesor, y la orilla engrosada si la hay. Sin agregar nada.',
      'form-depth-volume': `Área neta por el espesor que da la ${form.one}; una orilla engrosada baja desde el acabado lo mismo que antes.`,
      allowance: `Las partes sumadas, o un número de ${bag.many} donde eso es más.`,
      needed: 'Volumen neto y margen juntos.',
      'bag-rounding': `Lo que da el menor número de ${bag.many} enter${bag.end}s (o medi${bag.end}s) en las partes de la combinación, menos lo que se necesita.`,
      made: `${bag.Many} de cada mezcla por lo que da cada un${bag.end}.`,
      bags: `Lo que se abre: el menor número que da lo necesario, repartido lo más cerca de las partes que se pueda, con la última tanda completa y las mitades abiertas enteras.`,
      'bag-weight': `${bag.Many} de cada mezcla por el peso de cada un${bag.end}.`,
      batches: `${bag.Many} entre ${bag.theMany} que caben en una tanda, redondeado hacia arriba. Cada tanda lleva las partes en proporción.`,
      'last-batch': `${bag.Many} que quedan después de las tandas completas.`,
      ...boards.formulas,
      ...jointsEs.formulas,
      ...layoutTrade.formulas,
      ...mix.formulas,
      ...steelEs.formulas,
      ...orderFigures.formulas,
      ...stakes.formulas,
      ...thickened.formulas,
      ...weather.formulas,
      ...placing.formulas,
    },
    inputs: {
      'board-depth': 'Alto real de la tabla',
      'gap-under-form': `Espacio debajo de la ${form.one}`,
      'form-corners': 'Lugares donde se juntan dos tramos',
      'waste-share': 'Parte del neto',
      'waste-bags': `${bag.Many} por lo menos`,
      'bag-yield': `Rinde cada ${bag.one}`,
      'batch-size': 'A la revolvedora le cabe',
      'close-enough': 'Lo bastante cerca',
      ...boards.inputs,
      ...jointsEs.inputs,
      ...layoutTrade.inputs,
      ...mix.inputs,
      ...steelEs.inputs,
      ...orderFigures.inputs,
      ...stakes.inputs,
      ...thickened.inputs,
      ...weather.inputs,
      ...placing.inputs,
    },
    tables: {
      runs: `Tramos de ${form.one}`,
      'bags-by-mix': `${bag.Many} por mezcla`,
      ...boards.tables,
      ...jointsEs.tables,
      ...layoutTrade.tables,
      ...mix.tables,
      ...steelEs.tables,
      ...order.tables,
      ...stakes.tables,
      ...placing.tables,
    },
    columns: {
      mark: 'Marca',
      meets: 'Junto a',
      length: 'Largo',
      width: 'Ancho',
      shape: 'Línea',
      stakes: 'Estacas',
      held: 'Sujeto de otro modo',
      gap: 'Separación',
      row: 'Hilera',
      mix: 'Mezcla',
      parts: 'Partes',
      bags: bag.Many,
      weight: 'Peso',
      ...boards.columns,
      ...jointsEs.columns,
      ...layoutTrade.columns,
      ...mix.columns,
      ...steelEs.columns,
      ...order.columns,
      ...stakes.columns,
      ...placing.columns,
    },
  };
}
