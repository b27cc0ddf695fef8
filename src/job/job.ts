import type { Point } from '../geometry/point.ts';
import type { Grid } from '../units/grid.ts';
import type { Money } from '../units/money.ts';
import type { Bid, OrderPractices } from './order.ts';
import type { PlacingPractices, Weather, WeatherPractices } from './placing.ts';
import type { CloseOut, PourDayPractices, PourLog } from './pourLog.ts';

/** A corner that was snapped onto another feature's edge, and stays on it when that edge moves. */
export interface Attachment {
  /** The other feature's id. */
  readonly feature: string;
  /** The corner at which the other feature's edge starts. */
  readonly corner: string;
  /** Where along that edge: 0 at its start, 1 at its end. */
  readonly t: number;
}

/** A corner of an outline, and the edge that leaves it. */
export interface Corner extends Point {
  /** Unique in the job. */
  readonly id: string;
  /**
   * Rise of the edge that leaves this corner (versine: the height of the arc over its chord), on
   * the grid. 0 = straight; positive = the arc lies to the right of the direction of travel (so it bulges
   * outward on a counter-clockwise outline); negative = to the left.
   */
  readonly rise: Grid;
  readonly on?: Attachment;
}

/** Corners joined in order. `closed` outlines return to the first corner; an open one is a line. */
export interface Outline {
  readonly form: 'outline';
  readonly closed: boolean;
  readonly corners: readonly Corner[];
}

/** A round block-out: pipe, post, column, clean-out. */
export interface Round {
  readonly form: 'round';
  readonly center: Point;
  readonly diameter: Grid;
}

export type Shape = Outline | Round;

interface FeatureBase {
  /** Unique in the job. */
  readonly id: string;
  readonly name: string;
}
/** The new slab's outline. Several pads that touch or overlap make one pour. */
export interface Pad extends FeatureBase {
  readonly kind: 'pad';
  readonly shape: Outline;
}
/** Concrete that is there already. Never poured; the edge against it needs no form. */
export interface ExistingSlab extends FeatureBase {
  readonly kind: 'existing-slab';
  readonly shape: Outline;
}
/**
 * A wall. Closed = the building's footprint, cut out of the pour. Open = the line of one wall face: it marks
 * edges as 'against a wall', but cuts nothing.
 */
export interface BuildingLine extends FeatureBase {
  readonly kind: 'building-line';
  readonly shape: Outline;
  /** A wall on a foundation can be poured against; skirting or siding cannot, so that edge is formed. */
  readonly pourAgainst: boolean;
}
/** A stoop or steps that stay. Cut out of the pour like an existing slab. */
export interface Steps extends FeatureBase {
  readonly kind: 'steps';
  readonly shape: Outline;
  /** How many treads to draw; for the drawing alone. */
  readonly treads: number;
}
/** A post, pipe, column, drain or clean-out inside the pad. */
export interface BlockOut extends FeatureBase {
  readonly kind: 'block-out';
  readonly shape: Shape;
}
/** A missing piece of an existing slab that the new concrete fills. Poured even inside an existing slab. */
export interface Patch extends FeatureBase {
  readonly kind: 'patch';
  readonly shape: Outline;
}
/** Ground where no stake may be driven (roots, a shallow pipe, a footing). Doesn't change the pour. */
export interface NoStakeZone extends FeatureBase {
  readonly kind: 'no-stake-zone';
  readonly shape: Shape;
}

/** What a buried line carries: the kinds that the published utility-marking colours tell apart. */
export type Service = 'electric' | 'gas' | 'communication' | 'water' | 'reclaimed-water' | 'sewer';

/** A buried line as it was marked on the ground. Nothing is driven within the tolerance on either side of it. */
export interface UtilityLine extends FeatureBase {
  readonly kind: 'utility-line';
  /** Open: a line, its bends at its corners. */
  readonly shape: Outline;
  readonly service: Service;
}

/** control: a groove or a cut where the slab may crack. construction: the pour stops here. existing: in the slab that is there. */
export type JointUse = 'control' | 'construction' | 'existing';

/** A joint drawn by hand: from edge to edge of the new pour, or one that the older slab has. Doesn't change the pour. */
export interface Joint extends FeatureBase {
  readonly kind: 'joint';
  /** Open and straight, bends at its corners. */
  readonly shape: Outline;
  readonly joint: JointUse;
}

export type Feature =
  | Pad
  | ExistingSlab
  | BuildingLine
  | Steps
  | BlockOut
  | Patch
  | NoStakeZone
  | UtilityLine
  | Joint;
export type FeatureKind = Feature['kind'];

/** How lengths are shown and how a bare number is read. Never changes the geometry. */
export type UnitStyle = 'feet-inches' | 'decimal-feet' | 'metric';

/** Dressed lumber used on edge as a form board (sizes in takeoff/forms/rules.ts). */
export type BoardSize = '1x4' | '1x6' | '2x4' | '2x6' | '2x8' | '2x10' | '2x12';

/** Boards on the truck, all alike. */
export interface TruckBoards {
  /** Unique among the boards of truck and yard. */
  readonly id: string;
  readonly size: BoardSize;
  readonly length: Grid;
  readonly count: number;
  /** The top edge is what the screed rides on: a twisted board makes a wavy slab. */
  readonly twisted: boolean;
}

/** A length of board that the yard sells, as many as one likes. */
export interface YardBoard {
  /** Unique among the boards of truck and yard. */
  readonly id: string;
  readonly size: BoardSize;
  readonly length: Grid;
  /** Of one board, when it is known. */
  readonly price?: Money;
}

/** What boards there are to cut the forms from. */
export interface Lumber {
  readonly truck: readonly TruckBoards[];
  readonly yard: readonly YardBoard[];
}

/**
 * Welded wire by its designation: squares in inches, then the wire's area in hundredths of a square inch. W2.0 and W2.1
 * are both sold as 8 gauge (sizes in takeoff/steel/styles.ts).
 */
export type MeshStyle =
  | '6x6-W1.4'
  | '6x6-W2.0'
  | '6x6-W2.1'
  | '6x6-W2.9'
  | '6x6-W4.0'
  | '4x4-W1.4'
  | '4x4-W2.0'
  | '4x4-W2.1'
  | '4x4-W2.9'
  | '4x4-W4.0';

/** Reinforcing bar by its number (sizes in takeoff/steel/bars.ts). */
export type BarSize = '#3' | '#4' | '#5' | '#6' | '#7' | '#8';

interface MeshBase {
  /** Unique in the list. */
  readonly id: string;
  readonly form: 'sheet' | 'roll';
  readonly length: Grid;
  readonly width: Grid;
}

/** Mesh on the truck: whole sheets, or what is left of a roll, all alike. */
export interface TruckMesh extends MeshBase {
  readonly count: number;
}

/** A sheet or a roll that the yard sells, as many as one likes. */
export interface YardMesh extends MeshBase {
  /** Of one sheet or one whole roll, when it is known. */
  readonly price?: Money;
}

/** What mesh there is to cut from. */
export interface MeshStock {
  readonly truck: readonly TruckMesh[];
  readonly yard: readonly YardMesh[];
}

/** A stake that was set by hand: it stands where it was put, or is left out where it would have stood. */
export interface HandStake {
  /** Unique in the job. */
  readonly id: string;
  /** Where it meets the inside face of the form, as it was put; it goes to the nearest place on a form run. */
  readonly at: Point;
  readonly is: 'pinned' | 'removed';
}

/** A bagged mix, as printed on the user's own bag. */
export interface BagMix {
  readonly id: string;
  readonly name: string;
  /** Weight of one bag, kg. */
  readonly weight: number;
  /** Concrete that one bag makes, cubic grid units. */
  readonly yield: number;
  /** Water that one bag takes, cubic grid units. Absent until somebody has read it off the bag. */
  readonly water?: { readonly least: number; readonly most: number };
  readonly set: SetTimes;
}

/** When concrete sets after water meets it, at about 70 °F (21 °C). */
export interface SetTimes {
  /** Whole minutes to the initial and to the final set. */
  readonly initial: number;
  readonly final: number;
  /** Read off the bag or its data sheet, or what is commonly said of such a mix. */
  readonly from: 'bag' | 'common-practice';
}

/** Concrete that is allowed for by hand. */
export interface WasteExtra {
  /** Unique in the list. */
  readonly id: string;
  readonly name: string;
  /** Cubic grid units. */
  readonly volume: number;
}

/** The user's own rules and defaults. Sources and ranges of each stand in the takeoff's rules files. */
export interface Practices {
  /** Sign that prices are written with. */
  readonly currency: string;

  /** Depth of concrete that the volume is figured with. */
  readonly thickness: Grid;
  readonly formBoard: BoardSize;
  /** Gap left between the underside of the form board and the ground. Board depth + gap = depth the form gives. */
  readonly gapUnderForm: Grid;
  /** Concrete that goes deeper along all free edges: a trench inside the forms. */
  readonly thickenedEdge: {
    readonly use: boolean;
    /** From the finish down: the slab's thickness is part of it. */
    readonly depth: Grid;
    /** At the bottom, from the outside face in. */
    readonly width: Grid;
    /** How far in from there its bottom rises to the underside of the slab; 0 for a square step. */
    readonly taper: Grid;
  };
  /** What is laid under the slab. */
  readonly base: {
    /** Compacted; 0 where the slab lies on the ground. */
    readonly depth: Grid;
    /** A sheet of plastic right under the slab. */
    readonly retarder: boolean;
  };
  /** Of the edger that rounds the free edges' top; 0 for a sharp edge. */
  readonly edgeRadius: Grid;
  /** Two edges nearer than this are taken as the same line (tape readings of one edge differ). */
  readonly closeEnough: Grid;

  /** The widest gap between stakes on a straight run, by the form board's size. */
  readonly stakeSpacings: Readonly<Record<BoardSize, Grid>>;
  /** First and last stake of a run no farther than this from its ends. */
  readonly stakeFromEnd: Grid;
  /** Curved forms: never wider than `spacing`, and no wider than lets the board stand off the arc by `flat`. */
  readonly curve: { readonly spacing: Grid; readonly flat: Grid };
  /** How far the form board may bend between stakes under wet concrete, and what it is reckoned with. */
  readonly bending: {
    /** The most that the board may bow out, and the most as a share of the spacing (1/360). The lesser counts. */
    readonly deflection: Grid;
    readonly deflectionShare: number;
    /** Modulus of elasticity of the board, Pa. */
    readonly elasticity: number;
    /** Bending stress that it may bear, Pa. */
    readonly stress: number;
    /** Wet concrete, kg/m³. */
    readonly freshWeight: number;
  };
  /** A form whose top stands higher over the ground than this is braced by kickers as well. */
  readonly kickersAbove: Grid;
  /** Nothing is driven nearer than this to a marked utility line, on either side. */
  readonly utilityTolerance: Grid;

  readonly boards: {
    /** What the saw takes. */
    readonly kerf: Grid;
    /** No piece shorter than this is cut, nor kept. */
    readonly shortest: Grid;
    /** Whether a run may be made of several boards, joined by a cleat. */
    readonly splices: boolean;
    readonly cleatLength: Grid;
    /** How far a board may run past its corner, where the ground is clear. */
    readonly runLong: Grid;
    /** How far a form board is lapped onto the side of what stands there already, where there is room. */
    readonly lapOn: Grid;
    /** Whether twisted boards of the truck may be used. */
    readonly useTwisted: boolean;
  };

  readonly fastening: {
    readonly by: 'duplex-nails' | 'screws';
    /** Nails or screws. */
    readonly perStake: number;
    readonly perCorner: number;
    readonly perCleat: number;
    /** Duplex nails in a pound, from the box. */
    readonly nailsPerPound: number;
    /** Nails are sold by boxes of this weight, kg. */
    readonly nailBox: number;
    readonly screwsPerBox: number;
  };

  readonly steel: {
    readonly kind: 'mesh' | 'bars' | 'none';
    readonly mesh: {
      readonly style: MeshStyle | 'own';
      /** What counts when the style is one's own: one square, and the weight, kg per square metre. */
      readonly own: { readonly square: Grid; readonly weight: number };
      readonly lapEnds: Grid;
      readonly lapSides: Grid;
      /** Distance from the edge of the pour to the nearest wire. */
      readonly cover: Grid;
      /** No piece is cut shorter or narrower than this, and no smaller offcut is kept. */
      readonly leastPiece: Grid;
    };
    /** How the steel gets to its height: on chairs so far apart, or lifted as the concrete is placed. */
    readonly supports: {
      readonly by: 'chairs' | 'lifting';
      readonly spacing: Grid;
      /** How far below the finish it lies, to the middle of the steel. */
      readonly below: Grid;
    };
    /** Ties along a lap, at most so far apart. */
    readonly tieSpacing: Grid;
    readonly bars: {
      readonly size: BarSize;
      readonly spacing: Grid;
      readonly cover: Grid;
      /** Lap of two bars, in diameters of the bar. */
      readonly lapDiameters: number;
      /** Length that bars are sold in. */
      readonly stockLength: Grid;
      /** Of one such bar, when it is known. */
      readonly price?: Money;
      /** Length of the bar laid across each inside corner; 0 for none. */
      readonly cornerLength: Grid;
    };
    /** Dowels into the slab that is there already. */
    readonly dowels: {
      readonly use: boolean;
      /** Size and spacing by the slab's thickness, from a published table, or one's own. */
      readonly by: 'table' | 'own';
      readonly own: { readonly diameter: Grid; readonly length: Grid; readonly spacing: Grid };
      readonly set: 'epoxy' | 'sleeve';
      /** Kept from corners and from the slab's own joints. */
      readonly fromCorner: Grid;
    };
    /** What the subgrade-drag formula is reckoned with. */
    readonly drag: {
      /** Of the slab on what is under it. */
      readonly friction: number;
      /** Between joints. */
      readonly jointLength: Grid;
      /** Stress that the steel may bear, Pa. */
      readonly stress: number;
    };
  };

  readonly isolation: {
    /** Which edges get a strip. */
    readonly existing: boolean;
    readonly wall: boolean;
    readonly steps: boolean;
    readonly blockOut: boolean;
    /** A patch's edges in the older slab get no strip: the new concrete is bonded to the old there. */
    readonly bondAtPatch: boolean;
    /** How thick the strip is. */
    readonly thickness: Grid;
    /** How far its top stays below the slab's; 0 is flush. */
    readonly recess: Grid;
    /** Length of strip sold as one roll or piece. */
    readonly pieceLength: Grid;
  };

  readonly joints: {
    /** proposed: joints drawn by hand are kept, and the others laid out round them. by-hand: those drawn, and no others. */
    readonly layout: 'proposed' | 'by-hand';
    /** No panel is longer than so many times the slab's thickness, nor than the cap. */
    readonly factor: number;
    readonly cap: Grid;
    /** Length over width of a panel, at most. */
    readonly ratio: number;
    /** No panel is narrower than this. */
    readonly least: Grid;
    /** No joint meets an edge or another joint at less than this, degrees. */
    readonly angle: number;
    readonly made: 'tooled' | 'sawn';
    /** How deep a joint goes, as a share of the slab's thickness, and at least. */
    readonly depthShare: number;
    readonly leastDepth: Grid;
    readonly sealant: {
      /** What is sealed. */
      readonly joints: boolean;
      readonly strip: boolean;
      /** Of the groove of a control joint, and of the sealant in it. */
      readonly width: Grid;
      readonly depth: Grid;
      /** Whether a backer rod goes under it. */
      readonly backer: boolean;
      /** What one cartridge holds, cubic grid units. */
      readonly cartridge: number;
    };
  };

  readonly mix: {
    readonly mixes: readonly BagMix[];
    /** Parts (by bag count, in quarters) of one mix to parts of another. `other` absent = one mix alone. */
    readonly blend: {
      readonly main: string;
      readonly mainParts: number;
      readonly other?: string;
      readonly otherParts: number;
    };
    /** What the mixer holds as mixed concrete, cubic grid units. */
    readonly batchVolume: number;
    /** Whether a batch may take half a bag; otherwise whole bags alone. */
    readonly halfBags: boolean;
  };

  /** Absent: as job/placingDefaults.ts has it. */
  readonly weather?: WeatherPractices;
  readonly placing?: PlacingPractices;
  /** Absent until something of it is changed: see orderOf. */
  readonly order?: OrderPractices;

  /** The allowance on top of the net. Each part of it is taken of the net alone, and none of another. */
  readonly waste: {
    /** One share of the net; or what is known to go: the spread of the depth, what is spilled, extras by name. */
    readonly by: 'share' | 'parts';
    readonly share: number;
    /** What the mean depth may be off by where no depths were taped, and how many times that is allowed for. */
    readonly depthSpread: Grid;
    readonly spreadTimes: number;
    /** Spilled, left in the mixer and on tools, as a share of the net. */
    readonly spillage: number;
    readonly extras: readonly WasteExtra[];
    /** Never less than so many bags, whichever way: on a small job a share comes to less than one. */
    readonly minimumBags: number;
  };

  /** Absent: as job/pourDay.ts has it. Nothing of the takeoff hangs on it. */
  readonly pourDay?: PourDayPractices;
}

/** A depth taped from the string, or from the screed board on the forms, down to the ground. */
export interface GroundReading {
  /** Unique in the job. */
  readonly id: string;
  readonly depth: Grid;
  /** Where it was taped, when that was noted. */
  readonly at?: Point;
}

/** What is known of the ground under the pour. */
export interface GroundSaid {
  readonly readings: readonly GroundReading[];
  /** What the volume is figured with: the practices' thickness, or the mean of the readings. */
  readonly depthBy: 'thickness' | 'readings';
}

/** One job: plain data, immutable, the whole of what is saved. */
/** What stands in the sheet's title block besides job and site, and where north is. An empty text isn't printed. */
export interface Title {
  readonly drawnBy: string;
  readonly revision: string;
  /** The revision that this one is printed instead of. */
  readonly replaces: string;
  /** The way to north: whole degrees clockwise from the top of the sketch. Absent when nobody said. */
  readonly north?: number;
}

export interface Job {
  readonly name: string;
  /** Where: an address or a note for the crew. */
  readonly site: string;
  readonly notes: string;
  /** Absent until something of it is written. */
  readonly title?: Title;
  readonly units: UnitStyle;
  /** In drawing order, lowest first. */
  readonly features: readonly Feature[];
  readonly practices: Practices;
  readonly lumber: Lumber;
  readonly meshStock: MeshStock;
  readonly handStakes: readonly HandStake[];
  /** Absent: nobody has typed any. */
  readonly weather?: Weather;
  readonly ground: GroundSaid;
  /** Absent until something of it is written: see bidOf. */
  readonly bid?: Bid;
  /** Next number for a feature or corner id (`f7`, `c12`); only grows. */
  readonly nextId: number;
  /** Once something of the pour was tapped. */
  readonly pourLog?: PourLog;
  /** Once the job is closed. */
  readonly closeOut?: CloseOut;
}
