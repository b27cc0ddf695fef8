import type { Grid } from '../units/grid.ts';

/** The weather that the pour is figured for, as far as somebody has typed it in. */
export interface Weather {
  /** In the shade, °C. */
  readonly air?: number;
  /** Of the concrete as it is placed, °C. */
  readonly concrete?: number;
  /** Relative humidity, a share of one. */
  readonly humidity?: number;
  /** Mean wind some 20 in over the slab, km/h. */
  readonly wind?: number;
  readonly sky?: 'sun' | 'shade';
  /** Frost within a day of the pour. */
  readonly frost?: boolean;
}

/** From which weather on something must be done, and what it does to the set. */
export interface WeatherPractices {
  /** Evaporation, kg/m² in an hour, from which the surface is protected; and for mixes that bleed little. */
  readonly evaporationMost: number;
  readonly evaporationLowBleed: number;
  /** Air, °C. */
  readonly coldBelow: number;
  readonly hotFrom: number;
  /** How much longer concrete takes to set for each 10 °F (5.6 °C) that it is cooler, as a share. */
  readonly setShift: number;
}

/** The crew, its tools and how fast it works. Rates are of one pair of hands. */
export interface PlacingPractices {
  /** Pairs of hands, the mixer's too. */
  readonly crew: number;
  readonly mixers: number;
  /** Minutes from one batch of a mixer to its next; somebody stands by it. */
  readonly cycle: number;
  readonly barrow: {
    /** Wet concrete, cubic grid units. */
    readonly load: number;
    /** From the mixer to the middle of the pour. */
    readonly distance: Grid;
    /** Walked in a minute. */
    readonly speed: Grid;
    /** Minutes lost a trip: filling, tipping, turning. */
    readonly lost: number;
  };
  /** Cubic grid units an hour, shovelled and raked. */
  readonly placeRate: number;
  /** Square grid units an hour: struck off and bull floated. */
  readonly strikeRate: number;
  readonly floatRate: number;
  /** Length of edge an hour. */
  readonly edgeRate: Grid;
  readonly trowel: boolean;
  readonly trowelRate: number;
  readonly broomRate: number;
  /** Of the initial set: when the bleed water is gone, when floating starts, when trowelling starts. */
  readonly bleedShare: number;
  readonly floatShare: number;
  readonly trowelShare: number;
  /** An edge of fresh concrete is covered again within so many minutes at 70 °F; less in heat. */
  readonly edgeWindow: number;
  /** Forms are stripped so many hours after the last finishing at 70 °F; more in the cold. */
  readonly stripHours: number;
  /** The straight board that is struck off with. */
  readonly board: Grid;
  /** What of it lies on the rails, both ends together. */
  readonly boardBearing: Grid;
  readonly pulledBy: 'two' | 'one';
  /** The widest strip that one person strikes off alone. */
  readonly soloMost: Grid;
  /** Which way strips run: across the pour keeps the open edge young, along it needs fewer of them. */
  readonly strips: 'proposed' | 'across' | 'along';
  /** From where one stands: by hand, and with a pole. */
  readonly handReach: Grid;
  readonly poleReach: Grid;
  /** °C of the water that can be had cool, and how far the mix follows the water, as a share. */
  readonly coolWater: number;
  readonly waterShare: number;
}
