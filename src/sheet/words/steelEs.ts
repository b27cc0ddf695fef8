import type {
  steelColumns,
  steelCounts,
  steelFigures,
  steelFormulas,
  steelInputs,
  steelNotes,
  steelTables,
  steelTerms,
} from './steelEn.ts';

interface SteelWords {
  readonly figures: typeof steelFigures;
  readonly formulas: typeof steelFormulas;
  readonly inputs: typeof steelInputs;
  readonly tables: typeof steelTables;
  readonly columns: typeof steelColumns;
  readonly counts: typeof steelCounts;
  readonly terms: typeof steelTerms;
  readonly notes: typeof steelNotes;
}

/** Words of mesh, bars, dowels and chairs. */
export const steelEs: SteelWords = {
  figures: {
    'mesh-area': 'Área dentro del recubrimiento',
    'mesh-least': 'Mínimo por área y traslape',
    'mesh-proof': 'Este acomodo',
    'mesh-rows': 'Hileras',
    'mesh-pieces': 'Piezas por tender',
    'mesh-sheets': 'Hojas de malla',
    'mesh-rolls': 'Rollos de malla',
    'mesh-unrolled': 'Tomado del rollo',
    'mesh-money': 'Malla, precio',
    'mesh-truck': 'Hojas de la camioneta, usadas',
    'mesh-truck-rolls': 'Rollos de la camioneta, usados',
    'mesh-weight': 'Malla, peso',
    'steel-ties': 'Amarres',
    'bar-lines': 'Varillas por poner, sin traslapes',
    'bar-length': 'Varillas puestas, largo total',
    'bars-to-buy': 'Varillas por comprar',
    'bars-money': 'Varillas, precio',
    'bars-proof': 'Plan de las varillas',
    'bar-cuts': 'Cortes',
    'bars-least': 'Mínimo por largo',
    'bar-weight': 'Varillas, peso',
    'bar-ties': 'Amarres',
    dowels: 'Pasajuntas',
    'dowel-hole': 'Hoyos de pasajuntas, hondo',
    'steel-chairs': 'Silletas',
    'steel-area': 'Acero en cada sentido',
    'drag-area': 'La fórmula de arrastre pide, por sentido',
  },
  formulas: {
    'mesh-area': 'El colado metido hacia adentro lo del recubrimiento en cada orilla.',
    'mesh-least':
      'Lo mayor de dos: el área dentro del recubrimiento entre el área de una, y el área de lo que está a más de medio traslape de sus orillas entre lo que cubre una menos un traslape en cada sentido. Primero se descuenta la malla de la camioneta, luego se redondea hacia arriba. No puede ser menos.',
    'mesh-proof':
      'Comprobado el mínimo cuando no lleva más de lo que piden el área y el traslape. Si no, es el mejor que se halló: puede haber uno mejor.',
    'mesh-rows':
      'Lo que deben cubrir las hileras, menos un traslape, entre el ancho menos un traslape, redondeado hacia arriba; cada pedazo del colado por su cuenta, y más donde las hileras terminan en una esquina para ahorrar malla.',
    'mesh-pieces': 'Las piezas de cada hilera, de una punta a la otra.',
    'mesh-sheets':
      'Por cada hilera: su largo menos un traslape, entre el largo de la hoja menos un traslape, redondeado hacia arriba; menos las hojas (r) que se ahorran usando sobrantes. Lo que se corta de cada una está abajo.',
    'mesh-rolls':
      'Largos cortados del rollo, sumados, entre el largo de un rollo, redondeado hacia arriba. Lo que se corta de cada uno está abajo.',
    'mesh-unrolled': 'Largos cortados de rollos, uno tras otro.',
    'mesh-money': 'Lo que se compra del proveedor, por el precio de una.',
    'mesh-truck': 'Hojas de la camioneta que se cortan.',
    'mesh-truck-rolls': 'Rollos de la camioneta que se cortan.',
    'mesh-weight': 'Lo comprado, por su área, por el peso de la malla por área.',
    'steel-ties':
      'Por cada traslape: su largo entre la separación de amarres, redondeado hacia arriba, y uno más.',
    'bar-lines':
      'En cada sentido: el ancho de la figura dentro del recubrimiento entre la separación, redondeado hacia arriba, y una más; una línea que corta un hueco o un recorte son dos varillas. Una más va atravesada en cada esquina interior.',
    'bar-length': 'Todas las varillas de punta a punta, sin contar traslapes.',
    'bars-to-buy':
      'Las líneas más largas que una varilla se traslapan; luego cada pieza se corta de varillas como dice el plan de abajo. No puede ser menos de lo que pide el puro largo (N₀).',
    'bars-money': 'Varillas por comprar por el precio de una.',
    'bars-proof':
      'Los planes de corte se miran por las varillas compradas (C), luego por los cortes (k). El mejor, comprobado: ningún plan lleva menos de lo primero, ni así menos de lo segundo. Si no, la búsqueda está por venir, o se acabó antes de saberlo.',
    'bar-cuts': 'Cada pieza, menos la que termina donde termina su varilla, se corta una vez.',
    'bars-least':
      'Largo de todas las varillas y traslapes (k de ellos) entre el largo de una varilla, redondeado hacia arriba.',
    'bar-weight': 'Varillas por comprar por el largo de una por el peso de su medida.',
    'bar-ties': 'Uno de cada dos cruces (x), y dos en cada traslape (k).',
    dowels:
      'Por cada orilla recta contra la losa vieja, de esquina a esquina, y de junta a junta donde una termina en ella: el largo menos la distancia de las dos puntas, entre la separación, redondeado hacia arriba, y una más.',
    'dowel-hole': 'La mitad de la pasajunta.',
    'steel-chairs':
      'Líneas de silletas a lo largo de cada hilera, a no más de la separación; en cada línea, su largo dentro del colado entre la separación, redondeado hacia arriba.',
    'steel-area': 'Área de un alambre entre la separación de los alambres.',
    'drag-area':
      'Fricción por el largo entre juntas por el peso de la losa, entre el doble del esfuerzo que aguanta el acero.',
  },
  inputs: {
    'mesh-style': 'Malla',
    'mesh-cover': 'Recubrimiento en las orillas',
    'mesh-size-length': 'Largo de una',
    'mesh-size-width': 'Ancho de una',
    'mesh-lap-sides': 'Traslape a los lados',
    'mesh-lap-ends': 'Traslape en las puntas',
    'mesh-lapped-area': 'Área a más de medio traslape de las orillas',
    'mesh-weight-by-area': 'Peso de la malla',
    'mesh-least-piece': 'Pieza más chica',
    'mesh-square': 'Un cuadro',
    'tie-spacing': 'Amarres, separación máxima',
    'chair-spacing': 'Silletas, separación máxima',
    'lap-length': 'Traslapes, largo total',
    'bar-size': 'Varilla',
    'bar-spacing': 'Varillas, separación máxima',
    'bar-cover': 'Recubrimiento en las orillas',
    'bar-lap': 'Traslape de dos varillas',
    'bar-laps': 'Traslapes',
    'bar-stock-length': 'Largo de una varilla',
    'bar-crossings': 'Cruces',
    'price-of-one': 'Precio de una',
    'dowel-diameter': 'Diámetro de una pasajunta',
    'dowel-length': 'Largo de una pasajunta',
    'dowel-spacing': 'Pasajuntas, separación máxima',
    'dowel-from-corner': 'Lejos de esquinas',
    'dowel-set': 'Puestas en',
    'drag-friction': 'Fricción',
    'drag-length': 'Largo entre juntas',
    'drag-weight': 'Peso de la losa',
    'drag-stress': 'Esfuerzo en el acero',
  },
  tables: {
    'bar-buy': 'Varillas por comprar',
    'bar-cuts': 'Varillas por cortar',
    'bar-lengths': 'Varillas por largo',
    'dowel-holes': 'Hoyos de pasajuntas',
    'mesh-buy': 'Malla por comprar',
    'mesh-cuts': 'Piezas de malla',
    'mesh-rests': 'Malla que sobra',
    'mesh-used': 'Malla de la que se corta',
  },
  columns: {
    'bar-count': 'Varillas',
    'bar-pieces': 'Piezas',
    'bar-size': 'Medida',
    'bar-way': 'Sentido',
    from: 'De',
    'from-start': 'Desde su inicio',
    hole: 'Hoyo',
    left: 'Sobra',
    'mesh-form': 'Qué es',
    piece: 'Pieza',
    seam: 'Junta',
    'used-mesh': 'Hoja o rollo',
  },
  counts: {
    bar: { one: 'varilla', many: 'varillas' },
    dowel: { one: 'pasajunta', many: 'pasajuntas' },
    roll: { one: 'rollo', many: 'rollos' },
    tie: { one: 'amarre', many: 'amarres' },
    chair: { one: 'silleta', many: 'silletas' },
  },
  terms: {
    'form-roll': 'rollo',
    'form-sheet': 'hoja',
    'way-across': 'atravesadas',
    'way-along': 'a lo largo',
    'way-corner': 'esquinas interiores',
    'set-epoxy': 'epóxico',
    'set-sleeve': 'engrasada, en camisa',
    'layout-first': 'acomodo rápido',
    'layout-least': 'el mínimo, comprobado',
    'layout-searched': 'el mejor que se halló',
    'from-truck-sheet': 'camioneta, hoja',
    'from-truck-roll': 'camioneta, rollo',
    'from-yard-sheet': 'proveedor, hoja',
    'from-yard-roll': 'proveedor, rollo',
  },
  notes: {
    'mesh-size':
      'La malla no se puede contar: la pieza más chica y la separación de amarres deben ser más que nada, traslapes y recubrimiento no menos. Póngalos en las prácticas.',
    'mesh-none-listed':
      'No hay malla que tender. Ponga lo que trae la camioneta o lo que vende el proveedor.',
    'mesh-lap-too-wide':
      'Con un traslape de {lap} no queda nada de ninguna hoja o rollo de sus listas. Haga más chico el traslape, o ponga malla más ancha.',
    'mesh-no-room':
      'Con {cover} de recubrimiento en cada orilla no queda lugar para la malla. Haga más chico el recubrimiento, o deje la malla.',
    'mesh-too-many':
      'Con traslape de {lap}, la malla de sus listas pasaría de {most}. Busque una medida o un traslape mal escrito.',
    'mesh-not-enough':
      'La malla de la camioneta no alcanza, o ninguna es bastante ancha. Ponga lo que vende el proveedor, o más malla.',
    'bars-size':
      'Las varillas no se pueden contar: la separación y el largo de una varilla deben ser más que nada, recubrimiento y traslape no menos. Póngalos en las prácticas.',
    'bars-stock-short':
      'Un traslape de {lap} no debe pasar de media varilla de {stock}, y las varillas de esquinas interiores no deben ser más largas que una. Ponga una varilla más larga, o un traslape o varilla de esquina más cortos.',
    'bars-no-room':
      'Con {cover} de recubrimiento en cada orilla no queda lugar para varillas. Haga más chico el recubrimiento, o deje las varillas.',
    'bars-too-many':
      'A {spacing} de separación pasarían de {most}. Busque una separación mal escrita.',
    'dowels-size':
      'Las pasajuntas no se pueden contar: la separación debe ser más que nada y no demasiado chica, la distancia a las esquinas no menos que nada.',
    'chairs-too-many':
      'Silletas a {spacing} serían más de las que lleva cualquier losa. Busque una separación mal escrita.',
    'mesh-springs-back':
      'La malla da el latigazo al cortarla o desenrollarla. Ponga peso primero en las dos puntas, apártese, y use guantes y protección en los ojos. Tape las puntas de alambre y varilla donde alguien pueda caer.',
    'mesh-stock-narrow':
      'No se usan, por no ser más anchas que el traslape: {rows} de sus listas de malla.',
    'mesh-lap-short':
      'Los traslapes son de menos de un cuadro ({square}), así que no se traslapa ningún alambre atravesado. Pregunte qué quiere su inspector.',
    'drag-short':
      'La fórmula de arrastre pide {need} en cada sentido, y esta malla tiene {has}. Escoja malla más pesada, ponga las juntas más cerca, o cambie con qué se calcula la fórmula.',
    'bar-caps':
      'Una punta de varilla parada, o donde alguien pueda caer, atraviesa a una persona. Tápelas todas, o dóblelas. La varilla pesa y da latigazo: cargue las largas entre dos, y use guantes.',
    'dowels-meet':
      'Pasajuntas de orillas vecinas se toparían dentro de la losa vieja donde está marcado. Deje fuera una de cada dos, o póngalas más cortas.',
    'dowels-drill':
      'Taladrar concreto suelta polvo de sílice, que daña los pulmones para siempre: taladre con agua o aspiradora, y use un respirador que le ajuste. Busque primero tubos y cables en la losa vieja.',
    'steel-none': 'No se calcula acero, como dicen las prácticas.',
    'steel-what-for':
      'Acero tan ligero mantiene cerradas las grietas. No las evita, ni hace que la losa cargue más. Por la fórmula de arrastre bastaría {need} en cada sentido; hay {has}. Esto no es diseño estructural: pregunte a su departamento de construcción o a un ingeniero.',
    'mesh-laid-in-rows':
      'La malla va en hileras, a {cover} de cada orilla; huecos y sesgos se cortan de cada pieza en la obra. Los sobrantes se usan donde caben, a lo largo y a lo ancho; nada se corta más chico que {least}. Se compra de un solo tipo.',
    'mesh-lap-used':
      'La malla se traslapa {sides} a los lados y {ends} en las puntas, y más donde una pieza quedaría muy chica.',
    'mesh-price-missing':
      'No hay suma de dinero: no toda la malla del proveedor tiene precio. De {kinds} se escogió el que compra menos área.',
    'steel-on-chairs':
      'Silletas a no más de {spacing} sostienen el acero a su altura. El alambre se cuelga y se pisa entre silletas muy separadas.',
    'bars-laid':
      'Varillas {size} a lo largo del lado más largo y atravesadas, a no más de {spacing}, a {cover} de cada orilla. Los traslapes son de {lap} ({diameters} diámetros). Una pieza más corta que un traslape no se pone. Esto no es diseño estructural.',
    'dowels-off':
      'Sin pasajuntas a la losa vieja. Hay cuadrillas que las quieren, para que ninguna losa se levante; otras no, porque amarran la losa nueva a una que se mueve, y la agrietan. Se prenden en las prácticas.',
    'dowels-epoxy':
      'Las pasajuntas van con epóxico, a {depth} de hondo, a la mitad del espesor de la losa vieja, a nivel y a escuadra con la orilla, a {fromCorner} o más de las esquinas. Déjelas igual de lejos de las juntas de la losa vieja. Engrase la mitad que va en la losa nueva donde deba moverse. Sople bien los hoyos, y use guantes: el epóxico quema.',
    'dowels-sleeve':
      'Las pasajuntas van engrasadas en una camisa, a {depth} de hondo, a la mitad del espesor de la losa vieja, a nivel y a escuadra con la orilla, a {fromCorner} o más de las esquinas, para que las losas se separen pero no se levanten. Déjelas igual de lejos de las juntas de la losa vieja.',
    'steel-lifted':
      'El acero se levanta a su altura al colar, así que no se cuentan silletas. Se vuelve a pisar con facilidad: levántelo al último, y revise.',
  },
};
