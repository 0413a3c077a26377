import { SIXTEENTHS } from '../../src/measure/displays.js';
import { COMMON_PRACTICE, COMPUTED, type Figure, type Unit } from '../../src/measure/figure.js';
import { inches } from '../../src/measure/inch.js';
import { contactsOf } from '../../src/model/contacts.js';
import type { Caution, Plan, Step } from '../../src/plan/plan.js';
import { smallBench } from './small-bench.js';

/**
 * A short plan made up for tests of screens: every kind of step once, with words that no project file
 * can change. Figures are what a person would write on an offcut for the small bench.
 */
function told(value: number, unit: Unit, because: string): Figure {
  return { value, unit, because, source: COMPUTED };
}

const BENCH = smallBench();
const MODEL = { ...BENCH, contacts: contactsOf(BENCH.parts) };

function ids(pattern: RegExp): readonly string[] {
  return MODEL.parts.map(({ id }) => id).filter(id => pattern.test(id));
}

const END_FRAMES = ids(/^end_panel\/.*(?:post|rail)/);
const SEAT_RAILS = ids(/^seat_rail/);

const BARE: Omit<Step, 'id' | 'phase' | 'title' | 'minutes'> = {
  who: 'both',
  handsOff: [],
  tools: [],
  plain: [],
  say: [],
  why: '',
  look: [],
  firstCheck: false,
  after: [],
  needs: [],
  care: [],
  settings: [],
  timers: [],
  bright: [],
  standing: [],
  joins: [],
};

const STEPS: readonly Step[] = [
  {
    ...BARE,
    id: 'measure',
    phase: 'plan',
    title: 'Measure the place',
    tools: ['tape'],
    say: ['Hold the tape along the wall.', 'Write down the fall of the ground.'],
    why: 'A size that everybody has seen in the air surprises nobody later.',
    look: ['There is room for 84 in.'],
    minutes: told(10, 'min', '10 min for looking and measuring'),
  },
  {
    ...BARE,
    id: 'cut/2x4@45',
    needs: ['measure'],
    phase: 'cut',
    title: 'Cut the seat rails: 2 at 45 in',
    tools: ['miter-saw', 'tape'],
    say: [
      'Square the end of each board first, then push that end against the stop.',
      'Cut one, measure it, then cut the other without touching the stop.',
    ],
    why: 'Equal pieces come from one stop, not from many measurements.',
    look: ['The first piece is right to 1/32 in.', 'Every piece has its mark.'],
    care: ['miter-saw', 'dust'],
    big: { text: '45 in', caption: 'stop, 2x4' },
    settings: [
      { name: 'Stop', text: '45 in' },
      { name: 'Board', text: '2x4' },
      { name: 'Mark A', text: '2 x seat rail' },
    ],
    tally: { of: 'piece', count: 2 },
    bright: SEAT_RAILS,
    minutes: told(12, 'min', '6 min for the stop, 3 min for each of 2 pieces'),
  },
  {
    ...BARE,
    id: 'ends',
    needs: ['measure', 'cut/2x4@45'],
    phase: 'assemble',
    title: 'Glue and screw the end panels',
    tools: ['clamps', 'drill-driver'],
    say: [
      'One brushes, one closes. Brush both faces of each notch, close it, go on to the next.',
      'Square the panel by its diagonals and clamp it.',
    ],
    why: 'Glue on one face only leaves a dry patch.',
    look: ['Both diagonals are equal within 1/16 in.'],
    care: ['glue'],
    big: { text: 'No. 10 x 3 in', caption: 'rail over post' },
    settings: [{ name: 'Drills', text: 'clearance 3/16 in, pilot 7/64 in' }],
    timers: [
      {
        id: 'ends/clamp',
        name: 'Clamps on the end panels',
        minutes: 30,
        because: '30 min at 70 F, by the label',
        then: 'Take the clamps off.',
      },
    ],
    bright: END_FRAMES,
    minutes: told(40, 'min', '20 min for each of 2 panels'),
  },
  {
    ...BARE,
    id: 'rails',
    needs: ['measure', 'cut/2x4@45', 'ends'],
    phase: 'assemble',
    title: 'Set the seat rails',
    tools: ['drill-driver'],
    say: ['Push the ends of each rail into the shoulders and drive the screws.'],
    why: 'The rails carry the people.',
    look: ['Rail and panel are flush on top.'],
    tally: { of: 'seat rail', count: 2 },
    bright: SEAT_RAILS,
    standing: END_FRAMES,
    minutes: told(20, 'min', '10 min for each of 2 rails'),
  },
  {
    ...BARE,
    id: 'seal',
    needs: ['rails'],
    phase: 'finish',
    title: 'Seal',
    tools: ['brush'],
    say: ['End grain first, twice. Then the faces, wet.'],
    why: 'What has not soaked in stays sticky.',
    look: ['No shiny patches after wiping.'],
    care: ['rags'],
    timers: [
      {
        id: 'seal/dwell',
        name: 'Sealer soaking in',
        minutes: 15,
        because: '15 min by the label',
        then: 'Wipe everything.',
      },
      {
        id: 'seal/dry',
        name: 'Sealer drying',
        minutes: 1440,
        because: 'a day by the label',
        then: 'It can be moved.',
      },
    ],
    standing: [...END_FRAMES, ...SEAT_RAILS],
    minutes: told(45, 'min', '45 min for one coat'),
  },
  {
    ...BARE,
    id: 'hand-over',
    needs: ['seal'],
    phase: 'hand-over',
    title: 'Hand it over',
    say: ['Sit down together.'],
    minutes: told(15, 'min', 'a talk'),
  },
];

const CAUTIONS: readonly Caution[] = [
  {
    id: 'miter-saw',
    title: 'Miter saw',
    lines: [
      'Hands stay 6-3/8 in or more from the line of the blade; clamp any piece that would bring one nearer.',
      'Let the blade stop before the head goes up.',
    ],
    source: 'common practice',
  },
  {
    id: 'dust',
    title: 'Dust',
    lines: ['Mask on, and saw outdoors where you can.'],
    source: 'common practice',
  },
  {
    id: 'glue',
    title: 'Glue',
    lines: ['Gloves on; wash it off before it dries.'],
    source: 'the label',
  },
  {
    id: 'rags',
    title: 'Rags',
    lines: ['Rags with oil in them heat up by themselves. Lay them flat outdoors.'],
    source: 'NFPA on oily rags',
  },
];

export function smallPlan(): Plan {
  return {
    recipe: 'small-bench',
    title: 'Small bench',
    about: 'A slatted seat between two planters.',
    display: SIXTEENTHS,
    answers: [{ id: 'seat', say: 'How long is the seat?', text: '48 in' }],
    overall: {
      width: told(inches(84), 'mm', 'seat 48 in and two planters of 18 in'),
      depth: told(inches(17), 'mm', 'depth of the seat'),
      height: told(inches(18), 'mm', 'height of the seat'),
    },
    weight: told(40, 'kg', 'boards of pine at 12% moisture'),
    measures: [],
    sizes: [{ id: 'seat', figure: told(inches(48), 'mm', 'your answer') }],
    cutList: [
      {
        mark: 'A',
        name: 'Seat rail',
        uses: ['seat_rail'],
        pieces: SEAT_RAILS,
        section: '2x4',
        width: told(inches(3.5), 'mm', 'dressed 2x4'),
        thickness: told(inches(1.5), 'mm', 'dressed 2x4'),
        length: told(inches(45), 'mm', '48 in less two posts of 1-1/2 in'),
        count: 2,
        turn: 1,
        notches: [],
      },
    ],
    sawOrder: [
      {
        id: '2x4@45',
        section: '2x4',
        length: told(inches(45), 'mm', '48 in less two posts of 1-1/2 in'),
        count: 2,
        marks: [{ mark: 'A', name: 'Seat rail', count: 2 }],
      },
    ],
    notches: [],
    purchases: [
      {
        section: '2x4',
        width: told(inches(3.5), 'mm', 'dressed 2x4'),
        thickness: told(inches(1.5), 'mm', 'dressed 2x4'),
        boards: [
          {
            number: 1,
            length: inches(96),
            onHand: false,
            cuts: [
              { mark: 'A', length: inches(45) },
              { mark: 'A', length: inches(45) },
            ],
            offcut: inches(5),
            slack: inches(1),
          },
        ],
        buy: [
          {
            length: told(inches(96), 'mm', 'store length'),
            count: 1,
            each: told(748, 'cents', 'your price'),
          },
        ],
        priced: true,
        cost: told(748, 'cents', '1 board at $7.48'),
        proof: { kind: 'bound', words: 'no plan costs less' },
        missing: [],
        kerf: inches(1 / 8),
        trim: inches(1 / 2),
      },
    ],
    cost: told(748, 'cents', '1 board at $7.48'),
    spacing: [],
    screws: [],
    hardware: [
      {
        what: 'Glue',
        count: told(50, 'ml', 'two end panels'),
        buy: '1 bottle of 4 fl oz',
        note: '',
      },
    ],
    glue: {
      kind: 'cross-linking PVA',
      area: told(20_000, 'mm2', 'eight laps'),
      amount: told(50, 'ml', 'two end panels'),
      buy: '1 bottle of 4 fl oz',
      openTime: { ...told(8, 'min', '8 min at 70 F'), source: COMMON_PRACTICE },
      clampTime: told(30, 'min', '30 min at 70 F'),
      cureTime: told(1440, 'min', 'a day'),
      lowest: told(10, 'C', 'by the label'),
      notes: [],
    },
    sealer: {
      kind: 'penetrating oil',
      faces: told(2_000_000, 'mm2', 'all faces'),
      endGrain: told(50_000, 'mm2', 'all ends'),
      coats: 1,
      amount: told(400, 'ml', 'one coat'),
      buy: '1 can of 1 qt',
      leastOver: { cans: '1 can of 1 qt', over: told(546, 'ml', '946 ml less 400 ml') },
      dwell: told(15, 'min', 'by the label'),
      dry: told(1440, 'min', 'by the label'),
      lasts: { from: 1, to: 2, source: 'common practice' },
      care: 'Its vapor burns.',
      hotRags: true,
      notes: [],
    },
    glueUps: [],
    glueDay: [],
    sealDay: [],
    squares: [],
    feet: [],
    planters: [],
    holds: [],
    holdsNot: [],
    fit: [
      {
        id: 'room',
        say: 'Length along the wall',
        value: told(inches(84), 'mm', 'overall width'),
        limit: 'at most 118 in',
        verdict: 'fits',
        advice: '',
        source: 'common practice',
      },
    ],
    tools: [
      {
        id: 'miter-saw',
        name: 'Miter saw',
        use: 'crosscuts',
        who: 'lead',
        plainly: 'A round saw on an arm.',
      },
    ],
    cautions: CAUTIONS,
    warnings: [],
    steps: STEPS,
    time: {
      hands: told(142, 'min', 'the minutes of all steps'),
      waits: [{ name: 'Sealer drying', minutes: 1440 }],
      sessions: [
        {
          number: 1,
          from: 1080,
          to: 1260,
          steps: STEPS.map(({ id }) => id),
          // All but the 10 min at the place, before the first session.
          minutes: 132,
          turns: [],
          endsWith: '',
          stands: [],
        },
      ],
      people: 2,
      finish: told(142, 'min', 'every order was looked at'),
      proven: true,
      trouble: '',
      noiseUntil: 1320,
    },
    model: MODEL,
  };
}
