import type { Joint, Part } from '../model/part.js';
import type { Plan, Step } from '../plan/plan.js';
import type { StandingPot } from '../plan/planter.js';
import { selectJoints } from '../plan/select.js';
import { atHand } from './apart/at-hand.js';
import { type Focus, focusOn } from './apart/focus.js';
import { type Pulled, pullApart } from './apart/pull-apart.js';
import { heldBefore, setsFinished } from './apart/units.js';
import { partNames } from './part-names.js';
import { potsOf } from './pots.js';
import { stepSubject } from './step-subject.js';

/** What the pictures of a step show, from all sides. */
export type StepScene = {
  /** Boards that are being added, in one of the places where the same is done. */
  readonly bright: readonly Part[];
  /** All others in sight. */
  readonly standing: readonly Part[];
  /** The boards are only cut yet: they are shown in the finished piece. */
  readonly onlyCut: boolean;
  /** How the bright ones are drawn off their places. */
  readonly pulled: readonly Pulled[];
  /** Finished things are set in place. */
  readonly isFinished: boolean;
  readonly pots: readonly StandingPot[];
  readonly names: ReadonlyMap<string, string>;
  readonly notes: readonly string[];
};

/** Where finished things are set in place, what is moved is bright, and what it is set against is not. */
export function stepScene(plan: Plan, step: Step): StepScene {
  const { model } = plan;
  const names = partNames(plan);
  const subject = stepSubject(step);
  const isBright = new Set(subject.bright);
  if (subject.standing === undefined) {
    return {
      bright: model.parts.filter(({ id }) => isBright.has(id)),
      standing: model.parts.filter(({ id }) => !isBright.has(id)),
      onlyCut: true,
      pulled: [],
      isFinished: false,
      pots: [],
      names,
      notes: [],
    };
  }
  const there = new Set(subject.standing);
  const made = selectJoints(model, step.joins);
  const all = {
    bright: model.parts.filter(({ id }) => isBright.has(id)),
    standing: model.parts.filter(({ id }) => there.has(id)),
    made,
  };
  const place = focusOn(all);
  const held = heldBefore(madeBefore(plan, step), { ...place, made }, model.contacts);
  const focus = { ...place, standing: atHand({ ...place, made }, held) };
  const pulled = pullApart({ ...focus, held, contacts: model.contacts });
  const isFinished = setsFinished({ ...focus, made });
  const moved = new Set(pulled.flatMap(({ unit }) => unit));
  const bright =
    isFinished && moved.size > 0 ? focus.bright.filter(part => moved.has(part)) : focus.bright;
  return {
    bright,
    standing: [...focus.standing, ...focus.bright].filter(unlessIn(bright)),
    onlyCut: false,
    pulled,
    isFinished,
    pots: potsOf(plan, step),
    names: namesIn(pulled, names),
    notes: placeNotes(focus, all.bright, names),
  };
}

/** Each board once, though what is set in place may have been standing before. */
function unlessIn(bright: readonly Part[]) {
  const seen = new Set(bright);
  return (part: Part) => {
    if (seen.has(part)) return false;
    seen.add(part);
    return true;
  };
}

/** Joints of the steps before. */
function madeBefore({ steps, model }: Plan, step: Step): readonly Joint[] {
  const names = steps.slice(0, steps.indexOf(step)).flatMap(({ joins }) => joins);
  return selectJoints(model, names);
}

/** What hangs together in so many boards is one thing, and nobody looks for its pieces; by looking. */
const ONE_THING = 20;

function namesIn(pulled: readonly Pulled[], names: ReadonlyMap<string, string>) {
  const large = pulled.filter(({ unit }) => unit.length > ONE_THING).flatMap(({ unit }) => unit);
  const unnamed = new Set(large.map(({ id }) => id));
  return new Map([...names].filter(([id]) => !unnamed.has(id)));
}

/** In how many places the same is done, and which boards are others there. */
function placeNotes(
  { bright, places }: Focus,
  all: readonly Part[],
  names: ReadonlyMap<string, string>,
): readonly string[] {
  if (places < 2) return [];
  const marks = (parts: readonly Part[]) => new Set(parts.map(({ id }) => names.get(id) ?? ''));
  const [here, anywhere] = [marks(bright), marks(all)];
  const others = [...anywhere].filter(mark => !here.has(mark));
  const swapped = others.length === 0 ? '' : `; in some with ${others.sort().join(', ')} instead`;
  return [`One of ${places} places where the same is done${swapped}.`];
}
