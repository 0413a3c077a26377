import type { Celsius, Minutes } from '../measure/quantities.js';
import { fahrenheit } from '../measure/temperature.js';
import { type Sourced, sourced } from './sourced.js';
import { practice, recalled, seen, workedOut } from './sources.js';

export type GlueId = 'pva-type-1' | 'pva-type-2' | 'polyurethane' | 'epoxy-slow' | 'resorcinol';

/** A glue by its kind. The label of the bottle in hand comes before every figure here. */
export type Glue = {
  readonly id: GlueId;
  readonly name: string;
  /** What weather a joint stands, by class. */
  readonly durability: Sourced<string>;
  /** Temperature that the times hold at. */
  readonly timesAt: Celsius;
  /** Glue on one face, lying open. */
  readonly openMinutes: Sourced<Minutes>;
  /** From the first brush stroke until the clamps are tight. */
  readonly assemblyMinutes: Sourced<Minutes>;
  readonly clampMinutes: Sourced<Minutes>;
  /** Until the joint may carry load. */
  readonly fullCureHours: Sourced<number>;
  /** Wood, glue and air must all be this warm until the clamps come off, and the night after. */
  readonly lowest: Sourced<Celsius>;
  readonly highest: Sourced<Celsius>;
  /** Grams on a square meter of one face. */
  readonly spread: Sourced<number>;
  /** Grams in a milliliter. */
  readonly density: Sourced<number>;
  readonly wettestWoodPercent: Sourced<number>;
  readonly notes: readonly string[];
};

const ROOM: Celsius = 20;

/** What a joint bears while it is young; the hours are those of the glue. */
export const YOUNG_JOINT = {
  /** Screws clamp while the glue sets: such parts may be worked on where they lie. */
  screwed: sourced(
    'screws and brads hold these parts: they may be worked on flat where they lie, clamps left on',
    practice('screws driven into wet glue take the place of clamps'),
  ),
  clamped: sourced(
    'leave these parts as they stand',
    seen('pva-guide', 'clamped and unstressed for 30 to 60 min'),
  ),
  handled: sourced(
    'they may be carried and stood up gently, by two; no weight, levering or planing',
    seen('pva-guide', 'no stress before 24 h'),
  ),
};

export const GLUES: readonly Glue[] = [
  {
    id: 'pva-type-1',
    name: 'cross-linking PVA, Type I or D4',
    durability: sourced(
      'Type I stands boiling in test and D4 stands weather; outdoors the joint still wants a finish over it.',
      seen('en204', 'class D4, and ANSI/HPVA Type I'),
    ),
    timesAt: ROOM,
    openMinutes: sourced(8, recalled('pva-sheets', 'Type I, open 8 to 10 min')),
    assemblyMinutes: sourced(20, recalled('pva-sheets', 'Type I, total 20 to 25 min')),
    clampMinutes: sourced(60, seen('pva-guide', 'unstressed joint 30 to 60 min')),
    fullCureHours: sourced(24, seen('pva-guide', 'no stress before 24 h')),
    lowest: sourced(fahrenheit(47), recalled('pva-sheets', 'Type I chalk temperature 47 F')),
    highest: sourced(fahrenheit(95), recalled('pva-sheets', 'usual upper limit')),
    spread: sourced(175, recalled('pva-sheets', 'middle of 150 to 200 g/m2')),
    density: sourced(1.08, recalled('pva-sheets', 'density')),
    wettestWoodPercent: sourced(15, practice('outdoor stock 12 to 15 %; makers ask for less')),
    notes: [
      'Below its chalk temperature the film dries white and weak, and stays weak.',
      'A thin even line of squeeze-out is right. Let the joint dry some days before planing it flush.',
    ],
  },
  {
    id: 'pva-type-2',
    name: 'cross-linking PVA, Type II or D3',
    durability: sourced(
      'Type II and D3 stand wetting now and then: outdoors only under a roof.',
      seen('hpva', 'Type II: three soaks; EN 204 class D3'),
    ),
    timesAt: ROOM,
    openMinutes: sourced(3, recalled('pva-sheets', 'Type II, open 3 to 5 min')),
    assemblyMinutes: sourced(10, recalled('pva-sheets', 'Type II, total 10 to 15 min')),
    clampMinutes: sourced(60, seen('glue-table', 'cross-linking PVA, clamp 1 h')),
    fullCureHours: sourced(24, seen('pva-guide', 'no stress before 24 h')),
    lowest: sourced(fahrenheit(55), recalled('pva-sheets', 'Type II chalk temperature 55 F')),
    highest: sourced(fahrenheit(95), recalled('pva-sheets', 'usual upper limit')),
    spread: sourced(175, recalled('pva-sheets', 'middle of 150 to 200 g/m2')),
    density: sourced(1.08, recalled('pva-sheets', 'density')),
    wettestWoodPercent: sourced(15, practice('outdoor stock 12 to 15 %; makers ask for less')),
    notes: ['Not for a piece that stands in the rain.'],
  },
  {
    id: 'polyurethane',
    name: 'one-part polyurethane',
    durability: sourced(
      'Sold as D4: stands weather under a finish.',
      practice('one-part polyurethane is usually D4; the label says'),
    ),
    timesAt: ROOM,
    openMinutes: sourced(15, seen('pu-articles', 'open 15 to 30 min')),
    assemblyMinutes: sourced(30, seen('pu-articles', 'open 15 to 30 min')),
    clampMinutes: sourced(240, seen('pva-guide', 'polyurethane 4 h; another edition says 45 min')),
    fullCureHours: sourced(48, seen('pu-articles', 'full cure 24 to 48 h')),
    lowest: sourced(fahrenheit(65), seen('pu-articles', 'apply between 65 and 75 F')),
    highest: sourced(fahrenheit(75), seen('pu-articles', 'apply between 65 and 75 F')),
    spread: sourced(150, recalled('pu-sheets', 'middle of 100 to 200 g/m2')),
    density: sourced(1.1, recalled('pu-sheets', 'density')),
    wettestWoodPercent: sourced(20, practice('the usual choice for damp wood')),
    notes: [
      'It cures with moisture: wipe one face with a damp cloth first.',
      'It foams; the foam holds nothing, so the joint must fit.',
      'Wear gloves: it does not come off skin, and it contains isocyanate.',
    ],
  },
  {
    id: 'epoxy-slow',
    name: 'epoxy with slow hardener',
    durability: sourced(
      'Stands water; softens in heat. Fills gaps that other glues cannot.',
      practice('epoxy joints outdoors, painted or finished over'),
    ),
    timesAt: fahrenheit(70),
    openMinutes: sourced(20, seen('epoxy-notes', 'first reaction at 70 F after 20 to 30 min')),
    assemblyMinutes: sourced(30, seen('epoxy-notes', 'first reaction at 70 F after 20 to 30 min')),
    clampMinutes: sourced(24 * 60, seen('epoxy-notes', 'no stress on the joint for 24 h at 70 F')),
    fullCureHours: sourced(96, practice('24 h and several days more; three are counted')),
    lowest: sourced(15, seen('epoxy-notes', 'design range 15 to 25 C')),
    highest: sourced(25, seen('epoxy-notes', 'design range 15 to 25 C')),
    spread: sourced(300, practice('thickened joint, middle of 200 to 400 g/m2')),
    density: sourced(1.15, practice('mixed epoxy, about 1.1 to 1.2')),
    wettestWoodPercent: sourced(12, practice('dry wood')),
    notes: [
      'Clamp lightly: squeezed dry it holds nothing.',
      'Wear gloves: skin contact can make you allergic to it for good.',
    ],
  },
  {
    id: 'resorcinol',
    name: 'resorcinol',
    durability: sourced(
      'Fully exterior, with a close fit and high pressure.',
      recalled('wood-handbook', 'Table 10-2'),
    ),
    timesAt: fahrenheit(70),
    openMinutes: sourced(10, seen('resorcinol-bulletin', 'Table 3, open 10 min at 70 F')),
    assemblyMinutes: sourced(60, seen('resorcinol-bulletin', 'Table 3, closed 60 min at 70 F')),
    clampMinutes: sourced(16 * 60, recalled('resorcinol-sheets', '8 to 16 h at 70 F')),
    fullCureHours: sourced(168, recalled('resorcinol-sheets', 'about a week')),
    lowest: sourced(fahrenheit(70), seen('resorcinol-bulletin', 'glue, wood and air 70 F')),
    highest: sourced(fahrenheit(90), seen('resorcinol-bulletin', 'Table 3: 1 min open at 90 F')),
    spread: sourced(
      293,
      workedOut('resorcinol-bulletin', 'Table 2, middle of 50 to 70 lb/1000 ft2'),
    ),
    density: sourced(1.15, recalled('resorcinol-sheets', 'mixed density')),
    wettestWoodPercent: sourced(
      14,
      seen('resorcinol-sheets', 'phenol-resorcinol, wood at 12 to 14 %'),
    ),
    notes: [
      'It leaves a dark red line.',
      'Wear gloves and give it air: resorcinol and formaldehyde.',
    ],
  },
];

/** The row of this kind. */
export function glueOf(id: GlueId): Glue {
  const glue = GLUES.find(row => row.id === id);
  if (glue === undefined) throw new Error(`no glue row for ${id}`);
  return glue;
}
