import type { Value } from '../recipe/values.js';
import { jointsOf } from './joints.js';
import type { Contact, Joint, Part } from './part.js';
import type { JointDraft } from './setout-draft.js';
import { lengthValue, withNames } from './setout-scope.js';
import type { Slate } from './setout-slate.js';
import { type TouchingPairs, touchingPairs } from './touching-pairs.js';

/** Every joint of the piece. A rule whose parts stand there and never touch is a problem. */
export function closeJoints(
  drafts: readonly JointDraft[],
  parts: readonly Part[],
  { contacts, slate }: { readonly contacts: readonly Contact[]; readonly slate: Slate },
): readonly Joint[] {
  const pairs = touchingPairs(contacts);
  return drafts.flatMap(draft => jointsOfRule(draft, parts, { pairs, slate }));
}

function jointsOfRule(
  draft: JointDraft,
  parts: readonly Part[],
  { pairs, slate }: { readonly pairs: TouchingPairs; readonly slate: Slate },
): readonly Joint[] {
  const { rule, drive } = draft;
  const from = at(parts, draft.from);
  const into = at(parts, draft.into);
  const { name, glue } = rule;
  const fasteners = counter(draft, slate);
  const joints = jointsOf(
    { rule: rule.id, name, with: rule.with, glue, drive, from, into, each: fasteners.each },
    pairs,
  );
  if (joints.length > 0 || from.length === 0 || into.length === 0) return joints;
  const facts = { joint: name, from: rule.from.path, into: rule.into.path };
  if (!fasteners.asked()) slate.note({ kind: { is: 'never-touches', ...facts }, at: rule.at });
  return joints;
}

type Sides = { readonly long: number; readonly short: number };

/** How many fasteners a place takes: equal places are worked out once. */
function counter({ rule, scope }: JointDraft, slate: Slate) {
  const known = new Map<string, number | undefined>();
  const each = ({ long, short }: Sides): number | undefined => {
    const key = `${long} ${short}`;
    if (known.has(key)) return known.get(key);
    const sides = new Map<string, Value>([
      ['patch.long', lengthValue(long)],
      ['patch.short', lengthValue(short)],
    ]);
    const count = slate.count(rule.each, withNames(sides, scope), rule.name);
    known.set(key, count);
    return count;
  };
  return { each, asked: () => known.size > 0 };
}

function at(parts: readonly Part[], indices: readonly number[]): readonly Part[] {
  return indices.flatMap(index => {
    const part = parts[index];
    return part === undefined ? [] : [part];
  });
}
