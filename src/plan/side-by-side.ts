import type { Session, Turn } from './plan.js';

/** What the lead does while this turn of the helper lasts. */
export function besideTurn(helper: Turn, { turns }: Pick<Session, 'turns'>): readonly Turn[] {
  if (helper.who !== 'helper') return [];
  return turns.filter(
    ({ who, from, to }) => who === 'lead' && from < helper.to && helper.from < to,
  );
}

/** Steps of the helper that are laid beside work of the lead: they take nobody's time from the others. */
export function stepsBeside(sessions: readonly Pick<Session, 'turns'>[]): ReadonlySet<string> {
  return new Set(
    sessions.flatMap(session =>
      session.turns.filter(turn => besideTurn(turn, session).length > 0).map(({ step }) => step),
    ),
  );
}
