/** A word of the trade, and what it means to somebody who hears it for the first time. */
export type TradeWord = {
  readonly word: string;
  /** Other forms under which it is met. */
  readonly forms?: readonly string[];
  readonly means: string;
};

/** Words of this work, explained in our own; common practice. Alphabetical. */
export const TRADE_WORDS: readonly TradeWord[] = [
  {
    word: 'bearer',
    forms: ['bearers'],
    means: 'A board that others lie on: here it carries the floor of a planter.',
  },
  {
    word: 'bevel',
    means: 'An edge or end that is cut at a slant.',
  },
  {
    word: 'brad',
    forms: ['brads', 'brad nailer'],
    means: 'A thin nail with hardly any head, shot in to hold a piece while glue sets.',
  },
  {
    word: 'cheek',
    forms: ['cheeks'],
    means: 'The wide inner face of a notch, the one that touches the other board.',
  },
  {
    word: 'clamp',
    forms: ['clamps', 'clamped', 'clamping'],
    means: 'A bar with two jaws that presses pieces together and keeps them there.',
  },
  {
    word: 'clearance hole',
    means:
      'The hole in the upper board, as wide as the screw, so that the screw pulls the boards together.',
  },
  {
    word: 'clutch',
    means: 'The ring on the drill that limits how hard it turns; it rattles when the screw is in.',
  },
  {
    word: 'coat',
    forms: ['coats'],
    means: 'One layer of sealer.',
  },
  {
    word: 'countersink',
    forms: ['countersinks', 'countersunk'],
    means: 'A cone-shaped widening of a hole in which the head of a screw sinks below the wood.',
  },
  {
    word: 'crosscut',
    forms: ['crosscuts', 'crosscutting'],
    means: 'A cut across the board, which makes it shorter.',
  },
  {
    word: 'crown',
    means: 'The side of a bent board that curves upward when it stands on edge.',
  },
  {
    word: 'cure',
    forms: ['cures', 'curing', 'cured'],
    means: 'What glue or sealer does until it has its full strength, long after it feels dry.',
  },
  {
    word: 'datum',
    means: 'The one end or edge that every mark is measured from.',
  },
  {
    word: 'diagonal',
    forms: ['diagonals'],
    means: 'From corner to opposite corner. Both alike: the frame is square.',
  },
  {
    word: 'dressed size',
    forms: ['dressed', 'planed'],
    means: 'What a board really measures after planing; a 2x4 is 1-1/2 by 3-1/2 in.',
  },
  {
    word: 'dry fit',
    forms: ['fit one end panel dry'],
    means: 'Putting pieces together without glue to see whether they fit.',
  },
  {
    word: 'dwell',
    forms: ['soaking in', 'soak in'],
    means: 'The minutes that sealer is left to soak in before the rest is wiped off.',
  },
  {
    word: 'ease',
    forms: ['eased', 'break every edge'],
    means: 'To take the sharpness off an edge with a few strokes of sandpaper.',
  },
  {
    word: 'end grain',
    means: 'The cut end of a board, where the pores of the wood are open and drink most.',
  },
  {
    word: 'face',
    forms: ['faces', 'wide face'],
    means: 'One of the two wide sides of a board; the narrow ones are its edges.',
  },
  {
    word: 'fence',
    means: 'The straight wall of a saw that the board is held against.',
  },
  {
    word: 'flush',
    means: 'In one plane: a finger drawn across feels no step.',
  },
  {
    word: 'glue-up',
    forms: ['glue-ups'],
    means: 'Brushing, closing and clamping as much as goes before the glue skins over.',
  },
  {
    word: 'grain',
    means: 'The direction of the fibers in the wood, along the board.',
  },
  {
    word: 'grit',
    means: 'How fine sandpaper is: the higher the number, the finer.',
  },
  {
    word: 'hatch',
    means: 'To fill the waste with slanting pencil lines, so that nobody cuts the wrong part.',
  },
  {
    word: 'infill',
    means: 'The thin slats that close a frame; they carry nothing.',
  },
  {
    word: 'keeper',
    forms: ['keepers', 'keeper strip', 'keeper strips'],
    means: 'A thin strip that other pieces stand against, so that they cannot be pushed through.',
  },
  {
    word: 'kerf',
    means: 'The width of wood that the blade turns into dust at each cut.',
  },
  {
    word: 'lap',
    forms: ['laps', 'half-lap'],
    means: 'A joint in which two boards lie over each other, each cut away to make room.',
  },
  {
    word: 'ledger',
    means: 'A straight piece fixed level for a while, for others to rest on.',
  },
  {
    word: 'level',
    means: 'Neither end higher; also the tool with the bubble that shows it.',
  },
  {
    word: 'moisture',
    means: 'How much water is in the wood, in percent of its dry weight. Wet boards shrink later.',
  },
  {
    word: 'notch',
    forms: ['notches', 'notched'],
    means: 'A piece cut out of the edge or end of a board, so that another fits in.',
  },
  {
    word: 'offcut',
    forms: ['offcuts'],
    means: 'What is left of a board when its pieces are cut. Keep them: some are used later.',
  },
  {
    word: 'open time',
    means: 'The minutes from the first brush stroke until the joint has to be closed.',
  },
  {
    word: 'panel',
    forms: ['panels'],
    means: 'A frame of posts and rails with slats in it, made as one unit.',
  },
  {
    word: 'pilot hole',
    means:
      'The thin hole in the lower board that guides the screw and keeps the wood from splitting.',
  },
  {
    word: 'plumb',
    forms: ['upright'],
    means: 'Straight up and down, as a weight hangs on a string.',
  },
  {
    word: 'post',
    forms: ['posts'],
    means: 'A board that stands upright and carries.',
  },
  {
    word: 'rail',
    forms: ['rails'],
    means: 'A board that lies level between or over posts and carries what is on it.',
  },
  {
    word: 'reveal',
    means: 'How far one edge is set back from another, on purpose.',
  },
  {
    word: 'rip',
    forms: ['ripping', 'ripped'],
    means: 'A cut along the board, which makes it narrower.',
  },
  {
    word: 'riser',
    forms: ['pot block', 'pot blocks', 'blocks'],
    means: 'A block under a pot, so that its rim comes to the right height.',
  },
  {
    word: 'scrap',
    forms: ['scraps'],
    means: 'A bit of wood that is good for trying things on.',
  },
  {
    word: 'sealer',
    means: 'A thin finish that soaks in and keeps water out.',
  },
  {
    word: 'section',
    means: 'The width and thickness of a board, whatever its length: 2x4 is a section.',
  },
  {
    word: 'shim',
    forms: ['shims'],
    means: 'A thin slip, here of plastic, pushed under a foot that stands low.',
  },
  {
    word: 'shoulder',
    forms: ['shoulders'],
    means: 'The step in a notched board that stands against the other board and carries.',
  },
  {
    word: 'skin',
    forms: ['skinned over'],
    means: 'The dry film that forms on glue left open too long; under it nothing holds.',
  },
  {
    word: 'slack',
    means: 'Length of a board that is not needed, so that a knot can be skipped.',
  },
  {
    word: 'slat',
    forms: ['slats'],
    means: 'One of many equal boards set side by side with gaps.',
  },
  {
    word: 'spacer',
    forms: ['spacers'],
    means: 'A scrap as thick as the gap, held between two slats.',
  },
  {
    word: 'square',
    forms: ['squared'],
    means: 'At a right angle; also the tool that shows it.',
  },
  {
    word: 'sticker',
    forms: ['stickers', 'stickered'],
    means: 'A thin stick between stacked boards that lets air to both sides.',
  },
  {
    word: 'stop',
    forms: ['stop block'],
    means: 'A block clamped at the saw: push the board against it and every piece comes out alike.',
  },
  {
    word: 'stretcher',
    means: 'A rail low down that keeps the two ends from walking apart.',
  },
  {
    word: 'tongue',
    means: 'The thinner part that a notch leaves and that goes over or into the other board.',
  },
  {
    word: 'twist',
    forms: ['twisted'],
    means: 'One corner of a board lifts when it lies on a flat table.',
  },
  {
    word: 'waste',
    means: 'The part that is cut away. The blade runs on that side of the line.',
  },
];
