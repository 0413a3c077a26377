import { coneSpace, type Pot } from '../../materials/pot.js';
import { POTS, potNamed } from '../../materials/pots.js';
import type { Sourced } from '../../materials/sourced.js';
import { ANSWERED, type Source } from '../../measure/figure.js';
import { parseLength } from '../../measure/length.js';
import { type Parsed, parsed, quoted, unreadable } from '../../measure/parsed.js';
import type { CubicMm, Display, Mm } from '../../measure/quantities.js';
import { nearestWord } from '../../measure/suggest.js';

/** A pot by its rim and height. */
export type GivenPot = {
  /** Empty for a pot that was measured. */
  readonly id: string;
  readonly name: string;
  readonly rim: Mm;
  readonly height: Mm;
  readonly rimSource: Source;
  readonly heightSource: Source;
  /** Known where the foot is. */
  readonly space?: Sourced<CubicMm>;
};

const EXAMPLE =
  'Write a name, such as clay-8, or rim by height as measured, such as "8in x 7-1/2in".';

/** A pot by name (`clay-8`) or as measured (`8in x 7-1/2in`, rim by height). */
export function readPot(text: string, system: Display['system']): Parsed<GivenPot> {
  const named = potNamed(text.trim());
  if (named !== undefined) return parsed(listedPot(named));
  const sizes = text.split(/\s+x\s+|\s*×\s*/u);
  const [rimText, heightText] = sizes;
  if (sizes.length === 2 && rimText !== undefined && heightText !== undefined)
    return measuredPot(text, parseLength(rimText, system), parseLength(heightText, system));
  const near = nearestWord(
    text,
    POTS.map(({ id }) => id),
  );
  return unreadable(
    `--pot: ${quoted(text)} is not a pot known here.`,
    near === undefined ? EXAMPLE : `Did you mean ${near}?`,
  );
}

function listedPot({ id, name, top, height, bottom }: Pot): GivenPot {
  const space =
    bottom === undefined
      ? {}
      : {
          space: {
            value: coneSpace(top.value, bottom.value, height.value),
            source: bottom.source,
          },
        };
  return {
    ...space,
    id,
    name,
    rim: top.value,
    height: height.value,
    rimSource: top.source,
    heightSource: height.source,
  };
}

function measuredPot(text: string, rim: Parsed<Mm>, height: Parsed<Mm>): Parsed<GivenPot> {
  if (!rim.ok) return rim;
  if (!height.ok) return height;
  if (rim.value <= 0 || height.value <= 0)
    return unreadable(`--pot: ${quoted(text)} has no size.`, EXAMPLE);
  return parsed({
    id: '',
    name: `pot of ${text.trim()}`,
    rim: rim.value,
    height: height.value,
    rimSource: ANSWERED,
    heightSource: ANSWERED,
  });
}
