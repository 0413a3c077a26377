import { type Corner, narrowestInside, POTS, type PotFit, potFit } from '../../materials/pots.js';
import { NURSERY_CLASSES } from '../../materials/pots-nursery.js';
import { COMPUTED } from '../../measure/figure.js';
import { figure, sourceText } from '../../measure/figure-text.js';
import { formatLength, formatLengthExact } from '../../measure/format-length.js';
import type { Mm } from '../../measure/quantities.js';
import { formatSpace, formatVolume } from '../../measure/volume.js';
import { potRiser } from '../../plan/pot-risers.js';
import { lengthOption, usualLength } from './length-option.js';
import { type GivenPot, readPot } from './pot-given.js';
import type { Answered, Given, WorkResult, WorkRule } from './rule.js';

const MOST_POTS = 12;

/** `notchbook work pots`: what to put under each pot so that the rims line up. */
export const POTS_RULE: WorkRule = {
  name: 'pots',
  say: 'blocks under each pot so that the rims line up, and the air round it',
  example:
    'notchbook work pots --length 22in --width 12in --height 11in --pot clay-8 --pot "10in x 9-1/4in"',
  options: [
    lengthOption('length', 'length of the inside', '22in'),
    lengthOption('width', 'width of the inside', '12in'),
    lengthOption('height', 'inside from the floor to the top edge', '11in'),
    {
      name: 'pot',
      kind: 'words',
      say: 'each pot, by name or as rim x height; give it once for each',
      example: 'clay-8',
    },
    usualLength('reveal', 'how far the rims stay below the top edge', {
      example: '1/2in',
      usual: '0in',
    }),
    // Two-by and one-by stock; thinner than 1/4 in nobody stacks.
    {
      ...lengthOption('thick', 'thickness of thick offcuts', '1-1/2in'),
      usual: '1-1/2in',
      least: 6,
    },
    { ...lengthOption('thin', 'thickness of thin offcuts', '3/4in'), usual: '3/4in', least: 6 },
    {
      name: 'corner',
      kind: 'word',
      say: 'pinwheel or between: length and width are then the boards as cut, not the inside',
      example: 'pinwheel',
      usual: '',
      choices: ['pinwheel', 'between'],
    },
    { ...lengthOption('board', 'thickness of those boards', '3/4in'), usual: '3/4in' },
  ],
  work,
};

function work(given: Given): WorkResult {
  const texts = given.words('pot');
  if (texts.length === 0) return { ok: false, problems: [`--pot: Which pots? ${knownPots()}`] };
  if (texts.length > MOST_POTS)
    return { ok: false, problems: [`--pot: no more than ${MOST_POTS} pots at a time.`] };
  const read = texts.map(text => readPot(text, given.display.system));
  const problems = read.flatMap(it => (it.ok ? [] : [`${it.problem} ${it.hint}`]));
  if (problems.length > 0) return { ok: false, problems };
  const pots = read.flatMap(it => (it.ok ? [it.value] : []));
  const inside = insideGiven(given);
  if (inside <= 0)
    return { ok: false, problems: ['--board: boards that thick leave no room inside.'] };
  const judged = pots.map((pot, at) => judge(pot, at, inside, given));
  return {
    ok: true,
    figures: judged.flatMap(({ figures }) => figures),
    more: { pots: judged.map(({ more }) => more) },
    notes: [
      ...judged.flatMap(({ notes }) => notes),
      'Makers differ: measure the pot in hand, over the rim and from foot to rim.',
      'Blocks stand clear of the drain holes. Not checked: the weight of wet pots on what stands below.',
    ],
  };
}

/** The narrower way across the inside. */
function insideGiven(given: Given): Mm {
  const across = Math.min(given.number('length'), given.number('width'));
  if (!given.has('corner')) return across;
  return narrowestInside(across, given.number('board'), given.word('corner') as Corner);
}

type Judged = {
  readonly figures: readonly Answered[];
  readonly more: Readonly<Record<string, unknown>>;
  readonly notes: readonly string[];
};

function judge(pot: GivenPot, at: number, inside: Mm, given: Given): Judged {
  const { display } = given;
  const length = (mm: Mm) => formatLengthExact(mm, display);
  const fit = potFit(inside, pot.rim);
  const riser = potRiser({
    insideHeight: given.number('height'),
    potHeight: pot.height,
    reveal: given.number('reveal'),
    layers: [given.number('thick'), given.number('thin')],
  });
  const air: Answered = {
    name: `air_${at + 1}`,
    say: `air round pot ${at + 1}`,
    figure: figure(
      fit.clearance,
      'mm',
      `half of ${length(inside)} inside less ${length(pot.rim)} rim, ${pot.name}`,
      pot.rimSource,
    ),
  };
  if (!riser.ok) return tooTall(pot, air, riser, given);
  const stands = riser.layers.reduce((sum, layer) => sum + layer, 0);
  return {
    figures: [
      {
        name: `riser_${at + 1}`,
        say: `under pot ${at + 1}`,
        figure: figure(
          riser.wanted,
          'mm',
          `${length(given.number('height'))} - ${length(pot.height)} pot - ${length(given.number('reveal'))} below the edge`,
          pot.heightSource,
        ),
      },
      {
        name: `stack_${at + 1}`,
        say: 'blocks come to',
        figure: figure(stands, 'mm', layerWords(riser.layers, given), COMPUTED),
      },
      air,
      ...spaceFigure(pot, at),
    ],
    more: { name: pot.name, layers_mm: riser.layers, reveal_mm: riser.reveal, fit: fit.verdict },
    notes: [fitWords(pot, fit, given), ...classWords(pot, given)],
  };
}

function spaceFigure({ space }: GivenPot, at: number): readonly Answered[] {
  if (space === undefined) return [];
  return [
    {
      name: `holds_${at + 1}_mm3`,
      say: 'soil to its brim',
      figure: figure(space.value, 'mm3', 'a tapered pot by its rim, foot and height', space.source),
    },
  ];
}

function layerWords(layers: readonly Mm[], { display }: Given): string {
  if (layers.length === 0) return 'no block: the pot stands on the floor';
  return `layers of ${layers.map(layer => formatLength(layer, display)).join(' + ')}, thickest below; within 1/4 in (6 mm) over`;
}

function fitWords(pot: GivenPot, fit: PotFit, { display }: Given): string {
  const air = formatLength(fit.clearance, display);
  if (fit.verdict === 'does not fit')
    return `${pot.name}: does not go in, ${formatLength(-2 * fit.clearance, display)} too wide.`;
  if (fit.verdict === 'look again')
    return `${pot.name}: goes in with ${air} a side; 1/2 in (13 mm) or more lets air and fingers in.`;
  return `${pot.name}: goes in with ${air} a side.`;
}

/** A nursery class is a range: what may stand in the next pot of the same name. */
function classWords({ id }: GivenPot, { display }: Given): readonly string[] {
  const found = NURSERY_CLASSES.find(row => row.id === id);
  if (found === undefined) return [];
  const { value, source } = found.range;
  const litersWords =
    found.holds === undefined
      ? ''
      : `; one grower's hold ${formatVolume(found.holds.value, display)}`;
  return [
    `${id} may hold from ${formatSpace(value.least, display)} to ${formatSpace(value.most, display)}${litersWords} [${sourceText(source)}].`,
  ];
}

function tooTall(
  pot: GivenPot,
  air: Answered,
  riser: { readonly tooTall: Mm } | { readonly tooMany: number },
  { display }: Given,
): Judged {
  const words =
    'tooTall' in riser
      ? `${pot.name}: ${formatLength(riser.tooTall, display)} too tall, its rim comes that much too high. A lower pot, or a deeper box.`
      : `${pot.name}: far too low for blocks; a false bottom is better.`;
  return { figures: [air], more: { name: pot.name, ...riser }, notes: [words] };
}

function knownPots(): string {
  return `Known: ${POTS.map(({ id }) => id).join(', ')}; or as measured, --pot "8in x 7-1/2in".`;
}
